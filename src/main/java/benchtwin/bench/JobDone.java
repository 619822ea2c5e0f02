package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.ClubActs;
import benchtwin.book.EventKind;
import benchtwin.book.JobActs;
import benchtwin.book.Moment;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.ClubState;
import benchtwin.measure.PlainNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Hands a job over: what was planned is now so. Parts go into the club, cuts and bends into the parts' records, readings
 * into the club's; promises that were not needed lapse. All in one act.
 */
public final class JobDone {

    private static final List<String> HEAD_MASSES = List.of("tape_g", "melt_g");
    private static final Map<String, String> AMOUNTS = Map.of("tape_g", "tapeG", "melt_g", "meltG", "tip_weight_g", "tipWeightG");

    /**
     * How it came out.
     * @param sitting    what the club measures now
     * @param as         the tag of the club that was built, where it is a new one; of several, what their tags begin with
     * @param facts      what was done otherwise than planned, by name
     * @param state      in play, backup and so on, where it is said
     * @param oldCracked whether the head that came off is cracked
     * @param oldBroken  whether the shaft that came out is broken
     */
    public record Result(Sitting sitting, Optional<String> as, Map<String, String> facts, Optional<ClubState> state,
                         boolean oldCracked, boolean oldBroken) {

        boolean saysNothing() {
            return sitting.values().isEmpty() && facts.isEmpty() && state.isEmpty() && !oldCracked && !oldBroken;
        }
    }

    private final OpenBook book;
    private final BookEntry entry;
    private final Thing job;
    private final Result result;
    private final List<String> remarks = new ArrayList<>();
    private final List<String> gripless = new ArrayList<>();

    private JobDone(OpenBook book, BookEntry entry, Thing job, Result result) {
        this.book = book;
        this.entry = entry;
        this.job = job;
        this.result = result;
    }

    /**
     * Hands a job over.
     * @param book   the book
     * @param number the job's number
     * @param result how it came out
     * @return what the person who enters it should know
     * @throws BadInput when there is no such job, it is over, or a part went elsewhere; then nothing is kept
     */
    public static List<String> handOver(OpenBook book, String number, Result result) throws BadInput {
        return book.write("job done", entry -> {
            JobDone done = new JobDone(book, entry, JobBook.needOpen(entry, number), result);
            done.run();
            return done.remarks;
        });
    }

    private void run() throws BookProblem {
        State state = entry.state(job);
        List<JobPlan.Club> clubs = JobPlan.read(state).orElse(JobPlan.NONE).clubs();
        if (clubs.isEmpty()) {
            unplanned(state);
        } else if (clubs.size() == 1) {
            built(state, clubs.get(0));
        } else {
            several(state, clubs);
        }
        if (!gripless.isEmpty()) {
            remarks.add("Which grip went on %s is not known; %s".formatted(String.join(", ", gripless), book.asks(ToDo.GRIP_ON,
                gripless.get(0))));
        }
        new JobActs(entry).handOver(job, Map.of(), result.sitting().note().orElse(""));
    }

    /** A job without a plan: what was read and changed is the club's. */
    private void unplanned(State state) throws BookProblem {
        Optional<String> tag = state.fact("club");
        if (result.as().isPresent()) {
            throw new BookProblem("%s has no plan, so it makes no new club: %s".formatted(job.name(), book.asks(ToDo.NO_NEW_CLUB)));
        }
        if (tag.isEmpty()) {
            if (!result.saysNothing()) {
                throw new BookProblem("%s has neither a plan nor a club, so nothing can be entered of one; %s".formatted(job.name(),
                    book.asks(ToDo.READINGS_ELSEWHERE)));
            }
            return;
        }
        Thing club = OpenBook.need(entry, ThingKind.CLUB, tag.get());
        Map<String, String> before = entry.state(club).facts();
        if (result.saysNothing()) {
            remarks.add("%s was handed over unmeasured; what it measures is as last read".formatted(club.name()));
            return;
        }
        Map<String, String> facts = new TreeMap<>(result.facts());
        result.state().ifPresent(now -> facts.put("state", now.word()));
        record(club, before, facts, ClubBook.readings(entry, club, result.sitting(), facts));
        new CameOff(book, entry, club, before, remarks).retire(result.oldCracked(), result.oldBroken());
    }

