package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.measure.LengthText;
import benchtwin.ticket.TicketLine;
import benchtwin.ticket.TicketRow;
import java.util.List;
import java.util.Optional;

/** The rows of a ticket of several clubs. Their columns are narrow, so the unit stands once, above them. */
final class TicketRows {

    private TicketRows() {
    }

    static List<TicketRow> of(List<JobPlan.Club> clubs, TicketParts parts) {
        List<Quantity> columns = columns(clubs);
        return clubs.stream().map(club -> new TicketRow(club.name(), parts.of(club),
            club.tasks().stream().map(JobPlan.Task::inShort).toList(),
            columns.stream().map(quantity -> line(club, quantity)).toList())).toList();
    }

    /** What any of the clubs should measure, in showing order; what a bench always reads where nothing is known. */
    private static List<Quantity> columns(List<JobPlan.Club> clubs) {
        List<Quantity> columns = Quantity.targetable().stream()
            .filter(quantity -> quantity != Quantity.TORQUE && quantity != Quantity.BOUNCE)
            .filter(quantity -> clubs.stream().anyMatch(club -> TicketSteps.wanted(club, quantity).isPresent())).toList();
        return columns.isEmpty() ? List.of(Quantity.SWING_WEIGHT, Quantity.TOTAL_MASS) : columns;
    }

    private static TicketLine line(JobPlan.Club club, Quantity quantity) {
        return TicketSteps.wanted(club, quantity).map(wanted -> new TicketLine(heading(quantity), Optional.empty(), Optional.empty(),
            Optional.of(switch (quantity) {
                case LENGTH -> LengthText.inchesAndSixteenths(wanted.value());
                case SWING_WEIGHT -> QuantityText.value(quantity, wanted.value());
                default -> QuantityText.number(quantity, wanted.value()).replace('-', '\u2212');
            }), Optional.of(switch (quantity) {
                case LENGTH, SWING_WEIGHT -> QuantityText.size(quantity, wanted.tolerance());
                default -> QuantityText.number(quantity, wanted.tolerance());
            }))).orElse(TicketLine.of(heading(quantity)));
    }

    private static String heading(Quantity quantity) {
        return switch (quantity) {
            case LENGTH -> "length in";
            case SWING_WEIGHT -> "swing";
            case FREQUENCY -> "cpm";
            case TOTAL_MASS -> "mass g";
            default -> QuantityText.name(quantity) + " " + quantity.unit();
        };
    }
}
