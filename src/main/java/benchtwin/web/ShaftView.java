package benchtwin.web;

import benchtwin.bench.OptionWords;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.Wanted;
import benchtwin.match.Keep;
import benchtwin.match.Ranked;
import benchtwin.match.ShaftAnswer;
import benchtwin.match.ShaftPick;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A shaft that was picked as the page shows it. */
final class ShaftView {

    private ShaftView() {
    }

    static OptionView of(ShaftAnswer answer, ShaftPick pick, ShaftsForm asked) {
        Ranked option = pick.option();
        List<NumberTable.Row> rows = new ArrayList<>();
        for (Map.Entry<Quantity, Wanted> entry : answer.target().wanted().entrySet()) {
            Wanted wanted = ShaftsPages.wanted(entry.getKey(), entry.getValue(), pick.rungCpm());
            double uncut = entry.getKey() == Quantity.FREQUENCY ? pick.untrimmedCpm() : Double.NaN;
            rows.add(TwinView.row(option, entry.getKey(), wanted, List.of(QuantityText.value(entry.getKey(), wanted.value()),
                Double.isNaN(uncut) ? "" : QuantityText.value(entry.getKey(), uncut)), uncut));
        }
        List<String> lines = new ArrayList<>();
        lines.add(option.shaft().model() + (pick.rawCpm().isEmpty() ? "." : String.format(Locale.ROOT, ". As it lies %.1f cpm raw: the bare shaft, "
            + "5 in in the clamp, 205 g on the tip.", pick.rawCpm().getAsDouble())));
        pick.marks().forEach(mark -> lines.add(mark.substring(0, 1).toUpperCase(Locale.ROOT) + mark.substring(1) + "."));
        OptionWords.defaults(option).ifPresent(lines::add);
        OptionWords.tie(option).ifPresent(lines::add);
        return new OptionView("option-" + option.rank(), OptionKey.of(option), option, ShaftsPages.name(answer, pick),
            OptionWords.place(Keep.HEAD, option), lines, new NumberTable(List.of("Wanted", "Tip left alone"), "Will measure", "Off by", rows),
            "/clubs/" + FindPages.encoded(asked.tag()) + "/shafts", asked.asked().query());
    }
}
