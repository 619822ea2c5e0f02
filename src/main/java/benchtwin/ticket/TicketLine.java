package benchtwin.ticket;

import java.util.Optional;

/**
 * A line something is written on, a reading or a time.
 * @param what      what is written: {@code lie}
 * @param now       what it is before the step, where that is known
 * @param comesTo   what the plan brings it to, where that is not what it should be
 * @param target    what it should be
 * @param tolerance how far off is still right, without a sign
 */
public record TicketLine(String what, Optional<String> now, Optional<String> comesTo, Optional<String> target, Optional<String> tolerance) {

    /**
     * A line without a target.
     * @param what what is written
     * @return the line
     */
    public static TicketLine of(String what) {
        return new TicketLine(what, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
