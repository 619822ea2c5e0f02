package benchtwin.cli;

import benchtwin.bench.ActJson;
import benchtwin.bench.BadInput;
import benchtwin.bench.BookCare;
import benchtwin.bench.BookTransfer;
import benchtwin.bench.OpenBook;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code benchtwin book}. */
@Command(name = "book", mixinStandardHelpOptions = true,
    description = "The workshop's record file: copy it, check it, put a copy back.",
    footer = {"", "Example:", "  benchtwin book backup /media/stick/workshop-thursday.book"})
final class BookCommand extends CommandGroup {

    @Command(name = "where", mixinStandardHelpOptions = true, description = "Say where the book lies.",
        footer = {"", "Example:", "  benchtwin book where"})
    int where(@Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        Path place = OpenBook.place(book.file());
        if (output.isJson()) {
            out().println(ActJson.text("book where", List.of(place.toString()), place.toString(), List.of()));
        } else {
            out().println(place);
        }
        return Main.DONE;
    }

    @Command(name = "backup", mixinStandardHelpOptions = true,
        description = "Copy the book while it may be in use; the copy is whole or not there at all.",
        footer = {"", "Example:", "  benchtwin book backup /media/stick/workshop-thursday.book"})
    int backup(@Parameters(paramLabel = "FILE", description = "a file that is not there yet") Path copy,
               @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        BookCare.backUp(book.there(), copy);
        return Said.print(output, out(), "book backup", List.of(copy.toString()),
            "Copied to %s. Put it back with: benchtwin book restore %s".formatted(copy, copy), List.of());
    }

    @Command(name = "check", mixinStandardHelpOptions = true,
        description = "Check the whole book: the file, what refers to what, and that every state is what the events say.",
        footer = {"", "Example:", "  benchtwin book check", "", "Exit status: 0 all in order, 1 something is not, 2 it cannot be "
            + "read."})
    int check(@Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        return CheckPage.print(BookCare.check(book.there()), output, out());
    }

    @Command(name = "restore", mixinStandardHelpOptions = true,
        description = "Put a backup in the book's place. It is looked through first; the book as it was is kept beside it.",
        footer = {"", "Example:", "  benchtwin book restore /media/stick/workshop-thursday.book"})
    int restore(@Parameters(paramLabel = "FILE", description = "a backup of a book") Path backup, @Mixin BookOptions book,
                @Mixin OutputOptions output) throws BadInput {
        output.check();
        Path place = OpenBook.place(book.file());
        Optional<Path> aside = BookCare.restore(place, backup);
        return Said.print(output, out(), "book restore", List.of(place.toString()), "The book %s is now as in %s.%s".formatted(place,
            backup, aside.map(old -> " The one before is kept as " + old + ".").orElse("")), List.of());
    }

    @Command(name = "export", mixinStandardHelpOptions = true,
        description = "Write everything the book holds into open files: a folder of CSV files, or one file ending in .json.",
        footer = {"", "Examples:", "  benchtwin book export season-2026", "  benchtwin book export season-2026.json"})
    int export(@Parameters(paramLabel = "TARGET", description = "a folder, or a file ending in .json") Path target,
               @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        List<Path> files = BookTransfer.write(book.there(), target);
        return Said.print(output, out(), "book export", files.stream().map(Path::toString).toList(),
            "%d file%s written. Make a book of %s again with: benchtwin book import %s --book NEW".formatted(files.size(),
                files.size() == 1 ? "" : "s", files.size() == 1 ? "it" : "them", target), List.of());
    }

    @Command(name = "import", mixinStandardHelpOptions = true,
        description = "Make a book of what book export wrote; it says the same as the one that was exported.",
        footer = {"", "Example:", "  benchtwin book import season-2026 --book season-2026.book"})
    int take(@Parameters(paramLabel = "SOURCE", description = "the folder or file that was written") Path source,
             @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        BookTransfer.read(book.open(), source);
        return Said.print(output, out(), "book import", List.of(source.toString()), "%s is a book again.".formatted(source), List.of());
    }
}
