package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.ChangeJson;
import benchtwin.bench.ChangeService;
import benchtwin.bench.ChangeWish;
import benchtwin.bench.HeadSketches;
import benchtwin.bench.JobBook;
import benchtwin.bench.JobPlanning;
import benchtwin.bench.QuantityList;
import benchtwin.bench.Workshop;
import benchtwin.club.AngleReading;
import benchtwin.match.Way;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code benchtwin change}. */
@Command(name = "change", mixinStandardHelpOptions = true, sortOptions = false,
    description = "Every way to change a recorded club, from what it measured last, and what else each of them moves.",
    footer = {"", "Examples:",
        "  benchtwin change --stock inventory-samples --club SANDROW-DR loft=+0.5",
        "  benchtwin change --stock inventory-samples --club SANDROW-DR length=-1/4 swing-weight=D2",
        "  benchtwin change --stock inventory-samples --club SANDROW-DR grip=+7",
        "", "Exit status: 0 at least one way reaches what is asked, 1 none does, 2 bad input."})
final class ChangeCommand implements Callable<Integer> {

    private static final int MOST_WAYS = 50;

    @Spec
    private CommandSpec spec;
    @Parameters(arity = "1..*", paramLabel = "QUANTITY=VALUE",
        description = "loft, lie, face, length, swing-weight, frequency, mass or grip. With a sign it is a change (loft=+0.5, "
            + "length=-1/4), without one where to end (lie=58, swing-weight=D2, grip=G-012); face=to:-0.5 ends below 0")
    private List<String> asked;
    @Option(names = "--club", paramLabel = "TAG", order = 1, required = true, description = "the recorded club")
    private String club;
    @Mixin
    private StockOptions stock;
    @Option(names = "--reading", paramLabel = "WORD", order = 20,
        description = "soled or square: how a wood's loft is asked for and shown; default as the club was read")
    private AngleReading reading;
    @Option(names = "--other-models", order = 20, description = "let heads and shafts of other models take part")
    private boolean otherModels;
    @Option(names = "--top", paramLabel = "N", order = 21, defaultValue = "6",
        description = "how many ways; default ${DEFAULT-VALUE}")
    private int top;
    @Mixin
    private ToleranceOptions tolerances;
    @Mixin
    private JobOptions job;
    @Mixin
    private ShopOptions shop;
    @Mixin
    private SketchOption sketch;
    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws BadInput {
        if (top < 1 || top > MOST_WAYS) {
            throw new BadInput("--top %d: expected 1 to %d".formatted(top, MOST_WAYS));
        }
        output.check();
        job.check(stock);
        sketch.check();
        ChangeWish wish = ChangeWish.read(asked);
        Workshop workshop = stock.loadAbout(club, Set.of(), job.number(), true);
        ChangeService.Answer answer = ChangeService.ways(workshop, club, new ChangeService.Wish(wish.amounts(),
            wish.gripTag(), wish.gripMass(), Optional.ofNullable(reading), otherModels, top,
            tolerances.of(QuantityList.OF_CLUBS, stock.preferred(club)), shop.settings()));
        PrintWriter out = spec.commandLine().getOut();
        if (output.isJson()) {
            out.println(ChangeJson.text(answer));
            PrintWriter err = spec.commandLine().getErr();
            workshop.remarks().forEach(err::println);
        } else {
            new ChangePage(output.page(out), answer).print(workshop.remarks());
        }
        sketch.draw(job.first(answer.change().ways()).map(Way::option).map(HeadSketches::of), spec.commandLine().getErr());
        if (job.isAsked()) {
            Way way = job.chosen(answer.change().ways());
            job.promise(stock, JobBook.What.CHANGE, Optional.of(club), Optional.empty(),
                List.of(JobPlanning.changed(club, way, answer.change())),
                output.isJson() ? spec.commandLine().getErr() : out);
        }
        return answer.change().alreadySo() || !answer.change().ways().isEmpty() ? Main.DONE : Main.NOTHING_SUITABLE;
    }
}
