package benchtwin.stock;

import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.HeadAngles;
import benchtwin.measure.Taken;
import java.util.Optional;
import java.util.stream.Stream;

/** A row's loft, lie, face and bounce, and how they were read. */
final class AngleCells {

    private AngleCells() {
    }

    /** The angles; all empty where none was read. */
    static HeadAngles read(Row row, Optional<Category> category, Taken taken) {
        AngleReading reading = reading(row, category);
        Measures measures = new Measures(row, category, taken);
        boolean wood = reading.isWood();
        return new HeadAngles(reading, measures.reading("loft_deg", wood), measures.reading("lie_deg", wood),
            measures.reading("face_deg", wood), measures.reading("bounce_deg", wood));
    }

    static boolean areAny(Row row) {
        return Stream.of("loft_deg", "lie_deg", "face_deg", "bounce_deg").anyMatch(row::has);
    }

    /** Whether it is an iron, a wedge or a putter. */
    static boolean isReadByTheEdge(Optional<Category> category) {
        return category.filter(Category::isReadByTheEdge).isPresent();
    }

    /** How the angles of such a club are read where nothing is said. */
    static AngleReading usual(Optional<Category> category) {
        return isReadByTheEdge(category) ? AngleReading.EDGE : AngleReading.SOLED;
    }

    /** As written; irons, wedges and putters are read by the edge, a wood has to say. */
    static AngleReading reading(Row row, Optional<Category> category) {
        boolean edgeOnly = isReadByTheEdge(category);
        boolean woodOnly = category.filter(Category::isDriverOrFairway).isPresent();
        Optional<AngleReading> written = row.word("reading", AngleReading.class);
        if (written.isPresent()) {
            if (edgeOnly && written.get().isWood()) {
                row.fault("reading", "does not go with an iron, wedge or putter", "edge");
            } else if (woodOnly && !written.get().isWood()) {
                row.fault("reading", "does not go with a driver or fairway wood", "soled or square");
            }
        } else if (!edgeOnly && category.isPresent() && areAny(row) && !row.has("reading")) {
            row.missing("reading", "how its angles were read: "
                + (woodOnly ? "soled or square" : "soled, square or edge"));
        }
        return written.orElse(usual(category));
    }
}
