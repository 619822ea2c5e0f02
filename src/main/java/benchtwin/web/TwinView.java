package benchtwin.web;

import benchtwin.bench.HeadBefore;
import benchtwin.bench.OptionWords;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.Wanted;
import benchtwin.match.Keep;
import benchtwin.match.MatchAnswer;
import benchtwin.match.Ranked;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** An option of a match as the page shows it. */
final class TwinView {

    private TwinView() {
    }

    static OptionView of(MatchAnswer answer, Ranked option, MatchForm asked) {
        boolean otherHead = answer.keep() != Keep.HEAD;
        Map<Quantity, Double> asItLies = otherHead ? HeadBefore.angles(option.head(), answer.favourite().reading()) : Map.of();
        List<NumberTable.Row> rows = new ArrayList<>();
        for (Map.Entry<Quantity, Wanted> entry : answer.favourite().target().wanted().entrySet()) {
            Quantity quantity = entry.getKey();
            String favourite = QuantityText.value(quantity, entry.getValue().value());
            String before = asItLies.containsKey(quantity) ? QuantityText.value(quantity, asItLies.get(quantity)) : "";
            rows.add(row(option, quantity, entry.getValue(), otherHead ? List.of(favourite, before) : List.of(favourite),
                asItLies.getOrDefault(quantity, Double.NaN)));
        }
        List<String> lines = new ArrayList<>();
        OptionWords.defaults(option).ifPresent(lines::add);
        OptionWords.tie(option).ifPresent(lines::add);
        String old = asked.club().isPresent() ? "Old club" : "Wanted";
        NumberTable numbers = new NumberTable(otherHead ? List.of(old, "Head now") : List.of(old), asked.club().isPresent() ? "Twin" : "Will measure", "Off by", rows);
        return new OptionView("option-" + option.rank(), OptionKey.of(option), option, OptionWords.name(answer.keep(), option),
            OptionWords.place(answer.keep(), option), lines, numbers, asked.path(), asked.query());
    }

    /** One quantity of an option held against what is wanted. */
    static NumberTable.Row row(Ranked option, Quantity quantity, Wanted wanted, List<String> before, double now) {
        Double predicted = option.predicted().get(quantity);
        if (predicted == null) {
            return new NumberTable.Row(QuantityText.name(quantity), quantity.word(), before, "", null, "",
                "not measured: cannot be computed");
        }
        Strip strip = new Strip(option.difference().get(quantity) / wanted.tolerance(),
            option.uncertainty().getOrDefault(quantity, 0.0) / wanted.tolerance(), wanted.deviation(now));
        return new NumberTable.Row(QuantityText.name(quantity), quantity.word(), before, QuantityText.value(quantity, predicted), strip,
            QuantityText.difference(quantity, option.difference().get(quantity)), "");
    }
}
