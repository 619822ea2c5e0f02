package benchtwin.picture;

import benchtwin.club.Quantity;
import benchtwin.measure.LengthText;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Frequency of a set against playing length, the longest club at the left: each club a dot with a whisker of twice its
 * standard uncertainty, the target lines that clubs lie on with their tolerance, and the targets of the other clubs, each
 * joined to its dot. What is out of tolerance is an arrow in place of a dot, with its number; what is not built is an open
 * diamond on its target.
 * @param player    whose set
 * @param condition how the frequencies are read, for instance {@code on the bare butt, 5 in in the clamp}; may be empty
 * @param clubs     in the order of the set, at least one
 */
public record FrequencyLinePicture(String player, String condition, List<FrequencyPoint> clubs) implements SetPicture {

    static final SetWords CPM = new SetWords(Quantity.FREQUENCY);

    /**
     * Checks that there is something to draw and makes the texts printable.
     * @throws IllegalArgumentException naming what is missing or cannot be
     */
    public FrequencyLinePicture {
        player = Words.required("player", player);
        condition = Words.printable(condition);
        clubs = List.copyOf(clubs);
        SetRowsDrawing.someClubs(clubs.stream().map(FrequencyPoint::club).toList());
    }

    @Override
    public String finding() {
        return "frequency against length" + SetWords.count(points());
    }

    @Override
    public String inWords() {
        return axisLabel() + ". " + clubs.stream().map(FrequencyLinePicture::inWords).collect(Collectors.joining(" "));
    }

    List<SetPoint> points() {
        return clubs.stream().map(FrequencyPoint::club).toList();
    }

    String axisLabel() {
        return "frequency, cpm" + (condition.isEmpty() ? "" : " (" + condition + ")");
    }

    /** What a dot is called beside it: the name, and how far off it is when that is too far. */
    static String label(SetPoint club) {
        return club.side() == 0 ? club.club()
            : "%s: %s cpm".formatted(club.club(), CPM.difference(club.off()));
    }

    private static String inWords(FrequencyPoint point) {
        OptionalDouble mm = point.lengthMm().isPresent() ? point.lengthMm() : point.targetLengthMm();
        String place = mm.isPresent() ? " at %s in".formatted(LengthText.inchesAndSixteenths(mm.getAsDouble()))
            : ", length not known";
        return CPM.sentence(point.club(), place);
    }
}
