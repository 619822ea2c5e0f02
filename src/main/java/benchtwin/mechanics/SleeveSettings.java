package benchtwin.mechanics;

import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.toRadians;

import benchtwin.club.AngleReading;
import benchtwin.club.Hand;
import benchtwin.club.MeasuredSetting;
import benchtwin.club.Ring;
import benchtwin.club.Sleeve;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The settings of an adjustable sleeve and what each does. Settings count from 1; a two-ring setting is written
 * outer/inner, such as {@code 3/5}. Setting i of a ring lies at azimuth 360°·(i − 1)/N + offset, mirrored for a left-handed
 * head; the rings' small tilts add (good to 0.01°). A measured table overrides the geometry.
 */
public final class SleeveSettings {

    private static final double TURN_DEG = 360;

    private SleeveSettings() {
    }

    /**
     * Every setting's label.
     * @param sleeve any sleeve
     * @return the measured table's labels, or all combinations of the rings, outer ring first
     */
    public static List<String> labels(Sleeve sleeve) {
        if (!sleeve.measured().isEmpty()) {
            return sleeve.measured().stream().map(MeasuredSetting::setting).toList();
        }
        List<String> labels = new ArrayList<>();
        if (sleeve.rings().size() == 1) {
            for (int i = 1; i <= sleeve.rings().get(0).settings(); i++) {
                labels.add(Integer.toString(i));
            }
        } else if (sleeve.rings().size() == 2) {
            for (int outer = 1; outer <= sleeve.rings().get(0).settings(); outer++) {
                for (int inner = 1; inner <= sleeve.rings().get(1).settings(); inner++) {
                    labels.add(outer + "/" + inner);
                }
            }
        }
        return List.copyOf(labels);
    }

    /**
     * The measured row of a setting.
     * @param sleeve any sleeve
     * @param label  a setting's label
     * @return its row, or empty when the sleeve has no measured table or not this label
     */
    public static Optional<MeasuredSetting> measured(Sleeve sleeve, String label) {
        return sleeve.measured().stream().filter(row -> row.setting().equals(label)).findFirst();
    }

    /**
     * The tilt of a setting by the rings' geometry.
     * @param sleeve a sleeve with rings
     * @param label  a setting's label
     * @param hand   the head's hand; the mirror reverses the count for a left hand
     * @return the tilt, or empty when the label is not a setting of this sleeve
     */
    public static Optional<HoselTilt> tilt(Sleeve sleeve, String label, Hand hand) {
        String[] parts = label.split("/");
        if (parts.length != sleeve.rings().size()) {
            return Optional.empty();
        }
        double upright = 0;
        double forward = 0;
        for (int k = 0; k < parts.length; k++) {
            Ring ring = sleeve.rings().get(k);
            int index = parseSetting(parts[k]);
            if (index < 1 || index > ring.settings()) {
                return Optional.empty();
            }
            double azimuthDeg = TURN_DEG * (index - 1) / ring.settings() + ring.offsetDeg();
            double azimuth = toRadians(hand == Hand.LEFT ? -azimuthDeg : azimuthDeg);
            upright += ring.tiltDeg() * cos(azimuth);
            forward += ring.tiltDeg() * sin(azimuth);
        }
        return Optional.of(new HoselTilt(upright, forward));
    }

    /**
     * The mean tilt of all settings, which stands in when nobody recorded the setting a head was read at.
     * @param sleeve a sleeve with rings
     * @param hand   the head's hand
     * @return the mean, (0, 0) for equally spaced settings of two or more
     */
    public static HoselTilt mean(Sleeve sleeve, Hand hand) {
        double upright = 0;
        double forward = 0;
        List<String> labels = labels(sleeve);
        int counted = 0;
        for (String label : labels) {
            Optional<HoselTilt> tilt = tilt(sleeve, label, hand);
            if (tilt.isPresent()) {
                upright += tilt.get().uprightDeg();
                forward += tilt.get().forwardDeg();
                counted++;
            }
        }
        return counted == 0 ? HoselTilt.NONE : new HoselTilt(upright / counted, forward / counted);
    }

    /**
     * What a setting does to a head's angles, from the setting its angles were read at.
     * @param sleeve the sleeve
     * @param hand   the head's hand
     * @param readAt the setting the head was read at; empty when nobody recorded it, and then the mean of all settings
     *               stands in
     * @param label  the setting wanted
     * @return the change; empty when the sleeve does not know one of the two settings
     */
    public static Optional<Setup.Aim> aim(Sleeve sleeve, Hand hand, Optional<String> readAt, String label) {
        if (!sleeve.measured().isEmpty()) {
            return measuredAim(sleeve, readAt, label);
        }
        Optional<HoselTilt> from = readAt.isPresent() ? tilt(sleeve, readAt.get(), hand)
            : Optional.of(mean(sleeve, hand));
        return from.flatMap(start -> tilt(sleeve, label, hand).map(to -> new Setup.Tilted(to.minus(start))));
    }

    private static Optional<Setup.Aim> measuredAim(Sleeve sleeve, Optional<String> readAt, String label) {
        Optional<MeasuredSetting> to = measured(sleeve, label);
        Optional<MeasuredSetting> from = readAt.isPresent() ? measured(sleeve, readAt.get())
            : Optional.of(meanOf(sleeve.measured()));
        if (to.isEmpty() || from.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Setup.Shifted(to.get().dLoftDeg() - from.get().dLoftDeg(),
            to.get().dLieDeg() - from.get().dLieDeg(),
            to.get().dFaceDeg().orElse(Double.NaN) - from.get().dFaceDeg().orElse(Double.NaN),
            to.get().reading() == AngleReading.SQUARE));
    }

    private static MeasuredSetting meanOf(List<MeasuredSetting> rows) {
        double loft = rows.stream().mapToDouble(MeasuredSetting::dLoftDeg).average().orElseThrow();
        double lie = rows.stream().mapToDouble(MeasuredSetting::dLieDeg).average().orElseThrow();
        double face = rows.stream().mapToDouble(row -> row.dFaceDeg().orElse(Double.NaN)).average().orElseThrow();
        return new MeasuredSetting("mean", loft, lie, OptionalDouble.of(face), rows.get(0).reading());
    }

    private static int parseSetting(String text) {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException notANumber) {
            return -1;
        }
    }
}
