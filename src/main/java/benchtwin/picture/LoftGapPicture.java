package benchtwin.picture;

import benchtwin.club.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Lofts of a set, a row a club in the order of the set, and between neighbours the gap in degrees. A gap that is much
 * smaller or larger than that of the two targets is drawn heavy and says so.
 * @param player          whose set
 * @param gapToleranceDeg how far a gap may be from that of the targets before it is marked, degrees, 0 or more
 * @param clubs           in the order they are to stand, at least one; values in degrees
 */
public record LoftGapPicture(String player, double gapToleranceDeg, List<SetPoint> clubs) implements SetPicture {

    /** Two neighbours, each off by the usual 0.25° and apart from each other: common practice, no source. */
    public static final double DEFAULT_GAP_TOLERANCE_DEG = 0.5;

    /**
     * Checks that there is something to draw.
     * @throws IllegalArgumentException naming what is missing or cannot be
     */
    public LoftGapPicture {
        player = Words.required("player", player);
        Words.notNegative("a tolerance of the gaps", gapToleranceDeg);
        clubs = SetRowsDrawing.someClubs(clubs);
    }

    @Override
    public String finding() {
        long uneven = gaps().stream().flatMap(Optional::stream).filter(gap -> gap.side() != 0).count();
        return "lofts and gaps" + SetWords.count(clubs)
            + (uneven == 0 ? "" : ", " + uneven + (uneven == 1 ? " gap" : " gaps") + " uneven");
    }

    @Override
    public String inWords() {
        StringBuilder words = new StringBuilder("Loft, degrees.");
        List<Optional<LoftGap>> gaps = gaps();
        for (int i = 0; i < clubs.size(); i++) {
            words.append(' ').append(words().sentence(clubs.get(i), ""));
            if (i < gaps.size()) {
                gaps.get(i).ifPresent(gap -> words.append(" Gap to the next: ").append(gap.inWords()).append('.'));
            }
        }
        return words.toString();
    }

    /** After each club but the last: the gap to the next one, where both lofts are known. */
    List<Optional<LoftGap>> gaps() {
        List<Optional<LoftGap>> gaps = new ArrayList<>();
        for (int i = 1; i < clubs.size(); i++) {
            SetPoint from = clubs.get(i - 1);
            SetPoint to = clubs.get(i);
            gaps.add(from.value().isEmpty() || to.value().isEmpty() ? Optional.empty()
                : Optional.of(new LoftGap(from.value().getAsDouble(), to.value().getAsDouble(),
                    from.target().isEmpty() || to.target().isEmpty() ? OptionalDouble.empty()
                        : OptionalDouble.of(to.target().get().value() - from.target().get().value()), gapToleranceDeg)));
        }
        return gaps;
    }

    SetWords words() {
        return new SetWords(Quantity.LOFT);
    }
}
