package benchtwin.picture;

import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.Wanted;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What a history shows, in words: what to see, and the table behind it. */
final class HistoryWords {

    /** More quantities off than these are counted, not named. */
    private static final int NAMED = 3;

    private HistoryWords() {
    }

    /** What to see: which quantities were off when they were last read. */
    static String finding(HistoryPicture picture) {
        Map<Quantity, HistoryStrip> strips = picture.strips();
        long read = strips.values().stream().mapToLong(strip -> strip.readings().size()).sum();
        if (read == 0) {
            int done = picture.interventions().size();
            return "nothing read yet" + (done == 0 ? "" : ", " + counted(done, "thing done", "things done"));
        }
        List<Quantity> judged = strips.keySet().stream().filter(quantity -> strips.get(quantity).isJudged()).toList();
        if (judged.isEmpty()) {
            return counted(read, "reading", "readings") + ", no target to hold " + (read == 1 ? "it" : "them") + " to";
        }
        List<Quantity> off = judged.stream().filter(quantity -> strips.get(quantity).side() != 0).toList();
        int right = judged.size() - off.size();
        String last = judged.size() == 1 ? QuantityText.name(judged.get(0)) : off.isEmpty() ? "all " + right + " quantities"
            : (right == 0 ? "none" : right) + " of " + judged.size() + " quantities";
        if (off.isEmpty()) {
            return last + " in tolerance when last read";
        }
        String which = off.stream().map(quantity -> QuantityText.name(quantity) + " " + SetWords.tooFar(strips.get(quantity).side()))
            .collect(Collectors.joining(", "));
        if (judged.size() == 1) {
            return which + " when last read";
        }
        return last + " in tolerance when last read" + (off.size() <= NAMED ? "; " + which : "");
    }

    private static String counted(long count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    /** One sentence for each reading and each intervention. */
    static String table(HistoryPicture picture) {
        String strips = picture.strips().entrySet().stream().map(entry -> strip(entry.getKey(), entry.getValue()))
            .collect(Collectors.joining(" "));
        String done = picture.interventions().isEmpty() ? "Nothing was done." : "Done: " + picture.interventions().stream()
            .map(what -> what.when().text() + " " + what.words()).collect(Collectors.joining("; ")) + ".";
        return (strips + " " + done).strip();
    }

    private static String strip(Quantity quantity, HistoryStrip strip) {
        String name = QuantityText.name(quantity);
        String target = strip.target().map(wanted -> "target " + target(quantity, wanted)).orElse("no target");
        return Character.toUpperCase(name.charAt(0)) + name.substring(1) + ", " + target + ": " + (strip.readings().isEmpty()
            ? "not read" : strip.readings().stream().map(reading -> reading(quantity, strip, reading))
                .collect(Collectors.joining("; "))) + ".";
    }

    static String target(Quantity quantity, Wanted wanted) {
        return QuantityText.value(quantity, wanted.value()) + " ± " + QuantityText.size(quantity, wanted.tolerance());
    }

    private static String reading(Quantity quantity, HistoryStrip strip, HistoryReading reading) {
        StringBuilder words = new StringBuilder(reading.when().text()).append(' ')
            .append(QuantityText.value(quantity, reading.value()));
        if (reading.standardUncertainty() > 0) {
            words.append(" ± ").append(QuantityText.size(quantity, reading.whisker())).append(" (twice the standard uncertainty)");
        }
        strip.target().ifPresent(wanted ->
            words.append(", ").append(QuantityText.difference(quantity, reading.value() - wanted.value())).append(" off"));
        reading.otherGauge().ifPresent(gauge -> words.append(", read on ").append(gauge));
        return words.append(reading.superseded() ? ", superseded" : "").toString();
    }
}
