package benchtwin.ticket;

import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.Hand;
import benchtwin.club.Hazard;
import benchtwin.picture.HeadSketchPicture;
import benchtwin.picture.SketchAngles;
import benchtwin.picture.SketchSizes;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Tickets to test with, filled in by hand. */
final class SampleTickets {

    static final LocalDateTime MADE = LocalDateTime.of(2026, 5, 19, 17, 5);

    private SampleTickets() {
    }

    static Optional<String> some(String text) {
        return Optional.of(text);
    }

    static TicketLine line(String what, String target, String tolerance) {
        return new TicketLine(what, Optional.empty(), Optional.empty(), some(target), some(tolerance));
    }

    /** A driver's twin, pulled, bent and bonded: the longest job of one club. */
    static Ticket twin(String player, String tag) {
        List<TicketLine> final7 = List.of(line("loft", "8.70°", "0.25°"), line("lie", "56.80°", "0.25°"), line("face", "1.20°", "0.50°"),
            line("length", "44 3/4 in", "1.6 mm"), line("swing weight", "D2.8", "0.5 pt"), line("frequency", "265.7 cpm", "2.0 cpm"),
            line("total mass", "319.6 g", "3.0 g"));
        List<TicketStep> steps = List.of(
            new TicketStep("Pull", "Mark shaft %s, then pull it.".formatted(tag), List.of(), List.of(Hazard.HEAT.caution())),
            new TicketStep("Prepare", "Clean tip and bore.", List.of(TicketLine.of("goes in")), List.of()),
            new TicketStep("Weight", "Add 2 g of hot melt in the head.", List.of(line("head mass", "201.5 g", "0.5 g")),
                List.of(Hazard.HOT_MELT.caution())),
            new TicketStep("Dry fit", "Seat it on the bottom without resin.", final7.subList(3, 5), List.of()),
            new TicketStep("Bend", "Bend lie 1.2° flat, face 0.6° open, then read.", List.of(
                new TicketLine("lie", some("58.10°"), Optional.empty(), some("56.80°"), some("0.25°"))), List.of(Hazard.BEND.caution())),
            new TicketStep("Glue", "Bond shaft %s into the head.".formatted(tag), List.of(TicketLine.of("glued at")),
                List.of(Hazard.BOND.caution())),
            new TicketStep("Cure", "Leave it at rest.", List.of(TicketLine.of("handle from")), List.of()),
            new TicketStep("Grip", "Mount grip G-1.", List.of(), List.of(Hazard.SOLVENT.caution())),
            new TicketStep("Final measure", "Measure the finished club.", final7, List.of()));
        SketchAngles before = new SketchAngles(OptionalDouble.of(9.2), OptionalDouble.of(58.1), OptionalDouble.of(0.9),
            OptionalDouble.empty());
        SketchAngles after = new SketchAngles(OptionalDouble.of(8.8), OptionalDouble.of(56.9), OptionalDouble.of(1.5),
            OptionalDouble.empty());
        return new Ticket("12", "Twin of " + tag, some(player), some("2026-05-21 14:20"), "planned", some("tees off early"),
            List.of(new TicketPart("head", "H-069", some("Adze"), "driver drawer 2", 1),
                new TicketPart("shaft", tag, some("Ghyll 65 X"), "on " + tag, 1)),
            steps, List.of(), new TicketReady(some("").map(any -> MADE.plusDays(2)), Optional.empty(), true, "After it is due."),
            List.of(Hazard.FIRST), List.of("Angles are read soled."), Optional.of(new HeadSketchPicture("Head " + tag,
                Category.DRIVER, AngleReading.SOLED, Hand.RIGHT, before, after, SketchSizes.UNMEASURED)), "job:12", MADE, "test");
    }

    /** A set: a row a club, each with as much work as a club of a set ever has. */
    static Ticket set(int clubs, String player) {
        List<TicketRow> rows = new ArrayList<>();
        for (int k = 0; k < clubs; k++) {
            rows.add(new TicketRow((k + 2) + "-iron", List.of(new TicketPart("head", "H-%03d".formatted(k), Optional.empty(),
                "iron drawer 9", 1), new TicketPart("shaft", "S-%03d".formatted(k), Optional.empty(), "rack 6", 1)),
                List.of("loft 0.4° weak", "lie 0.4° flat", "tip 28.6 mm", "prepare and bond", "+1.5 g tape", "butt 87 mm", "regrip"),
                List.of(line("loft °", "%d.00".formatted(20 + 4 * k), "0.25"), line("lie °", "62.20", "0.25"),
                    line("length in", "37 1/4", "1.6 mm"), line("swing", "D1.5", "0.5 pt"), line("cpm", "307.0", "2.0"),
                    line("mass g", "415.7", "3.0"))));
        }
        return new Ticket("13", "Set, %d clubs".formatted(clubs), some(player), Optional.empty(), "planned", Optional.empty(),
            List.of(), List.of(), rows, new TicketReady(Optional.empty(), Optional.empty(), false, "No resin table."),
            List.of(Hazard.FIRST, Hazard.BEND.caution(), Hazard.BOND.caution(), Hazard.CUT.caution(), Hazard.SOLVENT.caution(),
                Hazard.LEAD.caution()), List.of("Angles are read with the leading edge square."), Optional.empty(), "job:13", MADE,
            "test");
    }
}
