package benchtwin.web;

import benchtwin.bench.ChangeWords;
import benchtwin.bench.OptionWords;
import benchtwin.club.Grip;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.Wanted;
import benchtwin.match.ChangeAnswer;
import benchtwin.match.Keep;
import benchtwin.match.Lever;
import benchtwin.match.Ranked;
import benchtwin.match.Way;
import java.util.ArrayList;
import java.util.List;

/** A way to change a club as the page shows it. */
final class ChangeView {

    private ChangeView() {
    }

    static OptionView of(ChangeAnswer change, Way way, ChangeForm asked) {
        Ranked option = way.option();
        List<NumberTable.Row> rows = new ArrayList<>();
        List<String> still = new ArrayList<>();
        boolean anyWorkedOut = false;
        for (Quantity quantity : Quantity.values()) {
            Double now = change.now().get(quantity);
            Double after = option.predicted().get(quantity);
            if (now == null || after == null) {
                continue;
            }
            Wanted wanted = change.target().of(quantity).orElse(null);
            String moves = QuantityText.difference(quantity, after - now);
            if (wanted == null && moves.equals("0")) {
                still.add(QuantityText.name(quantity));
                continue;
            }
            boolean read = change.measured().contains(quantity);
            anyWorkedOut |= !read;
            Strip strip = wanted == null ? null : new Strip(wanted.deviation(after), option.uncertainty().getOrDefault(quantity, 0.0)
                / wanted.tolerance(), wanted.deviation(now));
            rows.add(new NumberTable.Row(QuantityText.name(quantity), quantity.word(), List.of(QuantityText.value(quantity, now) + (read ? "" : "*")),
                QuantityText.value(quantity, after), strip, moves, change.request().wished().containsKey(quantity) ? "asked" : ""));
        }
        List<String> lines = new ArrayList<>();
        if (!way.grip().equals(change.request().club().grip())) {
            lines.add("Grip %s in place of %s.".formatted(way.grip().map(Grip::tag).orElse("?"),
                change.request().club().grip().map(Grip::tag).orElse("?")));
        }
        if (anyWorkedOut) {
            lines.add("* worked out from its parts, never read.");
        }
        if (!still.isEmpty()) {
            lines.add("Does not move: " + String.join(", ", still) + ".");
        }
        return new OptionView("option-" + option.rank(), OptionKey.of(option), option, ChangeWords.levers(way), place(way), lines,
            new NumberTable(List.of("Now"), "After", "Moves", rows), "/clubs/" + FindPages.encoded(asked.tag()) + "/change",
            asked.asked().query());
    }

    /** Where what it takes lies, where it takes a part. */
    private static String place(Way way) {
        List<String> places = new ArrayList<>();
        if (way.changed().contains(Lever.HEAD)) {
            places.add(way.option().head().tag() + " " + OptionWords.place(Keep.SHAFT, way.option()));
        }
        if (way.changed().contains(Lever.SHAFT)) {
            places.add(way.option().shaft().tag() + " " + OptionWords.place(Keep.HEAD, way.option()));
        }
        if (way.changed().contains(Lever.GRIP)) {
            way.grip().ifPresent(grip -> places.add(grip.tag() + " " + grip.keeping().place().orElse("")));
        }
        return String.join(", ", places);
    }
}
