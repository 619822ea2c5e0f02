package benchtwin.samples;

import benchtwin.club.Grip;
import benchtwin.club.Keeping;
import benchtwin.measure.DefaultUncertainty;
import benchtwin.measure.Reading;
import benchtwin.measure.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Grips, one tag each, those on clubs and shafts among them. */
final class Grips {

    /**
     * A grip model, as designed.
     * @param name     invented name
     * @param massG    mass, g
     * @param lengthIn length, in
     * @param capMm    thickness of the end wall, mm
     * @param coreIn   inner diameter, in
     * @param ribbed   whether it has a rib
     */
    record Kind(String name, double massG, double lengthIn, double capMm, double coreIn, boolean ribbed) {
    }

    static final Kind MOSS = new Kind("Moss round", 50, 10.5, 3, 0.600, false);
    static final Kind MOSS_RIB = new Kind("Moss rib", 51.5, 10.5, 3, 0.600, true);
    static final Kind LICHEN = new Kind("Lichen light", 42, 10.5, 2.8, 0.600, false);
    static final Kind THATCH = new Kind("Thatch", 78, 10.75, 3.5, 0.580, true);

    private final Draw draw;
    private final List<Grip> made = new ArrayList<>();

    Grips(Draw draw) {
        this.draw = draw;
    }

    Grip onto(Kind kind, String where) {
        return make(kind, Optional.empty(), Optional.of("on " + where));
    }

    Grip forDrawer(Kind kind) {
        return make(kind, Optional.of("grip bin"), Optional.empty());
    }

    private Grip make(Kind kind, Optional<String> place, Optional<String> note) {
        OptionalDouble cap = draw.chance(0.8) ? OptionalDouble.of(draw.read(kind.capMm(), 0.2, 0.5, 1))
            : OptionalDouble.empty();
        Optional<Reading> cg = draw.chance(0.3) ? Optional.of(Reading.of(
            Units.mm(draw.read(kind.lengthIn() * 0.4, 0.05, 0.1, 2)), DefaultUncertainty.BALANCE_MM)) : Optional.empty();
        Grip grip = new Grip(String.format(Locale.ROOT, "G-%03d", made.size() + 1), kind.name(),
            Optional.of(Reading.of(draw.read(kind.massG(), 0.7, 1.8, 1), DefaultUncertainty.MASS_G)),
            OptionalDouble.of(Units.mm(kind.lengthIn())), cap, OptionalDouble.of(Units.mm(kind.coreIn())),
            kind.ribbed(), cg, new Keeping(Optional.empty(), place, note, Map.of()));
        made.add(grip);
        return grip;
    }

    List<Grip> all() {
        return List.copyOf(made);
    }
}
