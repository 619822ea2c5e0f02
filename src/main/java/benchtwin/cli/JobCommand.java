package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.JobBook;
import benchtwin.bench.JobJson;
import benchtwin.club.Quantity;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code benchtwin job}. */
@Command(name = "job", mixinStandardHelpOptions = true, subcommands = {JobPlanCommand.class, JobDoneCommand.class},
    description = "What is promised to whom by when.",
    footer = {"", "Example:", "  benchtwin job add twin --club OAKES-DR --due \"2026-05-21 14:20\""})
final class JobCommand extends CommandGroup {

    private static final int LONGEST_NAME = 30;

    @Command(name = "add", mixinStandardHelpOptions = true, description = "Take a job on.",
        footer = {"", "Example:", "  benchtwin job add twin --club OAKES-DR --due \"2026-05-21 14:20\""})
    int add(@Parameters(paramLabel = "WHAT", description = "twin, change, set or repair") JobBook.What what,
            @Option(names = "--club", paramLabel = "TAG", description = "the club it is about") String club,
            @Option(names = "--player", paramLabel = "NAME", description = "for whom; default the club's player") String player,
            @Option(names = "--due", paramLabel = "WHEN", description = "by when: a day, or a day and an hour") String due,
            @Option(names = "--note", paramLabel = "TEXT", description = "anything else", defaultValue = "") String note,
            @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        String number = JobBook.add(book.open(), new JobBook.Order(what, Optional.ofNullable(player),
            Optional.ofNullable(club), Optional.ofNullable(due), note));
        return Said.print(output, out(), "job add", List.of(number), "Job %s is taken on. %s".formatted(number,
            what == JobBook.What.TWIN && club != null ? "Plan it with: benchtwin job plan " + number
            : "See it with: benchtwin job show " + number), List.of());
    }

    @Command(name = "list", mixinStandardHelpOptions = true, description = "List the jobs, the one due first before the others.",
        footer = {"", "Example:", "  benchtwin job list"})
    int list(@Option(names = "--all", description = "those handed over and called off as well") boolean all,
             @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        List<JobBook.Job> jobs = JobBook.list(book.there(), all);
        if (output.isJson()) {
            out().println(JobJson.list(jobs));
            return Main.DONE;
        }
        Page page = output.page(out());
        if (jobs.isEmpty()) {
            page.line("No jobs%s. Take one on with: benchtwin job add", all ? "" : " waiting");
        }
        int player = Math.min(LONGEST_NAME, jobs.stream().mapToInt(job -> job.player().orElse("").length()).max().orElse(1));
        for (JobBook.Job job : jobs) {
            page.line("%4s  %-16s  %-11s  %-6s  %-" + Math.max(1, player) + "s  %s", job.number(), job.due().orElse("no day set"),
                job.status(), job.what(), page.cut(job.player().orElse(""), player),
                page.cut(job.club().orElse(""), Page.WIDTH - LONGEST_NAME * 2 + 8));
        }
        return Main.DONE;
    }

    @Command(name = "show", mixinStandardHelpOptions = true, description = "Show a job: its plan, its parts, what was done.",
        footer = {"", "Example:", "  benchtwin job show 12"})
    int show(@Parameters(paramLabel = "NUMBER", description = "the job's number") String number, @Mixin BookOptions book,
             @Mixin OutputOptions output) throws BadInput {
        output.check();
        JobBook.Job job = JobBook.show(book.there(), number);
        if (output.isJson()) {
            out().println(JobJson.text(job));
        } else {
            print(output.page(out()), job);
        }
        return Main.DONE;
    }

    static void print(Page page, JobBook.Job job) {
        page.wrapped("", "Job %s: %s%s%s, %s".formatted(job.number(), job.what(), job.club().map(club -> " of " + club).orElse(""),
            job.player().map(player -> " for " + player).orElse(""), job.status()));
        page.line("%s", job.due().map(due -> "Due " + due).orElse("No day set"));
        job.words().ifPresent(words -> page.wrapped("", words));
        if (!job.parts().isEmpty()) {
            page.blank();
            page.line("Promised to it:");
            job.parts().forEach(part -> page.wrapped(String.format(Locale.ROOT, "  %-6s  ", part.kind()), part.tag() + ", "
                + part.place().orElse("no place recorded") + (part.count() > 1 ? ", " + part.count() + " of them" : "")));
        }
        if (!job.steps().isEmpty()) {
            page.blank();
            int number = 0;
            for (String step : job.steps()) {
                number++;
                page.wrapped("  %2d. ".formatted(number), step);
            }
        }
        job.expected().forEach(club -> measures(page, "Should measure  ", club, job.expected().size() > 1));
        job.measured().forEach(club -> measures(page, "Measures        ", club,
            job.measured().size() > 1 || !job.club().equals(Optional.of(club.club()))));
        page.blank();
        job.history().forEach(line -> page.wrapped("", line));
        job.notes().forEach(note -> page.wrapped("Note: ", note));
    }

    private static void measures(Page page, String lead, JobBook.OfClub club, boolean named) {
        page.wrapped(lead, (named ? club.club() + ": " : "") + String.join(", ", club.values().entrySet().stream()
            .filter(one -> Quantity.targetable().contains(one.getKey()))
            .map(one -> Figures.name(one.getKey()) + " " + Figures.value(one.getKey(), one.getValue())).toList()));
    }

    @Command(name = "cancel", mixinStandardHelpOptions = true, description = "Call a job off; its parts are free again.",
        footer = {"", "Example:", "  benchtwin job cancel 12 --why \"the player withdrew\""})
    int cancel(@Parameters(paramLabel = "NUMBER", description = "the job's number") String number,
               @Option(names = "--why", paramLabel = "TEXT", defaultValue = "", description = "why") String why,
               @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        List<JobBook.PartInShort> freed = JobBook.cancel(book.there(), number, why);
        return Said.print(output, out(), "job cancel", List.of(number), "Job %s is called off%s.".formatted(number, freed.isEmpty()
            ? "" : "; free again: " + String.join(", ", freed.stream().map(JobBook.PartInShort::tag).toList())), List.of());
    }
}
