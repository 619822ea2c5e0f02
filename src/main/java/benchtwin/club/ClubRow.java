package benchtwin.club;

import benchtwin.measure.Reading;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a recorded club was made of and measured on one day. Readings that were not taken are empty.
 * @param measuredOn   the day
 * @param state        in play, backup, damaged or stripped
 * @param head         tag of its head
 * @param shaft        tag of its shaft
 * @param grip         tag of its grip
 * @param sleeve       name of its sleeve
 * @param setting      the sleeve's setting
 * @param angles       loft, lie, face and bounce as read; the reading is empty when no angle was read
 * @param lengthMm     playing length, mm
 * @param lengthMethod how the length was taken
 * @param swingWeightPoints swing weight, points above A0
 * @param frequency    frequency in its condition
 * @param totalMassG   total mass, g
 * @param masses       what was added and where
 * @param orientation  how shaft markings and grip lie
 * @param note         free text
 * @param extra        columns the program does not know, kept as written
 */
public record ClubRow(LocalDate measuredOn, ClubState state, Optional<String> head, Optional<String> shaft,
                      Optional<String> grip, Optional<String> sleeve, Optional<String> setting,
                      Optional<HeadAngles> angles, Optional<Reading> lengthMm, LengthMethod lengthMethod,
                      Optional<Reading> swingWeightPoints, Optional<FrequencyReading> frequency,
                      Optional<Reading> totalMassG, AddedMasses masses, Optional<String> orientation,
                      Optional<String> note, Map<String, String> extra) {

    public ClubRow {
        extra = Collections.unmodifiableMap(new LinkedHashMap<>(extra));
    }
}
