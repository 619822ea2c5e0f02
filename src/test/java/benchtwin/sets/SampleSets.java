package benchtwin.sets;

import benchtwin.club.Inventory;
import benchtwin.club.SetTargets;
import benchtwin.match.ShopSettings;
import benchtwin.samples.SampleFolder;
import benchtwin.stock.SetTargetReader;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Sets of the sample workshop, as requests. */
final class SampleSets {

    static final Inventory STOCK = SampleFolder.inventory();
    static final SetTargets ALL = SetTargetReader.read(SampleFolder.PATH.resolve("set-targets.csv"),
        Optional.of(SampleFolder.PATH.resolve("lines.csv")), false).targets().orElseThrow();

    private SampleSets() {
    }

    static SetTargets of(String... players) {
        Set<String> wanted = Set.of(players);
        return new SetTargets(ALL.clubs().stream().filter(club -> wanted.contains(club.player())).toList(), ALL.lines());
    }

    /** Only clubs of one group of one player, so that a test is quick. */
    static SetTargets group(String player, String group) {
        return new SetTargets(ALL.clubs().stream().filter(club -> club.player().equals(player)
            && club.group().equals(Optional.of(group))).toList(), ALL.lines());
    }

    static SetRequest request(SetTargets targets, List<SetPin> pins, Set<String> banned) {
        return new SetRequest(targets, STOCK, ShopSettings.DEFAULT, Optional.empty(), pins, banned, Alikeness.DEFAULT);
    }
}
