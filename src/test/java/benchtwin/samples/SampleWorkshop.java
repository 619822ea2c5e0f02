package benchtwin.samples;

import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.club.Weight;
import benchtwin.samples.CsvTable.Row;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes up the whole sample workshop, the same every time, and writes its files.
 * <p>{@code main} takes the folder: {@code inventory-samples} in the project writes the committed one.
 */
public final class SampleWorkshop {

    /** The seed of the committed folder. */
    private static final long SEED = 20260521;
    private static final int HEAD_TAGS = 260;
    private static final int SHAFT_TAGS = 250;
    private static final int SPARE_GRIPS = 7;
    /** Tags for what came in for the sets of the week. */
    private static final int MORE_HEAD_TAGS = 340;
    private static final int MORE_SHAFT_TAGS = 330;

    private final List<Head> heads;
    private final List<Shaft> shafts;
    private final List<Grip> grips;
    private final List<Sleeve> sleeves;
    private final List<Weight> weights;
    private final List<Row> clubRows = new ArrayList<>();
    private final List<Row> frequencyRows = new ArrayList<>();

    private SampleWorkshop(long seed) {
        Draw draw = new Draw(seed);
        sleeves = new Sleeves(draw.of("sleeves")).all();
        weights = Weights.all();
        Grips gripBin = new Grips(draw.of("grips"));
        Shelf<Head> headShelf = new Shelf<>("H", HEAD_TAGS, draw.of("head tags"));
        Shelf<Shaft> shaftShelf = new Shelf<>("S", SHAFT_TAGS, draw.of("shaft tags"));
        ClubBuilder builder = new ClubBuilder(draw.of("clubs"), sleeves, gripBin, headShelf, shaftShelf);
        ShaftDrawers rack = new ShaftDrawers(draw.of("shafts"), shaftShelf, gripBin);
        for (ClubSpec spec : PlayerClubs.all()) {
            BuiltClub built = builder.build(spec);
            clubRows.addAll(built.rows());
            if (spec.tag.equals("OAKES-DR")) {
                new OakesDrawer(draw.of("oakes"), headShelf, built).fill();
            } else if (spec.tag.equals("HARKWELL-DR")) {
                rack.fill(built);
                frequencyRows.addAll(rack.furtherReadings());
            }
        }
        HeadDrawers drawers = new HeadDrawers(draw.of("heads"), headShelf);
        drawers.fill();
        drawers.misfiled();
        for (Grips.Kind kind : List.of(Grips.MOSS, Grips.MOSS_RIB, Grips.LICHEN, Grips.THATCH)) {
            for (int i = 0; i < SPARE_GRIPS; i++) {
                gripBin.forDrawer(kind);
            }
        }
        headShelf.extend(MORE_HEAD_TAGS, draw.of("more head tags"));
        shaftShelf.extend(MORE_SHAFT_TAGS, draw.of("more shaft tags"));
        drawers.fillForSets();
        rack.fillForSets();
        heads = headShelf.all(Head::tag);
        shafts = shaftShelf.all(Shaft::tag);
        grips = gripBin.all();
    }

    /**
     * The committed workshop.
     * @return the same every time
     */
    static SampleWorkshop committed() {
        return new SampleWorkshop(SEED);
    }

    /**
     * Writes the folder.
     * @param args the folder
     * @throws IOException when it cannot be written
     */
    public static void main(String[] args) throws IOException {
        committed().write(Path.of(args[0]));
    }

    void write(Path folder) throws IOException {
        Files.createDirectories(folder);
        PartTables.heads(heads).write(folder.resolve("heads.csv"));
        PartTables.shafts(shafts).write(folder.resolve("shafts.csv"));
        PartTables.grips(grips).write(folder.resolve("grips.csv"));
        PartTables.sleeves(sleeves).write(folder.resolve("sleeves.csv"));
        PartTables.sleeveSettings(sleeves).write(folder.resolve("sleeve-settings.csv"));
        PartTables.weights(weights).write(folder.resolve("weights.csv"));
        CsvTable.of(clubRows).write(folder.resolve("clubs.csv"));
        CsvTable.of(frequencyRows).write(folder.resolve("frequencies.csv"));
        CsvTable.of(SetWishes.clubs()).write(folder.resolve("set-targets.csv"));
        CsvTable.of(SetWishes.lines()).write(folder.resolve("lines.csv"));
        CsvTable.of(Resins.rows()).write(folder.resolve("resins.csv"));
    }
}
