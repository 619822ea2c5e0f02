package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.EventKind;
import benchtwin.book.KeptEvent;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.PartActs;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.measure.PlainNumber;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Enters what the work on one club did to its parts: cuts, bends, pulls, the sleeve from the tin, weights. */
final class DoneWork {

    private static final Map<String, String> CUTS = Map.of("tip_cut_mm", "tipCutMm", "butt_cut_mm", "buttCutMm");

    /** Less than any bend that is planned. */
    private static final double HARDLY_BENT_DEG = 0.05;

    private final BookEntry entry;
    private final Thing job;
    private final Thing club;
    private final JobPlan.Club plan;
    private final Map<String, String> facts;
    private final PartActs parts;

    /**
     * @param entry the act it belongs to
     * @param job   the job it was done for
     * @param club  the club
     * @param plan  what was planned
     * @param facts what the club is made of afterwards; where that is not the planned head or shaft, nothing is known of the
     *              work on it
     */
    DoneWork(BookEntry entry, Thing job, Thing club, JobPlan.Club plan, Map<String, String> facts) {
        this.entry = entry;
        this.job = job;
        this.club = club;
        this.plan = plan;
        this.facts = facts;
        this.parts = new PartActs(entry);
    }

    /** What is done to the parts before they are together. */
    void before(Map<String, String> before) throws BookProblem {
        String sleeve = facts.getOrDefault("sleeve", before.getOrDefault("sleeve", ""));
        if (plan.joins().sleeveFromTin() && sleeve.equals(plan.build().get("sleeve"))) {
            parts.buildIn(OpenBook.need(entry, ThingKind.SLEEVE, sleeve), club, Optional.of(job));
        }
        oldShaft(before);
        Optional<Thing> shaft = planned("shaft", ThingKind.SHAFT);
        if (shaft.isPresent()) {
            pulled(shaft.get(), before);
            shaft(shaft.get(), sleeve, facts.getOrDefault("grip", before.getOrDefault("grip", "")));
        }
        Optional<Thing> head = planned("head", ThingKind.HEAD);
        if (head.isPresent() && !BookBends.bentInSession(entry, head.get(), job)) {
            bent(head.get());
        }
    }

    /** The part that was planned, if it was the one used and the book knows it. */
    private Optional<Thing> planned(String slot, ThingKind kind) {
        String tag = plan.build().get(slot);
        return tag != null && tag.equals(facts.get(slot)) ? entry.thing(kind, tag) : Optional.empty();
    }

    /** The shaft that leaves takes its grip along, and its sleeve unless that was freed for the new one. */
    private void oldShaft(Map<String, String> before) throws BookProblem {
        String old = before.getOrDefault("shaft", "");
        Optional<Thing> shaft = old.equals(facts.get("shaft")) ? Optional.empty() : entry.thing(ThingKind.SHAFT, old);
        if (shaft.isEmpty()) {
            return;
        }
        String sleeve = before.getOrDefault("sleeve", "");
        boolean freed = plan.joins().tipOut() && !plan.joins().sleeveFromTin() && sleeve.equals(plan.build().get("sleeve"));
        Map<String, String> goes = new TreeMap<>();
        put(shaft.get(), goes, "sleeve_on", freed ? "" : sleeve);
        put(shaft.get(), goes, "grip_on", before.getOrDefault("grip", ""));
        describe(shaft.get(), goes, "");
    }

    /** A shaft that stays with its club, or lay in the drawer with a sleeve on, may have been pulled for this all the same. */
    private void pulled(Thing shaft, Map<String, String> before) throws BookProblem {
        boolean own = shaft.tag().equals(before.get("shaft"));
        boolean fromItsSleeve = !own && entry.state(shaft).fact("sleeve_on").isPresent()
            && !entry.state(shaft).fact("sleeve_on").equals(Optional.ofNullable(plan.build().get("sleeve")));
        if (!plan.joins().tipOut() || !own && !fromItsSleeve) {
            return;
        }
        entry.add(shaft, NewEvent.of(EventKind.PULLED).of(job));
        if (own) {
            parts.buildIn(shaft, club, Optional.of(job));
        }
    }

