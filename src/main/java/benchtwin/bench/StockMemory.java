package benchtwin.bench;

import java.util.Optional;

/** The stock as it was last read out of a book, until something is entered there. Safe for several threads. */
public final class StockMemory {

    private record Kept(OpenBook book, long lastEntry, Workshop workshop) {
    }

    private Kept asRecorded;
    private Kept asFound;

    /**
     * The stock now.
     * @param book    the book
     * @param asFound whether clubs are taken as they measure now, not as they should
     * @return the stock
     * @throws BadInput when the book cannot be read
     */
    public synchronized Workshop of(OpenBook book, boolean asFound) throws BadInput {
        Kept kept = asFound ? this.asFound : asRecorded;
        long last = book.read(view -> view.lastEntry());
        if (kept == null || kept.book() != book || kept.lastEntry() != last) {
            kept = new Kept(book, last, Workshop.of(book, Optional.empty(), asFound));
            if (asFound) {
                this.asFound = kept;
            } else {
                asRecorded = kept;
            }
        }
        return kept.workshop();
    }
}
