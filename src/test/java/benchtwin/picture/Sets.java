package benchtwin.picture;

import benchtwin.club.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Invented sets to draw. */
final class Sets {

    /** A name that does not fit on one line of the sheet, in three scripts. */
    static final String LONG_NAME = "Aleksandrina Wilhelmina van der Quillenberg-Oakshott, Ευδοξία Καρυδοβουνιώτη-Λυγαρά"
        + " & Серафима Дождевицкая-Звонникова";

    private static final String[] NAMES = {"driver", "3-wood", "4-hybrid", "4-hybrid backup", "4-iron", "5-iron", "6-iron",
        "7-iron", "8-iron", "9-iron", "PW", "50", "54", "58"};
    private static final double[] LENGTH_IN = {45, 43, 39.75, 39.75, 38.5, 38, 37.5, 37, 36.5, 36, 35.5, 35.25, 35.25, 35.25};
    private static final double[] LOFT_DEG = {9.5, 15.1, 21, 21, 24, 27, 30.5, 34, 38, 42, 46, 50, 54, 58};
    private static final double[] OFF = {0.4, -1.5, 0.2, 0.3, -0.8, 0.6, 1.4, -0.3, 0, 0.7, -1.1, 0.4, 0.2, -0.7};

    private Sets() {
    }

    static SetTarget target(double value, double tolerance) {
        return new SetTarget(value, tolerance, Optional.empty());
    }

    static SetPoint built(String club, double value, double uncertainty, SetTarget target) {
        return new SetPoint(club, OptionalDouble.of(value), uncertainty, Optional.ofNullable(target), true);
    }

    static SetPoint notBuilt(String club, SetTarget target) {
        return new SetPoint(club, OptionalDouble.empty(), 0, Optional.ofNullable(target), false);
    }

    static SetPoint notKnown(String club, SetTarget target) {
        return new SetPoint(club, OptionalDouble.empty(), 0, Optional.ofNullable(target), true);
    }

    static FrequencyPoint at(double inches, SetPoint club) {
        return new FrequencyPoint(club, club.built() ? OptionalDouble.of(25.4 * inches) : OptionalDouble.empty(),
            OptionalDouble.of(25.4 * inches));
    }

    static FrequencyLinePicture frequency(String player, FrequencyPoint... clubs) {
        return new FrequencyLinePicture(player, "on the bare butt, 5 in in the clamp", List.of(clubs));
    }

    /** The first so many clubs of a bag: irons on a line of 9 cpm an inch, 308 at 37 in; a 3-wood off, an iron not built. */
    static FrequencyLinePicture frequency(String player, int count) {
        List<FrequencyPoint> clubs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            boolean iron = i >= 4 && i <= 10;
            double cpm = iron ? 308 + 9 * (37 - LENGTH_IN[i]) : i > 10 ? 322 : 251 + 4.6 * (45 - LENGTH_IN[i]);
            SetTarget target = new SetTarget(cpm, iron ? 2 : 3, iron ? Optional.of("firm irons") : Optional.empty());
            double value = cpm + (i == 1 ? -5.2 : i == 6 ? 3.1 : OFF[i]);
            clubs.add(at(LENGTH_IN[i], i == 5 ? notBuilt(NAMES[i], target) : built(NAMES[i], value, 0.5 + 0.1 * (i % 3), target)));
        }
        return new FrequencyLinePicture(player, "on the bare butt, 5 in in the clamp", clubs);
    }

    static SwingPicture swing(String player, int count) {
        List<SetPoint> clubs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            SetTarget target = target(i < 2 ? 32.5 : i > 10 ? 34 : 32, 0.5);
            clubs.add(i == 5 ? notBuilt(NAMES[i], target) : i == 8 ? notKnown(NAMES[i], target)
                : built(NAMES[i], target.value() + (i == 11 ? 0.9 : i == 1 ? -1.4 : 0.3 * OFF[i]), 0.15, i == 3 ? null : target));
        }
        return new SwingPicture(player, Quantity.SWING_WEIGHT, clubs);
    }

    static SwingPicture inertia(String player, int count) {
        List<SetPoint> clubs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            SetTarget target = target(i < 4 ? 2850 - 40 * i : 2660, 10);
            clubs.add(built(NAMES[i], target.value() + 8 * OFF[i], 4, target));
        }
        return new SwingPicture(player, Quantity.BUTT_INERTIA, clubs);
    }

    static LoftGapPicture lofts(String player, int count) {
        List<SetPoint> clubs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            SetTarget target = target(LOFT_DEG[i], 0.25);
            clubs.add(i == 5 ? notBuilt(NAMES[i], target)
                : built(NAMES[i], LOFT_DEG[i] + (i == 8 ? -1.2 : 0.15 * OFF[i]), 0.1, target));
        }
        return new LoftGapPicture(player, LoftGapPicture.DEFAULT_GAP_TOLERANCE_DEG, clubs);
    }

    static SetSheet sheet(String player, int count) {
        return new SetSheet(player, List.of(frequency(player, count), swing(player, count), lofts(player, count)));
    }
}
