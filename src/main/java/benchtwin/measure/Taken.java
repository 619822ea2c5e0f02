package benchtwin.measure;

import java.time.LocalDate;
import java.util.Optional;

/**
 * When, with what and by whom a value was read.
 * @param on    the day it was read, if recorded
 * @param gauge the station or gauge it was read on, if recorded
 * @param by    who read it, if recorded
 */
public record Taken(Optional<LocalDate> on, Optional<String> gauge, Optional<String> by) {

    /** Nothing is known of when or how the value was read. */
    public static final Taken UNRECORDED = new Taken(Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * A value of which only the day is known.
     * @param day the day it was read
     * @return the record of it
     */
    public static Taken on(LocalDate day) {
        return new Taken(Optional.of(day), Optional.empty(), Optional.empty());
    }
}
