package benchtwin.bend;

/**
 * One bend of a hosel and what it left, in degrees of hosel tilt.
 * @param askedDeg   what was asked under load, above 0
 * @param gotDeg     what the readings before and after differ by; below 0 where the reading's own scatter says so
 * @param readingDeg standard uncertainty of each of the two readings, carried to tilt, above 0
 * @param working    how the ask was held
 */
public record BendTrial(double askedDeg, double gotDeg, double readingDeg, Working working) {

    public BendTrial {
        if (!(askedDeg > 0) || !Double.isFinite(gotDeg) || !(readingDeg > 0)) {
            throw new IllegalArgumentException("a bend of %s asked, %s got, read to %s: expected an ask and an uncertainty above 0"
                .formatted(askedDeg, gotDeg, readingDeg));
        }
    }

    /** Variance of the difference of its two readings, square degrees. */
    double readingVariance() {
        return 2 * readingDeg * readingDeg;
    }
}
