package benchtwin.book;

import java.util.Comparator;

/**
 * A reading that has not been overtaken.
 * @param id    its number in the file
 * @param event the event it was read in
 * @param since when it counts from
 * @param read  the reading, as corrected
 */
public record CurrentReading(long id, long event, Moment since, NewReading read) {

    /** The one that counts from later after the other; of one moment the one entered later. */
    public static final Comparator<CurrentReading> BY_TIME = Comparator.comparing(CurrentReading::since).thenComparing(CurrentReading::id);
}
