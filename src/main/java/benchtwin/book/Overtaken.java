package benchtwin.book;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which readings no longer tell of a thing once something of it has changed. */
final class Overtaken {

    private static final List<String> CLUB_PARTS = List.of("head", "shaft", "sleeve");
    private static final List<String> CLUB_SETTING = List.of("setting");
    private static final List<String> CLUB_MASSES = List.of("grip", "tape_layers", "tip_weight_g", "tape_g", "melt_g");
    private static final Set<String> OF_SETTING = Set.of("loft_deg", "lie_deg", "face_deg", "bounce_deg", "length_mm");
    private static final Set<String> OF_MASSES = Set.of("swing_weight_points", "frequency_cpm", "total_mass_g", "length_mm");
    private static final List<String> SHAFT_CUTS = List.of("tip_cut_mm", "butt_cut_mm");
    private static final Set<String> OF_CUTS = Set.of("mass_g", "balance_mm", "torque_deg", "frequency_cpm");
    private static final Set<String> OF_BEND = Set.of("loft_deg", "lie_deg", "face_deg", "bounce_deg", "offset_mm");
    private static final Set<String> OF_GRIND = Set.of("mass_g", "bounce_deg");
    private static final Set<String> UNSOUND = Set.of("damaged", "stripped");

    private Overtaken() {
    }

    /** Whether a quantity read before is overtaken by these news. */
    static boolean byFacts(ThingKind kind, Map<String, String> before, Map<String, String> news, String quantity) {
        return switch (kind) {
            case CLUB -> changesKnown(CLUB_PARTS, before, news)
                || OF_SETTING.contains(quantity) && changesKnown(CLUB_SETTING, before, news)
                || OF_MASSES.contains(quantity) && changes(CLUB_MASSES, before, news);
            case SHAFT -> OF_CUTS.contains(quantity) && changes(SHAFT_CUTS, before, news);
            default -> false;
        };
    }

    /** Whether these news make another build of it, whatever was read. */
    static boolean changesBuild(ThingKind kind, Map<String, String> before, Map<String, String> news) {
        return switch (kind) {
            case CLUB -> changesKnown(CLUB_PARTS, before, news) || changesKnown(CLUB_SETTING, before, news)
                || changes(CLUB_MASSES, before, news);
            case SHAFT -> changes(SHAFT_CUTS, before, news);
            default -> false;
        };
    }

    /** Whether a quantity read before is overtaken by what was done. */
    static boolean byAct(EventKind act, String quantity) {
        return act == EventKind.BENT && OF_BEND.contains(quantity) || act == EventKind.GROUND && OF_GRIND.contains(quantity);
    }

    /** A part that is put down for the first time was there before; one that is named anew was changed. */
    private static boolean changesKnown(List<String> names, Map<String, String> before, Map<String, String> news) {
        return names.stream().anyMatch(name -> before.containsKey(name) && changes(List.of(name), before, news));
    }

    /** What is not recorded is none. */
    private static boolean changes(List<String> names, Map<String, String> before, Map<String, String> news) {
        return names.stream().anyMatch(name -> news.containsKey(name)
            && amount(news.get(name)).compareTo(amount(before.getOrDefault(name, ""))) != 0);
    }

    private static String amount(String text) {
        return text.equals("0") ? "" : text;
    }

    /** Whether a club in this state is one to build a twin of. */
    static boolean isSound(Map<String, String> facts) {
        return !UNSOUND.contains(facts.getOrDefault("state", ""));
    }
}
