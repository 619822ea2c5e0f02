package benchtwin.bench;

import benchtwin.book.BookView;
import benchtwin.book.CurrentReading;
import benchtwin.book.Standing;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.measure.PlainNumber;
import benchtwin.picture.HeadSketchPicture;
import benchtwin.ticket.TicketLine;
import benchtwin.ticket.TicketPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What the book knows of the parts of a ticket. */
final class TicketParts {

    private static final List<ThingKind> BUILT = List.of(ThingKind.HEAD, ThingKind.SHAFT, ThingKind.SLEEVE, ThingKind.GRIP);
    private static final List<String> IN_THE_HEAD = List.of("meltG", "weightG");

    private final BookView view;

    TicketParts(BookView view) {
        this.view = view;
    }

    /** Head, shaft, sleeve and grip, then weights. */
    List<TicketPart> of(JobPlan.Club plan) {
        List<TicketPart> parts = new ArrayList<>(built(plan.build(), plan.joins().sleeveFromTin()));
        plan.weights().stream().map(JobPlan.WeightIn::tag).distinct().forEach(tag -> parts.add(part(ThingKind.WEIGHT, tag,
            Optional.empty(), (int) plan.weights().stream().filter(weight -> weight.tag().equals(tag)).count())));
        return parts;
    }

    /** The parts of a club as it is. */
    List<TicketPart> ofClub(State club) {
        return built(club.facts(), false);
    }

    private List<TicketPart> built(Map<String, String> build, boolean sleeveFromTin) {
        List<TicketPart> parts = new ArrayList<>();
        for (ThingKind kind : BUILT) {
            String tag = build.getOrDefault(kind.word(), "");
            if (!tag.isEmpty()) {
                Optional<String> where = kind == ThingKind.SLEEVE && !sleeveFromTin && build.containsKey("shaft")
                    ? Optional.of("on shaft " + build.get("shaft")) : Optional.empty();
                parts.add(part(kind, tag, where, 1));
            }
        }
        return parts;
    }

    private TicketPart part(ThingKind kind, String tag, Optional<String> where, int count) {
        Optional<State> state = state(kind, tag);
        String place = where.or(() -> state.flatMap(State::club).map(club -> "on " + club))
            .or(() -> state.filter(one -> one.standing() == Standing.RETIRED).map(one -> "retired"))
            .or(() -> state.flatMap(one -> one.fact("place"))).orElse("no place recorded");
        return new TicketPart(kind.word(), tag, state.flatMap(one -> one.fact("model")), place, count);
    }

    private Optional<State> state(ThingKind kind, String tag) {
        Optional<Thing> thing = view.thing(kind, tag);
        return thing.map(view::state);
    }

    /** The head before and after, where its angles change. */
    Optional<HeadSketchPicture> sketch(JobPlan.Club plan) {
        return head(plan).flatMap(head -> TicketSketch.of(plan.build().get("head"), head, plan));
    }

    private Optional<State> head(JobPlan.Club plan) {
        return Optional.ofNullable(plan.build().get("head")).flatMap(tag -> state(ThingKind.HEAD, tag));
    }

    /** How far the shaft goes into what it is bonded into, where that was measured. */
    Optional<String> insertion(JobPlan.Club plan) {
        Optional<State> into = plan.build().containsKey("sleeve") ? state(ThingKind.SLEEVE, plan.build().get("sleeve")) : head(plan);
        return into.flatMap(one -> number(one, "bore_depth_mm")).map(mm -> PlainNumber.text(mm) + " mm");
    }

    /** The angle the head has now, where it was read as the plan's are. */
    Optional<String> headAngle(JobPlan.Club plan, Quantity angle) {
        String column = ReadColumn.of(angle).orElseThrow().column();
        return head(plan).flatMap(head -> head.readings().stream().filter(one -> one.read().quantity().equals(column))
            .filter(one -> plan.reading().isEmpty() || one.read().condition().getOrDefault("reading",
                plan.reading().get().word()).equals(plan.reading().get().word()))
            .reduce((earlier, later) -> later)).map(reading -> QuantityText.value(angle, value(reading)));
    }

    /** The head on the scale: what it weighs, and with what the plan puts in. */
    TicketLine headMass(JobPlan.Club plan) {
        Optional<Double> now = head(plan).flatMap(head -> number(head, "mass_g"));
        double more = IN_THE_HEAD.stream().mapToDouble(name -> plan.amounts().getOrDefault(name, 0.0)).sum();
        return new TicketLine("head mass", now.map(TicketParts::grams), Optional.empty(), now.map(mass -> grams(mass + more)), Optional.empty());
    }

    private static String grams(double grams) {
        return String.format(Locale.ROOT, "%.1f g", grams);
    }

    /** A number the book has as a reading or as a fact. */
    static Optional<Double> number(State state, String name) {
        return state.readings().stream().filter(one -> one.read().quantity().equals(name)).reduce((earlier, later) -> later)
            .map(TicketParts::value).or(() -> state.fact(name).map(Double::valueOf));
    }

    private static double value(CurrentReading reading) {
        return reading.read().value().orElseThrow();
    }
}
