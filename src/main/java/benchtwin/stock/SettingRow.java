package benchtwin.stock;

import benchtwin.club.AngleReading;
import benchtwin.club.MeasuredSetting;
import benchtwin.measure.Taken;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A row of sleeve-settings.csv.
 * @param row     the row it came from
 * @param sleeve  name of the sleeve
 * @param setting what the setting does
 */
record SettingRow(Row row, String sleeve, MeasuredSetting setting) {

    static Optional<SettingRow> read(Row row) {
        String sleeve = row.tag("sleeve");
        String setting = SettingText.of(row.tag("setting"));
        row.setting("setting");
        Measures measures = new Measures(row, Optional.empty(), Taken.UNRECORDED);
        OptionalDouble loft = measures.need("dloft_deg");
        OptionalDouble lie = measures.need("dlie_deg");
        OptionalDouble face = measures.number("dface_deg");
        Optional<AngleReading> reading = row.needWord("reading", AngleReading.class);
        return row.isGood() ? Optional.of(new SettingRow(row, sleeve, new MeasuredSetting(setting, loft.getAsDouble(),
            lie.getAsDouble(), face, reading.orElseThrow()))) : Optional.empty();
    }
}
