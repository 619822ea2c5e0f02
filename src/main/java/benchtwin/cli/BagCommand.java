package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.BagGrid;
import benchtwin.bench.BagJson;
import benchtwin.bench.OpenBook;
import benchtwin.bench.QuantityList;
import benchtwin.bench.Regrip;
import benchtwin.bench.Sitting;
import benchtwin.match.ShopSettings;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code benchtwin bag}. */
@Command(name = "bag", mixinStandardHelpOptions = true, sortOptions = false,
    description = "A player's whole bag: what every club should measure and measures now, what has drifted beyond what measuring "
        + "explains, what puts it right; and new grips for all of them.",
    footer = {"", "Examples:", "  benchtwin bag --player \"J. Quillby\"",
        "  benchtwin bag --player \"J. Quillby\" --read \"QUILLBY-7I:loft=31.9,lie=62.8\" --read \"QUILLBY-8I:loft=36.2\"",
        "  benchtwin bag --player \"J. Quillby\" --regrip \"Moss round\" --promise",
        "", "Exit status: 0 nothing has drifted, or it can be put right; 1 something cannot; 2 bad input."})
final class BagCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;
    @Option(names = "--player", required = true, paramLabel = "NAME", order = 1, description = "whose bag")
    private String player;
    @Option(names = "--read", paramLabel = "TAG:LIST", order = 2,
        description = "what a club measures now, entered as found: TAG:loft=31.9,lie=62.8; may be repeated")
    private List<String> read = List.of();
    @Option(names = "--accept", order = 3,
        description = "what is read is what the clubs should measure from now on")
    private boolean accept;
    @Mixin
    private SittingOptions how;
    @Option(names = "--regrip", paramLabel = "MODEL", order = 14, description = "plan new grips of this model for all clubs")
    private String regrip;
    @Option(names = "--putters", order = 14, description = "with --regrip: putters as well")
    private boolean putters;
    @Option(names = "--promise", order = 15, description = "with --regrip: make it a job that promises the grips")
    private boolean promise;
    @Option(names = "--due", paramLabel = "WHEN", order = 15, description = "with --promise: by when")
    private String due;
    @Option(names = "--tolerance", paramLabel = "LIST", order = 22,
        description = "tolerances, such as loft=0.25; default those the player prefers, else the usual ones")
    private String tolerance;
    @Mixin
    private BookOptions book;
    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws BadInput {
        output.check();
        if ((promise || putters) && regrip == null || due != null && !promise) {
            throw new BadInput("--promise and --putters go with --regrip MODEL, and --due with --promise");
        }
        if (accept && read.isEmpty()) {
            throw new BadInput("--accept goes with --read TAG:…");
        }
        OpenBook open = book.open();
        PrintWriter out = spec.commandLine().getOut();
        if (regrip != null) {
            return regrip(open, out);
        }
        if (!read.isEmpty()) {
            Map<String, Sitting> sittings = sittings();
            List<String> odd = new ArrayList<>();
            for (Map.Entry<String, Sitting> one : sittings.entrySet()) {
                odd.addAll(how.odd(open, one.getKey(), one.getValue()));
            }
            int entered = BagGrid.enter(open, player, sittings, accept);
            odd.forEach(question -> spec.commandLine().getErr().println(question + "."));
            spec.commandLine().getErr().printf("%d readings entered%s.%n", entered, accept ? "" : " as found");
        }
        BagGrid.Bag bag = BagGrid.of(open, player, QuantityList.OF_CLUBS.tolerances("--tolerance", tolerance),
            ShopSettings.DEFAULT);
        if (output.isJson()) {
            out.println(BagJson.text(bag));
        } else {
            new BagPage(output.page(out)).print(bag);
        }
        return bag.clubs().stream().anyMatch(club -> club.cannot().isPresent()) ? Main.NOTHING_SUITABLE : Main.DONE;
    }

    private Map<String, Sitting> sittings() throws BadInput {
        Map<String, Sitting> sittings = new LinkedHashMap<>();
        for (String one : read) {
            String[] parts = one.split(":", 2);
            if (parts.length != 2 || parts[1].isBlank()) {
                throw new BadInput("--read \"%s\": expected a club's tag, a colon and what it measures, such as "
                    .formatted(one) + "QUILLBY-7I:loft=31.9,lie=62.8");
            }
            if (sittings.put(parts[0].strip(), how.sitting(List.of(parts[1]), Optional.empty())) != null) {
                throw new BadInput("--read gives club %s twice; put all of it into one".formatted(parts[0].strip()));
            }
        }
        return sittings;
    }

    private int regrip(OpenBook open, PrintWriter out) throws BadInput {
        Regrip.Plan plan = Regrip.of(open, player, regrip, putters, ShopSettings.DEFAULT);
        Optional<String> job = promise ? Optional.of(Regrip.promise(open, plan, Optional.ofNullable(due))) : Optional.empty();
        if (output.isJson()) {
            out.println(BagJson.regrip(plan, job));
        } else {
            new BagPage(output.page(out)).print(plan, job);
        }
        return plan.clubs().stream().allMatch(club -> club.fresh().isPresent()) ? Main.DONE : Main.NOTHING_SUITABLE;
    }
}
