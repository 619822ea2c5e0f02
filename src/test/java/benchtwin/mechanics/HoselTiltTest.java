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
import org.junit.jupiter.params.provider.MethodSource;

/** Angles after a hosel tilt, against worked vectors and against Hipparchus' own rotations. */
class HoselTiltTest {

    private static final double ARITHMETIC = 1e-9;

    static LongStream seeds() {
        return LongStream.range(1, 60);
    }

    @Test
    void noTiltChangesNothing() {
        assertThat(HoselTilt.NONE.woodLieDeg(58)).isCloseTo(58, within(ARITHMETIC));
        assertThat(HoselTilt.NONE.woodYawDeg(58)).isZero();
        assertThat(HoselTilt.NONE.ironLieDeg(62)).isCloseTo(62, within(ARITHMETIC));
        assertThat(HoselTilt.NONE.ironPitchDeg(62)).isZero();
    }

    @Test
    void anUprightTiltIsLieAlone() {
        HoselTilt upright = new HoselTilt(1, 0);
        assertThat(upright.woodLieDeg(58)).isCloseTo(59, within(ARITHMETIC));
        assertThat(upright.woodYawDeg(58)).isZero();
    }

    /** Worked by hand: tan yaw = tan 1° / cos 58°, tan pitch = tan 1° / sin 58°. The handbook rounds to 1.9° and 1.2°. */
    @Test
    void aDegreeForwardOnADriverClosesTheFaceByNearlyTwo() {
        HoselTilt forward = new HoselTilt(0, 1);
        assertThat(forward.woodYawDeg(58)).isCloseTo(1.8866, within(1e-4));
        assertThat(forward.ironPitchDeg(58)).isCloseTo(1.1791, within(1e-4));
    }

    /** One and a half degrees of face on a driver is only 0.8° of tilt. Source: the same geometry, worked by hand. */
    @Test
    void faceCostsLittleTilt() {
        assertThat(HoselTilt.forWood(58, 58, 1.5).forwardDeg()).isCloseTo(0.795, within(0.001));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void tiltAndInverseReturnTheAngles(long seed) {
        Random random = new Random(seed);
        double lie = 50 + 22 * random.nextDouble();
        HoselTilt tilt = new HoselTilt(4 * random.nextDouble() - 2, 4 * random.nextDouble() - 2);
        HoselTilt wood = HoselTilt.forWood(lie, tilt.woodLieDeg(lie), tilt.woodYawDeg(lie));
        HoselTilt iron = HoselTilt.forIron(lie, tilt.ironLieDeg(lie), tilt.ironPitchDeg(lie));
        assertThat(wood.uprightDeg()).isCloseTo(tilt.uprightDeg(), within(ARITHMETIC));
        assertThat(wood.forwardDeg()).isCloseTo(tilt.forwardDeg(), within(ARITHMETIC));
        assertThat(iron.uprightDeg()).isCloseTo(tilt.uprightDeg(), within(ARITHMETIC));
        assertThat(iron.forwardDeg()).isCloseTo(tilt.forwardDeg(), within(ARITHMETIC));
    }

    /**
     * Hipparchus 4.0.1, {@code Rotation}: turning the tilted axis about the vertical by the yaw, or about the heel-toe line
     * by the pitch, must bring it back over the player at the new lie.
     */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void agreesWithTheRotationsOfAGeometryLibrary(long seed) {
        Random random = new Random(seed);
        double lie = 50 + 22 * random.nextDouble();
        HoselTilt tilt = new HoselTilt(4 * random.nextDouble() - 2, 4 * random.nextDouble() - 2);
        Rotation upright = new Rotation(Vector3D.PLUS_I, Math.toRadians(lie + tilt.uprightDeg()),
            RotationConvention.VECTOR_OPERATOR);
        Vector3D inPlane = upright.applyTo(Vector3D.PLUS_J);
        Vector3D square = Vector3D.crossProduct(inPlane, Vector3D.PLUS_I);
        Vector3D axis = new Rotation(square, Math.toRadians(tilt.forwardDeg()), RotationConvention.VECTOR_OPERATOR)
            .applyTo(inPlane);
        assertThat(axis.getX()).isCloseTo(Math.sin(Math.toRadians(tilt.forwardDeg())), within(ARITHMETIC));

        Vector3D wood = new Rotation(Vector3D.PLUS_K, Math.toRadians(tilt.woodYawDeg(lie)),
            RotationConvention.VECTOR_OPERATOR).applyTo(axis);
        assertThat(wood.getX()).isCloseTo(0, within(ARITHMETIC));
        assertThat(Math.toDegrees(Math.atan2(wood.getZ(), wood.getY())))
            .isCloseTo(tilt.woodLieDeg(lie), within(ARITHMETIC));

        Vector3D iron = new Rotation(Vector3D.PLUS_J, -Math.toRadians(tilt.ironPitchDeg(lie)),
            RotationConvention.VECTOR_OPERATOR).applyTo(axis);
        assertThat(iron.getX()).isCloseTo(0, within(ARITHMETIC));
        assertThat(Math.toDegrees(Math.atan2(iron.getZ(), iron.getY())))
            .isCloseTo(tilt.ironLieDeg(lie), within(ARITHMETIC));
    }
}
