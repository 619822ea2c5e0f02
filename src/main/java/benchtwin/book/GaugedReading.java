package benchtwin.book;

/**
 * A reading that names the gauge it was taken on.
 * @param thing what was read
 * @param phase which state of the thing it is of: counts up each time something was done that changes what it measures
 * @param since when it counts from
 * @param read  the reading, as corrected
 */
public record GaugedReading(Thing thing, int phase, Moment since, NewReading read) {
}
