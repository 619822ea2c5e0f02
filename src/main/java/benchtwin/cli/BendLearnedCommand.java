package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.BendJson;
import benchtwin.bench.BendService;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code benchtwin bend learned}. */
@Command(name = "learned", mixinStandardHelpOptions = true, sortOptions = false,
    description = "What the bends on record taught of each model: how much of an ask stays.",
    footer = {"", "Example:", "  benchtwin bend learned"})
final class BendLearnedCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;
    @Mixin
    private BendOptions bends;
    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws BadInput {
        output.check();
        List<BendService.Learned> learned = bends.service().learned();
        if (output.isJson()) {
            spec.commandLine().getOut().println(BendJson.learned(learned));
        } else {
            Page page = output.page(spec.commandLine().getOut());
            if (learned.isEmpty()) {
                page.wrapped("", "No bend is on record yet: benchtwin bend HEAD --to … begins a session.");
            }
            learned.forEach(one -> page.wrapped("%-22s %-8s ".formatted(page.cut(one.model(), 22), one.direction().word()),
                BendPage.law(one.known())));
        }
        return learned.isEmpty() ? Main.NOTHING_SUITABLE : Main.DONE;
    }
}
