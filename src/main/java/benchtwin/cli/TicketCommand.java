package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.JobTicket;
import benchtwin.bench.OpenBook;
import benchtwin.bench.TicketFile;
import benchtwin.bench.TicketJson;
import benchtwin.bench.TicketWish;
import benchtwin.ticket.Paper;
import benchtwin.ticket.Ticket;
import java.nio.file.Path;
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

/** {@code benchtwin ticket}. */
@Command(name = "ticket", mixinStandardHelpOptions = true, sortOptions = false,
    description = "Print the plan of a job for the bench: parts and where they lie, steps to tick off with a line for each reading, "
        + "cautions where the step is, and when it can be handed over. One page; a row a club where the job makes several.",
    footer = {"", "Examples:", "  benchtwin ticket 12",
        "  benchtwin ticket 12 --pdf twin.pdf --paper letter --resins resins.csv --temperature 18C --start \"2026-05-20 09:00\"", "",
        "A file that is named is written over. Without --pdf and --html the ticket goes into job-12.pdf in this folder, "
            + "unless that is there already."})
final class TicketCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;
    @Parameters(paramLabel = "JOB", description = "the job's number")
    private String number;
    @Option(names = "--pdf", paramLabel = "FILE", order = 1, description = "write the ticket here, to be printed")
    private Path pdf;
    @Option(names = "--html", paramLabel = "FILE", order = 1, description = "write it here, for a browser")
    private Path html;
    @Option(names = "--paper", paramLabel = "PAPER", order = 2, defaultValue = "a4", description = "a4 or letter; default ${DEFAULT-VALUE}")
    private Paper paper;
    @Option(names = "--overwrite", order = 3, description = "write over job-JOB.pdf")
    private boolean overwrite;
    @Mixin
    private ResinOptions resin;
    @Mixin
    private BookOptions book;
    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws BadInput {
        output.check();
        OpenBook open = book.there();
        List<Path> files = files();
        for (Path file : files) {
            TicketFile.check(file, file.equals(pdf) || file.equals(html) || overwrite);
        }
        List<String> remarks = new ArrayList<>();
        Ticket ticket = JobTicket.of(open, number, resin.wish(open, remarks));
        remarks.add((ticket.ready().late() ? "LATE: " : "") + ticket.ready().handOver().map(when -> "Hand over from %s. ".formatted(
            when.toString().replace('T', ' '))).orElse("") + ticket.ready().words());
        if (output.isJson()) {
            spec.commandLine().getOut().println(TicketJson.text(ticket));
        }
        Page page = output.page(output.isJson() ? spec.commandLine().getErr() : spec.commandLine().getOut());
        for (Path file : files) {
            int pages = TicketFile.write(ticket, paper, file, !file.equals(html));
            page.wrapped("", "The ticket of job %s is in %s%s.".formatted(ticket.job(), file, pages == 1 ? ""
                : ", on %d pages: it does not fit on one".formatted(pages)));
        }
        if (!output.isJson()) {
            remarks.forEach(remark -> page.wrapped("", remark));
        }
        return Main.DONE;
    }

    /** Where it goes: what was named, else the usual name; with JSON only where a name was given. */
    private List<Path> files() {
        List<Path> named = new ArrayList<>();
        Optional.ofNullable(pdf).ifPresent(named::add);
        Optional.ofNullable(html).ifPresent(named::add);
        return named.isEmpty() && !output.isJson() ? List.of(Path.of("job-" + number + ".pdf")) : named;
    }
}
