package benchtwin.ticket;

import java.util.List;

/**
 * One step, to be ticked off.
 * @param title    its name: {@code Bend}
 * @param words    what to do
 * @param lines    what is written down with it
 * @param cautions what in it can hurt somebody
 */
public record TicketStep(String title, String words, List<TicketLine> lines, List<String> cautions) {

    public TicketStep {
        lines = List.copyOf(lines);
        cautions = List.copyOf(cautions);
    }
}
