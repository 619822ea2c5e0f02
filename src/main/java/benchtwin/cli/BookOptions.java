package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Which book, and who uses it. */
final class BookOptions {

    @Option(names = "--book", paramLabel = "FILE", order = 30,
        description = "the workshop's book; default what BENCHTWIN_BOOK names, else workshop.book in your data folder")
    private Path book;
    @Option(names = "--by", paramLabel = "NAME", order = 31,
        description = "who enters it; default your name on this computer")
    private String by;

    OpenBook open() throws BadInput {
        return OpenBook.open(file(), Optional.ofNullable(by).or(() -> Optional.ofNullable(System.getProperty("user.name"))));
    }

    Optional<Path> file() {
        return Optional.ofNullable(book);
    }
}
