package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.JobBook;
import benchtwin.bench.JobPlanning;
import benchtwin.sets.SetAnswer;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** How an answer out of the book becomes a job. */
final class JobOptions {

    @Option(names = "--promise", paramLabel = "N", arity = "0..1", fallbackValue = "1", order = 32,
        description = "make option N, or the first, a job: its plan is kept and its parts are promised to it, all at once; with the "
            + "book only")
    private Integer promise;
    @Option(names = "--job", paramLabel = "NUMBER", order = 33,
        description = "plan this job; what is promised to it already is free for it. Without it --promise takes on a new one")
    private String job;
    @Option(names = "--due", paramLabel = "WHEN", order = 33, description = "by when a new job is due: 2026-05-21 14:20")
    private String due;

    Optional<String> number() {
        return Optional.ofNullable(job);
    }

    boolean isAsked() {
        return promise != null;
    }

    /** Refuses what cannot go together, before anything is worked out. */
    void check(StockOptions stock) throws BadInput {
        if ((promise != null || job != null) && stock.isFromFiles()) {
            throw new BadInput("--promise and --job go with the book, whose parts can be promised: leave out --stock and the files");
        }
        if (due != null && (promise == null || job != null)) {
            throw new BadInput("--due goes with --promise and a new job");
        }
        if (promise != null && promise < 1) {
            throw new BadInput("--promise %d: expected the number of an option, 1 for the first".formatted(promise));
        }
    }

    /** The option that was asked for, else the first; empty where there is none. */
    <T> Optional<T> first(List<T> options) {
        return options.stream().skip(promise == null ? 0 : promise - 1L).findFirst();
    }

    /** The option that was asked for. */
    <T> T chosen(List<T> options) throws BadInput {
        if (promise > options.size()) {
            throw new BadInput("--promise %d: there %s; ask for more with --top, or choose another".formatted(promise,
                options.isEmpty() ? "is no option" : options.size() == 1 ? "is one option" : "are %d options".formatted(
                    options.size())));
        }
        return options.get(promise - 1);
    }

    /**
     * Promises whole sets, one job a player, all of them or none.
     * @param stock where the book is
     * @param plan  what is planned
     * @param say   takes the word that it was done
     */
    void promiseSets(StockOptions stock, SetAnswer plan, PrintWriter say) throws BadInput {
        List<String> numbers = JobPlanning.promiseSets(stock.book(), plan, number(), Optional.ofNullable(due));
        if (!numbers.isEmpty()) {
            say.println("Promised to job %s.".formatted(String.join(", ", numbers)));
        }
    }

    /**
     * Promises what was chosen.
     * @param stock where the book is
     * @param what  what a new job makes
     * @param club  the club it is about
     * @param player for whom, where no club says so
     * @param clubs what is planned
     * @param say   takes the word that it was done
     */
    void promise(StockOptions stock, JobBook.What what, Optional<String> club, Optional<String> player,
                 List<JobPlanning.PlannedClub> clubs, PrintWriter say) throws BadInput {
        String number = JobPlanning.promise(stock.book(), new JobPlanning.For(number(), new JobBook.Order(what, player, club,
            Optional.ofNullable(due), "")), clubs);
        say.println("Promised to job %s. See it with: benchtwin job show %s".formatted(number, number));
    }
}
