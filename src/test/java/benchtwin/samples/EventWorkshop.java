package benchtwin.samples;

import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ObjIntConsumer;

/**
 * A made-up event in three sizes, for measuring: the truck's heads and shafts with the scatter and the stories of the sample
 * workshop's, and the sets that its players want. The same size and seed give the same files.
 * <p>{@code main} takes the size, the seed and the folder.
 */
public final class EventWorkshop {

    /** How the sizes differ. */
    private enum Size {
        A(1, 400, 400, false), B(8, 1500, 1500, false), C(16, 3000, 3000, true);

        private final int players;
        private final int heads;
        private final int shafts;
        private final boolean hybridsAreScarce;

        Size(int players, int heads, int shafts, boolean hybridsAreScarce) {
            this.players = players;
            this.heads = heads;
            this.shafts = shafts;
            this.hybridsAreScarce = hybridsAreScarce;
        }
    }

    /** Hybrids in stock for each that is wanted, where they are scarce. */
    private static final double SCARCE = 0.7;
    private static final double LEFT_SHARE = 0.2;
    private static final List<String> TAPER_NUMBERS = List.of("4", "5", "6", "7", "8", "9", "PW", "W");

    private final Size size;
    private final Draw draw;
    private final EventWishes wishes;
    private final Grips grips;
    private final Shelf<Head> heads;
    private final Shelf<Shaft> shafts;
    private final ShaftDrawers rack;

    private EventWorkshop(Size size, long seed) {
        this.size = size;
        draw = new Draw(seed);
        wishes = new EventWishes(draw.of("wishes"), size.players);
        grips = new Grips(draw.of("grips"));
        heads = new Shelf<>("H", size.heads, draw.of("head tags"));
        shafts = new Shelf<>("S", size.shafts, draw.of("shaft tags"));
        rack = new ShaftDrawers(draw.of("shafts"), shafts, grips);
        fillHeads(new HeadDrawers(draw.of("heads"), heads));
        fillShafts();
        for (int i = 0; i < 5 * size.players; i++) {
            List.of(Grips.MOSS, Grips.MOSS_RIB, Grips.LICHEN).forEach(grips::forDrawer);
        }
    }

    /**
     * An event.
     * @param size A, one player's set from 400 heads and 400 shafts; B, eight players' from 1,500 each; C, sixteen players'
     *             from 3,000 each, with fewer hybrids than are wanted
     * @param seed same seed, same event
     * @return the event
     * @throws IllegalArgumentException for another size
     */
    public static EventWorkshop of(char size, long seed) {
        return new EventWorkshop(Size.valueOf(String.valueOf(size)), seed);
    }

    /**
     * Writes an event.
     * @param args size, seed, folder
     * @throws IOException when it cannot be written
     */
    public static void main(String[] args) throws IOException {
        of(args[0].charAt(0), Long.parseLong(args[1])).write(Path.of(args[2]));
    }

    /** A part that is stocked, and how much of it against the others. */
    private record Share<T>(T part, double share) {
    }

    private record HeadKind(HeadLine line, String size, Hand hand) {

        void into(HeadDrawers drawers, int count) {
            drawers.several(count, line, size, hand);
        }
    }

    private record ShaftKind(ShaftLine line, String madeFor) {
    }

    private void fillHeads(HeadDrawers drawers) {
        List<Share<HeadKind>> shares = new ArrayList<>();
        add(shares, EventHeads.IRONS, EventHeads.LEFT_IRONS, 1);
        add(shares, EventHeads.WEDGES, EventHeads.LEFT_WEDGES, 1);
        add(shares, EventHeads.DRIVERS, EventHeads.DRIVERS, 1.2);
        add(shares, EventHeads.FAIRWAYS, EventHeads.FAIRWAYS, 1.5);
        int left = size.heads;
        if (size.hybridsAreScarce) {
            left -= fewHybrids(drawers);
        } else {
            add(shares, EventHeads.HYBRIDS, EventHeads.HYBRIDS, 1.5);
        }
        shareOut(shares, left, (kind, count) -> kind.into(drawers, count));
    }

