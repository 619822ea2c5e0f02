package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.JobBook;
import benchtwin.bench.JobPlanning;
import benchtwin.bench.Pictures;
import benchtwin.bench.ProfileJson;
import benchtwin.bench.ProfileService;
import benchtwin.bench.QuantityList;
import benchtwin.bench.ShaftsJson;
import benchtwin.bench.ShaftsService;
import benchtwin.bench.Workshop;
import benchtwin.club.Quantity;
import benchtwin.club.ShaftMaterial;
import benchtwin.match.Pick;
import benchtwin.match.ShaftAnswer;
import benchtwin.match.ShaftRequest;
import benchtwin.picture.Picture;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code benchtwin shafts}. */
@Command(name = "shafts", mixinStandardHelpOptions = true, sortOptions = false,
    description = "Choose shafts from the drawer that would be as stiff in a new build as a club is: the nearest, or a "
        + "ladder to test, each with its trims.",
    footer = {"", "Examples:",
        "  benchtwin shafts --stock inventory-samples --club OAKES-DR --head H-014",
        "  benchtwin shafts --stock inventory-samples --club OAKES-DR --head H-014 --pick ladder --step 3",
        "  benchtwin shafts --stock inventory-samples --head H-014 --grip G-002 \\",
        "      --target frequency=252,length=45-1/4,mass=58",
        "  benchtwin shafts --stock inventory-samples --profile S-001 --plot s-001.svg",
        "", "Exit status: 0 something is inside tolerance, 1 nothing is, 2 bad input."})
final class ShaftsCommand implements Callable<Integer> {

    private static final int MOST_PICKS = 200;
    private static final int MOST_RUNGS = 25;
    private static final double MOST_STEP_CPM = 50;

    @Spec
    private CommandSpec spec;
    @Option(names = "--club", paramLabel = "TAG", order = 1,
        description = "the recorded club whose stiffness is wanted again; it is carried to the new build")
    private String club;
    @Option(names = "--head", paramLabel = "TAG", order = 2, description = "head of the new build; default the club's own")
    private String head;
    @Option(names = "--grip", paramLabel = "TAG", order = 3, description = "grip of the new build; default the club's own")
    private String grip;
    @Option(names = "--length", paramLabel = "LENGTH", order = 4,
        description = "playing length of the new build; default the club's own")
    private String length;
    @Mixin
    private StockOptions stock;
    @Option(names = "--pick", paramLabel = "WAY", order = 20, defaultValue = "nearest",
        description = "nearest, or ladder: one shaft for each rung; default ${DEFAULT-VALUE}")
    private Pick pick;
    @Option(names = "--top", paramLabel = "N", order = 20, description = "how many of the nearest; default 12")
    private Integer top;
    @Option(names = "--per-model", paramLabel = "N", order = 20, description = "at most so many of one model")
    private Integer perModel;
    @Option(names = "--step", paramLabel = "CPM", order = 21, description = "from rung to rung; default 3")
    private Double step;
    @Option(names = "--rungs", paramLabel = "N", order = 21, description = "how many rungs; default 5")
    private Integer rungs;
    @Option(names = "--target", paramLabel = "LIST", order = 22,
        description = "values written out, in place of those carried over, such as frequency=252,mass=58,torque=4.2,"
            + "balance=22.5,swing-weight=D2")
    private String target;
    @Option(names = "--clamp", paramLabel = "LENGTH", order = 22,
        description = "clamp in which a frequency written out is read; default the club's, else 5 in")
    private String clamp;
    @Option(names = "--over-grip", order = 22, description = "a frequency written out is read over the grip")
    private boolean overGrip;
    @Option(names = "--assume-clamp", paramLabel = "LENGTH", order = 23,
        description = "use readings whose clamp was never recorded as if taken in this one, such as 5; they are marked")
    private String assumeClamp;
    @Option(names = "--head-added", paramLabel = "G", order = 23,
        description = "mass added to the head as it is; default what brings the swing weight back")
    private Double headAdded;
    @Option(names = "--material", paramLabel = "WORD", order = 23, description = "graphite or steel only")
    private ShaftMaterial material;
    @Option(names = "--same-model", order = 23, description = "only shafts of the old shaft's model")
    private boolean sameModel;
    @Mixin
    private ToleranceOptions tolerances;
    @Mixin
    private JobOptions job;
    @Mixin
    private ShopOptions shop;
    @Option(names = "--profile", paramLabel = "TAG", order = 38,
        description = "instead of choosing: one shaft's readings and its stiffness along it")
    private String profile;
    @Option(names = "--plot", paramLabel = "FILE", order = 39,
        description = "draw the picks on a frequency axis, or the profile, into a file ending in .svg or .png")
    private Path plot;
    @Option(names = "--why", order = 40, description = "show the steps, and what each quantity and the work cost")
    private boolean why;
    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws BadInput {
        if (plot != null) {
            Pictures.check(plot);
        }
        if (profile != null) {
            return profile();
        }
        job.check(stock);
        ShaftsService.Wish wish = wish();
        Workshop workshop = stock.loadAbout(club, Stream.of(head, grip).filter(Objects::nonNull)
            .collect(Collectors.toSet()), job.number(), false);
        ShaftAnswer answer = ShaftsService.choose(workshop, wish);
        draw(answer.picks().isEmpty() ? Optional.empty() : Optional.of(Pictures.of(answer)), "no shaft was picked");
        PrintWriter out = spec.commandLine().getOut();
        if (output.isJson()) {
            out.println(ShaftsJson.text(answer));
            PrintWriter err = spec.commandLine().getErr();
            workshop.remarks().forEach(err::println);
        } else {
            new ShaftsPage(output.page(out), answer, why).print(workshop.remarks());
        }
        if (job.isAsked()) {
            job.promise(stock, JobBook.What.CHANGE, Optional.ofNullable(club), Optional.empty(),
                List.of(JobPlanning.reshafted(job.chosen(answer.picks()), answer)),
                output.isJson() ? spec.commandLine().getErr() : out);
        }
        return answer.hasSuitable() ? Main.DONE : Main.NOTHING_SUITABLE;
    }

