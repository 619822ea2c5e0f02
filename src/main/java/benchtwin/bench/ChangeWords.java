package benchtwin.bench;

import benchtwin.club.Grip;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.match.ChangeAnswer;
import benchtwin.match.Favourite;
import benchtwin.match.Lever;
import benchtwin.match.Ranked;
import benchtwin.match.Way;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** How a change is spoken of, on a terminal and on a page alike. */
public final class ChangeWords {

    private ChangeWords() {
    }

    /**
     * Which club, as last read when.
     * @param answer the answer
     * @return a line
     */
    public static String club(ChangeService.Answer answer) {
        Favourite club = answer.change().request().club();
        return "%s%s, %s-handed %s%s, as last read on %s".formatted(club.name(), club.player().map(p -> " (" + p + ")").orElse(""),
            club.hand().word(), club.category().word(), club.number().map(n -> " " + n).orElse(""), answer.measuredOn());
    }

    /**
     * What is asked, each with what it is now.
     * @param change the answer
     * @return sentences
     */
    public static String asked(ChangeAnswer change) {
        List<String> asked = new ArrayList<>();
        change.request().wished().forEach((quantity, value) -> asked.add("%s %s (now %s, %s)".formatted(
            QuantityText.name(quantity), QuantityText.value(quantity, value), QuantityText.value(quantity, change.now().get(quantity)),
            QuantityText.difference(quantity, value - change.now().get(quantity)))));
        Optional<Grip> on = change.request().club().grip();
        change.request().grip().ifPresent(grip -> asked.add("grip %s, %s (now %s)".formatted(grip.tag(), grams(grip),
            on.map(g -> g.tag() + ", " + grams(g)).orElse("not on record"))));
        change.request().gripMassG().ifPresent(mass -> asked.add(String.format(Locale.ROOT, "a grip of %.1f g (now %s)", mass,
            on.map(ChangeWords::grams).orElse("not on record"))));
        return String.join("; ", asked) + ". Everything else is to stay as it is.";
    }

    private static String grams(Grip grip) {
        return grip.massG().map(m -> String.format(Locale.ROOT, "%.1f g", m.value())).orElse("never weighed");
    }

    /**
     * What a way changes, parts first.
     * @param way the way
     * @return words
     */
    public static String levers(Way way) {
        return way.changed().stream().sorted(Comparator.comparing((Lever lever) -> !lever.isAPart())).map(Lever::word)
            .collect(Collectors.joining(" + "));
    }

    /**
     * The chance of a way. Swing weight stands aside in the chance of everything, since tape sets it; asked for alone, it is all
     * there is.
     * @param change what was asked
     * @param option the way's option
     * @return a sentence
     */
    public static String chance(ChangeAnswer change, Ranked option) {
        boolean onlySwingWeight = change.request().wished().keySet().equals(Set.of(Quantity.SWING_WEIGHT));
        Map<String, Double> groups = option.firstTimeRight().byGroup();
        double chance = onlySwingWeight ? groups.values().iterator().next() : option.firstTimeRight().all();
        return "The chance that %s inside tolerance the first time: %s.".formatted(
            change.request().wished().isEmpty() ? "everything reads" : "what was asked reads", OptionWords.chance(chance))
            + (option.defaultsUsed().isEmpty() ? "" : " Rests on a default: " + String.join("; ", option.defaultsUsed()) + ".");
    }

    /**
     * How near something comes that does not reach what was asked by itself, and why it goes no farther.
     * @param change    the answer
     * @param shortfall one of its shortfalls
     * @return sentences
     */
    public static String shortfall(ChangeAnswer change, ChangeAnswer.Shortfall shortfall) {
        String why = shortfall.why();
        return shortfall.nearest().map(way -> nearest(change, way, shortfall.missing())).orElse("")
            + why.substring(0, 1).toUpperCase(Locale.ROOT) + why.substring(1) + ".";
    }

    /** What it comes to, and how far that is from what was asked. */
    private static String nearest(ChangeAnswer change, Way way, Map<Quantity, Double> missing) {
        String comes = change.request().wished().keySet().stream()
            .filter(q -> way.option().predicted().containsKey(q))
            .map(q -> "%s %s%s".formatted(QuantityText.name(q), QuantityText.value(q, way.option().predicted().get(q)),
                missing.containsKey(q) ? " (" + QuantityText.difference(q, missing.get(q)) + " off)" : ""))
            .collect(Collectors.joining(", "));
        if (!comes.isEmpty()) {
            return "Comes to " + comes + ". ";
        }
        String moves = change.target().wanted().keySet().stream()
            .filter(q -> change.now().containsKey(q) && way.option().predicted().containsKey(q))
            .map(q -> Map.entry(q, QuantityText.difference(q, way.option().predicted().get(q) - change.now().get(q))))
            .filter(e -> !e.getValue().equals("0")).map(e -> QuantityText.name(e.getKey()) + " " + e.getValue())
            .collect(Collectors.joining(", "));
        return moves.isEmpty() ? "" : "The nearest moves " + moves + ". ";
    }
}