    private static void add(List<Share<HeadKind>> shares, List<HeadLine> right, List<HeadLine> left, double share) {
        for (HeadLine line : right) {
            for (HeadLine.Size size : line.sizes()) {
                String name = size.number().isEmpty() ? Cells.number(size.loftDeg(), 1) : size.number();
                shares.add(new Share<>(new HeadKind(line, name, Hand.RIGHT), share));
                if (left.contains(line)) {
                    shares.add(new Share<>(new HeadKind(line, name, Hand.LEFT), share * LEFT_SHARE));
                }
            }
        }
    }

    /** Fewer of each number, hand and reading than are wanted, at least one for the right hand, the models by turns. */
    private int fewHybrids(HeadDrawers drawers) {
        int all = 0;
        for (String number : List.of("3", "4")) {
            for (AngleReading reading : List.of(AngleReading.SOLED, AngleReading.EDGE)) {
                for (Hand hand : Hand.values()) {
                    int wanted = wishes.count(Category.HYBRID.word(), number, hand.word().toLowerCase(Locale.ROOT),
                        reading.word());
                    int stocked = hand == Hand.LEFT ? (int) (wanted * SCARCE) : (int) Math.ceil(wanted * SCARCE);
                    List<Share<HeadKind>> shares = EventHeads.HYBRIDS.stream().filter(line -> line.reading() == reading)
                        .map(line -> new Share<>(new HeadKind(line, number, hand), 1)).toList();
                    shareOut(shares, stocked, (kind, count) -> kind.into(drawers, count));
                    all += stocked;
                }
            }
        }
        return all;
    }

    private void fillShafts() {
        List<Share<ShaftKind>> shares = new ArrayList<>();
        EventShafts.DRIVERS.forEach(line -> shares.add(new Share<>(new ShaftKind(line, ""), 1.2)));
        EventShafts.FAIRWAYS.forEach(line -> shares.add(new Share<>(new ShaftKind(line, ""), 1)));
        EventShafts.HYBRIDS.forEach(line -> shares.add(new Share<>(new ShaftKind(line, ""), 0.9)));
        EventShafts.PARALLEL_IRONS.forEach(line -> shares.add(new Share<>(new ShaftKind(line, ""), 4)));
        EventShafts.TAPER_IRONS.forEach(line -> TAPER_NUMBERS.forEach(
            number -> shares.add(new Share<>(new ShaftKind(line, number), number.equals("W") ? 1 : 0.5))));
        shareOut(shares, size.shafts, (kind, count) -> rack.several(count, kind.line(), kind.madeFor()));
    }

    /** So many in all, whole ones, in proportion to the shares. */
    private static <T> void shareOut(List<Share<T>> shares, int total, ObjIntConsumer<T> stock) {
        double sum = shares.stream().mapToDouble(Share::share).sum();
        double before = 0;
        for (Share<T> each : shares) {
            double after = before + each.share();
            stock.accept(each.part(), (int) (Math.rint(total * after / sum) - Math.rint(total * before / sum)));
            before = after;
        }
    }

    /**
     * Writes the files of the stock and of the wishes, under their usual names.
     * @param folder where; made if it is not there
     * @throws IOException when it cannot be written
     */
    public void write(Path folder) throws IOException {
        Files.createDirectories(folder);
        List<Sleeve> sleeves = new Sleeves(draw.of("sleeves"), size.players).all();
        PartTables.heads(heads.all(Head::tag)).write(folder.resolve("heads.csv"));
        PartTables.shafts(shafts.all(Shaft::tag)).write(folder.resolve("shafts.csv"));
        PartTables.grips(grips.all()).write(folder.resolve("grips.csv"));
        PartTables.sleeves(sleeves).write(folder.resolve("sleeves.csv"));
        PartTables.sleeveSettings(sleeves).write(folder.resolve("sleeve-settings.csv"));
        PartTables.weights(Weights.all()).write(folder.resolve("weights.csv"));
        CsvTable.of(rack.furtherReadings()).write(folder.resolve("frequencies.csv"));
        CsvTable.of(wishes.clubs()).write(folder.resolve("set-targets.csv"));
        CsvTable.of(wishes.lines()).write(folder.resolve("lines.csv"));
    }
}
