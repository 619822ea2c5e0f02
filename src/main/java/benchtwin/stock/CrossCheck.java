package benchtwin.stock;

import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.Ring;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whether files read together know each other's tags. A file that was not given is not missed; a row that has its own
 * faults still counts as known.
 */
final class CrossCheck {

    private static final Pattern ONE_OR_TWO_RINGS = Pattern.compile("(\\d{1,3})(?:/(\\d{1,3}))?");

    private final Lot<Head> heads;
    private final Lot<Shaft> shafts;
    private final Lot<Grip> grips;
    private final Lot<Sleeve> sleeves;
    private final Map<String, Sleeve> sleevesByName = new HashMap<>();

    /** Each may be null where its file was not given. */
    CrossCheck(Lot<Head> heads, Lot<Shaft> shafts, Lot<Grip> grips, Lot<Sleeve> sleeves) {
        this.heads = heads;
        this.shafts = shafts;
        this.grips = grips;
        this.sleeves = sleeves;
        if (sleeves != null) {
            sleeves.values().forEach(sleeve -> sleevesByName.putIfAbsent(sleeve.name(), sleeve));
        }
    }

    /** Tags and settings that are nowhere to be found. */
    void warn(Lot<ClubEntry> clubs, Lot<SettingRow> settings) {
        if (heads != null && sleeves != null) {
            checkSeats();
        }
        if (shafts != null) {
            for (Lot.Item<Shaft> shaft : shafts.items()) {
                warnUnknown(shaft.row(), "sleeve_on", sleeves);
                warnUnknown(shaft.row(), "grip_on", grips);
            }
        }
        if (clubs != null) {
            clubs.items().forEach(this::checkClub);
        }
        if (settings != null) {
            settings.items().forEach(setting -> warnUnknown(setting.row(), "sleeve", sleeves));
        }
    }

    /** A further frequency without its shaft would be lost. */
    void refuseLostFrequencies(Lot<FrequencyRow> frequencies) {
        if (frequencies == null || shafts == null) {
            return;
        }
        for (Lot.Item<FrequencyRow> frequency : frequencies.items()) {
            if (!shafts.named().contains(frequency.value().shaft())) {
                frequency.row().fault("tag", "is not in " + shafts.file(), expectation(frequency.value().shaft(), shafts));
            }
        }
    }

    private void checkSeats() {
        Set<String> fits = new HashSet<>();
        sleeves.values().forEach(sleeve -> fits.addAll(sleeve.fits()));
        for (Lot.Item<Head> head : heads.items()) {
            head.value().seat().filter(seat -> !fits.contains(seat.fit())).ifPresent(seat -> head.row().warn("sleeve_fit",
                "is not under fits of any sleeve in " + sleeves.file(), "a seat that some sleeve fits"
                    + Nearest.to(seat.fit(), fits).map(near -> " (did you mean " + near + "?)").orElse("")));
        }
    }

    private void checkClub(Lot.Item<ClubEntry> club) {
        warnUnknown(club.row(), "head", heads);
        warnUnknown(club.row(), "shaft", shafts);
        warnUnknown(club.row(), "grip", grips);
        warnUnknown(club.row(), "sleeve", sleeves);
        Optional<Sleeve> sleeve = club.value().day().sleeve().map(sleevesByName::get);
        Optional<String> setting = club.value().day().setting();
        if (sleeve.isPresent() && setting.isPresent() && !has(sleeve.get(), setting.get())) {
            club.row().warn("setting", "is not a setting of sleeve " + sleeve.get().name(), settingsOf(sleeve.get()));
        }
    }

    /** A measured table, where there is one, names the settings; else the rings do. */
    private static boolean has(Sleeve sleeve, String setting) {
        if (!sleeve.measured().isEmpty()) {
            return sleeve.measured().stream().anyMatch(measured -> measured.setting().equals(setting));
        }
        Matcher matcher = ONE_OR_TWO_RINGS.matcher(setting);
        if (!matcher.matches() || (matcher.group(2) == null) != (sleeve.rings().size() < 2)) {
            return false;
        }
        for (int ring = 0; ring < sleeve.rings().size(); ring++) {
            int number = Integer.parseInt(matcher.group(ring + 1));
            if (number < 1 || number > sleeve.rings().get(ring).settings()) {
                return false;
            }
        }
        return !sleeve.rings().isEmpty();
    }

    private static String settingsOf(Sleeve sleeve) {
        if (!sleeve.measured().isEmpty()) {
            return "one of its measured settings";
        }
        return switch (sleeve.rings().size()) {
            case 0 -> "a sleeve with rings or measured settings";
            case 1 -> "1 to " + sleeve.rings().get(0).settings();
            default -> "outer/inner, 1/1 to %d/%d".formatted(sleeve.rings().stream().map(Ring::settings).toArray());
        };
    }

    private static void warnUnknown(Row row, String column, Lot<?> lot) {
        Optional<String> tag = row.text(column);
        if (lot != null && tag.isPresent() && !lot.named().contains(tag.get())) {
            row.warn(column, "is not in " + lot.file(), expectation(tag.get(), lot));
        }
    }

    static String expectation(String tag, Lot<?> lot) {
        return "something %s has%s".formatted(lot.file().equals(RecordLots.BOOK) ? lot.file() : "that file",
            Nearest.to(tag, lot.named()).map(near -> " (did you mean " + near + "?)").orElse(""));
    }
}
