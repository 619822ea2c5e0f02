package benchtwin.picture;

import benchtwin.club.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Lays a head's sketch out: heading and legend, a column an angle, and what else is known beneath. */
final class HeadSketchDrawing implements Drawing {

    private static final int COLUMNS = 3;
    private static final double VIEW_PX = 288;
    private static final double GAP_PX = 20;
    private static final double BETWEEN_PX = 40;
    private static final double BAR_MM = 20;

    private final Heading heading;
    private final List<AngleColumn> columns = new ArrayList<>();
    private final double pxPerMm;
    private final TextBlock notes;

    HeadSketchDrawing(HeadSketchPicture picture) {
        heading = new Heading(picture.title(), legend(picture, AngleChange.of(picture)));
        List<AngleChange> changes = AngleChange.of(picture);
        Map<Quantity, AngleChange> angles = changes.stream().collect(Collectors.toMap(AngleChange::angle, Function.identity()));
        HeadOutline outline = new HeadOutline(picture);
        double widthPx = (Look.WIDTH_PX - 2.0 * Look.MARGIN_PX - (COLUMNS - 1) * BETWEEN_PX) / COLUMNS;
        for (AngleChange change : changes) {
            SketchView view = switch (change.angle()) {
                case LOFT -> new ToeView(change, angles.get(Quantity.LIE), Optional.ofNullable(angles.get(Quantity.BOUNCE)), outline);
                case LIE -> new FaceOnView(picture, change, outline);
                case FACE -> new PlanView(change, outline);
                default -> new SoleView(change, angles.get(Quantity.LOFT), outline);
            };
            columns.add(new AngleColumn(change, view, picture, Look.MARGIN_PX + columns.size() * (widthPx + BETWEEN_PX), widthPx));
        }
        pxPerMm = columns.stream().mapToDouble(column -> column.mostPxPerMm(VIEW_PX)).min().orElseThrow();
        notes = TextBlock.of("%s %s %s".formatted(HeadSketchWords.centre(picture.sizes()),
            HeadSketchWords.length(picture.sizes()), HeadSketchWords.toScale(picture)), Look.TEXT,
            Look.WIDTH_PX - 2.0 * Look.MARGIN_PX - BAR_MM * pxPerMm - 80);
    }

    @Override
    public int heightPx() {
        return (int) Math.ceil(notesY() + Math.max(notes.heightPx(), 30) + Look.MARGIN_PX);
    }

    @Override
    public void draw(Sheet sheet) {
        heading.draw(sheet);
        columns.forEach(column -> column.draw(sheet, heading.heightPx() + GAP_PX, VIEW_PX, pxPerMm));
        sheet.part("notes", g -> notes.draw(g, Look.INK, Look.MARGIN_PX, notesY()));
        double barPx = BAR_MM * pxPerMm;
        double right = Look.WIDTH_PX - Look.MARGIN_PX;
        double y = notesY() + 14;
        sheet.part("scale-bar", g -> {
            Marks.whiskerAcross(g, right - barPx, right, y);
            TextBlock words = TextBlock.line(Words.fixed(BAR_MM, 0) + " mm", Look.TEXT);
            words.draw(g, Look.INK, right - barPx - 8 - words.widthPx(), y - 12);
        });
    }

    private double notesY() {
        return heading.heightPx() + GAP_PX + VIEW_PX + AngleColumn.underPx() + GAP_PX;
    }

    private static Legend legend(HeadSketchPicture picture, List<AngleChange> changes) {
        Legend legend = new Legend();
        if (changes.stream().anyMatch(AngleChange::isChanged)) {
            legend.add(44, (g, x, width, y) -> Marks.line(g, Look.QUIET, SketchPen.BEFORE, x, y, x + width, y), "before");
            legend.add(44, (g, x, width, y) -> Marks.line(g, Look.INK, SketchPen.AFTER, x, y, x + width, y), "after");
        }
        if (picture.sizes().hasCentre()) {
            legend.add(16, (g, x, width, y) -> SketchPen.centreOfGravity(g, x + width / 2, y), "CG, centre of gravity");
        }
        return legend.add(16, (g, x, width, y) -> SketchPen.groundPoint(g, x + width / 2, y - 6),
            "G, where the shaft's axis meets the ground");
    }
}
