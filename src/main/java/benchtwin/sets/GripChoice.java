package benchtwin.sets;

import benchtwin.club.Category;
import benchtwin.club.Grip;
import benchtwin.club.Inventory;
import benchtwin.club.RecordedClub;
import benchtwin.club.WantedClub;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Which grip a wanted club is planned with, where nobody says: set targets name none. */
final class GripChoice {

    private final Inventory inventory;
    private final Optional<Grip> asked;

    GripChoice(Inventory inventory, Optional<Grip> asked) {
        this.inventory = inventory;
        this.asked = asked;
    }

    /**
     * The grip: the one asked for; else of the model the player's recorded clubs have most; else of the model there is most
     * of. Putters go by putters.
     * @param club wanted
     * @return empty when no grip of that kind is known
     */
    Optional<Grip> of(WantedClub club) {
        if (asked.isPresent()) {
            return asked;
        }
        boolean putter = club.category() == Category.PUTTER;
        List<Grip> all = onClubs(putter, Optional.empty());
        List<Grip> own = onClubs(putter, Optional.of(club.player()));
        if (!own.isEmpty()) {
            return mostOf(own);
        }
        List<Grip> others = onClubs(!putter, Optional.empty());
        List<Grip> free = inventory.grips().stream().filter(grip -> !others.contains(grip)).toList();
        return mostOf(free.isEmpty() ? all : free);
    }

    private List<Grip> onClubs(boolean putters, Optional<String> player) {
        return inventory.clubs().stream()
            .filter(club -> (club.category() == Category.PUTTER) == putters)
            .filter(club -> player.isEmpty() || player.get().equals(club.player()))
            .map(RecordedClub::newest).flatMap(row -> row.grip().stream())
            .flatMap(tag -> inventory.grip(tag).stream()).filter(grip -> grip.massG().isPresent()).toList();
    }

    /** The first grip that was weighed, of the model there are most of. */
    private static Optional<Grip> mostOf(List<Grip> grips) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        grips.stream().filter(grip -> grip.massG().isPresent()).forEach(grip -> counts.merge(grip.model(), 1, Integer::sum));
        Function<String, Integer> count = counts::get;
        return counts.keySet().stream().max(Comparator.comparing(count).thenComparing(Comparator.reverseOrder()))
            .flatMap(model -> grips.stream().filter(grip -> grip.model().equals(model) && grip.massG().isPresent()).findFirst());
    }
}
