package benchtwin.bench;

import java.util.List;

/** Nothing was entered, because somebody entered something about the same thing after it was looked at. */
public final class ChangedMeanwhile extends BadInput {

    private static final long serialVersionUID = 1;

    private final long lastEntry;

    ChangedMeanwhile(List<Seen.Change> changes) {
        super(changes.stream().map(Seen.Change::words).toList());
        lastEntry = changes.get(changes.size() - 1).entry();
    }

    /**
     * The last of what is told here: who has read the messages has seen the things as of this entry.
     * @return the entry's number
     */
    public long lastEntry() {
        return lastEntry;
    }
}
