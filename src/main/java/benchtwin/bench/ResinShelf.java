package benchtwin.bench;

import benchtwin.club.ResinTable;
import benchtwin.stock.Fault;
import benchtwin.stock.ResinReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The resins a workshop has: the file of their cure times, and which of them is used. */
public final class ResinShelf {

    private static final String USUAL_NAME = "resins.csv";

    private ResinShelf() {
    }

    /**
     * Chooses a resin.
     * @param book    the book; the usual file lies beside it
     * @param file    a file that was named
     * @param name    a resin that was named, in any case of letters
     * @param remarks takes a line for each thing that is odd about the file
     * @return its table; empty where there is no file and none was named
     * @throws BadInput with every fault of the file, or when it is not said which of several resins is meant
     */
    public static Optional<ResinTable> choose(OpenBook book, Optional<Path> file, Optional<String> name, List<String> remarks)
        throws BadInput {
        Path usual = usual(book);
        if (file.isEmpty() && !Files.exists(usual)) {
            if (name.isPresent()) {
                throw new BadInput(book.asks(ToDo.RESIN_TABLE, name.get(), usual));
            }
            return Optional.empty();
        }
        return Optional.of(one(read(file.orElse(usual), remarks), file.orElse(usual), name, book));
    }

    /**
     * The resins of the usual file.
     * @param book the book; the file lies beside it
     * @return their names; none where there is no file
     * @throws BadInput with every fault of the file
     */
    public static List<String> names(OpenBook book) throws BadInput {
        Path usual = usual(book);
        return Files.exists(usual) ? read(usual, new ArrayList<>()).stream().map(ResinTable::resin).toList() : List.of();
    }

    private static Path usual(OpenBook book) {
        return book.file().toAbsolutePath().resolveSibling(USUAL_NAME);
    }

    private static List<ResinTable> read(Path file, List<String> remarks) throws BadInput {
        ResinReader.Read read = ResinReader.read(file);
        if (read.faultCount() > 0) {
            List<String> faults = new ArrayList<>(read.faults().stream().map(Fault::text).toList());
            Workshop.more(faults, read.faultCount() - read.faults().size(), "faults");
            faults.add("Nothing was read. A cure time that cannot be trusted is worse than none.");
            throw new BadInput(faults);
        }
        if (read.resins().isEmpty()) {
            throw new BadInput("%s names no resin; expected one temperature a row".formatted(file));
        }
        read.warnings().forEach(warning -> remarks.add(warning.text()));
        return read.resins();
    }

    private static ResinTable one(List<ResinTable> resins, Path file, Optional<String> name, OpenBook book) throws BadInput {
        String names = String.join(", ", resins.stream().map(ResinTable::resin).toList());
        if (name.isEmpty() && resins.size() > 1) {
            throw new BadInput("%s holds several resins; %s: %s".formatted(file, book.asks(ToDo.RESIN_WHICH), names));
        }
        return resins.stream().filter(one -> name.isEmpty() || one.resin().equalsIgnoreCase(name.get().strip())).findFirst()
            .orElseThrow(() -> new BadInput("%s is not in %s; there is %s".formatted(book.asks(ToDo.RESIN, name.orElse("")), file, names)));
    }
}
