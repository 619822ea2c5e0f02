package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.BendService;
import java.nio.file.Path;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Where heads are found and bends written: the book, or files. */
final class BendOptions {

    @Option(names = "--session", paramLabel = "FILE", order = 7, defaultValue = "bends.jsonl",
        description = "where bends are written when the stock is in files; default ${DEFAULT-VALUE}")
    private Path session;
    @Mixin
    private StockOptions stock;

    boolean isFromFiles() {
        return stock.isFromFiles();
    }

    BendService service() throws BadInput {
        return stock.isFromFiles() ? BendService.of(stock.load(), session) : BendService.of(stock.book());
    }
}
