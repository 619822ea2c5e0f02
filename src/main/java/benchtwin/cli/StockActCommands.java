package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.Corrections;
import benchtwin.bench.StockBook;
import benchtwin.bench.StockBookJson;
import benchtwin.bench.StockExport;
import benchtwin.bench.StockImport;
import benchtwin.bench.StockViews;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What {@code benchtwin stock} does to parts in the book. */
class StockActCommands extends CommandGroup {

    /** Reads files. */
    @Command(name = "import", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Read stock files into the book: all of them, or nothing. The same file twice changes nothing; parts "
            + "measured anew get new readings beside the old ones.",
        footer = {"", "Examples:", "  benchtwin stock import inventory-samples", "  benchtwin stock import --heads new-heads.csv"})
    public int take(@Parameters(arity = "0..1", paramLabel = "DIR", description = "a folder with heads.csv, shafts.csv and so on")
                    Path folder, @Mixin StockOptions stock, @Mixin OutputOptions output)
        throws BadInput {
        output.check();
        StockImport.Read read = StockImport.read(stock.files(Optional.ofNullable(folder)), stock.isGoodRows());
        StockImport.Imported imported = StockImport.enter(stock.openBook(), read);
        if (output.isJson()) {
            out().println(StockBookJson.imported(imported));
            return Main.DONE;
        }
        Page page = output.page(out());
        imported.remarks().forEach(remark -> page.wrapped("", remark));
        imported.changes().forEach(change -> page.wrapped("  ", change));
        page.line("%d row%s: %d new, %d changed, %d as before.", read.rows().size(), read.rows().size() == 1 ? "" : "s",
            imported.added(), imported.changed(), imported.same());
        return Main.DONE;
    }

    /** Writes files. */
    @Command(name = "export", mixinStandardHelpOptions = true,
        description = "Write the stock and the clubs as they stand now into files a match reads: heads.csv, shafts.csv and so on.",
        footer = {"", "Example:", "  benchtwin stock export stock-thursday",
            "", "Everything the book holds, its history too, is written by: benchtwin book export"})
    public int export(@Parameters(paramLabel = "DIR", description = "a folder without such files") Path folder,
                      @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        List<Path> files = StockExport.write(book.there(), folder);
        return said(output, "stock export", files.stream().map(Path::toString).toList(), "%d file%s written into %s.".formatted(
            files.size(), files.size() == 1 ? "" : "s", folder));
    }

    /** Moves parts. */
    @Command(name = "move", mixinStandardHelpOptions = true, description = "Put parts somewhere else: all of them, or none.",
        footer = {"", "Example:", "  benchtwin stock move H-014 H-015 --to \"van, drawer 3\""})
    public int move(@Parameters(arity = "1..*", paramLabel = "TAG", description = "which parts") List<String> tags,
                    @Option(names = "--to", required = true, paramLabel = "PLACE", description = "where they lie now") String place,
                    @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        List<String> moved = StockBook.move(book.there(), tags, place);
        return said(output, "stock move", moved, "%s moved to %s.".formatted(String.join(", ", moved), place));
    }

    /** Promises parts. */
    @Command(name = "reserve", mixinStandardHelpOptions = true,
        description = "Promise parts to a job or a person: all of them, or none.",
        footer = {"", "Examples:", "  benchtwin stock reserve H-054 S-031 --job 12",
            "  benchtwin stock reserve lock-2-335 --count 2 --for \"E. Ashcutter\""})
    public int reserve(@Parameters(arity = "1..*", paramLabel = "TAG", description = "which parts") List<String> tags,
                       @Option(names = "--job", paramLabel = "NUMBER", description = "the job they are for") String job,
                       @Option(names = "--for", paramLabel = "NAME", defaultValue = "", description = "for whom") String whom,
                       @Option(names = "--count", paramLabel = "N", defaultValue = "1",
                           description = "how many of a sleeve or weight; default 1") int count,
                       @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        if (job == null && whom.isBlank()) {
            throw new BadInput("a promise is to somebody: give a job with --job, or a name with --for");
        }
        List<String> kept = StockBook.reserve(book.there(), tags, Optional.ofNullable(job), whom, count);
        return said(output, "stock reserve", kept, "%s%s promised to %s.".formatted(count > 1 ? count + " of " : "",
            String.join(", ", kept), job == null ? whom.strip() : "job " + job + (whom.isBlank() ? "" : ", " + whom.strip())));
    }