    private void shaft(Thing shaft, String sleeve, String grip) throws BookProblem {
        Map<String, String> news = new TreeMap<>();
        State known = entry.state(shaft);
        CUTS.forEach((fact, amount) -> {
            double more = plan.amounts().getOrDefault(amount, 0.0);
            if (more != 0) {
                news.put(fact, PlainNumber.text(Double.parseDouble(known.fact(fact).orElse("0")) + more));
            }
        });
        put(shaft, news, "sleeve_on", sleeve);
        put(shaft, news, "grip_on", grip);
        double longer = plan.amounts().getOrDefault("extensionMm", 0.0);
        describe(shaft, news, longer > 0 ? "butt extended by %s mm".formatted(PlainNumber.text(longer)) : "");
    }

    private void put(Thing thing, Map<String, String> news, String fact, String text) {
        if (!entry.state(thing).fact(fact).orElse("").equals(text)) {
            news.put(fact, text);
        }
    }

    private void describe(Thing thing, Map<String, String> news, String words) throws BookProblem {
        if (!news.isEmpty() || !words.isEmpty()) {
            entry.add(thing, NewEvent.of(EventKind.DESCRIBED).with(news).of(job).saying(words));
        }
    }

    private void bent(Thing head) throws BookProblem {
        double upright = plan.amounts().getOrDefault("tiltUprightDeg", 0.0);
        double forward = plan.amounts().getOrDefault("tiltForwardDeg", 0.0);
        Map<String, String> bent = new TreeMap<>();
        if (upright != 0) {
            bent.put(upright > 0 ? "bent_upright_deg" : "bent_flat_deg", PlainNumber.text(Math.abs(upright)));
        }
        if (forward != 0) {
            bent.put(forward > 0 ? "bent_forward_deg" : "bent_back_deg", PlainNumber.text(Math.abs(forward)));
        }
        if (!bent.isEmpty()) {
            entry.add(head, NewEvent.of(EventKind.BENT).with(bent).of(job));
        }
    }

    /** The club's facts, with a mark for every quantity that the work moves and nobody read since. */
    Map<String, String> marked(Map<String, String> clubFacts, Iterable<NewReading> readings) {
        State now = entry.state(club);
        Map<String, String> marked = new TreeMap<>(clubFacts);
        if (!now.facts().getOrDefault("head", "").equals(clubFacts.get("head"))
            || !now.facts().getOrDefault("shaft", "").equals(clubFacts.get("shaft"))) {
            return marked;   // nothing read of it before tells of another head or shaft
        }
        Set<String> read = new java.util.HashSet<>();
        readings.forEach(reading -> read.add(reading.quantity()));
        long last = entry.events(club).stream().mapToLong(KeptEvent::id).max().orElse(0);
        ClubValues.carried(ClubValues.of(ClubReadings.current(now)), ClubViews.category(now)).forEach((quantity, value) -> {
            String column = ReadColumn.of(quantity).orElseThrow().column();
            Double after = plan.predicted().get(quantity);
            if (!read.contains(column) && after != null && Math.abs(after - value.value())
                > (quantity.isAngle() ? HARDLY_BENT_DEG : value.uncertainty())) {
                marked.put(ClubReadings.mark(column), Long.toString(last));
            }
        });
        return marked;
    }

    /** What is known of the parts once they are together: weights that changed places, and what bends and cuts made of them. */
    void after(Map<String, String> before, Iterable<NewReading> readings) throws BookProblem {
        Optional<Thing> head = planned("head", ThingKind.HEAD);
        Optional<Thing> shaft = planned("shaft", ThingKind.SHAFT);
        new WeightsIn(entry, job, club, plan).enter(head, shaft.isPresent());
        WorkedOut worked = new WorkedOut(entry, job, club, plan);
        if (head.isPresent() && entry.events(head.get()).stream().anyMatch(event -> event.event().kind() == EventKind.BENT
            && event.event().job().equals(Optional.of(job)))) {
            worked.bentHead(head.get(), readings);
        }
        if (shaft.isPresent() && CUTS.values().stream().anyMatch(amount -> plan.amounts().getOrDefault(amount, 0.0) != 0)) {
            worked.cutShaft(shaft.get());
        }
    }
}
