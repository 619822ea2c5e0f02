package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.NoteBook;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code benchtwin note}. */
@Command(name = "note", mixinStandardHelpOptions = true, description = "Notes on anything in the book.",
    footer = {"", "Example:", "  benchtwin note find rib left"})
final class NoteCommand extends CommandGroup {

    @Command(name = "add", mixinStandardHelpOptions = true,
        description = "Write a note on a part, club, player, gauge or job.",
        footer = {"", "Examples:", "  benchtwin note add H-014 \"paint chip at the toe\"",
            "  benchtwin note add job:12 \"call before noon\""})
    int add(@Parameters(index = "0", paramLabel = "WHAT", description = "a tag, a name, or a job's number as job:12") String about,
            @Parameters(index = "1", paramLabel = "TEXT", description = "the note") String text,
            @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        String noted = NoteBook.add(book.there(), about, text);
        return Said.print(output, out(), "note add", List.of(noted), "Noted on %s.".formatted(noted), List.of());
    }

    @Command(name = "find", mixinStandardHelpOptions = true,
        description = "Find notes by words; each must be in the note, whole or as the start of a word.",
        footer = {"", "Example:", "  benchtwin note find rib left"})
    int find(@Parameters(arity = "1..*", paramLabel = "WORD", description = "what is looked for") List<String> words,
             @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        List<NoteBook.Found> notes = NoteBook.find(book.there(), String.join(" ", words));
        if (output.isJson()) {
            out().println(NoteBook.json(notes));
        } else {
            Page page = output.page(out());
            for (NoteBook.Found note : notes) {
                page.wrapped("%s  %s: ".formatted(note.day(), note.about()), note.text().replace('\n', ' '));
            }
            if (notes.isEmpty()) {
                page.line("No note has all of these words.");
            }
        }
        return notes.isEmpty() ? Main.NOTHING_SUITABLE : Main.DONE;
    }
}
