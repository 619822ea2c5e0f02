package benchtwin.cli;

import benchtwin.club.Quantity;
import benchtwin.club.Target;
import benchtwin.match.Ranked;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/** What each quantity and the work cost, option by option. */
final class WhyTable {

    private static final String INDENT = "   ";

    private WhyTable() {
    }

    /**
     * Prints it.
     * @param page    where
     * @param target  what the options are held against
     * @param options in their order
     * @param name    what an option is called
     * @param width   columns for the name
     */
    static void print(Page page, Target target, List<Ranked> options, Function<Ranked, String> name, int width) {
        page.blank();
        page.line("Why in this order: cost is miss² (each quantity's share below) and effort; least first.");
        rows(page, target.wanted().entrySet().stream().filter(e -> e.getValue().weight() > 0).map(Map.Entry::getKey).toList(),
            options, name, width);
    }

    /**
     * The table alone.
     * @param page    where
     * @param columns quantities that have a column
     * @param options in their order
     * @param name    what an option is called
     * @param width   columns for the name
     */
    static void rows(Page page, List<Quantity> columns, List<Ranked> options, Function<Ranked, String> name, int width) {
        StringBuilder head = new StringBuilder(INDENT + " ".repeat(width));
        columns.forEach(q -> head.append(String.format(Locale.ROOT, " %7s", Figures.shortName(q))));
        page.line("%s", head + "  effort    cost");
        for (Ranked option : options) {
            StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%s%-" + width + "." + width + "s", INDENT,
                name.apply(option)));
            columns.forEach(q -> row.append(String.format(Locale.ROOT, " %7.3f", option.terms().getOrDefault(q, 0.0))));
            page.line("%s", row + String.format(Locale.ROOT, " %7.3f %7.3f", option.effort(), option.cost()));
        }
    }
}
