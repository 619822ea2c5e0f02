package benchtwin.bench;

import benchtwin.club.Bore;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.HeadAngles;
import benchtwin.club.Quantity;
import benchtwin.club.Sleeve;
import benchtwin.match.Ranked;
import benchtwin.measure.Reading;
import benchtwin.mechanics.ClubAngles;
import benchtwin.mechanics.HoselTilt;
import benchtwin.mechanics.Setup;
import benchtwin.mechanics.SleeveSettings;
import benchtwin.picture.HeadSketchPicture;
import benchtwin.picture.SketchAngles;
import benchtwin.picture.SketchSizes;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Draws heads as they were read and as a plan wants them. Both in the head's own reading: what the old club measured beside
 * what was predicted of it is no bend and moves nothing here.
 */
public final class HeadSketches {

    /** What a plan calls the tilt of all its bends, as {@code docs/json.md} has it. */
    private static final String UPRIGHT = "tiltUprightDeg";
    private static final String FORWARD = "tiltForwardDeg";

    private HeadSketches() {
    }

    /**
     * The head of an option.
     * @param option a planned build
     * @return the sketch
     */
    public static HeadSketchPicture of(Ranked option) {
        Map<String, Double> amounts = new HashMap<>();
        option.plan().steps().forEach(step -> step.amounts().forEach((what, much) -> amounts.merge(what, much, Double::sum)));
        return planned(option.head(), option.sleeve(), option.setting(), amounts, option.predicted().get(Quantity.LENGTH));
    }

    /**
     * A head and what a plan does to it.
     * @param head     as it lies in the drawer
     * @param sleeve   what holds it, for a sleeved head
     * @param setting  where that will be set
     * @param amounts  how much of what the plan does, by the names steps use
     * @param lengthMm what the club's playing length will be, mm; null where it is not known
     * @return the sketch
     */
    static HeadSketchPicture planned(Head head, Optional<Sleeve> sleeve, Optional<String> setting, Map<String, Double> amounts,
                                     Double lengthMm) {
        Setup.Aim aim = head.seat().isPresent()
            ? sleeve.flatMap(holds -> setting.flatMap(to ->
                SleeveSettings.aim(holds, head.hand(), head.seat().get().readAtSetting(), to))).orElse(Setup.AS_READ)
            : new Setup.Tilted(new HoselTilt(amounts.getOrDefault(UPRIGHT, 0.0), amounts.getOrDefault(FORWARD, 0.0)));
        return of(head, setting, aim, lengthMm);
    }

    /** A head and how its axis is set. */
    static HeadSketchPicture of(Head head, Optional<String> setting, Setup.Aim aim, Double lengthMm) {
        HeadAngles read = head.angles();
        SketchAngles before = new SketchAngles(value(read.loftDeg()), value(read.lieDeg()), value(read.faceDeg()),
            value(read.bounceDeg()));
        return new HeadSketchPicture(subject(head, setting), head.category(), read.reading(), head.hand(), before,
            aim.equals(Setup.AS_READ) ? before : after(read, aim), sizes(head, lengthMm));
    }

    private static SketchAngles after(HeadAngles read, Setup.Aim aim) {
        ClubAngles after = ClubAngles.of(read.reading(), number(read.loftDeg()), number(read.lieDeg()), number(read.faceDeg()),
            number(read.bounceDeg()), aim);
        return new SketchAngles(known(after.loftDeg(read.reading())), known(after.lieDeg()), known(after.faceDeg()),
            known(after.bounceDeg()));
    }

    private static String subject(Head head, Optional<String> setting) {
        return "Head %s, %s%s%s%s".formatted(head.tag(), head.hand() == Hand.LEFT ? "left-handed " : "", head.category().word(),
            head.number().map(number -> " " + number).orElse(""), setting.map(to -> ", set at " + to).orElse(""));
    }

    private static SketchSizes sizes(Head head, Double lengthMm) {
        OptionalDouble hoselMm = head.seat().isPresent() ? value(head.seat().get().toGroundMm())
            : head.bore().map(HeadSketches::hosel).orElse(OptionalDouble.empty());
        return new SketchSizes(value(head.mass().cgToeMm()), value(head.mass().cgUpMm()), head.offsetMm(),
            above0(hoselMm), value(head.mass().volumeCm3()), OptionalDouble.empty(),
            lengthMm == null ? OptionalDouble.empty() : OptionalDouble.of(lengthMm));
    }

    /** Where the bore opens. */
    private static OptionalDouble hosel(Bore bore) {
        return known(number(bore.toGroundMm()) + number(bore.depthMm()));
    }

    private static OptionalDouble above0(OptionalDouble mm) {
        return mm.isPresent() && mm.getAsDouble() > 0 ? mm : OptionalDouble.empty();
    }

    private static OptionalDouble value(Optional<Reading> reading) {
        return known(number(reading));
    }

    private static double number(Optional<Reading> reading) {
        return reading.map(Reading::value).orElse(Double.NaN);
    }

    private static OptionalDouble known(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
