package benchtwin.bench;

/**
 * The stock as a book has it, kept at hand: what was entered since it was last asked for is taken in, and nothing else is read again.
 * Safe for several threads.
 */
public final class StockMemory {

    private OpenBook book;
    private StockPieces pieces;
    private Workshop asRecorded;
    private Workshop asFound;

    /**
     * The stock now.
     * @param book    the book
     * @param asFound whether clubs are taken as they measure now, not as they should
     * @return the stock; the very object of last time while no part and no club stands otherwise than then
     * @throws BadInput when the book cannot be read
     */
    public synchronized Workshop of(OpenBook book, boolean asFound) throws BadInput {
        if (this.book != book) {
            this.book = book;
            pieces = new StockPieces(book);
        }
        if (book.read(pieces::catchUp)) {
            asRecorded = null;
            this.asFound = null;
        }
        if (asFound) {
            this.asFound = this.asFound == null ? pieces.whole(true) : this.asFound;
            return this.asFound;
        }
        asRecorded = asRecorded == null ? pieces.whole(false) : asRecorded;
        return asRecorded;
    }
}
