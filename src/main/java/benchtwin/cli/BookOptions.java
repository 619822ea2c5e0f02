package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Which book, and who uses it. */
final class BookOptions {

    @Option(names = "--book", paramLabel = "FILE", order = 19,
        description = "the workshop's book; default what BENCHTWIN_BOOK names, else workshop.book in your data folder")
    private Path book;
    @Option(names = "--by", paramLabel = "NAME", order = 19,
        description = "who enters it; default your name on this computer")
    private String by;

    OpenBook open() throws BadInput {
        return OpenBook.open(file(), who());
    }

    /** The book, for commands that need something in it. */
    OpenBook there() throws BadInput {
        Path place = OpenBook.place(file());
        return ifThere().orElseThrow(() -> new BadInput(("there is no book yet, it would lie in %s: benchtwin stock import DIR, or "
            + "the first player, club or job that is added, makes one").formatted(place)));
    }

    /** The book that is there; empty when there is none and none was named. */
    Optional<OpenBook> ifThere() throws BadInput {
        return OpenBook.ifThere(file(), who());
    }

    private Optional<String> who() {
        return Optional.ofNullable(by).or(() -> Optional.ofNullable(System.getProperty("user.name")));
    }

    /** Who uses it, if that was typed. */
    Optional<String> by() {
        return Optional.ofNullable(by);
    }

    Optional<Path> file() {
        return Optional.ofNullable(book);
    }
}
