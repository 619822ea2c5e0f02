package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What may be done to parts, and every refusal in its words. */
class PartActsTest {

    private static final Optional<Thing> NO_JOB = Optional.empty();

    @TempDir
    private Path folder;
    private Book book;
    private Thing head;
    private Thing weight;
    private Thing club;
    private Optional<Thing> job1;
    private Optional<Thing> job2;

    /** Something done in an entry of its own. */
    @FunctionalInterface
    private interface Act {
        void by(PartActs acts) throws BookProblem;
    }

    @BeforeEach
    void parts() throws BookProblem {
        book = Books.in(folder);
        book.write(Books.JO, "parts", entry -> {
            head = entry.add(ThingKind.HEAD, "H-1", NewEvent.of(EventKind.RECEIVED));
            weight = entry.add(ThingKind.WEIGHT, "W-1", NewEvent.of(EventKind.RECEIVED).with(Map.of("count", "3")));
            club = entry.add(ThingKind.CLUB, "C-1", NewEvent.of(EventKind.RECEIVED));
            job1 = Optional.of(new JobActs(entry).open(Map.of("player", "A. Okoro"), ""));
            job2 = Optional.of(new JobActs(entry).open(Map.of(), ""));
            return null;
        });
    }

    private void act(Act act) throws BookProblem {
        book.write(Books.JO, "an act", entry -> {
            act.by(new PartActs(entry));
            return null;
        });
    }

    private void refused(Act act, String message) throws BookProblem {
        List<KeptEvent> before = events();
        assertThatThrownBy(() -> act(act)).isInstanceOf(BookProblem.class).hasMessage(message);
        assertThat(events()).as("nothing of it is kept").isEqualTo(before);
    }

    private List<KeptEvent> events() throws BookProblem {
        return book.read(view -> {
            List<KeptEvent> all = new ArrayList<>(view.events(head));
            all.addAll(view.events(weight));
            return all;
        });
    }

    private State state(Thing thing) throws BookProblem {
        return book.read(view -> view.state(thing));
    }

    @Test
    void aPromiseNeedsSomebody() throws BookProblem {
        refused(acts -> acts.promise(head, NO_JOB, " \t", 1), "head H-1: a promise needs a job or a name to be kept for");
        act(acts -> acts.promise(head, NO_JOB, " Kim\u0007 ", 1));
        assertThat(state(head).promises()).containsExactly(new Promise(NO_JOB.map(Thing::tag), "Kim", 1));
    }

    @Test
    void aPartIsPromisedOnceAndTheOtherIsToldToWhom() throws BookProblem {
        act(acts -> acts.promise(head, job1, "A. Okoro", 1));
        refused(acts -> acts.promise(head, job2, "", 1), "head H-1 is promised to job 1, A. Okoro; it has to be released first");
        refused(acts -> acts.promise(head, job1, "", 1), "head H-1 is promised to job 1, A. Okoro; it has to be released first");
    }

    @Test
    void onePartIsNotPromisedTwoOfItself() throws BookProblem {
        refused(acts -> acts.promise(head, job1, "", 2), "head H-1 is one part; 2 of it cannot be promised");
        refused(acts -> acts.promise(head, job1, "", 0), "head H-1 is one part; 0 of it cannot be promised");
    }

    @Test
    void noMoreOfACountedPartArePromisedThanThereAre() throws BookProblem {
        refused(acts -> acts.promise(weight, job1, "", 4), "weight W-1: 4 wanted; 3 there, 0 of them promised");
        act(acts -> acts.promise(weight, job1, "", 2));
        refused(acts -> acts.promise(weight, job2, "", 2), "weight W-1: 2 wanted; 3 there, 2 of them promised (job 1)");
        refused(acts -> acts.promise(weight, job2, "", 0), "weight W-1: 0 wanted; 3 there, 2 of them promised (job 1)");
        act(acts -> acts.promise(weight, NO_JOB, "Kim", 1));
        refused(acts -> acts.promise(weight, job2, "", 1), "weight W-1: 1 wanted; 3 there, 3 of them promised (job 1, Kim)");
    }

    @Test
    void whatIsNoPartIsNotPromised() throws BookProblem {
        refused(acts -> acts.promise(club, job1, "", 1), "club C-1 is no part of the stock");
        refused(acts -> acts.move(job1.orElseThrow(), "bench"), "job 1 is no part of the stock");
    }

    @Test
    void aPartInAClubIsNotPromised() throws BookProblem {
        act(acts -> acts.buildIn(head, club, NO_JOB));
        refused(acts -> acts.promise(head, job1, "", 1), "head H-1 sits in club C-1");
        refused(acts -> acts.buildIn(head, club, NO_JOB), "head H-1 sits in club C-1");
    }

    @Test
    void whatIsNotPromisedIsNotReleased() throws BookProblem {
        refused(acts -> acts.release(head, NO_JOB, ""), "head H-1 is not promised to anybody");
        refused(acts -> acts.release(head, job1, ""), "head H-1 is not promised to job 1");
        act(acts -> acts.promise(head, job1, "", 1));
        refused(acts -> acts.release(head, job2, ""), "head H-1 is not promised to job 2");
        act(acts -> acts.release(head, job1, "not needed"));
        assertThat(state(head).promises()).isEmpty();
    }

