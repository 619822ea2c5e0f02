package benchtwin.club;

/**
 * One ring of an adjustable sleeve. Settings count from 1; setting i lies at azimuth 360°·(i − 1)/settings + offset, and
 * tilts the hosel axis upright by tilt·cos(azimuth) and toward the target by tilt·sin(azimuth), mirrored for a left hand.
 * @param tiltDeg   tilt, degrees, 0 or more
 * @param settings  how many equally spaced settings, 1 or more
 * @param offsetDeg azimuth of setting 1, degrees
 */
public record Ring(double tiltDeg, int settings, double offsetDeg) {

    public Ring {
        if (!(tiltDeg >= 0) || settings < 1 || !Double.isFinite(offsetDeg)) {
            throw new IllegalArgumentException("a ring of %d settings, %s° tilt, %s° offset".formatted(settings, tiltDeg, offsetDeg));
        }
    }
}
