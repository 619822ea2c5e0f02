package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import benchtwin.bench.PartReadings;
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
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code benchtwin stock read}. */
@Command(name = "read", mixinStandardHelpOptions = true, sortOptions = false,
    description = "Enter what was read of a part, one quantity at a time. What was read before stays in its history.",
    footer = {"", "Examples:", "  benchtwin stock read H-014 loft=9.4 --gauge \"bench 1\"",
        "  benchtwin stock read S-031 frequency=252.1 --how clamp=5 --how over-grip=no"})
final class StockReadCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;
    @Parameters(index = "0", paramLabel = "TAG", description = "the part's tag")
    private String tag;
    @Parameters(index = "1", paramLabel = "QUANTITY=VALUE", description = "what was read, in the unit stock show has it")
    private String read;
    @Option(names = "--how", paramLabel = "NAME=WORD", description = "how it was read, such as reading=square, clamp=5, tip-mass=205, "
        + "over-grip=no; what is left out was as the last time")
    private Map<String, String> how = Map.of();
    @Option(names = "--gauge", paramLabel = "NAME", description = "what it was read on")
    private String gauge;
    @Option(names = "--on", paramLabel = "DATE", description = "the day it was read, if it was not just now")
    private String on;
    @Option(names = "--note", paramLabel = "TEXT", description = "anything else")
    private String note;
    @Option(names = "--refuse-odd", description = "enter nothing when the value is far from the last reading, or from what such a part "
        + "usually measures; without it such a value is entered and named")
    private boolean refuseOdd;
    @Mixin
    private BookOptions book;
    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws BadInput {
        output.check();
        String[] pair = read.split("=", 2);
        if (pair.length != 2 || pair[1].isBlank()) {
            throw new BadInput("\"%s\": expected a quantity and what was read, such as loft=9.4".formatted(read));
        }
        OpenBook open = book.there();
        PartReadings.Ask ask = PartReadings.ask(open, tag, PartReadings.named(open, tag, pair[0]));
        PartReadings.Read typed = new PartReadings.Read(ask.quantity(), pair[1], conditions(ask), Optional.ofNullable(gauge),
            SittingOptions.day("--on", on), Optional.ofNullable(note));
        List<String> odd = PartReadings.questions(open, tag, typed);
        List<String> again = SittingOptions.odd(odd, refuseOdd, "stock correct " + tag);
        PartReadings.Entered entered = PartReadings.read(open, tag, typed);
        List<String> remarks = new ArrayList<>(entered.remarks());
        remarks.addAll(again);
        return Said.print(output, spec.commandLine().getOut(), "stock read", List.of(entered.part()), "%s: %s is entered.".formatted(
            entered.part(), entered.words()), remarks);
    }

    private Map<String, String> conditions(PartReadings.Ask ask) throws BadInput {
        Map<String, String> conditions = new LinkedHashMap<>();
        ask.conditions().forEach(condition -> conditions.put(condition.name(), condition.value()));
        for (Map.Entry<String, String> one : how.entrySet()) {
            PartReadings.Condition meant = ask.conditions().stream().filter(condition -> PartReadings.word(condition.name()).equals(one.getKey()))
                .findFirst().orElseThrow(() -> new BadInput("--how %s: expected %s".formatted(one.getKey(), ask.conditions().isEmpty()
                    ? "none, as there is one way only" : String.join(", ", ask.conditions().stream().map(condition ->
                    PartReadings.word(condition.name())).toList()))));
            conditions.put(meant.name(), one.getValue());
        }
        return conditions;
    }
}