    @Test
    void aMoveNeedsAPlace() throws BookProblem {
        refused(acts -> acts.move(head, " "), "head H-1: expected the place it lies in, such as drawer 3");
        act(acts -> acts.move(head, "van\tleft"));
        assertThat(state(head).fact("place")).contains("van left");
    }

    @Test
    void aRetirementNeedsAReasonUnlessThePartIsCracked() throws BookProblem {
        refused(acts -> acts.retire(head, false, ""), "head H-1: expected why it is retired, such as sold or lost");
        act(acts -> acts.promise(head, job1, "", 1));
        List<Promise> lapsed = book.write(Books.JO, "retire", entry -> new PartActs(entry).retire(head, true, ""));
        assertThat(lapsed).containsExactly(new Promise(Optional.of("1"), "", 1));
        assertThat(state(head).facts()).isEqualTo(Map.of("condition", "cracked", "retired_why", "cracked"));
    }

    @Test
    void nothingIsDoneToARetiredPart() throws BookProblem {
        act(acts -> acts.retire(head, false, "sold"));
        refused(acts -> acts.retire(head, false, "lost"), "head H-1 is retired: sold");
        refused(acts -> acts.promise(head, job1, "", 1), "head H-1 is retired: sold");
        refused(acts -> acts.move(head, "drawer 1"), "head H-1 is retired: sold");
        refused(acts -> acts.buildIn(head, club, NO_JOB), "head H-1 is retired: sold");
        act(acts -> acts.retire(weight, true, ""));
        refused(acts -> acts.count(weight, 2), "weight W-1 is retired: cracked");
    }

    @Test
    void aCrackedPartNeverReturns() throws BookProblem {
        act(acts -> acts.retire(head, true, "face"));
        refused(acts -> acts.giveBack(head, "it looks fine"), "head H-1 is cracked and never returns to the stock");
    }

    @Test
    void onlyARetiredPartReturns() throws BookProblem {
        refused(acts -> acts.giveBack(head, ""), "head H-1 is not retired");
        act(acts -> acts.retire(head, false, "lost"));
        act(acts -> acts.giveBack(head, "found under the bench"));
        assertThat(state(head).standing()).isEqualTo(Standing.THERE);
        assertThat(state(head).facts()).isEmpty();
    }

    @Test
    void onlyCountedPartsAreCountedAndNeverBelowWhatIsPromised() throws BookProblem {
        refused(acts -> acts.count(head, 1), "head H-1 is one part and is not counted");
        refused(acts -> acts.count(weight, -1), "weight W-1: -1 cannot be a count; expected 0 or more");
        act(acts -> acts.promise(weight, job1, "A. Okoro", 2));
        refused(acts -> acts.count(weight, 1),
            "weight W-1: 1 counted, and 2 are promised (job 1, A. Okoro); release some first");
        act(acts -> acts.count(weight, 2));
        assertThat(state(weight).count()).isEqualTo(2);
    }

    @Test
    void aPartThatIsPromisedIsBuiltInForItsJobOnly() throws BookProblem {
        act(acts -> acts.promise(head, job1, "", 1));
        refused(acts -> acts.buildIn(head, club, job2), "head H-1 is promised to job 1; it has to be released first");
        refused(acts -> acts.buildIn(head, club, NO_JOB), "head H-1 is promised to job 1; it has to be released first");
        act(acts -> acts.buildIn(head, club, job1));
        assertThat(state(head).promises()).isEmpty();
        assertThat(state(head).club()).contains("C-1");
    }

    @Test
    void aPartThatIsPromisedToAPersonIsReleasedBeforeItIsBuiltIn() throws BookProblem {
        act(acts -> acts.promise(head, NO_JOB, "Kim", 1));
        refused(acts -> acts.buildIn(head, club, NO_JOB), "head H-1 is promised to Kim; it has to be released first");
    }

    @Test
    void theLastOfACountedPartIsKeptForWhomItIsPromised() throws BookProblem {
        act(acts -> acts.promise(weight, job1, "", 2));
        act(acts -> acts.buildIn(weight, club, job2));
        refused(acts -> acts.buildIn(weight, club, job2), "weight W-1: none is left but what is promised to job 1");
        act(acts -> acts.buildIn(weight, club, job1));
        assertThat(state(weight).promises()).containsExactly(new Promise(Optional.of("1"), "", 1));
        act(acts -> acts.buildIn(weight, club, job1));
        refused(acts -> acts.buildIn(weight, club, job1), "weight W-1: none is left");
    }

    @Test
    void onlyWhatSitsInAClubIsPulled() throws BookProblem {
        refused(acts -> acts.pull(head, Map.of(), NO_JOB), "head H-1 sits in no club");
        act(acts -> acts.buildIn(head, club, NO_JOB));
        act(acts -> acts.pull(head, Map.of("place", "bench"), NO_JOB));
        assertThat(state(head).standing()).isEqualTo(Standing.THERE);
    }

    @Test
    void wordsWithoutEndAreRefused() throws BookProblem {
        refused(acts -> acts.move(head, "x".repeat(2001)),
            "\"%s…\" has 2001 characters; expected at most 2000".formatted("x".repeat(60)));
        act(acts -> acts.move(head, "x".repeat(2000)));
    }
}
