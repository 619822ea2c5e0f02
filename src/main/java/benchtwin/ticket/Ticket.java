package benchtwin.ticket;

import benchtwin.picture.HeadSketchPicture;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * The printed plan for one job. A job of one club has steps, one of several a row for each.
 * @param job      the job's number
 * @param title    what is made: {@code Twin of OAKES-DR}
 * @param player   for whom
 * @param due      by when, a day or a day and an hour
 * @param status   how the job stands
 * @param words    what was said when it was taken on
 * @param parts    parts of a job of one club, with where they lie
 * @param steps    what is done, in working order
 * @param rows     a club each, where there are several
 * @param ready    when it can be handed over
 * @param cautions what holds for all of the work
 * @param notes    what else somebody at the bench should know
 * @param sketch   the head before and after, where its angles change
 * @param code     what a scanner reads back
 * @param made     when the plan it shows was made, by the clock at the bench
 * @param program  which build of the program printed it
 */
public record Ticket(String job, String title, Optional<String> player, Optional<String> due, String status,
                     Optional<String> words, List<TicketPart> parts, List<TicketStep> steps, List<TicketRow> rows,
                     TicketReady ready, List<String> cautions, List<String> notes, Optional<HeadSketchPicture> sketch, String code,
                     LocalDateTime made, String program) {

    public Ticket {
        parts = List.copyOf(parts);
        steps = List.copyOf(steps);
        rows = List.copyOf(rows);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /**
     * Whether it has a row for each of several clubs.
     * @return false for a job of one club
     */
    public boolean isOfSeveral() {
        return !rows.isEmpty();
    }
}