    /** Takes promises back. */
    @Command(name = "release", mixinStandardHelpOptions = true, description = "Take promises of parts back.",
        footer = {"", "Example:", "  benchtwin stock release H-245"})
    public int release(@Parameters(arity = "1..*", paramLabel = "TAG", description = "which parts") List<String> tags,
                       @Option(names = "--job", paramLabel = "NUMBER", description = "only this job's promise") String job,
                       @Option(names = "--why", paramLabel = "TEXT", defaultValue = "", description = "why") String why,
                       @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        List<String> free = StockBook.release(book.there(), tags, Optional.ofNullable(job), why);
        return said(output, "stock release", free, "%s no longer promised to %s.".formatted(String.join(", ", free),
            job == null ? "anybody" : "job " + job));
    }

    /** Takes parts out of the stock. */
    @Command(name = "retire", mixinStandardHelpOptions = true,
        description = "Take parts out of the stock. Their record is kept; a cracked one never comes back.",
        footer = {"", "Examples:", "  benchtwin stock retire H-026 --cracked", "  benchtwin stock retire S-012 --why sold"})
    public int retire(@Parameters(arity = "1..*", paramLabel = "TAG", description = "which parts") List<String> tags,
                      @Option(names = "--cracked", description = "it is cracked") boolean cracked,
                      @Option(names = "--why", paramLabel = "TEXT", defaultValue = "", description = "why") String why,
                      @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        StockBook.Retired retired = StockBook.retire(book.there(), tags, cracked, why);
        return Said.print(output, out(), "stock retire", retired.tags(), "%s out of the stock%s.".formatted(
            String.join(", ", retired.tags()), cracked ? " for good" : ""), retired.remarks());
    }

    /** Brings retired parts back. */
    @Command(name = "return", mixinStandardHelpOptions = true, description = "Bring retired parts back into the stock.",
        footer = {"", "Example:", "  benchtwin stock return S-012 --why \"found again\""})
    public int giveBack(@Parameters(arity = "1..*", paramLabel = "TAG", description = "which parts") List<String> tags,
                        @Option(names = "--why", paramLabel = "TEXT", defaultValue = "", description = "why") String why,
                        @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        List<String> back = StockBook.giveBack(book.there(), tags, why);
        return said(output, "stock return", back, "%s in stock again.".formatted(String.join(", ", back)));
    }

    /** Counts what is there, or puts counts down. */
    @Command(name = "count", mixinStandardHelpOptions = true,
        description = "Count what there is of each model; or put down how many of a sleeve or weight were counted.",
        footer = {"", "Examples:", "  benchtwin stock count --kind head", "  benchtwin stock count lock-2-335=3 W-04=12"})
    public int count(@Parameters(arity = "0..*", paramLabel = "TAG=N", description = "what was counted") List<String> counted,
                     @Option(names = "--kind", paramLabel = "KIND", split = ",", description = "head, shaft, grip, sleeve, weight")
                     List<String> kinds, @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        if (counted == null || counted.isEmpty()) {
            new StockPage(output, out()).tally(StockViews.tally(book.there(), new StockViews.Asked(
                kinds == null ? List.of() : kinds, List.of(), false, true)));
            return Main.DONE;
        }
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (String one : counted) {
            String[] pair = one.split("=", 2);
            if (pair.length != 2 || !pair[1].matches("\\d{1,6}")) {
                throw new BadInput("\"%s\": expected a tag and how many were counted, such as lock-2-335=3".formatted(one));
            }
            if (counts.put(pair[0].strip(), Integer.parseInt(pair[1])) != null) {
                throw new BadInput("%s is counted twice".formatted(pair[0].strip()));
            }
        }
        List<String> put = StockBook.count(book.there(), counts);
        return said(output, "stock count", put, "Put down: %s.".formatted(String.join(", ", put)));
    }

    /** Puts a reading right. */
    @Command(name = "correct", mixinStandardHelpOptions = true,
        description = "Put a reading of a part right, or take it back. The old one is kept, with the reason.",
        footer = {"", "Examples:", "  benchtwin stock correct H-014 1067 9.4 --why \"digits swapped\"",
            "  benchtwin stock correct H-014 1067 --why \"another head was on the gauge\""})
    public int correct(@Parameters(index = "0", paramLabel = "TAG", description = "the part's tag") String tag,
                       @Parameters(index = "1", paramLabel = "READING", description = "the reading's number, as stock show has it")
                       long reading,
                       @Parameters(index = "2", arity = "0..1", paramLabel = "VALUE", description = "what it should have said, in "
                           + "the unit stock show has it; without it the reading is taken back") String value,
                       @Option(names = "--why", required = true, paramLabel = "TEXT", description = "why") String why,
                       @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        return ClubCommand.corrected(Corrections.ofPart(book.there(), tag, reading, Optional.ofNullable(value), why), reading,
            "stock correct", tag, output, out());
    }

    private int said(OutputOptions output, String act, List<String> of, String sentence) {
        return Said.print(output, out(), act, of, sentence, List.of());
    }
}
