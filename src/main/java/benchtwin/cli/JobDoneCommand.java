package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.JobBook;
import benchtwin.bench.JobDone;
import benchtwin.bench.OpenBook;
import benchtwin.bench.Sitting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code benchtwin job done}. */
@Command(name = "done", mixinStandardHelpOptions = true, sortOptions = false,
    description = "Hand a job over. What was planned is then so in the book: parts in the club, cuts and bends in the parts' "
        + "records, what was measured in the club's. What was done otherwise is given as options.",
    footer = {"", "Examples:", "  benchtwin job done 12 loft=9.4 lie=58.3 face=-0.4 swing-weight=D2.3 --old-cracked",
        "  benchtwin job done 13 --as OAKES-DR-2 loft=9.5 lie=58.2"})
final class JobDoneCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;
    @Parameters(index = "0", paramLabel = "NUMBER", description = "the job's number")
    private String number;
    @Parameters(index = "1..*", arity = "0..*", paramLabel = "QUANTITY=VALUE", description = "what the finished club measures")
    private List<String> values;
    @Option(names = "--as", paramLabel = "TAG", order = 1, description = "the tag of the club that was built, where it is a new one; "
        + "of a set, what its clubs' tags begin with")
    private String as;
    @Option(names = "--state", paramLabel = "STATE", order = 2, description = "in play, backup or test; default as it was, of a new "
        + "club backup while the old one is in play")
    private String state;
    @Option(names = "--old-cracked", order = 2, description = "the head that came off is cracked and leaves the stock for good")
    private boolean oldCracked;
    @Option(names = "--old-broken", order = 2, description = "the shaft that came out is broken and leaves the stock")
    private boolean oldBroken;
    @Mixin
    private ClubFactOptions facts;
    @Mixin
    private SittingOptions how;
    @Mixin
    private BookOptions book;
    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws BadInput {
        output.check();
        OpenBook open = book.there();
        Sitting sitting = how.sitting(values == null ? List.of() : values, facts.setting());
        Optional<String> club = sitting.values().isEmpty() ? Optional.empty() : JobBook.show(open, number).club();
        List<String> odd = club.isPresent() ? how.odd(open, club.get(), sitting) : List.of();
        List<String> remarks = new ArrayList<>(JobDone.handOver(open, number, new JobDone.Result(sitting, Optional.ofNullable(as), facts.facts(),
            state == null ? Optional.empty() : Optional.of(ClubCommand.role(state)), oldCracked, oldBroken)));
        remarks.addAll(odd);
        return Said.print(output, spec.commandLine().getOut(), "job done", List.of(number),
            "Job %s is handed over.".formatted(number), remarks);
    }
}
