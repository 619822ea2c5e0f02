package benchtwin.book;

/**
 * A reading in the record.
 * @param id   its number in the file
 * @param read what was entered
 */
public record KeptReading(long id, NewReading read) {
}
