package benchtwin.stock;

import benchtwin.club.WantedClub;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Whether the clubs of a group can share a head model and a shaft model, and keep one rule. */
final class GroupCheck {

    private GroupCheck() {
    }

    static void check(Lot<WantedClub> clubs) {
        Map<List<String>, Lot.Item<WantedClub>> first = new HashMap<>();
        for (Lot.Item<WantedClub> item : clubs.items()) {
            item.value().group().map(group -> first.putIfAbsent(List.of(item.value().player(), group), item))
                .ifPresent(earlier -> compare(item, earlier));
        }
    }

    private static void compare(Lot.Item<WantedClub> item, Lot.Item<WantedClub> earlier) {
        WantedClub club = item.value();
        WantedClub before = earlier.value();
        String group = "group %s on line %d".formatted(club.group().orElseThrow(), earlier.row().cells().line());
        if (club.hand() != before.hand()) {
            item.row().fault("hand", "is not the hand of " + group, before.hand().word() + ", or another group");
        }
        if (club.groupRule() != before.groupRule()) {
            item.row().fault("group_rule", "is not the rule of " + group,
                before.groupRule().word() + " for the whole group, or another group");
        }
        if (club.category() != before.category()) {
            item.row().warn("category", "is not the category of " + group,
                "clubs of one category, which can share a head model");
        }
    }
}
