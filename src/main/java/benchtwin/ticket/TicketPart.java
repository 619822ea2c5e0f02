package benchtwin.ticket;

import java.util.Optional;

/**
 * A part a job needs.
 * @param kind  head, shaft and so on
 * @param tag   its tag
 * @param model its model, where it has one
 * @param where where it is to be found: a drawer, or the club it sits in
 * @param count how many, 1 or more
 */
public record TicketPart(String kind, String tag, Optional<String> model, String where, int count) {
}
