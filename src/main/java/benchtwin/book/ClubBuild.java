package benchtwin.book;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which facts make a club the build it is, and which of its readings a change of them leaves behind. */
final class ClubBuild {

    private static final List<String> WHOLE = List.of("head", "shaft", "sleeve");
    private static final List<String> ANGLES = List.of("setting");
    private static final List<String> MASSES = List.of("grip", "tape_layers", "tip_weight_g", "tape_g", "melt_g");
    private static final Set<String> READ_OF_ANGLES = Set.of("loft_deg", "lie_deg", "face_deg", "bounce_deg", "length_mm");
    private static final Set<String> READ_OF_MASSES = Set.of("swing_weight_points", "frequency_cpm", "total_mass_g", "length_mm");
    private static final Set<String> UNSOUND = Set.of("damaged", "stripped");

    private ClubBuild() {
    }

    /** Whether a quantity read before no longer tells of the club once these facts are known. */
    static boolean overtakes(Map<String, String> before, Map<String, String> news, String quantity) {
        return changesKnown(WHOLE, before, news)
            || READ_OF_ANGLES.contains(quantity) && changesKnown(ANGLES, before, news)
            || READ_OF_MASSES.contains(quantity) && changes(MASSES, before, news);
    }

    /** A part that is put down for the first time was there before; one that is named anew was changed. */
    private static boolean changesKnown(List<String> names, Map<String, String> before, Map<String, String> news) {
        return names.stream().anyMatch(name -> before.containsKey(name) && changes(List.of(name), before, news));
    }

    private static boolean changes(List<String> names, Map<String, String> before, Map<String, String> news) {
        return names.stream().anyMatch(name -> news.containsKey(name)
            && !news.get(name).equals(before.getOrDefault(name, "")));
    }

    /** Whether a club in this state is one to build a twin of. */
    static boolean isSound(Map<String, String> facts) {
        return !UNSOUND.contains(facts.getOrDefault("state", ""));
    }
}
