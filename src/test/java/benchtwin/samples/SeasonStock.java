package benchtwin.samples;

import benchtwin.club.Grip;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ObjIntConsumer;
import java.util.stream.Stream;

/** The stock of a season: drawers of many models, one driver model many times over, and the parts the players' clubs are of. */
final class SeasonStock {

    private static final double HEAD_SHARE = 0.45;
    private static final double SHAFT_SHARE = 0.4;
    /** Share of the heads that are the favourite's model, and of the shafts that are. */
    private static final double ASKED_SHARE = 0.12;
    private static final double SLEEVED_SHARE = 0.6;
    private static final List<String> TAPER_NUMBERS = List.of("4", "5", "6", "7", "8", "9", "PW", "W");

    private record HeadKind(HeadLine line, String size, Hand hand) {
    }

    private record ShaftKind(ShaftLine line, String madeFor) {
    }

    private final Draw draw;
    private final List<Sleeve> sleeves;
    private final Grips grips;
    private final Shelf<Head> heads;
    private final Shelf<Shaft> shafts;
    private final ShaftDrawers rack;
    private final List<Head> askedHeads;
    private final List<Shaft> askedShafts;
    private final SeasonClubs clubs;

    SeasonStock(Draw draw, SeasonBook.Size size) {
        this.draw = draw;
        int allHeads = (int) (size.parts() * HEAD_SHARE);
        int allShafts = (int) (size.parts() * SHAFT_SHARE);
        int built = clubsWithParts(size.clubs(), size.parts());
        sleeves = new Sleeves(draw.of("sleeves"), 2 + size.clubs() / 20).all();
        grips = new Grips(draw.of("grips"));
        heads = new Shelf<>("H", allHeads, draw.of("head tags"));
        shafts = new Shelf<>("S", allShafts, draw.of("shaft tags"));
        rack = new ShaftDrawers(draw.of("shafts"), shafts, grips);
        clubs = new SeasonClubs(draw.of("clubs"), new ClubBuilder(draw.of("builds"), sleeves, grips, heads, shafts), size, built);
        StockGenerator asked = new StockGenerator(draw.random().nextLong());
        askedHeads = asked.heads((int) (allHeads * ASKED_SHARE), SLEEVED_SHARE);
        askedShafts = asked.shafts((int) (allShafts * ASKED_SHARE));
        HeadDrawers drawers = new HeadDrawers(draw.of("heads"), heads);
        share(headKinds(), allHeads - askedHeads.size() - built, (kind, count) ->
            drawers.several(count, kind.line(), kind.size(), kind.hand()));
        share(shaftKinds(), allShafts - askedShafts.size() - built, (kind, count) ->
            rack.several(count, kind.line(), kind.madeFor()));
        int spare = size.parts() - allHeads - allShafts - grips.all().size() - sleeves.size() - Weights.all().size();
        share(List.of(Grips.MOSS, Grips.MOSS_RIB, Grips.LICHEN, Grips.THATCH), spare, (kind, count) -> {
            for (int i = 0; i < count; i++) {
                grips.forDrawer(kind);
            }
        });
    }

    /** Of how many clubs the parts are on record. */
    static int clubsWithParts(int clubs, int parts) {
        return Math.max(1, Math.min(clubs / 3, parts / 10));
    }

    /** Every model in every size, the left hand where it is made. */
    private static List<HeadKind> headKinds() {
        List<HeadKind> kinds = new ArrayList<>();
        Stream.of(EventHeads.DRIVERS, EventHeads.FAIRWAYS, EventHeads.HYBRIDS, EventHeads.IRONS, EventHeads.WEDGES)
            .flatMap(List::stream).forEach(line -> line.sizes().forEach(size -> {
                String name = size.number().isEmpty() ? Cells.number(size.loftDeg(), 1) : size.number();
                kinds.add(new HeadKind(line, name, Hand.RIGHT));
                if (EventHeads.LEFT_IRONS.contains(line) || EventHeads.LEFT_WEDGES.contains(line)) {
                    kinds.add(new HeadKind(line, name, Hand.LEFT));
                }
            }));
        return kinds;
    }

    private static List<ShaftKind> shaftKinds() {
        List<ShaftKind> kinds = new ArrayList<>();
        Stream.of(EventShafts.DRIVERS, EventShafts.FAIRWAYS, EventShafts.HYBRIDS, EventShafts.PARALLEL_IRONS)
            .flatMap(List::stream).forEach(line -> kinds.add(new ShaftKind(line, "")));
        EventShafts.TAPER_IRONS.forEach(line -> TAPER_NUMBERS.forEach(number -> kinds.add(new ShaftKind(line, number))));
        return kinds;
    }

    /** So many in all, as evenly as whole parts go. */
    private static <T> void share(List<T> kinds, int total, ObjIntConsumer<T> stock) {
        if (total < 0) {
            throw new IllegalArgumentException("there are more parts in clubs than parts");
        }
        for (int i = 0; i < kinds.size(); i++) {
            stock.accept(kinds.get(i), (int) ((long) total * (i + 1) / kinds.size() - (long) total * i / kinds.size()));
        }
    }

    SeasonClubs clubs() {
        return clubs;
    }

    /** Heads that lie in drawers. */
    List<Head> headsInDrawers() {
        return Stream.concat(heads.all(Head::tag).stream().filter(head -> !clubs.isBuiltIn(head.tag())), askedHeads.stream())
            .toList();
    }

    /** Shafts that stand in the rack. */
    List<Shaft> shaftsInRack() {
        return Stream.concat(shafts.all(Shaft::tag).stream().filter(shaft -> !clubs.isBuiltIn(shaft.tag())),
            askedShafts.stream()).toList();
    }

    List<Grip> grips() {
        return grips.all();
    }

    void write(Path folder) throws IOException {
        Files.createDirectories(folder);
        PartTables.heads(Stream.concat(heads.all(Head::tag).stream(), askedHeads.stream()).toList())
            .write(folder.resolve("heads.csv"));
        PartTables.shafts(Stream.concat(shafts.all(Shaft::tag).stream(), askedShafts.stream()).toList())
            .write(folder.resolve("shafts.csv"));
        PartTables.grips(grips.all()).write(folder.resolve("grips.csv"));
        PartTables.sleeves(sleeves).write(folder.resolve("sleeves.csv"));
        PartTables.sleeveSettings(sleeves).write(folder.resolve("sleeve-settings.csv"));
        PartTables.weights(Weights.all()).write(folder.resolve("weights.csv"));
        CsvTable.of(rack.furtherReadings()).write(folder.resolve("frequencies.csv"));
    }
}
