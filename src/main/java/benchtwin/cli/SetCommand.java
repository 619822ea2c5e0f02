package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.Pictures;
import benchtwin.bench.SetJson;
import benchtwin.bench.SetPictures;
import benchtwin.bench.SetService;
import benchtwin.bench.WantedSets;
import benchtwin.bench.Workshop;
import benchtwin.picture.SetSheet;
import benchtwin.sets.PlanLimits;
import benchtwin.sets.PlayerSet;
import benchtwin.sets.SetAnswer;
import benchtwin.sets.SetRequest;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code benchtwin set}. */
@Command(name = "set", mixinStandardHelpOptions = true, sortOptions = false,
    description = "Plan whole sets from stock, for one player or all of them at once: which head and shaft every club gets, "
        + "with its plan, so that clubs are near their targets and alike within a set.",
    footer = {"", "Examples:",
        "  benchtwin set --stock inventory-samples --players \"J. Quillby\" --time 10s",
        "  benchtwin set --stock inventory-samples --time 2m --gap 1%% --out sets",
        "  benchtwin set --stock inventory-samples --targets inventory-samples/set-targets.csv \\",
        "      --lines inventory-samples/lines.csv --players \"K. Larkfield\" --rounds 20 --seed 1 --why",
        "  benchtwin set --stock inventory-samples --from-record \"J. Quillby\" --straighten --rounds 20",
        "", "Ctrl-C ends the search with the best plan so far.",
        "", "Exit status: 0 planned (clubs that cannot be built are listed), 1 not one can be built, 2 bad input."})
