package benchtwin.picture;

import benchtwin.club.Quantity;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Swing weight or butt inertia of a set, a row a club in the order of the set: the predicted value with a whisker of twice
 * its standard uncertainty, on a strip with the target and its tolerance. What is out of tolerance is an arrow in place of
 * a dot, and says so in words.
 * @param player   whose set
 * @param quantity {@link Quantity#SWING_WEIGHT}, values in points above A0, or {@link Quantity#BUTT_INERTIA}, in kg·cm²
 * @param clubs    in the order they are to stand, at least one
 */
public record SwingPicture(String player, Quantity quantity, List<SetPoint> clubs) implements SetPicture {

    /**
     * Checks that there is something to draw.
     * @throws IllegalArgumentException naming what is missing or cannot be
     */
    public SwingPicture {
        player = Words.required("player", player);
        if (quantity != Quantity.SWING_WEIGHT && quantity != Quantity.BUTT_INERTIA) {
            throw new IllegalArgumentException(
                "this picture is of swing weight or butt inertia, not of " + quantity.word());
        }
        clubs = SetRowsDrawing.someClubs(clubs);
    }

    @Override
    public String finding() {
        return words().name() + " across the set" + SetWords.count(clubs);
    }

    @Override
    public String inWords() {
        return axisLabel() + ". " + clubs.stream().map(club -> words().sentence(club, "")).collect(Collectors.joining(" "));
    }

    SetWords words() {
        return new SetWords(quantity);
    }

    String axisLabel() {
        return quantity == Quantity.SWING_WEIGHT ? "swing weight, letters and points"
            : "moment of inertia about the butt, kg·cm²";
    }
}
