package benchtwin.match;

import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.Sleeve;
import benchtwin.mechanics.Setup;
import benchtwin.mechanics.SleeveSettings;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every setting of a sleeve as a change from where a head was read; worked out once for each pair. Not thread-safe. */
final class SettingTable {

    /**
     * One setting.
     * @param label the setting
     * @param aim   the change of the head's angles from where they were read
     */
    record Entry(String label, Setup.Aim aim) {
    }

    private record Key(String sleeve, Hand hand, Optional<String> readAt) {
    }

    private final Map<Key, List<Entry>> entries = new HashMap<>();

    /**
     * The settings of a sleeve on a head.
     * @param sleeve the sleeve
     * @param head   a sleeved head
     * @return empty when the sleeve does not know the setting the head was read at
     */
    List<Entry> of(Sleeve sleeve, Head head) {
        Optional<String> readAt = head.seat().orElseThrow().readAtSetting();
        return entries.computeIfAbsent(new Key(sleeve.name(), head.hand(), readAt),
            key -> all(sleeve, key.hand(), key.readAt()));
    }

    private static List<Entry> all(Sleeve sleeve, Hand hand, Optional<String> readAt) {
        List<Entry> list = new ArrayList<>();
        for (String label : SleeveSettings.labels(sleeve)) {
            SleeveSettings.aim(sleeve, hand, readAt, label).ifPresent(aim -> list.add(new Entry(label, aim)));
        }
        return List.copyOf(list);
    }
}
