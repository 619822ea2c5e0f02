package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.JobBook;
import benchtwin.bench.JobJson;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code benchtwin job}. */
@Command(name = "job", mixinStandardHelpOptions = true, subcommands = {JobPlanCommand.class, JobDoneCommand.class},
    description = "What is promised to whom by when.",
    footer = {"", "Example:", "  benchtwin job add twin --club OAKES-DR --due \"2026-05-21 14:20\""})
final class JobCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    @Command(name = "add", mixinStandardHelpOptions = true, description = "Take a job on.",
        footer = {"", "Example:", "  benchtwin job add twin --club OAKES-DR --due \"2026-05-21 14:20\""})
    int add(@Parameters(paramLabel = "WHAT", description = "twin, change, set or repair") JobBook.What what,
            @Option(names = "--club", paramLabel = "TAG", description = "the club it is about") String club,
            @Option(names = "--player", paramLabel = "NAME", description = "for whom; default the club's player") String player,
            @Option(names = "--due", paramLabel = "WHEN", description = "by when: a day, or a day and an hour") String due,
            @Option(names = "--note", paramLabel = "TEXT", description = "anything else", defaultValue = "") String note,
            @Mixin BookOptions book) throws BadInput {
        String number = JobBook.add(book.open(), new JobBook.Order(what, Optional.ofNullable(player),
            Optional.ofNullable(club), Optional.ofNullable(due), note));
        out().printf("Job %s is taken on. Plan it with: benchtwin job plan %s%n", number, number);
        return Main.DONE;
    }

    @Command(name = "list", mixinStandardHelpOptions = true, description = "List the jobs, the one due first before the others.",
        footer = {"", "Example:", "  benchtwin job list"})
    int list(@Option(names = "--all", description = "those handed over and called off as well") boolean all,
             @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        List<JobBook.Job> jobs = JobBook.list(book.open(), all);
        if (output.isJson()) {
            out().println(JobJson.list(jobs));
            return Main.DONE;
        }
        Page page = output.page(out());
        if (jobs.isEmpty()) {
            page.line("No jobs%s. Take one on with: benchtwin job add", all ? "" : " waiting");
        }
        for (JobBook.Job job : jobs) {
            page.line("%4s  %-16s  %-11s  %-8s %-20s %s", job.number(), job.due().orElse("no day set"), job.status(), job.what(),
                job.player().orElse(""), job.club().orElse(""));
        }
        return Main.DONE;
    }

    @Command(name = "show", mixinStandardHelpOptions = true, description = "Show a job: its plan, its parts, what was done.",
        footer = {"", "Example:", "  benchtwin job show 12"})
    int show(@Parameters(paramLabel = "NUMBER", description = "the job's number") String number, @Mixin BookOptions book,
             @Mixin OutputOptions output) throws BadInput {
        output.check();
        JobBook.Job job = JobBook.show(book.open(), number);
        if (output.isJson()) {
            out().println(JobJson.text(job));
        } else {
            print(output.page(out()), job);
        }
        return Main.DONE;
    }

    static void print(Page page, JobBook.Job job) {
        page.line("Job %s: %s%s%s, %s", job.number(), job.what(), job.club().map(club -> " of " + club).orElse(""),
            job.player().map(player -> " for " + player).orElse(""), job.status());
        page.line("Due %s", job.due().orElse("no day set"));
        job.words().ifPresent(words -> page.wrapped("", words));
        if (!job.parts().isEmpty()) {
            page.blank();
            page.line("Promised to it:");
            job.parts().forEach(part -> page.line("  %-7s %-16s %s%s", part.kind(), part.tag(), part.place().orElse("no place recorded"),
                part.count() > 1 ? "   " + part.count() + " of them" : ""));
        }
        if (!job.steps().isEmpty()) {
            page.blank();
            int number = 0;
            for (String step : job.steps()) {
                number++;
                page.wrapped("  %2d. ".formatted(number), step);
            }
        }
        for (JobBook.Expected expected : job.expected()) {
            page.wrapped("Should measure  ", (job.expected().size() > 1 ? expected.club() + ": " : "") + String.join(", ",
                expected.values().entrySet().stream()
                    .filter(one -> benchtwin.club.Quantity.targetable().contains(one.getKey()))
                    .map(one -> Figures.name(one.getKey()) + " " + Figures.value(one.getKey(), one.getValue())).toList()));
        }
        page.blank();
        job.history().forEach(line -> page.wrapped("", line));
        job.notes().forEach(note -> page.wrapped("Note: ", note));
    }

    @Command(name = "cancel", mixinStandardHelpOptions = true, description = "Call a job off; its parts are free again.",
        footer = {"", "Example:", "  benchtwin job cancel 12 --why \"the player withdrew\""})
    int cancel(@Parameters(paramLabel = "NUMBER", description = "the job's number") String number,
               @Option(names = "--why", paramLabel = "TEXT", defaultValue = "", description = "why") String why,
               @Mixin BookOptions book) throws BadInput {
        List<JobBook.PartInShort> freed = JobBook.cancel(book.open(), number, why);
        out().printf("Job %s is called off%s.%n", number, freed.isEmpty() ? "" : "; free again: "
            + String.join(", ", freed.stream().map(JobBook.PartInShort::tag).toList()));
        return Main.DONE;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }
}
