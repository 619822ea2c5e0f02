package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.NoteBook;
import benchtwin.bench.OpenBook;
import benchtwin.bench.StockBook;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a form of the pages does to parts. */
final class StockActs {

    private final OpenBook book;
    private final Form form;
    private final List<String> tags;

    StockActs(OpenBook book, Form form, List<String> tags) {
        this.book = book;
        this.form = form;
        this.tags = tags;
    }

    /** Does it, and says what was done. */
    List<String> done(String act) throws BadInput {
        if (tags.isEmpty()) {
            throw new BadInput("no part was named");
        }
        return switch (act) {
            case "move" -> {
                String place = form.need("place", "where it goes");
                yield List.of("%s moved to %s.".formatted(named(StockBook.move(book, tags, place)), place));
            }
            case "reserve" -> reserved();
            case "release" -> List.of(named(StockBook.release(book, tags, form.text("job"), why())) + " no longer promised"
                + form.text("job").map(job -> " to job " + job).orElse("") + ".");
            case "retire" -> retired();
            case "return" -> List.of(named(StockBook.giveBack(book, tags, why())) + " in stock again.");
            case "note" -> {
                for (String tag : tags) {
                    NoteBook.add(book, tag, form.need("note", "the note"));
                }
                yield List.of("Note written.");
            }
            default -> throw new BadInput("nothing is called \"%s\" here".formatted(act));
        };
    }

    private List<String> reserved() throws BadInput {
        Optional<String> job = form.text("job");
        String whom = form.text("whom").orElse("");
        if (job.isEmpty() && whom.isEmpty()) {
            throw new BadInput("a promise is to somebody: give a job's number, or a name");
        }
        double count = form.number("count", "how many").orElse(1.0);
        if (!(count >= 1 && count == Math.rint(count) && count <= 1e6)) {
            throw new BadInput("how many: expected a whole number, 1 or more");
        }
        return List.of("%s%s promised to %s.".formatted(count > 1 ? (int) count + " of " : "",
            named(StockBook.reserve(book, tags, job, whom, (int) count)), job.map(number -> "job " + number
                + (whom.isEmpty() ? "" : ", " + whom)).orElse(whom)));
    }

    private List<String> retired() throws BadInput {
        boolean cracked = form.isTicked("cracked");
        StockBook.Retired retired = StockBook.retire(book, tags, cracked, why());
        List<String> said = new ArrayList<>();
        said.add("%s out of the stock%s.".formatted(named(retired.tags()), cracked ? " for good" : ""));
        said.addAll(retired.remarks());
        return said;
    }

    private String why() {
        return form.text("why").orElse("");
    }

    private static String named(List<String> tags) {
        return String.join(", ", tags);
    }
}
