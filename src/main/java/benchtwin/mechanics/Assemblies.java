package benchtwin.mechanics;

import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Makes many assemblies with one grip factor and works every shaft's stiffness out once. It goes by the very shaft object, so
 * two equal records are worked out twice. Not thread-safe: every thread needs its own.
 */
public final class Assemblies {

    private final GripFactor factor;
    private final Map<Shaft, ShaftStiffness> known = new IdentityHashMap<>();

    /**
     * Starts with nothing remembered.
     * @param factor how the machine reads over a grip
     */
    public Assemblies(GripFactor factor) {
        this.factor = factor;
    }

    /**
     * The grip factor in use.
     * @return what was given
     */
    public GripFactor factor() {
        return factor;
    }

    /**
     * Puts parts together.
     * @param head   the head
     * @param shaft  the shaft
     * @param sleeve the sleeve, for a sleeved head
     * @param grip   the grip; without one its mass is missing and so is everything that hangs on it
     * @return the assembly
     * @throws IllegalArgumentException when a sleeved head comes without a sleeve or a bored one with
     */
    public Assembly of(Head head, Shaft shaft, Optional<Sleeve> sleeve, Optional<Grip> grip) {
        return Assembler.of(head, shaft, sleeve, grip, stiffness(shaft), factor);
    }

    /**
     * What a shaft's readings say of its stiffness.
     * @param shaft the shaft
     * @return worked out at the first call
     */
    public ShaftStiffness stiffness(Shaft shaft) {
        return known.computeIfAbsent(shaft, one -> ShaftStiffness.of(one, factor));
    }
}
