package benchtwin.cli;

import benchtwin.match.Ranked;
import benchtwin.rules.EquipmentRules;
import java.util.List;
import java.util.stream.Stream;

/** What a plan is told of the equipment limits it would cross or come too close to. */
final class RulesLines {

    private RulesLines() {
    }

    static void print(Page page, String indent, List<String> warnings) {
        warnings.forEach(warning -> page.wrapped(indent + "Rules: ", warning + "."));
    }

    /** Under a page, where any of its options was told something. */
    static void whoDecides(Page page, Stream<Ranked> options) {
        whoDecides(page, options.allMatch(option -> option.rulesWarnings().isEmpty()));
    }

    static void whoDecides(Page page, boolean nothingSaid) {
        if (!nothingSaid) {
            page.wrapped("Rules: ", EquipmentRules.WHO_DECIDES);
        }
    }
}
