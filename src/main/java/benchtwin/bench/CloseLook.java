package benchtwin.bench;

import benchtwin.book.StateText;
import benchtwin.book.Thing;
import benchtwin.club.Category;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which clubs and parts of the book a question looks at closely. Of the others it only asks what they are and where they sit,
 * so that what they measure need not be read: a book has thousands of them.
 *
 * <p>A question about one club looks at that club and its own parts; at heads of its category and hand and shafts meant for its
 * category, because others are out of the question whatever they measure; at the grips on such shafts; and at shafts that were
 * read twice, because such pairs teach what a grip does to a frequency.
 */
final class CloseLook {

    /** At everything. */
    static final CloseLook AT_ALL = new CloseLook(Set.of(), Set.of(), true, Optional.empty(), Optional.empty());

    private static final String FREQUENCY = "frequency_cpm";

    private final Set<Long> clubs;
    private final Set<String> parts;
    private final boolean everyGrip;
    private final Optional<String> category;
    private final Optional<String> hand;

    private CloseLook(Set<Long> clubs, Set<String> parts, boolean everyGrip, Optional<String> category, Optional<String> hand) {
        this.clubs = clubs;
        this.parts = parts;
        this.everyGrip = everyGrip;
        this.category = category;
        this.hand = hand;
    }

    /**
     * For a question about one club.
     * @param club      the club; one whose category is none of ours is looked at with everything else
     * @param parts     tags of further parts the question names
     * @param everyGrip whether any grip may be put on
     */
    static CloseLook at(StateText club, Set<String> parts, boolean everyGrip) {
        Optional<String> category = Optional.ofNullable(club.facts().get("category")).filter(CloseLook::isCategory);
        if (category.isEmpty()) {
            return AT_ALL;
        }
        Set<String> named = new HashSet<>();
        parts.forEach(tag -> named.add(folded(tag)));
        own(club.facts(), named);
        club.state().accepted().ifPresent(accepted -> own(accepted.facts(), named));
        return new CloseLook(Set.of(club.thing().id()), named, everyGrip, category, Optional.ofNullable(club.facts().get("hand")));
    }

    private static boolean isCategory(String word) {
        return Arrays.stream(Category.values()).anyMatch(category -> category.word().equals(word));
    }

    private static void own(Map<String, String> facts, Set<String> tags) {
        for (String part : List.of("head", "shaft", "grip")) {
            Optional.ofNullable(facts.get(part)).map(CloseLook::folded).ifPresent(tags::add);
        }
    }

    private static String folded(String tag) {
        return tag.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    }

    boolean isAtClub(Thing club) {
        return category.isEmpty() || clubs.contains(club.id());
    }

    boolean isAtHead(StateText head) {
        return category.isEmpty() || parts.contains(folded(head.thing().tag()))
            || says(head, "category", category) && (hand.isEmpty() || says(head, "hand", hand));
    }

    /** Shafts are asked about before grips: the grip on one of them is looked at too. */
    boolean isAtShaft(StateText shaft) {
        boolean close = category.isEmpty() || parts.contains(folded(shaft.thing().tag()))
            || Optional.ofNullable(shaft.facts().get("meant_for")).map(words -> words.contains(category.get())).orElse(true)
            || shaft.mayHaveRead(FREQUENCY, 2);
        if (close && !everyGrip) {
            Optional.ofNullable(shaft.facts().get("grip_on")).map(CloseLook::folded).ifPresent(parts::add);
        }
        return close;
    }

    boolean isAtGrip(StateText grip) {
        return everyGrip || parts.contains(folded(grip.thing().tag()));
    }

    /** A thing of which that is not known may be one. */
    private static boolean says(StateText thing, String fact, Optional<String> word) {
        String known = thing.facts().get(fact);
        return known == null || known.equals(word.get());
    }
}
