package benchtwin.samples;

import benchtwin.club.Hand;
import benchtwin.measure.LengthText;
import benchtwin.measure.SwingWeightText;
import benchtwin.samples.CsvTable.Row;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The clubs of a season's players: of each the bag of one of the sample workshop's players, in lengths of their own, and then
 * backups. The first clubs are built of parts on record; the rest came as they are.
 */
final class SeasonClubs {

    private static final List<String> ANGLES = List.of("loft_deg", "lie_deg", "face_deg", "bounce_deg");
    private static final List<String> PARTS = List.of("head", "shaft", "grip", "sleeve", "setting");
    /** One player of so many plays left-handed. */
    private static final int LEFT_EVERY = 10;
    private static final String DAY = SeasonBook.FIRST_DAY.toString();

    /**
     * A club.
     * @param tag    its tag
     * @param player whose
     * @param lasting what it is, once and for all
     * @param parts  its parts and setting, by name; none where they are not on record
     * @param values what it measures but for scatter, in the program's own units
     * @param reading how its angles are read
     * @param length how its length is
     * @param overGrip how its frequency is
     */
    record Club(String tag, String player, Map<String, String> lasting, Map<String, String> parts, Map<String, Double> values,
                String reading, String length, String overGrip) {
    }

    private record Wish(ClubSpec model, ClubSpec spec, boolean built) {
    }

    private final Draw draw;
    private final List<Club> all = new ArrayList<>();
    private final List<String> players = new ArrayList<>();
    private final Set<String> builtIn = new HashSet<>();

    SeasonClubs(Draw draw, ClubBuilder builder, SeasonBook.Size size, int built) {
        this.draw = draw;
        List<ClubSpec> right = bag(Hand.RIGHT);
        List<ClubSpec> left = bag(Hand.LEFT);
        for (int i = 1; i <= size.players(); i++) {
            players.add(String.format(Locale.ROOT, "Player %03d", i));
        }
        Map<String, List<Row>> read = new LinkedHashMap<>();
        List<Wish> wishes = new ArrayList<>();
        for (int i = 0; i < size.clubs(); i++) {
            int player = i % size.players();
            List<ClubSpec> bag = player % LEFT_EVERY == LEFT_EVERY - 1 ? left : right;
            int place = i / size.players();
            ClubSpec model = bag.get(place % bag.size());
            String name = model.tag.substring(model.tag.indexOf('-') + 1)
                + (place < bag.size() ? "" : "-B" + place / bag.size());
            Wish wish = new Wish(model, own(model, tag(player + 1, name), players.get(player)),
                (long) i * built % size.clubs() < built);
            wishes.add(wish);
            if (wish.built()) {
                Row row = builder.build(wish.spec()).rows().get(0);
                PARTS.forEach(part -> builtIn.add(row.get(part)));
                read.computeIfAbsent(model.tag, tag -> new ArrayList<>()).add(row);
                all.add(club(wish.spec(), row, true));
            }
        }
        wishes.stream().filter(wish -> !wish.built()).forEach(wish -> all.add(club(wish.spec(), draw.pick(
            read.getOrDefault(wish.model().tag, read.values().stream().filter(rows -> rows.get(0).get("category")
                .equals(wish.spec().line.category().word())).findFirst().orElseThrow())), false)));
    }

    static String tag(int player, String name) {
        return String.format(Locale.ROOT, "P%03d-%s", player, name);
    }

    /** The bag of one of the sample workshop's players, the favourite's driver first. */
    private static List<ClubSpec> bag(Hand hand) {
        List<ClubSpec> bag = new ArrayList<>();
        if (hand == Hand.RIGHT) {
            bag.addAll(PlayerClubs.all().stream().filter(spec -> spec.tag.equals("OAKES-DR")).toList());
        }
        bag.addAll(PlayerClubs.all().stream().filter(spec -> spec.tag.startsWith(hand == Hand.RIGHT ? "QUILLBY" : "WEXCOMBE"))
            .filter(spec -> hand == Hand.LEFT || !spec.tag.endsWith("-DR")).toList());
        return bag;
    }

    private ClubSpec own(ClubSpec model, String tag, String player) {
        ClubSpec spec = new ClubSpec(tag, player, model.hand, model.line, model.size, model.shaft,
            model.lengthIn - draw.pick(List.of(0.0, 0.125, 0.25, 0.375)));
        spec.tipCutIn = model.tipCutIn;
        spec.sleeve = model.sleeve;
        spec.grip = model.grip;
        spec.swingWeightPoints = model.swingWeightPoints + draw.pick(List.of(-1.0, -0.5, 0.0, 0.5, 1.0));
        spec.lengthMethod = model.lengthMethod;
        spec.overGrip = model.overGrip;
        return spec.inPlay(DAY, model.days.get(0).setting());
    }

    private Club club(ClubSpec spec, Row row, boolean withParts) {
        Map<String, String> lasting = new TreeMap<>(Map.of("player", spec.player, "category", spec.line.category().word(),
            "hand", spec.hand.word()));
        String number = spec.line.size(spec.size).number();
        if (!number.isEmpty()) {
            lasting.put("number", number);
        }
        Map<String, String> parts = new TreeMap<>(Map.of("tape_layers", "1", "orientation", "logo down"));
        if (withParts) {
            PARTS.stream().filter(part -> !row.get(part).isEmpty()).forEach(part -> parts.put(part, row.get(part)));
            parts.put("tape_g", row.get("tape_g"));
        }
        Map<String, Double> values = new LinkedHashMap<>();
        ANGLES.stream().filter(angle -> !row.get(angle).isEmpty())
            .forEach(angle -> values.put(angle, Double.parseDouble(row.get(angle))));
        values.put("length_mm", LengthText.parseMm(row.get("length_in")).orElseThrow());
        values.put("swing_weight_points", SwingWeightText.parsePoints(row.get("swing_weight")).orElseThrow());
        values.put("frequency_cpm", Double.parseDouble(row.get("frequency_cpm")));
        values.put("total_mass_g", Double.parseDouble(row.get("total_mass_g")));
        return new Club(spec.tag, spec.player, lasting, parts, values, row.get("reading"), row.get("length_method"),
            row.get("over_grip"));
    }

    List<Club> all() {
        return all;
    }

    List<String> players() {
        return players;
    }

    boolean isBuiltIn(String part) {
        return builtIn.contains(part);
    }
}
