package benchtwin.bench;

import benchtwin.sets.ClubOfSet;
import benchtwin.sets.PlayerSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Turns what somebody decided about a plan of sets into what is asked of the next one. */
public final class SetChoices {

    /** Which part of a club. */
    public enum Part {
        /** Its head. */
        HEAD,
        /** Its shaft. */
        SHAFT;

        /**
         * What it is called.
         * @return head or shaft
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private SetChoices() {
    }

    /**
     * What a club is called among all players' clubs.
     * @param club a club of a plan
     * @return player and club with a slash between them
     */
    public static String name(ClubOfSet club) {
        return club.wanted().player() + "/" + club.wanted().club();
    }

    /**
     * Keeps what is decided and leaves the rest open.
     * @param answer the plan
     * @param heads  clubs that keep their head, as {@link #name} calls them
     * @param shafts clubs that keep their shaft
     * @param banned parts that may not be used
     * @return what to ask
     */
    public static SetService.Wish kept(SetService.Answer answer, Set<String> heads, Set<String> shafts, List<String> banned) {
        List<SetService.Pin> pins = new ArrayList<>();
        for (ClubOfSet club : clubs(answer)) {
            String name = name(club);
            Optional<String> head = club.build().filter(build -> heads.contains(name)).map(build -> build.head().tag());
            Optional<String> shaft = club.build().filter(build -> shafts.contains(name)).map(build -> build.shaft().tag());
            if (head.isPresent() || shaft.isPresent()) {
                pins.add(new SetService.Pin(name, head, shaft));
            }
        }
        return wish(answer, pins, banned);
    }

    /**
     * Everything as it is planned, but for one part. A club that had the part until now looks for another.
     * @param answer the plan
     * @param club   which club gets another part, as {@link #name} calls it
     * @param part   which of its parts
     * @param tag    the part it gets
     * @return what to ask
     * @throws BadInput when there is no such club
     */
    public static SetService.Wish swapped(SetService.Answer answer, String club, Part part, String tag) throws BadInput {
        List<SetService.Pin> pins = new ArrayList<>();
        boolean found = false;
        for (ClubOfSet one : clubs(answer)) {
            boolean swapped = name(one).equals(club);
            found |= swapped;
            Optional<String> head = one.build().map(build -> build.head().tag()).filter(own -> part != Part.HEAD || !own.equalsIgnoreCase(tag));
            Optional<String> shaft = one.build().map(build -> build.shaft().tag()).filter(own -> part != Part.SHAFT || !own.equalsIgnoreCase(tag));
            if (swapped) {
                head = part == Part.HEAD ? Optional.of(tag) : head;
                shaft = part == Part.SHAFT ? Optional.of(tag) : shaft;
            }
            if (head.isPresent() || shaft.isPresent()) {
                pins.add(new SetService.Pin(name(one), head, shaft));
            }
        }
        if (!found) {
            throw new BadInput("no club of the plan is called %s".formatted(club));
        }
        return wish(answer, pins, List.copyOf(answer.request().banned()));
    }

    static List<ClubOfSet> clubs(SetService.Answer answer) {
        return answer.plan().players().stream().map(PlayerSet::clubs).flatMap(List::stream).toList();
    }

    private static SetService.Wish wish(SetService.Answer answer, List<SetService.Pin> pins, List<String> banned) {
        return new SetService.Wish(answer.request().targets().players(), pins, banned, answer.request().grip().map(grip -> grip.tag()),
            answer.request().shop());
    }
}
