package benchtwin.sets;

/**
 * What one rule costs one player's clubs.
 * @param player for whom
 * @param group  the group, or the club where it stands alone
 * @param rule   the rule, in plain words
 * @param cost   squared tolerances
 */
public record CostLine(String player, String group, String rule, double cost) {
}
