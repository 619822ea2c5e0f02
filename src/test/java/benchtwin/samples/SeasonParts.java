package benchtwin.samples;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.EventKind;
import benchtwin.book.JobActs;
import benchtwin.book.Moment;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.PartActs;
import benchtwin.book.Standing;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Adjust;
import benchtwin.club.Head;
import benchtwin.club.Shaft;
import benchtwin.measure.DefaultUncertainty;
import benchtwin.measure.Reading;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** What befalls the parts in the drawers in a year: read on another gauge, bent, moved, promised to jobs, retired. */
final class SeasonParts {

    private static final double READ_AGAIN_SHARE = 0.2;
    private static final double BENT_SHARE = 0.05;
    private static final double MOVED_SHARE = 0.05;
    private static final double RETIRED_SHARE = 0.01;
    /** Jobs for so many parts. */
    private static final double JOB_SHARE = 0.01;

    private final Draw draw;
    private final List<Head> heads;
    private final List<Shaft> shafts;
    private final List<String> players;
    private final List<Thing> openJobs = new ArrayList<>();

    SeasonParts(Draw draw, SeasonStock stock) {
        this.draw = draw;
        heads = stock.headsInDrawers();
        shafts = stock.shaftsInRack();
        players = stock.clubs().players();
    }

    /** Enters a week, and says how many readings. */
    int week(BookEntry entry, int week, int weeks, LocalDate day) throws BookProblem {
        int readings = 0;
        for (Head head : heads.subList(heads.size() * week / weeks, heads.size() * (week + 1) / weeks)) {
            Thing thing = entry.thing(ThingKind.HEAD, head.tag()).orElseThrow();
            if (draw.chance(READ_AGAIN_SHARE)) {
                readings += readAgain(entry, thing, head, day);
            }
            happens(entry, thing, head, day);
        }
        for (Shaft shaft : shafts.subList(shafts.size() * week / weeks, shafts.size() * (week + 1) / weeks)) {
            Thing thing = entry.thing(ThingKind.SHAFT, shaft.tag()).orElseThrow();
            if (shaft.massG().isPresent() && draw.chance(READ_AGAIN_SHARE)) {
                entry.add(thing, NewEvent.of(EventKind.MEASURED).at(Moment.on(day)).reading(List.of(
                    again("mass_g", shaft.massG().get().value(), "grams", DefaultUncertainty.MASS_G, Map.of(), "scale 1", day))));
                readings++;
            }
            happens(entry, thing, null, day);
        }
        jobs(entry, day);
        return readings;
    }

    private int readAgain(BookEntry entry, Thing thing, Head head, LocalDate day) throws BookProblem {
        List<NewReading> readings = new ArrayList<>();
        Map<String, String> condition = entry.state(thing).readings().stream().map(reading -> reading.read())
            .filter(read -> read.quantity().equals("lie_deg")).map(NewReading::condition).findFirst().orElse(Map.of());
        add(readings, "loft_deg", head.angles().loftDeg(), DefaultUncertainty.IRON_LOFT_DEG, condition, day);
        add(readings, "lie_deg", head.angles().lieDeg(), DefaultUncertainty.IRON_LIE_DEG, condition, day);
        entry.add(thing, NewEvent.of(EventKind.MEASURED).at(Moment.on(day)).reading(readings));
        return readings.size();
    }

    private void add(List<NewReading> readings, String quantity, Optional<Reading> earlier, double uncertainty,
                     Map<String, String> condition, LocalDate day) {
        earlier.ifPresent(read -> readings.add(again(quantity, read.value(), "degrees", uncertainty, condition, "loft and lie 1",
            day)));
    }

    private NewReading again(String quantity, double value, String unit, double uncertainty, Map<String, String> condition,
                             String gauge, LocalDate day) {
        return new NewReading(quantity, OptionalDouble.of(draw.read(value, 0.05, 0.2, 1)), OptionalDouble.of(uncertainty), unit,
            condition, Optional.of(gauge), Optional.empty(), Optional.of(Moment.on(day)), Optional.of("Kim"), Optional.empty(),
            OptionalLong.empty());
    }

    private void happens(BookEntry entry, Thing thing, Head head, LocalDate day) throws BookProblem {
        State state = entry.state(thing);
        if (state.standing() != Standing.THERE) {
            return;
        }
        PartActs acts = new PartActs(entry);
        if (head != null && head.adjust() == Adjust.BEND && draw.chance(BENT_SHARE)) {
            entry.add(thing, NewEvent.of(EventKind.BENT).at(Moment.on(day)).with(Map.of("bent_upright_deg",
                String.format(Locale.ROOT, "%.1f", draw.between(0.1, 0.5)))));
        }
        if (draw.chance(MOVED_SHARE)) {
            acts.move(thing, draw.pick(List.of("van", "bench", "drawer 12")));
        }
        if (draw.chance(RETIRED_SHARE)) {
            acts.retire(thing, false, draw.pick(List.of("sold", "lost", "given back")));
        } else if (state.promises().isEmpty() && draw.chance(JOB_SHARE)) {
            job(entry, thing, day);
        }
    }

    private void job(BookEntry entry, Thing part, LocalDate day) throws BookProblem {
        JobActs acts = new JobActs(entry);
        Thing job = acts.open(Map.of("what", "twin", "player", draw.pick(players), "due", day.plusDays(9).toString()), "");
        acts.plan(job, Map.of(), List.of(new JobActs.Needed(part, 1)));
        openJobs.add(job);
    }

    /** Most of the older jobs are done or called off by now. */
    private void jobs(BookEntry entry, LocalDate day) throws BookProblem {
        JobActs acts = new JobActs(entry);
        for (Thing job : List.copyOf(openJobs)) {
            if (draw.chance(0.3)) {
                if (draw.chance(0.8)) {
                    acts.handOver(job, Map.of(), "");
                } else {
                    acts.callOff(job, "not wanted any more");
                }
                openJobs.remove(job);
            }
        }
    }
}
