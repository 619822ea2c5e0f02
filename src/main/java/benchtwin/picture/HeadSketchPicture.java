package benchtwin.picture;

import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.Hand;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A head before and after its angles are changed, a view an angle in the order they are always shown: loft from the toe, lie
 * face on, and a wood's face angle from above or an iron's bounce at its sole. Before is a broken outline, after is drawn in
 * ink, both to scale from the head's own numbers; the shape between them is only a sketch. A change too small to see is drawn
 * again beside its number, as many times wider as is written there. A left-handed head is the mirror of a right-handed one.
 * @param subject  whose sketch, for instance {@code Head H-014, driver}
 * @param category what kind of head
 * @param reading  how its angles are read
 * @param hand     right or left
 * @param before   its angles as measured
 * @param after    its angles as planned, or as measured afterwards; the same as before when nothing changes
 * @param sizes    what else is known of it
 */
public record HeadSketchPicture(String subject, Category category, AngleReading reading, Hand hand, SketchAngles before,
                                SketchAngles after, SketchSizes sizes) implements Picture {

    /**
     * Checks that nothing is missing.
     * @throws IllegalArgumentException when the subject says nothing
     */
    public HeadSketchPicture {
        subject = Words.required("subject", subject);
        Objects.requireNonNull(category);
        Objects.requireNonNull(reading);
        Objects.requireNonNull(hand);
        Objects.requireNonNull(before);
        Objects.requireNonNull(after);
        Objects.requireNonNull(sizes);
    }

    @Override
    public String title() {
        return subject + ": " + finding();
    }

    @Override
    public String inWords() {
        return HeadSketchWords.table(this);
    }

    @Override
    public String svg() {
        Fonts.require();
        return SvgSheet.text(this, new HeadSketchDrawing(this));
    }

    @Override
    public byte[] png() {
        Fonts.require();
        return PngSheet.bytes(new HeadSketchDrawing(this));
    }

    private String finding() {
        List<AngleChange> angles = AngleChange.of(this);
        if (angles.stream().noneMatch(AngleChange::isMeasured)) {
            return "no angle of it was measured";
        }
        String changes = angles.stream().filter(AngleChange::isChanged)
            .map(change -> change.name() + " " + change.differenceText()).collect(Collectors.joining(", "));
        return changes.isEmpty() ? "its angles stay as they are" : changes;
    }
}
