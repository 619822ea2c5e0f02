package benchtwin.cli;

import benchtwin.club.MeasuredDifference;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.Timeline;
import benchtwin.club.TimelineEntry;
import benchtwin.club.TimelineValue;
import benchtwin.club.ValueCorrection;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** All that happened to a club as lines of a page: when, what, what was read, and what of it moved. */
final class TimelinePage {

    private static final String ROW = "%s%-14s %-12s %-14s %-12s %s";
    private static final String DAY = "2026-05-03";
    private static final String DAY_AND_TIME = "2026-05-03 09:15";
    private static final String GAP = "  ";

    private final Page page;
    private final Timeline timeline;
    private final Set<LocalDate> fullDays;
    private final int whenWidth;

    TimelinePage(Page page, Timeline timeline) {
        this.page = page;
        this.timeline = timeline;
        Map<LocalDate, Long> perDay = timeline.entries().stream()
            .collect(Collectors.groupingBy(entry -> entry.when().day(), Collectors.counting()));
        fullDays = perDay.entrySet().stream().filter(day -> day.getValue() > 1).map(Map.Entry::getKey)
            .collect(Collectors.toCollection(TreeSet::new));
        whenWidth = timeline.entries().stream().anyMatch(entry -> entry.when().hasTime() && fullDays.contains(entry.when().day()))
            ? DAY_AND_TIME.length() : DAY.length();
    }

    void print() {
        List<TimelineEntry> entries = timeline.entries();
        if (entries.isEmpty()) {
            page.wrapped("", timeline.of() + ": nothing on record yet");
            return;
        }
        page.wrapped("", "%s: %s, %s".formatted(timeline.of(), entries.size() == 1 ? "1 entry" : entries.size() + " entries",
            days(entries.get(0).when().day(), entries.get(entries.size() - 1).when().day())));
        page.line("%s", "─".repeat(Page.WIDTH));
        boolean anyValue = entries.stream().anyMatch(entry -> !entry.values().isEmpty());
        if (anyValue) {
            row("", "read", "±", "since before", "");
        }
        entries.forEach(this::entry);
        if (anyValue) {
            page.blank();
            page.wrapped("", "± is one standard uncertainty. Beyond: the value moved by more than twice the standard "
                + "uncertainty of the difference, which is more than measuring explains.");
        }
    }

    private static String days(LocalDate first, LocalDate last) {
        return first.equals(last) ? first.toString() : first + " to " + last;
    }

    private void entry(TimelineEntry entry) {
        String when = fullDays.contains(entry.when().day()) ? entry.when().text() : entry.when().day().toString();
        page.wrapped(String.format(Locale.ROOT, "%-" + whenWidth + "s", when) + GAP, sentence(entry.text()));
        entry.values().forEach(this::value);
        String gauges = gauges(entry.values());
        if (!gauges.isEmpty()) {
            page.wrapped(indent(), "Read on " + gauges + ".");
        }
        entry.corrections().forEach(correction -> correction(entry, correction));
    }

    private void value(Quantity quantity, TimelineValue value) {
        row(QuantityText.name(quantity), QuantityText.value(quantity, value.value()),
            "±" + QuantityText.size(quantity, value.standardUncertainty()),
            value.sinceBefore().map(moved -> QuantityText.difference(quantity, moved.value())).orElse(""),
            value.sinceBefore().filter(MeasuredDifference::isBeyondUncertainty).map(moved -> "beyond").orElse(""));
    }

    private void row(String name, String value, String uncertainty, String difference, String word) {
        page.line(ROW, indent(), name, value, uncertainty, difference, word);
    }

    private static String gauges(Map<Quantity, TimelineValue> values) {
        Map<String, List<String>> onEach = new LinkedHashMap<>();
        values.forEach((quantity, value) -> value.gauge().ifPresent(gauge ->
            onEach.computeIfAbsent(gauge, g -> new ArrayList<>()).add(QuantityText.name(quantity))));
        boolean all = onEach.size() == 1 && onEach.values().iterator().next().size() == values.size();
        return onEach.entrySet().stream().map(on -> all ? on.getKey() : on.getKey() + " (" + String.join(", ", on.getValue()) + ")")
            .collect(Collectors.joining(", "));
    }

    private void correction(TimelineEntry entry, ValueCorrection correction) {
        Quantity quantity = correction.quantity();
        String was = QuantityText.name(quantity) + " " + QuantityText.value(quantity, correction.was());
        String why = correction.why().isEmpty() ? "" : ": " + correction.why();
        page.wrapped(indent(), sentence(entry.values().containsKey(quantity)
            ? "Corrected %s, in place of %s%s".formatted(correction.entered().text(), was, why)
            : "Taken back %s, %s%s".formatted(correction.entered().text(), was, why)));
    }

    private String indent() {
        return " ".repeat(whenWidth) + GAP;
    }

    private static String sentence(String text) {
        return text.endsWith(".") || text.endsWith("!") || text.endsWith("?") ? text : text + ".";
    }
}
