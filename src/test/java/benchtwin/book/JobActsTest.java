package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Jobs with their parts, all of an act or nothing of it. */
class JobActsTest {

    @TempDir
    private Path folder;
    private Book book;
    private Thing head;
    private Thing shaft;
    private Thing weight;
    private Thing job;

    /** Something done in an entry of its own. */
    @FunctionalInterface
    private interface Act {
        void by(JobActs acts) throws BookProblem;
    }

    @BeforeEach
    void aJob() throws BookProblem {
        book = Books.in(folder);
        book.write(Books.JO, "parts", entry -> {
            head = entry.add(ThingKind.HEAD, "H-1", NewEvent.of(EventKind.RECEIVED));
            shaft = entry.add(ThingKind.SHAFT, "S-1", NewEvent.of(EventKind.RECEIVED));
            weight = entry.add(ThingKind.WEIGHT, "W-1", NewEvent.of(EventKind.RECEIVED).with(Map.of("count", "3")));
            job = new JobActs(entry).open(Map.of("player", "A. Okoro", "what", "twin"), "before Thursday");
            return null;
        });
    }

    private void act(Act act) throws BookProblem {
        book.write(Books.JO, "an act", entry -> {
            act.by(new JobActs(entry));
            return null;
        });
    }

    private State state(Thing thing) throws BookProblem {
        return book.read(view -> view.state(thing));
    }

    private List<String> promisedTo(Thing to) throws BookProblem {
        return book.read(view -> JobActs.promisedTo(view, to).stream().map(part -> part.thing().tag()).toList());
    }

    private static JobActs.Needed one(Thing part) {
        return new JobActs.Needed(part, 1);
    }

    @Test
    void jobsAreNumberedOnWhateverElseIsCalledAJob() throws BookProblem {
        assertThat(job.tag()).isEqualTo("1");
        book.write(Books.JO, "jobs of other names", entry -> {
            entry.add(ThingKind.JOB, "the big one", NewEvent.of(EventKind.RECEIVED));
            entry.add(ThingKind.JOB, "99999999999999999999", NewEvent.of(EventKind.RECEIVED));
            return entry.add(ThingKind.JOB, "7", NewEvent.of(EventKind.RECEIVED));
        });
        Thing next = book.write(Books.JO, "a job", entry -> new JobActs(entry).open(Map.of(), ""));
        assertThat(next.tag()).isEqualTo("8");
    }

    @Test
    void aPlanPromisesItsPartsToTheJobAndItsPlayer() throws BookProblem {
        act(acts -> acts.plan(job, Map.of("plan", "lie 0.6 upright"), List.of(one(head), new JobActs.Needed(weight, 2))));
        assertThat(state(head).promises()).containsExactly(new Promise(Optional.of("1"), "A. Okoro", 1));
        assertThat(state(weight).promised()).isEqualTo(2);
        assertThat(state(job).standing()).isEqualTo(Standing.PLANNED);
        assertThat(state(job).facts()).isEqualTo(Map.of("player", "A. Okoro", "what", "twin", "plan", "lie 0.6 upright"));
        assertThat(promisedTo(job)).containsExactly("H-1", "W-1");
    }

    @Test
    void anotherPlanFreesThePartsOfTheFirst() throws BookProblem {
        act(acts -> acts.plan(job, Map.of("plan", "one"), List.of(one(head), one(weight))));
        act(acts -> acts.plan(job, Map.of("plan", "two"), List.of(one(shaft), new JobActs.Needed(weight, 3))));
        assertThat(promisedTo(job)).containsExactly("W-1", "S-1");
        assertThat(state(head).promises()).isEmpty();
        assertThat(state(weight).promised()).isEqualTo(3);
        assertThat(state(job).fact("plan")).contains("two");
    }

    @Test
    void aPlanOfWhichOnePartIsNotFreeChangesNothing() throws BookProblem {
        act(acts -> acts.plan(job, Map.of("plan", "one"), List.of(one(head))));
        Thing other = book.write(Books.JO, "a job", entry -> new JobActs(entry).open(Map.of(), ""));
        List<BookTable> before = book.read(BookTable::all);
        assertThatThrownBy(() -> act(acts -> acts.plan(other, Map.of(), List.of(one(shaft), one(head)))))
            .isInstanceOf(BookProblem.class).hasMessage("head H-1 is promised to job 1, A. Okoro; it has to be released first");
        assertThat(book.read(BookTable::all).equals(before)).isTrue();
        assertThat(state(shaft).promises()).isEmpty();
        assertThat(state(other).standing()).isEqualTo(Standing.WAITING);
    }

    @Test
    void aJobThatIsHandedOverKeepsNothingPromised() throws BookProblem {
        act(acts -> acts.plan(job, Map.of(), List.of(one(head))));
        act(acts -> acts.handOver(job, Map.of("loft_deg", "9.1"), "played well"));
        assertThat(state(job).standing()).isEqualTo(Standing.HANDED_OVER);
        assertThat(state(job).fact("loft_deg")).contains("9.1");
        assertThat(state(head).promises()).isEmpty();
        assertThat(promisedTo(job)).isEmpty();
    }

    @Test
    void aJobThatIsCalledOffKeepsNothingPromised() throws BookProblem {
        act(acts -> acts.plan(job, Map.of(), List.of(one(head))));
        act(acts -> acts.callOff(job, "withdrew\u0000"));
        assertThat(state(job).standing()).isEqualTo(Standing.CALLED_OFF);
        assertThat(state(job).fact("called_off_why")).contains("withdrew");
        assertThat(state(head).promises()).isEmpty();
    }

    @Test
    void whatIsDoneIsDone() throws BookProblem {
        act(acts -> acts.handOver(job, Map.of(), ""));
        refused(acts -> acts.plan(job, Map.of(), List.of()), "job 1 is handed over already");
        refused(acts -> acts.handOver(job, Map.of(), ""), "job 1 is handed over already");
        refused(acts -> acts.callOff(job, ""), "job 1 is handed over already");
    }

    @Test
    void whatIsCalledOffStaysCalledOff() throws BookProblem {
        act(acts -> acts.callOff(job, ""));
        refused(acts -> acts.plan(job, Map.of(), List.of()), "job 1 is called off already");
        refused(acts -> acts.handOver(job, Map.of(), ""), "job 1 is called off already");
        refused(acts -> acts.callOff(job, ""), "job 1 is called off already");
    }

    private void refused(Act act, String message) {
        assertThatThrownBy(() -> act(act)).isInstanceOf(BookProblem.class).hasMessage(message);
    }
}
