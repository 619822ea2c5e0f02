package benchtwin.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.LongStream;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A wood's loft soled and square. */
class WoodLoftTest {

    private static final double ARITHMETIC = 1e-9;

    static LongStream seeds() {
        return LongStream.range(1, 60);
    }

    @Test
    void aSquareFaceReadsTheSameBothWays() {
        assertThat(WoodLoft.squareDeg(9, 0, 58)).isCloseTo(9, within(ARITHMETIC));
    }

    /** Worked by hand: sin 9° + cos 9° · sin 1° · cot 58° = 0.156434 + 0.010771, whose arcsine is 9.625°. */
    @Test
    void aClosedDriverPlaysWithMoreLoftThanItShows() {
        assertThat(WoodLoft.squareDeg(9, -1, 58)).isCloseTo(9.625, within(0.0005));
        assertThat(WoodLoft.squareDeg(9, 1, 58)).isLessThan(9);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void soledAndSquareAreInverse(long seed) {
        Random random = new Random(seed);
        double loft = 7 + 14 * random.nextDouble();
        double face = 8 * random.nextDouble() - 4;
        double lie = 54 + 8 * random.nextDouble();
        assertThat(WoodLoft.soledDeg(WoodLoft.squareDeg(loft, face, lie), face, lie))
            .isCloseTo(loft, within(ARITHMETIC));
    }

    /** Hipparchus 4.0.1, {@code Rotation}: turn the face normal about the shaft axis until it points at the target. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void agreesWithARotationAboutTheShaft(long seed) {
        Random random = new Random(seed);
        double loft = Math.toRadians(7 + 14 * random.nextDouble());
        double face = Math.toRadians(8 * random.nextDouble() - 4);
        double lie = Math.toRadians(54 + 8 * random.nextDouble());
        Vector3D normal = new Vector3D(Math.cos(loft) * Math.cos(face), -Math.cos(loft) * Math.sin(face), Math.sin(loft));
        Vector3D shaft = new Vector3D(0, Math.cos(lie), Math.sin(lie));
        double low = -0.3;
        double high = 0.3;
        for (int k = 0; k < 80; k++) {
            double middle = (low + high) / 2;
            double y = turned(shaft, middle, normal).getY();
            if (y * turned(shaft, low, normal).getY() <= 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        double square = Math.toDegrees(Math.asin(turned(shaft, low, normal).getZ()));
        assertThat(WoodLoft.squareDeg(Math.toDegrees(loft), Math.toDegrees(face), Math.toDegrees(lie)))
            .isCloseTo(square, within(1e-8));
    }

    private static Vector3D turned(Vector3D axis, double angle, Vector3D normal) {
        return new Rotation(axis, angle, RotationConvention.VECTOR_OPERATOR).applyTo(normal);
    }

    /** The shop's rule is one for one (common practice, no source); the geometry says 0.58 at lie 60° to 0.68 at 56°. */
    @ParameterizedTest
    @CsvSource({"60, 0.58", "58, 0.63", "56, 0.68"})
    void aDegreeOfClosingGainsLessThanADegreeOfLoft(double lieDeg, double gain) {
        assertThat(WoodLoft.squareDeg(9, -1, lieDeg) - 9).isCloseTo(gain, within(0.02));
    }
}
