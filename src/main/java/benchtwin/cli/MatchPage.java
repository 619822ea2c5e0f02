package benchtwin.cli;

import benchtwin.bench.BuildIdentity;
import benchtwin.bench.Cautions;
import benchtwin.bench.OptionWords;
import benchtwin.bench.WhyNext;
import benchtwin.club.Quantity;
import benchtwin.club.Wanted;
import benchtwin.match.MatchAnswer;
import benchtwin.match.Ranked;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The answer to a match as a bench sheet: what is asked, what we have, what to do, how sure we are. */
final class MatchPage {

    private static final String INDENT = "   ";
    private static final int NAME_WIDTH = 18;

    private final Page page;
    private final MatchAnswer answer;
    private final boolean why;

    MatchPage(Page page, MatchAnswer answer, boolean why) {
        this.page = page;
        this.answer = answer;
        this.why = why;
    }

    void print(List<String> remarks) {
        header();
        opening();
        for (int k = 0; k < answer.results().size(); k++) {
            Ranked option = answer.results().get(k);
            page.blank();
            option(option, Integer.toString(option.rank()));
            if (k + 1 < answer.results().size()) {
                Ranked next = answer.results().get(k + 1);
                page.wrapped(INDENT + "Why " + name(next) + " comes next: ", WhyNext.line(option, next));
            }
        }
        if (why) {
            whyTable();
        }
        below();
        footer(remarks);
    }

    private void header() {
        String kept = switch (answer.keep()) {
            case SHAFT -> "on its own shaft " + answer.favourite().shaft().orElseThrow().tag();
            case HEAD, BOTH -> "on its own head " + answer.favourite().head().orElseThrow().tag();
            case NONE -> "from stock";
        };
        page.line("Twin of %s%s, %s %s%s, %s", answer.favourite().name(),
            answer.favourite().player().map(p -> " (" + p + ")").orElse(""),
            answer.favourite().hand().word() + "-handed", answer.favourite().category().word(),
            answer.favourite().number().map(n -> " " + n).orElse(""), kept);
        page.wrapped("", OptionWords.wanted(answer));
        answer.notes().forEach(note -> page.wrapped("Note: ", note + "."));
    }

    private void opening() {
        if (answer.results().isEmpty()) {
            page.blank();
            page.line("Nothing in stock fits.");
            return;
        }
        if (!answer.hasSuitable()) {
            page.blank();
            page.wrapped("", OptionWords.nothingInside(answer));
        } else if (answer.isToTry()) {
            page.blank();
            List<String> tags = answer.results().stream().limit(3).map(this::name).toList();
            page.wrapped("", "Try these %s: %s. Every step is undone in a minute, so screw each on, read it, and choose; "
                .formatted(tags.size() == 2 ? "two" : "three", String.join(", ", tags))
                + "--readings TAG:loft=…,lie=… ranks them by what you read.");
        }
    }

    private String name(Ranked option) {
        return OptionWords.name(answer.keep(), option);
    }

    private String place(Ranked option) {
        return OptionWords.place(answer.keep(), option);
    }

    private void option(Ranked option, String mark) {
        page.line("%-2s %s   %s   miss %.2f tol   ready in %s", mark, name(option), place(option), option.miss(),
            Figures.time(option.plan().readyMinutes()));
        OptionWords.outOfTolerance(option).ifPresent(out -> page.wrapped(INDENT + "Out of tolerance: ", out));
        StepLines.print(page, INDENT, option.plan());
        strips(option);
        page.wrapped(INDENT, OptionWords.firstTimeRight(option.firstTimeRight()));
        OptionWords.defaults(option).ifPresent(line -> page.wrapped(INDENT, line));
        OptionWords.tie(option).ifPresent(line -> page.wrapped(INDENT, line));
        RulesLines.print(page, INDENT, option.rulesWarnings());
    }

    private void strips(Ranked option) {
        page.line("%s%-13s %-11s %-11s %-23s  %s", INDENT, "", "favourite", "twin", "", "difference");
        for (Map.Entry<Quantity, Wanted> entry : answer.favourite().target().wanted().entrySet()) {
            Quantity quantity = entry.getKey();
            Double predicted = option.predicted().get(quantity);
            if (predicted == null) {
                page.line("%s%-13s %-11s %s", INDENT, Figures.name(quantity),
                    Figures.value(quantity, entry.getValue().value()), "not measured: cannot be computed");
                continue;
            }
            double tolerance = entry.getValue().tolerance();
            page.line("%s%-13s %-11s %-11s %s  %s", INDENT, Figures.name(quantity),
                Figures.value(quantity, entry.getValue().value()), Figures.value(quantity, predicted),
                ToleranceStrip.of(entry.getValue().deviation(predicted), option.uncertainty().get(quantity) / tolerance),
                Figures.difference(quantity, option.difference().get(quantity)));
        }
    }

    private void whyTable() {
        WhyTable.print(page, answer.favourite().target(), answer.results(), this::name, NAME_WIDTH);
        if (!answer.carried().isEmpty()) {
            page.wrapped(INDENT, "Carried over from the old club (measured less modelled): "
                + answer.carried().entrySet().stream().map(e -> Figures.name(e.getKey()) + " "
                    + Figures.difference(e.getKey(), e.getValue())).collect(Collectors.joining(", ")) + ".");
        }
    }

    private void below() {
        if (answer.belowTheLine().isEmpty()) {
            return;
        }
        page.blank();
        page.line("Below the line");
        for (MatchAnswer.Below below : answer.belowTheLine()) {
            Ranked option = below.option();
            OptionalInt rank = below.nearerThan(answer.results());
            page.wrapped(INDENT, "%s   %s   miss %s tol   ready in %s: %s%s".formatted(name(option), place(option),
                Figures.fixed(option.miss(), 2), Figures.time(option.plan().readyMinutes()), below.reason(),
                rank.isPresent() ? "; nearer than number " + rank.getAsInt() : ""));
            RulesLines.print(page, INDENT + INDENT, option.rulesWarnings());
        }
    }

    private void footer(List<String> remarks) {
        page.blank();
        page.wrapped("", OptionWords.considered(answer));
        RulesLines.whoDecides(page, Stream.concat(answer.results().stream(),
            answer.belowTheLine().stream().map(MatchAnswer.Below::option)));
        Cautions.of(answer).forEach(caution -> page.wrapped("Caution: ", caution));
        remarks.forEach(remark -> page.wrapped("Files: ", remark));
        page.line("benchtwin %s", BuildIdentity.text());
    }
}
