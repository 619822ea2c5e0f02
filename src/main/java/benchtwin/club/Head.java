package benchtwin.club;

import benchtwin.measure.Reading;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One head, as it lies in the drawer.
 * @param tag         its own tag
 * @param model       model name
 * @param category    driver to putter
 * @param number      its number in a set, such as {@code 7} or {@code PW}; a wedge's is its nominal loft
 * @param hand        right or left
 * @param angles      its angles as read
 * @param offsetMm    offset, mm
 * @param grind       sole grind
 * @param massG       mass as weighed, g
 * @param weighedWith what was on it when it was weighed
 * @param bore        the bore, for a head a shaft is bonded into; empty for a sleeved head
 * @param seat        the sleeve seat, for a sleeved head; empty for a bored one
 * @param material    what the hosel is made of
 * @param adjust      how its angles can be changed
 * @param ports       its weight ports and what is in them
 * @param hotMeltMaxG room for hot melt, g, 0 when there is none
 * @param made        its angles as made
 * @param bent        hosel tilt used so far
 * @param mass        centre of gravity and inertia as far as measured
 * @param size        how large it is, as far as measured
 * @param condition   new, used or cracked
 * @param keeping     for whom and where it is kept
 */
public record Head(String tag, String model, Category category, Optional<String> number, Hand hand, HeadAngles angles,
                   OptionalDouble offsetMm, Optional<String> grind, Optional<Reading> massG,
                   Set<WeighedWith> weighedWith, Optional<Bore> bore, Optional<SleeveSeat> seat, HeadMaterial material,
                   Adjust adjust, List<Port> ports, double hotMeltMaxG, MadeAngles made, BendHistory bent,
                   MassProperties mass, HeadSize size, HeadCondition condition, Keeping keeping) {

    public Head {
        weighedWith = Set.copyOf(weighedWith);
        ports = List.copyOf(ports);
        if (bore.isPresent() == seat.isPresent()) {
            throw new IllegalArgumentException("head %s must have a bore or a sleeve seat, one of the two".formatted(tag));
        }
        if (seat.isPresent() != (adjust == Adjust.SLEEVE)) {
            throw new IllegalArgumentException(
                "head %s: adjusts by %s, which does not go with its hosel".formatted(tag, adjust.word()));
        }
        if (!(hotMeltMaxG >= 0)) {
            throw new IllegalArgumentException("head %s: room for %s g of hot melt".formatted(tag, hotMeltMaxG));
        }
    }

    /**
     * Whether its angles follow the rules of a wood (two adjustments, three angles).
     * @return false for irons, wedges, putters and hybrids read by the edge
     */
    public boolean isWood() {
        return angles.reading().isWood();
    }
}
