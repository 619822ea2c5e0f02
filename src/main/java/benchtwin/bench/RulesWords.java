package benchtwin.bench;

import benchtwin.bench.RulesService.Checked;
import benchtwin.club.RecordedClub;
import benchtwin.rules.EquipmentRules;
import benchtwin.rules.Finding;
import benchtwin.rules.Limit;
import benchtwin.rules.RulesText;
import benchtwin.rules.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** How clubs held against the equipment limits are spoken of, on a terminal and on a page alike. */
public final class RulesWords {

    private RulesWords() {
    }

    /**
     * What an answer is about.
     * @param answer of a bag, or of every club
     * @return a heading
     */
    public static String title(RulesService.Answer answer) {
        return answer.player().map(player -> "The bag of " + player).orElse("Every club on record")
            + " against the published equipment limits";
    }

    /**
     * How many clubs a bag holds.
     * @param answer of a bag
     * @param inPlay how many are in play
     * @return a sentence
     */
    public static String bag(RulesService.Answer answer, int inPlay) {
        return "%d %s in play; a bag holds at most %d%s".formatted(inPlay, inPlay == 1 ? "club" : "clubs", EquipmentRules.MOST_CLUBS,
            answer.tooMany() > 0 ? ": %d too many.".formatted(answer.tooMany()) : ".");
    }

    /**
     * What a club is.
     * @param club the club
     * @return {@code iron 7}
     */
    public static String kind(RecordedClub club) {
        return club.category().word() + club.number().map(number -> " " + number).orElse("");
    }

    /**
     * What a club comes to.
     * @param club the club, checked
     * @return its verdict, and whether something was left to measure
     */
    public static String verdict(Checked club) {
        return club.verdict().word() + (club.verdict() != Verdict.NOT_MEASURED && club.findings().stream()
            .anyMatch(finding -> finding.verdict() == Verdict.NOT_MEASURED) ? " in what was measured" : "");
    }

    /**
     * The finding nearest its limit.
     * @param club the club, checked
     * @return quantity and margin; empty where nothing was measured
     */
    public static String nearest(Checked club) {
        return club.nearest().map(finding -> "%s %s %s".formatted(finding.limit().quantity().word(), RulesText.margin(
            finding.limit().quantity(), finding.marginWithAllowance().orElseThrow()), finding.limit().quantity().unit())
            .replace(" °", "°")).orElse("");
    }

    /**
     * What a limit is about.
     * @param limit the limit
     * @return its quantity, and that it is a local rule's where it is
     */
    public static String name(Limit limit) {
        return limit.quantity().word() + (limit.isLocal() ? ", local rule" : "");
    }

    /**
     * What is to be measured before the rest of a club can be judged.
     * @param club the club, checked
     * @return in the imperative, with semicolons between; empty where all of it was measured
     */
    public static String toMeasure(Checked club) {
        return club.findings().stream().flatMap(finding -> finding.lacking().stream()).distinct().collect(Collectors.joining("; "));
    }

    /**
     * What nobody measured, over all the clubs.
     * @param answer the answer
     * @return tags of clubs, by what is to be measured
     */
    public static Map<String, List<String>> notMeasured(RulesService.Answer answer) {
        Map<String, List<String>> clubs = new TreeMap<>();
        for (Checked club : answer.clubs()) {
            for (Finding finding : club.findings()) {
                finding.lacking().ifPresent(lacking -> {
                    List<String> tags = clubs.computeIfAbsent(lacking, each -> new ArrayList<>());
                    if (!tags.contains(club.club().tag())) {
                        tags.add(club.club().tag());
                    }
                });
            }
        }
        return clubs;
    }

    /**
     * Which clubs rest on a published list.
     * @param answer the answer
     * @return their tags
     */
    public static String listed(RulesService.Answer answer) {
        return answer.clubs().stream().filter(club -> club.list().isPresent()).map(club -> club.club().tag())
            .collect(Collectors.joining(", "));
    }

    /**
     * A text as a sentence begins.
     * @param text in small letters
     * @return with a capital
     */
    public static String sentence(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
