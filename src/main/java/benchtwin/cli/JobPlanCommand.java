package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.JobBook;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code benchtwin job plan}. */
@Command(name = "plan", mixinStandardHelpOptions = true, sortOptions = false,
    description = "Plan a job for a twin: look for its parts in the book, and promise those of the option that is picked.",
    footer = {"", "Examples:", "  benchtwin job plan 12", "  benchtwin job plan 12 --pick 1",
        "", "Changes and sets are planned with: benchtwin change … --job 12 --promise 1, benchtwin set … --job 12 --promise 1",
        "", "Exit status: 0 something is inside tolerance, 1 nothing is, 2 bad input."})
final class JobPlanCommand implements Callable<Integer> {

    private static final int USUAL_TOP = 5;

    @Spec
    private CommandSpec spec;
    @Parameters(paramLabel = "NUMBER", description = "the job's number")
    private String number;
    @Option(names = "--keep", paramLabel = "PART", order = 1, defaultValue = "shaft",
        description = "what the twin keeps: shaft, head or none; default ${DEFAULT-VALUE}")
    private String keep;
    @Option(names = "--pick", paramLabel = "N", order = 2, description = "promise the parts of option N")
    private Integer pick;
    @Option(names = "--top", paramLabel = "N", order = 3, description = "how many options")
    private Integer top;
    @Mixin
    private BookOptions book;
    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws BadInput {
        output.check();
        if (pick != null && pick < 1) {
            throw new BadInput("--pick %d: expected the number of an option, 1 for the first".formatted(pick));
        }
        JobBook.Job job = JobBook.show(book.there(), number);
        if (!job.what().equals(JobBook.What.TWIN.word()) || job.club().isEmpty()) {
            throw new BadInput(job.club().isEmpty() ? "job %s names no club; plan it with benchtwin match, change or set and --job %s"
                .formatted(number, number) : "job %s is a %s; plan it with benchtwin %s … --job %s --promise 1".formatted(number,
                    job.what(), job.what().equals("set") ? "set" : "change --club " + job.club().get(), number));
        }
        List<String> words = new ArrayList<>(List.of("match", "--club", job.club().get(), "--keep", keep, "--job", number));
        book.file().ifPresent(file -> words.addAll(List.of("--book", file.toString())));
        book.by().ifPresent(name -> words.addAll(List.of("--by", name)));
        if (pick != null) {
            words.addAll(List.of("--promise", Integer.toString(pick)));
        }
        if (top != null || pick != null && pick > USUAL_TOP) {
            words.addAll(List.of("--top", Integer.toString(Math.max(top == null ? 0 : top, pick == null ? 0 : pick))));
        }
        if (output.isJson()) {
            words.add("--json");
        }
        if (output.isPlain()) {
            words.add("--plain");
        }
        return Main.run(spec.commandLine().getOut(), spec.commandLine().getErr(), words.toArray(String[]::new));
    }
}