    /** Several clubs: those of a set are new, those of a regrip are there already; each is read on its own afterwards. */
    private void several(State state, List<JobPlan.Club> clubs) throws BookProblem {
        if (!new Result(result.sitting(), Optional.empty(), result.facts(), result.state(), result.oldCracked(), result.oldBroken())
            .saysNothing()) {
            throw new BookProblem("%s makes %d clubs: hand it over without readings and parts, then enter each club's with benchtwin "
                .formatted(job.name(), clubs.size()) + "club record");
        }
        List<String> tags = new ArrayList<>();
        List<String> worked = new ArrayList<>();
        for (JobPlan.Club plan : clubs) {
            Optional<Thing> kept = entry.thing(ThingKind.CLUB, plan.name()).filter(club -> plan.saysNoParts());
            if (kept.isPresent()) {
                Map<String, String> before = entry.state(kept.get()).facts();
                JobPlan.Club whole = plan.keeping(before);
                finish(kept.get(), whole, before, facts(whole, before, soundAgain(before)), List.of());
                worked.add(kept.get().tag());
                continue;
            }
            Thing club = newClub(state, plan, "%s-%s".formatted(result.as().orElse("job" + job.tag()), plan.name()));
            tags.add(club.tag());
            finish(club, plan, Map.of(), facts(plan, Map.of(), ClubState.IN_PLAY.word()), List.of());
        }
        if (!tags.isEmpty()) {
            remarks.add("New in the book, and not read yet: %s".formatted(String.join(", ", tags)));
        }
        if (!worked.isEmpty()) {
            unmeasured(String.join(", ", worked));
        }
    }

    private void unmeasured(String clubs) {
        remarks.add("%s %s handed over unmeasured; what the work moved is not known until it is read".formatted(clubs,
            clubs.contains(", ") ? "were" : "was"));
    }

    private void built(State state, JobPlan.Club plan) throws BookProblem {
        Optional<Thing> club = existing(plan);
        if (club.isPresent()) {
            Map<String, String> before = entry.state(club.get()).facts();
            JobPlan.Club whole = plan.saysNoParts() ? plan.keeping(before) : plan;
            Map<String, String> facts = facts(whole, before, soundAgain(before));
            List<NewReading> readings = ClubBook.readings(entry, club.get(), result.sitting(), facts);
            finish(club.get(), whole, before, facts, readings);
            if (readings.isEmpty() && result.as().isEmpty()) {
                unmeasured(club.get().name());
            }
            new CameOff(book, entry, club.get(), before, remarks).retire(result.oldCracked(), result.oldBroken());
            return;
        }
        if (result.oldCracked() || result.oldBroken()) {
            throw new BookProblem("%s makes a new club, so nothing came off an old one: leave out %s".formatted(job.name(),
                book.asks(result.oldCracked() ? ToDo.OLD_CRACKED : ToDo.OLD_BROKEN)));
        }
        Thing fresh = newClub(state, plan, result.as().orElseThrow());
        Optional<Thing> twin = entry.thing(ThingKind.CLUB, plan.name());
        boolean spare = twin.filter(one -> soundAgain(entry.state(one).facts()).equals(entry.state(one).fact("state").orElse("")))
            .isPresent();
        Map<String, String> facts = facts(plan, Map.of(), spare ? ClubState.BACKUP.word() : ClubState.IN_PLAY.word());
        finish(fresh, plan, Map.of(), facts, ClubBook.readings(entry, fresh, result.sitting(), facts));
    }

    /** The club the plan changes; empty where it makes a new one. */
    private Optional<Thing> existing(JobPlan.Club plan) throws BookProblem {
        Optional<Thing> planned = entry.thing(ThingKind.CLUB, plan.name());
        Map<String, String> parts = planned.map(club -> entry.state(club).facts()).orElse(Map.of());
        boolean keeps = planned.isPresent() && isOf(plan, parts);
        if (result.as().isEmpty()) {
            if (!keeps) {
                throw new BookProblem("%s makes a new club; %s%s".formatted(job.name(), book.asks(ToDo.NEW_TAG), planned.isEmpty() ? ""
                    : " (%s lets it take the place of the old one)".formatted(book.asks(ToDo.THIS_TAG, plan.name()))));
            }
            return planned;
        }
        Optional<Thing> named = entry.thing(ThingKind.CLUB, result.as().get());
        if (named.isPresent() && !named.equals(planned)) {
            throw new BookProblem("%s is in the book already, %s; expected a tag that is not".formatted(named.get().name(),
                entry.state(named.get()).fact("player").map(player -> player + "'s").orElse("nobody's")));
        }
        if (named.isEmpty() && keeps) {
            throw new BookProblem("%s keeps a part of %s, so that is the club it makes: %s".formatted(job.name(),
                plan.name(), book.asks(ToDo.LEAVE_AS)));
        }
        return named;
    }

