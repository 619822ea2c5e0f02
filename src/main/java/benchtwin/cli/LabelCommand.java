package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.LabelWish;
import benchtwin.bench.Labels;
import benchtwin.bench.OpenBook;
import benchtwin.bench.Workshop;
import benchtwin.ticket.LabelPage;
import benchtwin.ticket.LabelSheet;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code benchtwin label}. */
@Command(name = "label", mixinStandardHelpOptions = true, sortOptions = false,
    description = "Print labels on a sheet of labels: the tag, a code that types the tag, and what it is.",
    footer = {"", "Examples:",
        "  benchtwin label H-014 H-110 S-234 --stock inventory-samples",
        "  benchtwin label --kind head --place \"drawer 1\" --sheet a4-5x13 --from 12 --stock inventory-samples",
        "  benchtwin label --sheets",
        "", "Print it at actual size, and the first time on plain paper with --outlines: held against the sheet, every",
        "outline should lie on a label. --shift moves all of it.",
        "", "Exit status: 0 printed, 1 nothing is as asked, 2 bad input."})
final class LabelCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;
    @Parameters(arity = "0..*", paramLabel = "TAG", description = "whose labels: heads, shafts, grips, sleeves, weights, clubs; "
        + "head:H-1 where several things have one tag")
    private List<String> tags = new ArrayList<>();
    @Option(names = "--kind", paramLabel = "KIND", split = ",", order = 1,
        description = "all heads, shafts, grips, sleeves, weights or clubs")
    private List<String> kinds = new ArrayList<>();
    @Option(names = "--place", paramLabel = "WORDS", order = 2, description = "only what lies there, such as \"drawer 1\"")
    private String place;
    @Option(names = "--new", order = 3, description = "only what has no label yet, as --mark put it down; with the book")
    private boolean onlyNew;
    @Option(names = "--mark", order = 4, description = "put down in the book that these labels are printed")
    private boolean mark;
    @Option(names = "--copies", paramLabel = "N", order = 5, defaultValue = "1", description = "how many of each; default 1")
    private int copies;
    @Option(names = "--sheet", paramLabel = "NAME", order = 6, defaultValue = "a4-3x7",
        description = "which labels, by paper, columns and rows; default ${DEFAULT-VALUE}; --sheets lists them")
    private String sheet;
    @Option(names = "--sheets", order = 7, description = "list the sheets and their sizes")
    private boolean sheets;
    @Option(names = "--from", paramLabel = "N", order = 7, defaultValue = "1",
        description = "begin at the N-th label of a sheet that is partly used, counted along the rows")
    private int from;
    @Option(names = "--outlines", order = 8, description = "draw every label's outline, for a trial on plain paper")
    private boolean outlines;
    @Option(names = "--shift", paramLabel = "RIGHT,DOWN", order = 8, description = "move all of it by so many mm, such as 1.5,-0.5")
    private String shift;
    @Mixin
    private StockOptions stock;
    @Option(names = "--out", paramLabel = "FILE", order = 39, defaultValue = "labels.pdf",
        description = "where to; default ${DEFAULT-VALUE}")
    private Path out;
    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws BadInput {
        output.check();
        PrintWriter answers = spec.commandLine().getOut();
        if (sheets) {
            list(output.page(answers));
            return Main.DONE;
        }
        LabelPage.Print print = check();
        Workshop workshop = stock.load();
        Optional<OpenBook> book = stock.isFromFiles() ? Optional.empty() : Optional.of(stock.book());
        LocalDate day = LocalDate.now();
        Labels.Chosen chosen = Labels.choose(workshop, book, new Labels.Asked(tags, kinds, Optional.ofNullable(place), onlyNew,
            copies), day);
        if (chosen.labels().isEmpty()) {
            Said.print(output, answers, "label", List.of(), onlyNew ? "Nothing new is as asked: no label was printed."
                : "Nothing is as asked: no label was printed.", List.of());
            return Main.NOTHING_SUITABLE;
        }
        LabelPage.File file = Labels.print(chosen, print, day, out);
        if (mark) {
            Labels.mark(book.orElseThrow(), chosen, day);
        }
        return Said.print(output, answers, "label", chosen.tags(), sentence(chosen, print, file), file.remarks());
    }

    private String sentence(Labels.Chosen chosen, LabelPage.Print print, LabelPage.File file) {
        int labels = chosen.labels().size();
        String next = file.next() > print.sheet().count() ? "the last sheet is used up" : "next time begin with --from " + file.next();
        return "%d label%s on %d sheet%s %s in %s; %s%s.".formatted(labels, labels == 1 ? "" : "s", file.sheets(),
            file.sheets() == 1 ? "" : "s", print.sheet().word(), out, next, mark ? "; put down as printed" : "");
    }

    private LabelPage.Print check() throws BadInput {
        Labels.check(out);
        if (tags.isEmpty() && kinds.isEmpty() && place == null && !onlyNew) {
            throw new BadInput("name the tags, or say which with --kind, --place or --new");
        }
        if ((mark || onlyNew) && stock.isFromFiles()) {
            throw new BadInput("--new and --mark go with the book, which knows what was printed: leave out --stock and the files");
        }
        try {
            return new LabelWish(sheet, from, copies, outlines, Optional.ofNullable(shift)).print();
        } catch (BadInput wrong) {
            throw new BadInput(wrong.messages().stream().map(message -> "--" + message).toList());
        }
    }

    private static void list(Page page) {
        page.line("%-14s %6s   %-18s %s", "sheet", "labels", "each, mm", "paper");
        for (LabelSheet one : LabelSheet.values()) {
            page.line("%-14s %6d   %-18s %s", one.word(), one.count(), size(one.widthMm(), one.heightMm()),
                "%s, %s mm".formatted(one.paper().word(), size(one.paper().widthMm(), one.paper().heightMm())));
        }
    }

    private static String size(double widthMm, double heightMm) {
        return "%s × %s".formatted(Figures.fixed(widthMm, 1), Figures.fixed(heightMm, 1));
    }
}
