package benchtwin.samples;

import benchtwin.club.AngleReading;
import benchtwin.club.Hand;
import benchtwin.club.Keeping;
import benchtwin.club.MeasuredSetting;
import benchtwin.club.Ring;
import benchtwin.club.Sleeve;
import benchtwin.measure.DefaultUncertainty;
import benchtwin.measure.Reading;
import benchtwin.measure.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The sleeves of the sample workshop. "lock-1" and "lock-2" look alike and fit only their own generation; "quad-335" goes
 * into drivers and fairway woods. "notch-335" was measured setting by setting.
 */
final class Sleeves {

    private static final double HALF_TURN_DEG = 180;
    private static final List<Ring> LOCK_1 = List.of(new Ring(0.8, 6, 0), new Ring(0.5, 5, HALF_TURN_DEG));
    private static final List<Ring> LOCK_2 = List.of(new Ring(0.9, 6, 0), new Ring(0.55, 5, HALF_TURN_DEG));
    private static final List<Ring> QUAD = List.of(new Ring(0.75, 4, 0), new Ring(0.45, 4, HALF_TURN_DEG));
    private static final List<Ring> NOTCH = List.of(new Ring(1, 12, 0));

    private final Draw draw;
    private final int times;

    Sleeves(Draw draw) {
        this(draw, 1);
    }

    /** So many times the sample's number of each. */
    Sleeves(Draw draw, int times) {
        this.draw = draw;
        this.times = times;
    }

    List<Sleeve> all() {
        return List.of(
            sleeve("lock-2-335", Set.of("lock-2"), Optional.of(Hand.RIGHT), 0.340, 34.5, 9.6, 8.1, false, LOCK_2, 4),
            sleeve("lock-2-335-left", Set.of("lock-2"), Optional.of(Hand.LEFT), 0.340, 34.6, 9.7, 8.1, false, LOCK_2, 1),
            sleeve("lock-1-335", Set.of("lock-1"), Optional.empty(), 0.340, 34.8, 9.1, 7.9, false, LOCK_1, 2),
            sleeve("notch-335", Set.of("notch"), Optional.of(Hand.RIGHT), 0.340, 35.2, 8.4, 6.9, true, NOTCH, 6),
            sleeve("notch-335-left", Set.of("notch"), Optional.of(Hand.LEFT), 0.340, 35.1, 8.5, 6.9, true, NOTCH, 2),
            sleeve("quad-335", Set.of("quad", "quad-fairway"), Optional.empty(), 0.340, 33.9, 10.8, 7.4, false, QUAD, 5),
            sleeve("quad-370", Set.of("quad-hybrid"), Optional.empty(), 0.375, 33.7, 11.2, 7.6, false, QUAD, 2));
    }

    private Sleeve sleeve(String name, Set<String> fits, Optional<Hand> hand, double boreIn, double depthMm,
                          double stopMm, double massG, boolean turnsShaft, List<Ring> rings, int count) {
        List<MeasuredSetting> measured = name.equals("notch-335") ? measured(rings.get(0)) : List.of();
        return new Sleeve(name, fits, hand, Units.mm(boreIn),
            Optional.of(Reading.of(depthMm, DefaultUncertainty.BORE_MM)),
            Optional.of(Reading.of(stopMm, DefaultUncertainty.BORE_MM)),
            Optional.of(Reading.of(massG, DefaultUncertainty.MASS_G)), turnsShaft, rings, measured, OptionalInt.of(times * count),
            new Keeping(Optional.empty(), Optional.of("sleeve tin"), Optional.empty(), Map.of()));
    }

    /**
     * What a coordinate machine showed on a head of lie 57.5°, loft 10°, read square and from setting 7 (flattest): the
     * tilt's face change is 1.9 and its square loft change 1.2 degrees a degree, and the shop's own scatter.
     */
    private List<MeasuredSetting> measured(Ring ring) {
        List<MeasuredSetting> settings = new ArrayList<>();
        for (int i = 1; i <= ring.settings(); i++) {
            double azimuth = Math.toRadians(360.0 * (i - 1) / ring.settings());
            double forward = ring.tiltDeg() * Math.sin(azimuth);
            double upright = ring.tiltDeg() * (Math.cos(azimuth) + 1);
            settings.add(new MeasuredSetting(Integer.toString(i), draw.read(1.18 * forward, 0.04, 0.1, 2),
                draw.read(upright, 0.04, 0.1, 2), OptionalDouble.of(draw.read(-1.88 * forward, 0.05, 0.12, 2)),
                AngleReading.SQUARE));
        }
        return settings;
    }
}
