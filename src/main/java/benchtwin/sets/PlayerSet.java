package benchtwin.sets;

import java.util.List;

/**
 * One player's planned set.
 * @param player for whom
 * @param clubs  in the order of the target
 * @param groups figures of every group with two clubs or more
 */
public record PlayerSet(String player, List<ClubOfSet> clubs, List<GroupFigures> groups) {

    public PlayerSet {
        clubs = List.copyOf(clubs);
        groups = List.copyOf(groups);
    }

    /**
     * The worst of its clubs.
     * @return distance from the target, in tolerances; 0 when none is built
     */
    public double worstMiss() {
        return clubs.stream().flatMap(club -> club.build().stream()).mapToDouble(build -> build.miss()).max().orElse(0);
    }

    /**
     * Clubs left out.
     * @return how many
     */
    public int unbuilt() {
        return (int) clubs.stream().filter(club -> club.build().isEmpty()).count();
    }

    /**
     * Built clubs with a quantity beyond its tolerance.
     * @return how many
     */
    public int outOfTolerance() {
        return (int) clubs.stream().flatMap(club -> club.build().stream()).filter(build -> !build.isWithinTolerance()).count();
    }
}
