package benchtwin.bench;

import benchtwin.book.BookView;
import benchtwin.book.Promise;
import benchtwin.book.Standing;
import benchtwin.book.State;
import benchtwin.book.StateOf;
import benchtwin.book.ThingKind;
import benchtwin.ticket.TicketPart;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The parts a planned job needs: where each lies, and what keeps it from being taken. */
public final class JobNeeds {

    /**
     * A part.
     * @param kind    head, shaft and so on
     * @param tag     its tag
     * @param where   where it is to be found
     * @param count   how many
     * @param trouble why the job has to wait for it; empty when it is there to be taken
     */
    public record Need(String kind, String tag, String where, int count, Optional<String> trouble) {
    }

    private JobNeeds() {
    }

    /** Of every club the job's plan makes, each part once. */
    static List<Need> of(BookView view, StateOf job, JobPlan plan) {
        TicketParts parts = new TicketParts(view);
        List<Need> needs = new ArrayList<>();
        for (JobPlan.Club club : plan.clubs()) {
            for (TicketPart part : parts.of(club)) {
                needs.add(new Need(part.kind(), part.tag(), part.where(), part.count(), trouble(view, job, club.name(), part)));
            }
        }
        return needs.stream().distinct().toList();
    }

    private static Optional<String> trouble(BookView view, StateOf job, String club, TicketPart part) {
        Optional<ThingKind> kind = Arrays.stream(ThingKind.values()).filter(one -> one.word().equals(part.kind())).findFirst();
        Optional<State> state = kind.flatMap(one -> view.thing(one, part.tag())).map(view::state);
        if (state.isEmpty()) {
            return Optional.empty();
        }
        List<Promise> promises = state.get().promises();
        boolean own = promises.stream().anyMatch(promise -> promise.job().equals(Optional.of(job.thing().tag())));
        if (own || kind.get().isCounted() && state.get().count() - state.get().promised() >= part.count()) {
            return Optional.empty();
        }
        if (state.get().standing() == Standing.RETIRED) {
            return Optional.of("has left the stock");
        }
        if (!promises.isEmpty()) {
            return Optional.of("is promised to " + promises.get(0).text());
        }
        return state.get().club().filter(in -> !in.equals(club)).map(in -> "sits in " + in);
    }
}
