package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.PartActs;
import benchtwin.book.Standing;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What became of the parts that came off a club. */
final class CameOff {

    private final OpenBook book;
    private final BookEntry entry;
    private final Map<String, String> before;
    private final Map<String, String> now;
    private final Thing club;
    private final List<String> remarks;

    /**
     * @param book    the book, as it was opened for who enters
     * @param entry   the act they came off in, already entered
     * @param club    the club
     * @param before  what it was made of
     * @param remarks takes what the person who enters it should know
     */
    CameOff(OpenBook book, BookEntry entry, Thing club, Map<String, String> before, List<String> remarks) {
        this.book = book;
        this.entry = entry;
        this.club = club;
        this.before = before;
        this.now = entry.state(club).facts();
        this.remarks = remarks;
    }

    /** Takes what is past use out of the stock, and says where the rest went. */
    void retire(boolean headCracked, boolean shaftBroken) throws BookProblem {
        Optional<Thing> head = part("head", ThingKind.HEAD);
        Optional<Thing> shaft = part("shaft", ThingKind.SHAFT);
        if (headCracked) {
            retire(head, "head", true, "");
        }
        if (shaftBroken) {
            retire(shaft, "shaft", false, "broken");
        }
        List<String> loose = new ArrayList<>();
        for (Optional<Thing> part : List.of(head, shaft, part("grip", ThingKind.GRIP))) {
            part.filter(one -> entry.state(one).standing() == Standing.THERE).ifPresent(one -> loose.add(one.name()));
        }
        if (!loose.isEmpty()) {
            remarks.add("In stock again: %s. %s".formatted(String.join(", ", loose), book.asks(ToDo.WHERE_PARTS)));
        }
    }

    private void retire(Optional<Thing> part, String slot, boolean cracked, String why) throws BookProblem {
        if (!comesOff(slot)) {
            throw new BookProblem("no %s came off %s, so none is %s".formatted(slot, club.name(), cracked ? "cracked" : "broken"));
        }
        if (part.isEmpty()) {
            return;
        }
        State state = entry.state(part.get());
        if (state.standing() != Standing.RETIRED) {
            new PartActs(entry).retire(part.get(), cracked, why);
        }
    }

    private boolean comesOff(String slot) {
        return before.containsKey(slot) && !before.get(slot).equals(now.get(slot));
    }

    private Optional<Thing> part(String slot, ThingKind kind) {
        return comesOff(slot) ? entry.thing(kind, before.get(slot)) : Optional.empty();
    }
}