    /** Whether a plan works on the club with these parts: what keeps its head or its shaft stays the club it is. */
    static boolean isOf(JobPlan.Club plan, Map<String, String> parts) {
        return plan.saysNoParts() || List.of("head", "shaft").stream().anyMatch(part ->
            Objects.equals(plan.build().get(part), parts.get(part)));
    }

    /** In play again what was damaged; any other club as it was. */
    private static String soundAgain(Map<String, String> before) {
        String state = before.getOrDefault("state", ClubState.IN_PLAY.word());
        boolean sound = java.util.Arrays.stream(ClubState.values()).anyMatch(one -> one.word().equals(state) && one.isSound());
        return sound ? state : ClubState.IN_PLAY.word();
    }

    /** What the club is made of now: as planned, but for what was done otherwise. */
    private Map<String, String> facts(JobPlan.Club plan, Map<String, String> before, String state) {
        Map<String, String> facts = new TreeMap<>(plan.build());
        if (!before.isEmpty() && before.getOrDefault("tape_layers", "1").equals(facts.getOrDefault("tape_layers", "1"))) {
            facts.remove("tape_layers");
        }
        for (String gone : List.of("sleeve", "setting")) {
            if (before.containsKey(gone) && !plan.build().containsKey(gone)) {
                facts.put(gone, "");
            }
        }
        if (before.containsKey("grip") && plan.joins().anyGrip()) {
            facts.put("grip", "");
        }
        facts.put("state", result.state().map(ClubState::word).orElse(state));
        AMOUNTS.forEach((fact, amount) -> {
            String holder = HEAD_MASSES.contains(fact) ? "head" : "shaft";
            boolean same = plan.build().get(holder).equals(before.get(holder));
            double now = (same ? Double.parseDouble(before.getOrDefault(fact, "0")) : 0) + plan.amounts().getOrDefault(amount, 0.0);
            if (before.containsKey(fact) || now != 0) {
                facts.put(fact, PlainNumber.text(now));
            }
        });
        facts.putAll(result.facts());
        return facts;
    }

    private void finish(Thing club, JobPlan.Club plan, Map<String, String> before, Map<String, String> facts,
                        List<NewReading> readings) throws BookProblem {
        if (plan.joins().anyGrip() && facts.getOrDefault("grip", "").isEmpty()) {
            gripless.add(club.tag());
        }
        DoneWork work = new DoneWork(entry, job, club, plan, facts);
        work.before(before);
        record(club, before, work.marked(facts, readings), readings);
        work.after(before, readings);
    }

    private Thing newClub(State state, JobPlan.Club plan, String tag) throws BookProblem {
        Map<String, String> lasting = new TreeMap<>();
        state.fact("player").ifPresent(player -> lasting.put("player", player));
        Thing head = OpenBook.need(entry, ThingKind.HEAD, result.facts().getOrDefault("head", plan.build().get("head")));
        for (String name : List.of("category", "number", "hand")) {
            entry.state(head).fact(name).ifPresent(text -> lasting.put(name, text));
        }
        return entry.add(ThingKind.CLUB, tag, at(NewEvent.of(EventKind.RECEIVED).with(lasting).of(job)));
    }

    private void record(Thing club, Map<String, String> before, Map<String, String> facts, List<NewReading> readings)
        throws BookProblem {
        ClubBook.refuseBackdated(book, entry, club, result.sitting());
        SleeveTin.leaveAlone(entry, club, before, facts, Optional.of(job), result.sitting().on().map(Moment::on));
        NewEvent event = at(NewEvent.of(EventKind.RECORDED).with(facts).reading(readings).of(job));
        remarks.addAll(new ClubActs(entry).enter(club, event.saying(result.sitting().note().orElse(""))));
    }

    private NewEvent at(NewEvent event) {
        return result.sitting().on().map(day -> event.at(Moment.on(day))).orElse(event);
    }
}
