package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.HeadSketches;
import benchtwin.bench.JobBook;
import benchtwin.bench.JobPlanning;
import benchtwin.bench.MatchJson;
import benchtwin.bench.MatchService;
import benchtwin.bench.QuantityList;
import benchtwin.bench.Workshop;
import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.Hand;
import benchtwin.club.Quantity;
import benchtwin.match.Keep;
import benchtwin.match.MatchAnswer;
import java.io.PrintWriter;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code benchtwin match}. */
@Command(name = "match", mixinStandardHelpOptions = true, sortOptions = false,
    description = "Make the twin of a club from stock: the parts and the plan nearest what the club last measured.",
    footer = {"", "Examples:",
        "  benchtwin match --stock inventory-samples --club OAKES-DR",
        "  benchtwin match --stock inventory-samples --club OAKES-DR --ready-by 14:20 --why",
        "  benchtwin match --stock inventory-samples --keep none --category driver --hand right --grip G-01 \\",
        "      --target loft=9.5,lie=58,face=0,length=45-1/4,swing-weight=D3,frequency=250",
        "", "Exit status: 0 something is inside tolerance, 1 nothing is, 2 bad input."})
final class MatchCommand implements Callable<Integer> {

    private static final double MINUTES_A_DAY = 24 * 60;
    private static final int MOST_RESULTS = 200;

    @Spec
    private CommandSpec spec;
    @Option(names = "--club", paramLabel = "TAG", order = 1, description = "the recorded club to make a twin of")
    private String club;
    @Option(names = "--keep", paramLabel = "PART", order = 2, defaultValue = "shaft",
        description = "what the twin keeps: shaft (the head cracked), head (the shaft broke) or none (a backup); "
            + "default ${DEFAULT-VALUE}")
    private Keep keep;
    @Mixin
    private StockOptions stock;
    @Option(names = "--other-models", order = 20, description = "let other models take part")
    private boolean otherModels;
    @Option(names = "--top", paramLabel = "N", order = 21, defaultValue = "5",
        description = "how many results; default ${DEFAULT-VALUE}")
    private int top;
    @Mixin
    private ToleranceOptions tolerances;
    @Mixin
    private JobOptions job;
    @Option(names = "--ready-by", paramLabel = "HH:MM", order = 24,
        description = "plans that are not ready by then stand below the line")
    private String readyBy;
    @Option(names = "--now", paramLabel = "HH:MM", order = 25, description = "the time to count from; default the clock")
    private String now;
    @Mixin
    private ShopOptions shop;
    @Option(names = "--readings", paramLabel = "TAG:LIST", order = 28,
        description = "what a head read once it was screwed on, such as H-12:loft=9.3,lie=58.4; may be repeated; those "
            + "heads are ranked by it")
    private List<String> readings = List.of();
    @Option(names = "--without", paramLabel = "TAGS", split = ",", order = 29,
        description = "heads or shafts that are left out, such as H-12,S-4")
    private List<String> without = List.of();
    @Option(names = "--target", paramLabel = "LIST", order = 30,
        description = "a target written out instead of --club, such as loft=9.5,lie=58,length=45 1/4,swing-weight=D3")
    private String target;
    @Option(names = "--category", paramLabel = "WORD", order = 31, description = "its category")
    private Category category;
    @Option(names = "--number", paramLabel = "N", order = 32, description = "its number, where it has one")
    private String number;
    @Option(names = "--hand", paramLabel = "WORD", order = 33, description = "its hand")
    private Hand hand;
    @Option(names = "--reading", paramLabel = "WORD", order = 34, description = "how its angles are read")
    private AngleReading reading;
    @Option(names = "--shaft", paramLabel = "TAG", order = 35, description = "the shaft to keep")
    private String shaft;
    @Option(names = "--head", paramLabel = "TAG", order = 36, description = "the head to keep")
    private String head;
    @Option(names = "--grip", paramLabel = "TAG", order = 37, description = "the grip it is built with")
    private String grip;
    @Option(names = "--why", order = 40, description = "show what each quantity and the work cost")
    private boolean why;
    @Mixin
    private SketchOption sketch;
    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws BadInput {
        check();
        MatchService.Wish wish = wish();
        Workshop workshop = stock.loadAbout(club, wish.readings().keySet(), job.number(), false);
        MatchAnswer answer = club != null ? MatchService.twinOf(workshop, club, wish)
            : MatchService.nearest(workshop, written(), wish);
        PrintWriter out = spec.commandLine().getOut();
        if (output.isJson()) {
            out.println(MatchJson.text(answer));
            PrintWriter err = spec.commandLine().getErr();
            workshop.remarks().forEach(err::println);
        } else {
            new MatchPage(output.page(out), answer, why).print(workshop.remarks());
        }
        sketch.draw(job.first(answer.results()).map(HeadSketches::of), spec.commandLine().getErr());
        if (job.isAsked()) {
            job.promise(stock, JobBook.What.TWIN, Optional.ofNullable(club), answer.favourite().player(),
                List.of(club == null ? JobPlanning.written(job.chosen(answer.results()), answer.favourite())
                    : JobPlanning.twin(answer.favourite().name(), job.chosen(answer.results()), answer.favourite())),
                output.isJson() ? spec.commandLine().getErr() : out);
        }
        return answer.hasSuitable() ? Main.DONE : Main.NOTHING_SUITABLE;
    }

