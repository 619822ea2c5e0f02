package benchtwin.ticket;

import java.util.List;

/**
 * One of several clubs of a job.
 * @param club  its tag, or what the set calls it
 * @param parts its parts
 * @param work  what is done, each to be ticked off
 * @param lines what it should measure; the same quantities in every row of a ticket, in the same order
 */
public record TicketRow(String club, List<TicketPart> parts, List<String> work, List<TicketLine> lines) {

    public TicketRow {
        parts = List.copyOf(parts);
        work = List.copyOf(work);
        lines = List.copyOf(lines);
    }
}
