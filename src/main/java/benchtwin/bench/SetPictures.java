package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.club.WantedClub;
import benchtwin.match.Ranked;
import benchtwin.measure.LengthText;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.picture.FrequencyLinePicture;
import benchtwin.picture.FrequencyPoint;
import benchtwin.picture.LoftGapPicture;
import benchtwin.picture.SetPicture;
import benchtwin.picture.SetPoint;
import benchtwin.picture.SetSheet;
import benchtwin.picture.SetTarget;
import benchtwin.picture.SwingPicture;
import benchtwin.sets.ClubOfSet;
import benchtwin.sets.PlayerSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Draws planned sets. */
public final class SetPictures {

    private SetPictures() {
    }

    /**
     * Frequency against length, swing weight or butt inertia, and loft gaps of one player's set, on one sheet.
     * @param set the set, with at least one club that has a target
     * @return the sheet; empty when nothing of the three is wanted or known of any club
     */
    public static Optional<SetSheet> of(PlayerSet set) {
        List<SetPicture> pictures = new ArrayList<>();
        List<ClubOfSet> frequency = wanting(set, Quantity.FREQUENCY);
        if (!frequency.isEmpty()) {
            String condition = "on the bare butt, %s in in the clamp".formatted(
                LengthText.inchesAndSixteenths(FrequencyCondition.BARE.clampMm()));
            pictures.add(new FrequencyLinePicture(set.player(), condition,
                frequency.stream().map(SetPictures::frequency).toList()));
        }
        for (Quantity quantity : List.of(Quantity.SWING_WEIGHT, Quantity.BUTT_INERTIA)) {
            List<ClubOfSet> swing = wanting(set, quantity);
            if (!swing.isEmpty()) {
                pictures.add(new SwingPicture(set.player(), quantity,
                    swing.stream().map(club -> point(club, quantity, club.wanted().swingLine())).toList()));
            }
        }
        List<ClubOfSet> lofts = wanting(set, Quantity.LOFT);
        if (!lofts.isEmpty()) {
            pictures.add(new LoftGapPicture(set.player(), LoftGapPicture.DEFAULT_GAP_TOLERANCE_DEG,
                lofts.stream().map(club -> point(club, Quantity.LOFT, Optional.empty())).toList()));
        }
        return pictures.isEmpty() ? Optional.empty() : Optional.of(new SetSheet(set.player(), pictures));
    }

    private static List<ClubOfSet> wanting(PlayerSet set, Quantity quantity) {
        return set.clubs().stream().filter(club -> wanted(club, quantity).isPresent()).toList();
    }

    private static Optional<Wanted> wanted(ClubOfSet club, Quantity quantity) {
        return club.target().flatMap(target -> target.of(quantity)).filter(wanted -> wanted.weight() > 0);
    }

    private static FrequencyPoint frequency(ClubOfSet club) {
        return new FrequencyPoint(point(club, Quantity.FREQUENCY, line(club)),
            value(club.build().map(build -> build.predicted().get(Quantity.LENGTH))),
            value(club.target().flatMap(target -> target.of(Quantity.LENGTH)).map(Wanted::value)));
    }

    /** The line its frequency lies on: only where its own row names none. */
    private static Optional<String> line(ClubOfSet club) {
        WantedClub wanted = club.wanted();
        boolean own = wanted.target().map(Target::wanted).filter(values -> values.containsKey(Quantity.FREQUENCY)).isPresent();
        return own ? Optional.empty() : wanted.frequencyLine();
    }

    private static SetPoint point(ClubOfSet club, Quantity quantity, Optional<String> line) {
        Optional<Ranked> build = club.build();
        double uncertainty = build.map(b -> b.uncertainty().getOrDefault(quantity, 0.0)).orElse(0.0);
        return new SetPoint(club.wanted().club(), value(build.map(b -> b.predicted().get(quantity))), uncertainty,
            wanted(club, quantity).map(wanted -> new SetTarget(wanted.value(), wanted.tolerance(), line)), build.isPresent());
    }

    private static OptionalDouble value(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
