package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.match.Ranked;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** One line that says why an option stands behind the one before it. */
public final class WhyNext {

    private static final double WORTH_NAMING = 0.3;
    private static final double SAME = 1e-9;

    private WhyNext() {
    }

    private record Part(double more, String words) {
    }

    /**
     * The line.
     * @param ahead  the option before
     * @param behind the option after it
     * @return a sentence
     */
    public static String line(Ranked ahead, Ranked behind) {
        double gap = behind.cost() - ahead.cost();
        if (gap <= SAME) {
            return "costs the same: only their tags put one first.";
        }
        List<Part> parts = new ArrayList<>();
        behind.terms().forEach((quantity, term) -> {
            double more = term - ahead.terms().getOrDefault(quantity, 0.0);
            parts.add(new Part(more, words(quantity, behind)));
        });
        parts.add(new Part(behind.effort() - ahead.effort(), "%.0f min of work against %.0f"
            .formatted(behind.plan().minutes(), ahead.plan().minutes())));
        parts.sort(Comparator.comparingDouble(part -> -part.more()));
        List<String> named = new ArrayList<>();
        for (Part part : parts) {
            if (part.more() > 0 && (named.isEmpty() || part.more() >= WORTH_NAMING * gap) && named.size() < 2) {
                named.add(part.words());
            }
        }
        return String.join(", ", named) + String.format(Locale.ROOT, " (cost %.3f against %.3f).", behind.cost(),
            ahead.cost());
    }

    private static String words(Quantity quantity, Ranked option) {
        double off = option.difference().get(quantity);
        String format = quantity.isAngle() ? "%s %+.2f%s" : "%s %+.1f %s";
        return String.format(Locale.ROOT, format, quantity.word().replace('-', ' '), off, quantity.unit()).replace("-", "−");
    }
}
