package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.RulesJson;
import benchtwin.bench.RulesService;
import benchtwin.bench.Workshop;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code benchtwin rules}. */
@Command(name = "rules", mixinStandardHelpOptions = true, sortOptions = false,
    description = "A club, a player's bag or every club against the published equipment limits: value, limit, margin, and whether "
        + "it is clearly within, clearly beyond or too close to call. Advice only.",
    footer = {"", "Examples:",
        "  benchtwin rules --stock inventory-samples OAKES-DR",
        "  benchtwin rules --stock inventory-samples --player \"J. Quillby\" --local-rule",
        "  benchtwin rules --all --why",
        "", "Exit status: 0 nothing that was measured is beyond a limit or too close to one; 1 something is, or a bag holds "
            + "more than 14 clubs in play; 2 bad input. What was not measured does not count."})
final class RulesCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;
    @Parameters(paramLabel = "CLUB", arity = "0..1", description = "the club's tag")
    private String club;
    @Option(names = "--player", paramLabel = "NAME", order = 1, description = "a player's whole bag")
    private String player;
    @Option(names = "--all", order = 2, description = "every club on record that is not retired")
    private boolean all;
    @Option(names = "--local-rule", order = 3, description = "the local rule on length (46 in) is in force where the clubs are played")
    private boolean localRule;
    @Mixin
    private StockOptions stock;
    @Option(names = "--why", order = 40, description = "show every limit with its source, and where each value comes from")
    private boolean why;
    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws BadInput {
        output.check(why);
        long asked = Stream.of(club != null, player != null, all).filter(named -> named).count();
        if (asked != 1) {
            throw new BadInput(asked == 0 ? "which club? Name its tag, or ask for --player NAME or --all"
                : "one of CLUB, --player NAME and --all, not several");
        }
        Workshop workshop = stock.loadAbout(club, Set.of(), Optional.empty(), true);
        RulesService.Answer answer = club != null ? RulesService.club(workshop, club, localRule)
            : player != null ? RulesService.bag(workshop, player, localRule) : RulesService.all(workshop, localRule);
        PrintWriter out = spec.commandLine().getOut();
        if (output.isJson()) {
            out.println(RulesJson.text(answer));
        } else {
            new RulesPage(output.page(out), answer, why).print(workshop.remarks());
        }
        return answer.isDoubtful() ? Main.NOTHING_SUITABLE : Main.DONE;
    }
}
