package benchtwin.book;

import benchtwin.measure.PlainNumber;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Works out how a thing stands from its events, oldest first by the time they count from. The same events give the same
 * state, whenever and in whatever order they were entered.
 */
final class Fold {

    private static final List<String> BEND_DIRECTIONS = List.of("upright", "flat", "forward", "back");

    /** Of a reading: what it is of, how and on what it was read. */
    private record Group(String quantity, Map<String, String> condition, Optional<String> gauge) {
    }

    private final ThingKind kind;
    private final LastWords lastWords;
    private final Map<Long, Long> entryOf = new HashMap<>();
    private final Map<String, String> facts = new TreeMap<>();
    private final Map<Group, List<CurrentReading>> readings = new LinkedHashMap<>();
    private final List<Promise> promises = new ArrayList<>();
    private Standing standing;
    private Optional<String> club = Optional.empty();
    private Optional<Accepted> accepted = Optional.empty();

    private Fold(ThingKind kind, LastWords lastWords) {
        this.kind = kind;
        this.lastWords = lastWords;
        this.standing = kind == ThingKind.JOB ? Standing.WAITING : Standing.THERE;
    }

    /** The state after these events, all of one thing. */
    static State of(ThingKind kind, List<KeptEvent> events) {
        return of(kind, events, events);
    }

    /** The same with corrections that are found among other events too. */
    static State of(ThingKind kind, List<KeptEvent> events, List<KeptEvent> corrections) {
        Fold fold = new Fold(kind, new LastWords(corrections));
        events.stream().sorted(Comparator.comparing(KeptEvent::since).thenComparing(KeptEvent::id)).forEach(fold::take);
        return fold.state();
    }

    private State state() {
        return new State(standing, facts, current(), promises, club, accepted);
    }

    private List<CurrentReading> current() {
        return readings.values().stream().flatMap(List::stream)
            .sorted(Comparator.comparing((CurrentReading one) -> one.read().quantity()).thenComparing(CurrentReading.BY_TIME))
            .toList();
    }

    private void take(KeptEvent kept) {
        NewEvent event = kept.event();
        switch (event.kind()) {
            case PROMISED -> promises.add(new Promise(event.job().map(Thing::tag), event.facts().getOrDefault("whom", ""),
                Integer.parseInt(event.facts().getOrDefault("count", "1"))));
            case RELEASED -> release(event);
            case BUILT_IN -> buildIn(event);
            case PULLED -> pull(event);
            case BENT -> bend(event.facts());
            case RETIRED -> {
                standing = Standing.RETIRED;
                promises.clear();
                learn(event.facts());
            }
            case RETURNED -> {
                standing = Standing.THERE;
                learn(event.facts());
            }
            case PLANNED -> {
                standing = Standing.PLANNED;
                learn(event.facts());
            }
            case HANDED_OVER -> {
                standing = Standing.HANDED_OVER;
                learn(event.facts());
            }
            case CALLED_OFF -> {
                standing = Standing.CALLED_OFF;
                learn(event.facts());
            }
            default -> learn(event.facts());
        }
        readings.keySet().removeIf(group -> Overtaken.byAct(event.kind(), group.quantity()));
        read(kept);
        if (event.kind() == EventKind.RECORDED && Overtaken.isSound(facts)) {
            accepted = Optional.of(new Accepted(kept.since(), facts, current()));
        }
    }

    private void learn(Map<String, String> news) {
        readings.keySet().removeIf(group -> Overtaken.byFacts(kind, facts, news, group.quantity()));
        news.forEach((name, text) -> {
            if (text.isEmpty()) {
                facts.remove(name);
            } else {
                facts.put(name, text);
            }
        });
    }

    /** One of a counted part leaves the tin, and one of those promised; any other part sits in the club from then on. */
    private void buildIn(NewEvent event) {
        if (kind.isCounted()) {
            count(-1);
            keepOne(event.job().map(Thing::tag));
        } else {
            release(event);
            standing = Standing.BUILT_IN;
            club = Optional.ofNullable(event.facts().get("club"));
        }
    }

    private void pull(NewEvent event) {
        learn(event.facts());
        if (kind.isCounted()) {
            count(1);
            return;
        }
        standing = standing == Standing.RETIRED ? standing : Standing.THERE;
        club = Optional.empty();
        if (kind == ThingKind.SHAFT) {
            facts.put("pulls", Integer.toString(Integer.parseInt(facts.getOrDefault("pulls", "0")) + 1));
            facts.put("condition", "pulled");
        }
    }

    private void count(int more) {
        facts.put("count", Integer.toString(Math.max(0, Integer.parseInt(facts.getOrDefault("count", "1")) + more)));
    }

    private void keepOne(Optional<String> job) {
        for (int at = 0; job.isPresent() && at < promises.size(); at++) {
            Promise promise = promises.get(at);
            if (promise.job().equals(job)) {
                promises.remove(at);
                if (promise.count() > 1) {
                    promises.add(at, new Promise(promise.job(), promise.whom(), promise.count() - 1));
                }
                return;
            }
        }
    }

    /** A job's own promise, one person's, or every one. */
    private void release(NewEvent event) {
        Optional<String> job = event.job().map(Thing::tag);
        String whom = event.facts().get("whom");
        promises.removeIf(promise -> job.isPresent() ? promise.job().equals(job)
            : event.kind() == EventKind.RELEASED && (whom == null || promise.job().isEmpty() && promise.whom().equals(whom)));
    }

    /** Tilt adds up over a head's life, each direction on its own. */
    private void bend(Map<String, String> bent) {
        for (String direction : BEND_DIRECTIONS) {
            String name = "bent_%s_deg".formatted(direction);
            if (bent.containsKey(name)) {
                double before = Double.parseDouble(facts.getOrDefault(name, "0"));
                facts.put(name, PlainNumber.text(before + Double.parseDouble(bent.get(name))));
            }
        }
    }

    /**
     * The readings of one event take the place of older ones of the same quantity, condition and gauge; what was entered in one
     * act as read at one time is one sitting. A correction has the place of what it corrects.
     */
    private void read(KeptEvent kept) {
        Map<Group, List<CurrentReading>> fresh = new LinkedHashMap<>();
        for (KeptReading reading : kept.readings()) {
            if (reading.read().corrects().isPresent()) {
                continue;
            }
            KeptReading last = lastWords.lastOf(reading);
            NewReading read = last.read();
            if (read.value().isPresent()) {
                fresh.computeIfAbsent(new Group(read.quantity(), read.condition(), read.gauge()), group -> new ArrayList<>())
                    .add(new CurrentReading(last.id(), kept.id(), kept.since(), read.byItself()));
            }
        }
        entryOf.put(kept.id(), kept.entry().id());
        fresh.forEach((group, read) -> {
            List<CurrentReading> before = readings.getOrDefault(group, List.of());
            boolean sameSitting = !before.isEmpty() && before.get(0).since().equals(kept.since())
                && entryOf.get(before.get(0).event()) == kept.entry().id();
            List<CurrentReading> now = new ArrayList<>(sameSitting ? before : List.of());
            now.addAll(read);
            readings.put(group, now);
        });
    }
}