final class SetCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;
    @Option(names = "--targets", paramLabel = "FILE", order = 1,
        description = "the sets wished for; default set-targets.csv in the stock's folder")
    private Path targets;
    @Option(names = "--lines", paramLabel = "FILE", order = 2,
        description = "the lines through them; default lines.csv beside the targets")
    private Path lines;
    @Option(names = "--players", paramLabel = "NAME", split = ",", order = 3,
        description = "plan only these players' sets; several with commas between them")
    private List<String> players = List.of();
    @Option(names = "--from-record", paramLabel = "NAME", split = ",", order = 3,
        description = "build these players' recorded clubs again, as they last measured sound, instead of wished-for sets")
    private List<String> record = List.of();
    @Option(names = "--straighten", order = 3,
        description = "with --from-record: irons lie on the line through their recorded frequencies")
    private boolean straighten;
    @Mixin
    private StockOptions stock;
    @Option(names = "--time", paramLabel = "TIME", order = 20,
        description = "search no longer, such as 30s, 2m or 500ms; default 30s, or as long as --rounds takes")
    private String time;
    @Option(names = "--gap", paramLabel = "PERCENT", order = 20,
        description = "stop when the plan is proven so near the best; default 0: proven the best")
    private String gap;
    @Option(names = "--rounds", paramLabel = "N", order = 20,
        description = "search so many rounds: the same plan on any machine")
    private Integer rounds;
    @Option(names = "--seed", paramLabel = "N", order = 20, defaultValue = "1",
        description = "another number searches in another order; default ${DEFAULT-VALUE}")
    private long seed;
    @Option(names = "--pin", paramLabel = "CLUB=PARTS", order = 21,
        description = "fix a club's parts, such as 7-iron=head:H-012,shaft:S-034; the player before the club where several "
            + "have one: \"J. Quillby/7-iron=head:H-012\"; may be repeated")
    private List<String> pins = List.of();
    @Option(names = "--ban", paramLabel = "TAG", split = ",", order = 21,
        description = "do not use this head or shaft; may be repeated")
    private List<String> banned = List.of();
    @Option(names = "--grip", paramLabel = "TAG", order = 21,
        description = "the grip every club gets; default what the player's recorded clubs have most")
    private String grip;
    @Mixin
    private ShopOptions shop;
    @Mixin
    private JobOptions job;
    @Option(names = "--plot", paramLabel = "FILE", order = 37,
        description = "draw a player's frequencies, swing weights and loft gaps into a file ending in .svg or .png")
    private Path plot;
    @Option(names = "--out", paramLabel = "DIR", order = 38,
        description = "write a page with every step and a picture for each player, plan.json and the sets as files that can be "
            + "edited and planned again into this folder, over those there")
    private Path out;
    @Option(names = "--why", order = 40, description = "show what each rule costs each group, and each quantity each club")
    private boolean why;
    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws BadInput {
        check();
        PlanLimits limits = SetWish.limits(time, gap, rounds, seed);
        SetService.Wish wish = new SetService.Wish(players, SetWish.pins(pins), banned, Optional.ofNullable(grip),
            shop.settings());
        Optional<BadInput> stockFaults = Optional.empty();
        Workshop workshop = null;
        try {
            workshop = stock.load(job.number(), false);
        } catch (BadInput bad) {
            stockFaults = Optional.of(bad);
        }
        WantedSets sets = record.isEmpty() ? wanted(stockFaults) : recorded(workshop, stockFaults);
        SetRequest request = SetService.request(workshop, sets, wish);
        if (plot != null && request.targets().players().size() > 1) {
            throw new BadInput("--plot draws one player's set: name the player with --players, or give --out DIR for a picture of "
                + "each");
        }
        List<String> remarks = new ArrayList<>(workshop.remarks());
        remarks.addAll(sets.remarks());
        try (StopKey stop = StopKey.watch()) {
            SetService.Answer answer = planned(request, limits, stop);
            print(answer, sets, remarks);
            write(answer, sets);
            promise(answer.plan());
            return answer.plan().score().unbuilt() < answer.plan().score().clubs() ? Main.DONE : Main.NOTHING_SUITABLE;
        }
    }

    /** What can be said before anything is read. */
    private void check() throws BadInput {
        output.check(why);
        job.check(stock);
        if (!record.isEmpty() && (targets != null || lines != null || !players.isEmpty())) {
            throw new BadInput("--from-record takes the sets from the record: leave out --targets, --lines and --players");
        }
        if (straighten && record.isEmpty()) {
            throw new BadInput("--straighten goes with --from-record NAME");
        }
        if (out != null) {
            SetFiles.check(out);
        }
        if (plot != null) {
            Pictures.check(plot);
        }
    }

    /** Reads the targets also when the stock is bad, so that everything wrong is said at once. */
    private WantedSets wanted(Optional<BadInput> stockFaults) throws BadInput {
        try {
            Path file = targets != null ? targets : stock.inFolder("set-targets.csv").orElseThrow(() -> new BadInput(
                "no sets are named: give their file with --targets FILE, or put set-targets.csv in the folder of --stock"));
            Path beside = file.resolveSibling("lines.csv");
            Optional<Path> through = lines != null ? Optional.of(lines)
                : Files.exists(beside) ? Optional.of(beside) : Optional.empty();
            WantedSets sets = WantedSets.read(file, through, stock.isGoodRows());
            if (stockFaults.isPresent()) {
                throw stockFaults.get();
            }
            return sets;
        } catch (BadInput bad) {
            throw stockFaults.isPresent() && bad != stockFaults.get() ? stockFaults.get().and(bad) : bad;
        }
    }

    private WantedSets recorded(Workshop workshop, Optional<BadInput> stockFaults) throws BadInput {
        if (stockFaults.isPresent()) {
            throw stockFaults.get();
        }
        return WantedSets.ofRecord(workshop, record, straighten);
    }

    private SetService.Answer planned(SetRequest request, PlanLimits limits, StopKey stop) {
        if (output.isJson() || !Terminal.isWatched()) {
            return SetService.plan(request, limits, progress -> { }, stop::isPressed);
        }
        PrintWriter err = spec.commandLine().getErr();
        try (ProgressLine line = new ProgressLine(err, request.targets().clubs().size())) {
            return SetService.plan(request, limits, line, stop::isPressed);
        }
    }

    /** Makes each player's built clubs a job. */
    private void promise(SetAnswer plan) throws BadInput {
        if (!job.isAsked()) {
            return;
        }
        job.promiseSets(stock, plan, output.isJson() ? spec.commandLine().getErr() : spec.commandLine().getOut());
    }

    /** Writes what was asked for beside the page. */
    private void write(SetService.Answer answer, WantedSets sets) throws BadInput {
        if (plot != null) {
            draw(answer.plan().players().get(0));
        }
        if (out != null) {
            List<Path> written = new SetFiles(out, output.isPlain()).write(answer, sets);
            spec.commandLine().getErr().println("%d files written into %s".formatted(written.size(), out));
        }
    }

    private void draw(PlayerSet set) throws BadInput {
        Optional<SetSheet> sheet = SetPictures.of(set);
        if (sheet.isPresent()) {
            Pictures.write(sheet.get(), plot);
        } else {
            spec.commandLine().getErr().println("%s was not drawn: no frequency, swing weight or loft is wanted of any club"
                .formatted(plot));
        }
    }

    private void print(SetService.Answer answer, WantedSets sets, List<String> remarks) {
        PrintWriter writer = spec.commandLine().getOut();
        if (output.isJson()) {
            writer.println(SetJson.text(answer, sets));
            PrintWriter err = spec.commandLine().getErr();
            remarks.forEach(err::println);
        } else {
            new SetPage(output.page(writer), answer, why, out != null).print(remarks);
        }
        writer.flush();
    }
}
