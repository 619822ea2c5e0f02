package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import benchtwin.bench.StockViews;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code benchtwin stock}. */
@Command(name = "stock", mixinStandardHelpOptions = true, subcommands = {StockCheckCommand.class, StockReadCommand.class},
    description = "The workshop's parts: read from files, found, promised, moved, counted.",
    footer = {"", "Examples:", "  benchtwin stock import inventory-samples", "  benchtwin stock find titanium driver --free"})
final class StockCommand extends StockActCommands {

    @Command(name = "list", mixinStandardHelpOptions = true, description = "List the parts in the book.",
        footer = {"", "Example:", "  benchtwin stock list --kind head --free"})
    int list(@Option(names = "--kind", paramLabel = "KIND", split = ",", description = "head, shaft, grip, sleeve, weight")
             List<String> kinds,
             @Option(names = "--free", description = "only those neither promised nor built in") boolean free,
             @Option(names = "--retired", description = "those that left the stock as well") boolean retired,
             @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        return find(List.of(), kinds, free, retired, book, output);
    }

    @Command(name = "find", mixinStandardHelpOptions = true,
        description = "Find parts by words in their tag, model, place or anything else known of them; every word must be there.",
        footer = {"", "Example:", "  benchtwin stock find driver titanium \"drawer 1\" --free"})
    int find(@Parameters(arity = "1..*", paramLabel = "WORD", description = "what is looked for") List<String> words,
             @Option(names = "--kind", paramLabel = "KIND", split = ",", description = "head, shaft, grip, sleeve, weight")
             List<String> kinds,
             @Option(names = "--free", description = "only those neither promised nor built in") boolean free,
             @Option(names = "--retired", description = "those that left the stock as well") boolean retired,
             @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        OpenBook opened = book.there();
        List<StockViews.Part> parts = StockViews.list(opened, new StockViews.Asked(kinds == null ? List.of() : kinds, words,
            free, retired));
        boolean any = !parts.isEmpty() || !StockViews.list(opened, new StockViews.Asked(List.of(), List.of(), false, true)).isEmpty();
        new StockPage(output, out()).list(parts, any);
        return parts.isEmpty() ? Main.NOTHING_SUITABLE : Main.DONE;
    }

    @Command(name = "show", mixinStandardHelpOptions = true, description = "Show a part: what it is, what it measures, what "
        + "befell it.", footer = {"", "Example:", "  benchtwin stock show H-014"})
    int show(@Parameters(paramLabel = "TAG", description = "the part's tag") String tag, @Mixin BookOptions book,
             @Mixin OutputOptions output) throws BadInput {
        output.check();
        new StockPage(output, out()).show(StockViews.show(book.there(), tag));
        return Main.DONE;
    }

    @Command(name = "audit", mixinStandardHelpOptions = true,
        description = "Prove that how every part, club and job stands is what its events say.",
        footer = {"", "Example:", "  benchtwin stock audit", "", "Exit status: 0 all agree, 1 something does not."})
    int audit(@Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        return CheckPage.print(StockViews.audit(book.there()), output, out());
    }
}