    private void check() throws BadInput {
        if (club == null && target == null) {
            throw new BadInput("name the club with --club TAG, or write a target with --target");
        }
        if (club != null && (target != null || category != null || hand != null || number != null || reading != null
            || shaft != null || head != null || grip != null)) {
            throw new BadInput("--club takes everything from the record; --target, --category, --number, --hand, "
                + "--reading, --shaft, --head and --grip go with a target written out");
        }
        if (keep == Keep.BOTH) {
            throw new BadInput("--keep both leaves nothing to choose; expected shaft, head or none");
        }
        if (top < 1 || top > MOST_RESULTS) {
            throw new BadInput("--top %d: expected 1 to %d".formatted(top, MOST_RESULTS));
        }
        output.check(why);
        job.check(stock);
        sketch.check();
    }

    private MatchService.Wish wish() throws BadInput {
        Map<String, Map<Quantity, Double>> read = new LinkedHashMap<>();
        for (String one : readings) {
            String[] parts = one.split(":", 2);
            if (parts.length != 2) {
                throw new BadInput("--readings \"%s\": expected a head's tag, a colon and what it read, such as "
                    + "H-12:loft=9.3,lie=58.4".formatted(one));
            }
            if (read.put(parts[0].strip(), QuantityList.OF_CLUBS.values("--readings", parts[1])) != null) {
                throw new BadInput("--readings gives head %s twice".formatted(parts[0].strip()));
            }
        }
        return new MatchService.Wish(keep, otherModels, top, tolerances.of(QuantityList.OF_CLUBS,
            stock.preferred(club)), shop.settings(), due(),
            read, without.stream().map(String::strip).collect(Collectors.toSet()));
    }

    private OptionalDouble due() throws BadInput {
        if (readyBy == null) {
            if (now != null) {
                throw new BadInput("--now goes with --ready-by");
            }
            return OptionalDouble.empty();
        }
        LocalTime from = now == null ? LocalTime.now().truncatedTo(ChronoUnit.MINUTES) : time("--now", now);
        double minutes = from.until(time("--ready-by", readyBy), ChronoUnit.MINUTES);
        return OptionalDouble.of(minutes > 0 ? minutes : minutes + MINUTES_A_DAY);
    }

    private static LocalTime time(String option, String text) throws BadInput {
        try {
            return LocalTime.parse(text.length() == 4 ? "0" + text : text);
        } catch (DateTimeParseException notATime) {
            throw new BadInput("%s \"%s\" is not a time; expected hours and minutes, such as 14:20".formatted(option, text));
        }
    }

    private MatchService.WrittenTarget written() throws BadInput {
        if (category == null || hand == null) {
            throw new BadInput("a target written out needs --category and --hand");
        }
        return new MatchService.WrittenTarget(category, Optional.ofNullable(number), hand,
            reading != null ? reading : category.usualReading(),
            QuantityList.OF_CLUBS.values("--target", target), Optional.ofNullable(shaft), Optional.ofNullable(head),
            Optional.ofNullable(grip));
    }
}
