package benchtwin.book;

/**
 * A reading that has not been overtaken.
 * @param id    its number in the file
 * @param event the event it was read in
 * @param since when it counts from
 * @param read  the reading, as corrected
 */
public record CurrentReading(long id, long event, Moment since, NewReading read) {
}
