package benchtwin.club;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Everything the workshop has, as read from its files.
 * @param heads   heads, cracked and built-in ones included
 * @param shafts  shafts
 * @param grips   grips
 * @param sleeves sleeve types
 * @param weights weights in the drawer
 * @param clubs   players' recorded clubs
 */
public record Inventory(List<Head> heads, List<Shaft> shafts, List<Grip> grips, List<Sleeve> sleeves,
                        List<Weight> weights, List<RecordedClub> clubs) {

    /** A workshop with nothing in it. */
    public static final Inventory EMPTY =
        new Inventory(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    public Inventory {
        heads = List.copyOf(heads);
        shafts = List.copyOf(shafts);
        grips = List.copyOf(grips);
        sleeves = List.copyOf(sleeves);
        weights = List.copyOf(weights);
        clubs = List.copyOf(clubs);
    }

    /**
     * The same without some parts.
     * @param tags of heads and shafts that are left out
     * @return a copy
     */
    public Inventory without(Set<String> tags) {
        return new Inventory(heads.stream().filter(head -> !tags.contains(head.tag())).toList(),
            shafts.stream().filter(shaft -> !tags.contains(shaft.tag())).toList(), grips, sleeves, weights, clubs);
    }

    /**
     * Finds a head.
     * @param tag its tag
     * @return the head, or empty
     */
    public Optional<Head> head(String tag) {
        return heads.stream().filter(head -> head.tag().equals(tag)).findFirst();
    }

    /**
     * Finds a shaft.
     * @param tag its tag
     * @return the shaft, or empty
     */
    public Optional<Shaft> shaft(String tag) {
        return shafts.stream().filter(shaft -> shaft.tag().equals(tag)).findFirst();
    }

    /**
     * Finds a grip.
     * @param tag its tag
     * @return the grip, or empty
     */
    public Optional<Grip> grip(String tag) {
        return grips.stream().filter(grip -> grip.tag().equals(tag)).findFirst();
    }

    /**
     * Finds a sleeve type.
     * @param name its name
     * @return the sleeve, or empty
     */
    public Optional<Sleeve> sleeve(String name) {
        return sleeves.stream().filter(sleeve -> sleeve.name().equals(name)).findFirst();
    }

    /**
     * Finds a recorded club.
     * @param tag its tag
     * @return the club, or empty
     */
    public Optional<RecordedClub> club(String tag) {
        return clubs.stream().filter(club -> club.tag().equals(tag)).findFirst();
    }
}
