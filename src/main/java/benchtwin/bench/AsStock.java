package benchtwin.bench;

import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.Thing;
import benchtwin.stock.Fault;
import java.util.List;
import java.util.Set;

/**
 * A part as the rules make stock of it. What is entered about a part must leave it stock: a value that cannot be would hide the part
 * from every match.
 * @param faults   what is wrong with it
 * @param measured the quantities it has with it
 */
record AsStock(List<Fault> faults, Set<String> measured) {

    static AsStock of(OpenBook book, BookView view, Thing part) {
        return StockInventory.alone(book, view, part);
    }

    /**
     * Holds what it became against what it was.
     * @param after the same part after something was entered
     * @return what no longer counts, in words
     * @throws BookProblem when something is wrong with it now that was not before
     */
    List<String> then(AsStock after) throws BookProblem {
        for (Fault fault : after.faults) {
            if (!faults.contains(fault)) {
                throw new BookProblem(fault.column().map(column -> ColumnText.name(column) + ": ").orElse("") + fault.words());
            }
        }
        List<String> lost = measured.stream().filter(quantity -> !after.measured.contains(quantity)).sorted().map(ColumnText::name).toList();
        return lost.isEmpty() ? List.of() : List.of(("Read in another way and so not counted beside it: %s. Read %s again in the same way."
            ).formatted(String.join(", ", lost), lost.size() == 1 ? "it" : "them"));
    }
}
