package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import benchtwin.bench.ResinShelf;
import benchtwin.bench.TicketWish;
import benchtwin.club.ResinTable;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;

/** Resin, temperature and start: what it takes to say when bonded work can be handed over. */
final class ResinOptions {

    @Option(names = "--resins", paramLabel = "FILE", order = 5,
        description = "cure times of your resins, as their makers state them; default resins.csv beside the book, if it is there")
    private Path file;
    @Option(names = "--resin", paramLabel = "NAME", order = 5, description = "which of them is used; needed where there are several")
    private String resin;
    @Option(names = "--temperature", paramLabel = "T", order = 6, description = "the temperature at the bench: 18C or 64F")
    private String temperature;
    @Option(names = "--start", paramLabel = "WHEN", order = 6,
        description = "when the work begins: 2026-05-20 09:00, or 09:00 for today; default now")
    private String start;

    /** What was typed; a remark for each odd row of the file. */
    TicketWish wish(OpenBook book, List<String> remarks) throws BadInput {
        OptionalDouble warm = temperature == null ? OptionalDouble.empty() : OptionalDouble.of(TicketWish.celsius(temperature, "--temperature"));
        Optional<LocalDateTime> from = start == null ? Optional.empty() : Optional.of(TicketWish.start(start,
            LocalDate.now(), "--start"));
        Optional<ResinTable> table = ResinShelf.choose(book, Optional.ofNullable(file), Optional.ofNullable(resin), remarks);
        return new TicketWish(table, warm, from);
    }
}