    /** Draws what was asked for, or says that there is nothing to draw. */
    private void draw(Optional<Picture> picture, String whyNot) throws BadInput {
        if (plot != null && picture.isPresent()) {
            Pictures.write(picture.get(), plot);
        } else if (plot != null) {
            spec.commandLine().getErr().println("%s was not drawn: %s".formatted(plot, whyNot));
        }
    }

    private int profile() throws BadInput {
        Optional<String> other = spec.commandLine().getParseResult().matchedOptions().stream().filter(o -> !goesWithProfile(o))
            .map(OptionSpec::longestName).findFirst();
        if (other.isPresent()) {
            throw new BadInput("--profile shows one shaft; leave out %s, which is for a choice of shafts".formatted(other.get()));
        }
        output.check();
        Workshop workshop = stock.load();
        ProfileService.Answer answer = ProfileService.of(workshop, profile, assumed());
        draw(answer.picture(), "the shaft has no profile of its own");
        PrintWriter out = spec.commandLine().getOut();
        if (output.isJson()) {
            out.println(ProfileJson.text(answer));
        } else {
            new ProfilePage(output.page(out), answer).print(workshop.remarks());
        }
        return answer.knots().isEmpty() ? Main.NOTHING_SUITABLE : Main.DONE;
    }

    /** The stock, where to draw and how to print, and the clamp that is assumed. */
    private static boolean goesWithProfile(OptionSpec option) {
        return option.order() >= 10 && option.order() < 20
            || Set.of("--profile", "--assume-clamp", "--plot", "--json", "--plain").contains(option.longestName());
    }

    private ShaftsService.Wish wish() throws BadInput {
        if (club == null && head == null) {
            throw new BadInput("name the club with --club TAG, or the build with --head, --grip and --target");
        }
        output.check(why);
        Map<Quantity, Double> written = new EnumMap<>(Quantity.class);
        written.putAll(QuantityList.OF_SHAFTS.values("--target", target));
        if (length != null) {
            if (written.put(Quantity.LENGTH, ShopOptions.mm("--length", length)) != null) {
                throw new BadInput("--length and --target both name the length");
            }
        }
        return new ShaftsService.Wish(Optional.ofNullable(club), Optional.ofNullable(head), Optional.ofNullable(grip),
            written, clampMm(written), overGrip, headAdded == null ? OptionalDouble.empty() : OptionalDouble.of(added()),
            Optional.ofNullable(material), sameModel, assumed(), picking(),
            tolerances.of(QuantityList.OF_SHAFTS, stock.preferred(club)), shop.settings());
    }

    private double added() throws BadInput {
        if (!(headAdded >= -30 && headAdded <= 60)) {
            throw new BadInput("--head-added %s: expected grams from -30 to 60".formatted(headAdded));
        }
        return headAdded;
    }

    private OptionalDouble clampMm(Map<Quantity, Double> written) throws BadInput {
        if ((clamp != null || overGrip) && !written.containsKey(Quantity.FREQUENCY)) {
            throw new BadInput("--clamp and --over-grip say how a frequency written out is read: they go with "
                + "--target frequency=…");
        }
        return clampMm("--clamp", clamp);
    }

    private OptionalDouble assumed() throws BadInput {
        return clampMm("--assume-clamp", assumeClamp);
    }

    private static OptionalDouble clampMm(String option, String text) throws BadInput {
        Double clampMm = ShopOptions.mm(option, text);
        if (clampMm == null) {
            return OptionalDouble.empty();
        }
        if (!(clampMm >= 50 && clampMm <= 300)) {
            throw new BadInput("%s \"%s\": expected a clamp from 2 to 12 in".formatted(option, text));
        }
        return OptionalDouble.of(clampMm);
    }

    private ShaftRequest.Picking picking() throws BadInput {
        boolean ladder = pick == Pick.LADDER;
        if (ladder && (top != null || perModel != null)) {
            throw new BadInput("--top and --per-model go with --pick nearest; a ladder has --rungs");
        }
        if (!ladder && (step != null || rungs != null)) {
            throw new BadInput("--step and --rungs go with --pick ladder");
        }
        check("--top", top, MOST_PICKS);
        check("--per-model", perModel, MOST_PICKS);
        check("--rungs", rungs, MOST_RUNGS);
        if (step != null && !(step > 0 && step <= MOST_STEP_CPM)) {
            throw new BadInput("--step %s: expected cpm above 0, at most 50".formatted(step));
        }
        return new ShaftRequest.Picking(pick, top == null ? 12 : top, perModel == null ? MOST_PICKS : perModel,
            step == null ? 3 : step, rungs == null ? 5 : rungs);
    }

    private static void check(String option, Integer value, int most) throws BadInput {
        if (value != null && (value < 1 || value > most)) {
            throw new BadInput("%s %d: expected 1 to %d".formatted(option, value, most));
        }
    }
}
