package benchtwin.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Keeps a club's parts and the parts' own records of where they sit in step. Part of one entry. */
public final class ClubActs {

    private static final Map<String, ThingKind> PARTS = Map.of("head", ThingKind.HEAD, "shaft", ThingKind.SHAFT, "grip",
        ThingKind.GRIP, "sleeve", ThingKind.SLEEVE);

    private final BookEntry entry;
    private final PartActs parts;

    /**
     * @param entry the act these belong to
     */
    public ClubActs(BookEntry entry) {
        this.entry = entry;
        this.parts = new PartActs(entry);
    }

    /**
     * Enters an event of a club that may change its parts: those that leave it are pulled, those that come are built in.
     * @param club  the club
     * @param event the event; its facts name the parts
     * @return what could not be kept in step, in words: parts that are not in the book
     * @throws BookProblem when a part that comes is not free; then nothing of the entry is kept
     */
    public List<String> enter(Thing club, NewEvent event) throws BookProblem {
        return enter(club, event, false);
    }

    /**
     * The same; on request a part that is not free is only remarked upon, where a record is taken over as it is.
     * @param club    the club
     * @param event   the event; its facts name the parts
     * @param lenient whether a part that is not free is let pass
     * @return what could not be kept in step, in words
     * @throws BookProblem when a part that comes is not free, and that does not pass
     */
    public List<String> enter(Thing club, NewEvent event, boolean lenient) throws BookProblem {
        Map<String, String> before = entry.state(club).facts();
        List<String> remarks = new ArrayList<>();
        for (Map.Entry<String, ThingKind> slot : PARTS.entrySet().stream().sorted(Map.Entry.comparingByValue()).toList()) {
            String now = event.facts().get(slot.getKey());
            if (now == null || now.equals(before.getOrDefault(slot.getKey(), ""))) {
                continue;
            }
            leaves(club, slot.getValue(), before.get(slot.getKey()), event);
            try {
                comes(club, slot.getValue(), now, event, remarks);
            } catch (BookProblem taken) {
                if (!lenient) {
                    throw taken;
                }
                if (!isCracked(slot.getValue(), now)) {
                    remarks.add("%s, and is on record as part of %s as well".formatted(taken.getMessage(), club.tag()));
                }
            }
        }
        entry.add(club, event);
        return remarks;
    }

    /** A cracked head left the stock and still sits in the club it broke in. */
    private boolean isCracked(ThingKind kind, String tag) {
        return entry.thing(kind, tag).map(part -> entry.state(part).fact("condition").equals(Optional.of(PartActs.CRACKED)))
            .orElse(false);
    }

    private void leaves(Thing club, ThingKind kind, String tag, NewEvent event) throws BookProblem {
        Optional<Thing> old = tag == null ? Optional.empty() : entry.thing(kind, tag);
        if (old.isEmpty()) {
            return;
        }
        State state = entry.state(old.get());
        if (kind.isCounted() || state.standing() == Standing.BUILT_IN && state.club().equals(Optional.of(club.tag()))) {
            parts.pull(old.get(), Map.of(), event.job());
        }
    }

    private void comes(Thing club, ThingKind kind, String tag, NewEvent event, List<String> remarks) throws BookProblem {
        if (tag.isEmpty()) {
            return;
        }
        Optional<Thing> part = entry.thing(kind, tag);
        if (part.isEmpty()) {
            remarks.add("%s %s is not in the book: what is known of it is only that it is on %s".formatted(kind.word(), tag,
                club.tag()));
            return;
        }
        State state = entry.state(part.get());
        if (state.standing() != Standing.BUILT_IN || !state.club().equals(Optional.of(club.tag()))) {
            parts.buildIn(part.get(), club, event.job());
        }
    }
}
