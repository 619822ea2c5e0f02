package benchtwin.match;

import benchtwin.club.AddedMasses;
import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.Grip;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.Quantity;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.mechanics.Assemblies;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.WoodLoft;
import java.util.EnumMap;
import java.util.List;
import java.util.Optional;

/**
 * What a twin is made of: the old club with its parts, or a target written out.
 * @param name       the club's tag, or how the target is to be called
 * @param player     whose it is, if known
 * @param category   of the head
 * @param number     of the head
 * @param hand       of the head
 * @param head       the old head, if it is on record
 * @param shaft      the old shaft, if it is on record
 * @param sleeve     the sleeve on the old shaft
 * @param setting    the setting it was at
 * @param grip       the old grip
 * @param carried    tape under it, and what its head and tip carry beside their parts
 * @param target     what the twin should measure; length along the axis
 * @param condition  how its frequency is read
 * @param reading    in which reading its angles are wanted
 * @param old        the old club as numbers; empty when its parts are not on record, and then nothing is carried over
 * @param assemblies  makes parts into numbers, with what the workshop's own readings taught
 * @param notes      what could not be matched or was assumed, in plain words
 */
public record Favourite(String name, Optional<String> player, Category category, Optional<String> number, Hand hand,
                        Optional<Head> head, Optional<Shaft> shaft, Optional<Sleeve> sleeve, Optional<String> setting,
                        Optional<Grip> grip, AddedMasses carried, Target target, FrequencyCondition condition,
                        AngleReading reading, Optional<OldClub> old, Assemblies assemblies, List<String> notes) {

    public Favourite {
        notes = List.copyOf(notes);
    }

    /**
     * The same with another target.
     * @param other what the twin should measure
     * @return a copy
     */
    public Favourite withTarget(Target other) {
        return new Favourite(name, player, category, number, hand, head, shaft, sleeve, setting, grip, carried, other,
            condition, reading, old, assemblies, notes);
    }

    /**
     * The same around another head.
     * @param other the head
     * @return a copy whose category, number and hand are the head's
     */
    public Favourite around(Head other) {
        return new Favourite(name, player, other.category(), other.number(), other.hand(), Optional.of(other), shaft, sleeve,
            setting, grip, carried, target, condition, reading, old, assemblies, notes);
    }

    /**
     * The same wood with its loft in the other of a wood's two readings.
     * @param other soled or square
     * @return a copy; empty when the loft, lie or face angle it takes was not read, or this is not a wood
     */
    public Optional<Favourite> readAs(AngleReading other) {
        if (other == reading) {
            return Optional.of(this);
        }
        Optional<Wanted> loft = target.of(Quantity.LOFT);
        Optional<Wanted> lie = target.of(Quantity.LIE);
        Optional<Wanted> face = target.of(Quantity.FACE);
        if (!reading.isWood() || !other.isWood() || loft.isEmpty() || lie.isEmpty() || face.isEmpty()) {
            return Optional.empty();
        }
        double now = loft.get().value();
        double turned = other == AngleReading.SQUARE ? WoodLoft.squareDeg(now, face.get().value(), lie.get().value())
            : WoodLoft.soledDeg(now, face.get().value(), lie.get().value());
        EnumMap<Quantity, Wanted> wanted = new EnumMap<>(target.wanted());
        wanted.put(Quantity.LOFT, new Wanted(turned, loft.get().tolerance(), loft.get().weight()));
        return Optional.of(new Favourite(name, player, category, number, hand, head, shaft, sleeve, setting, grip, carried,
            new Target(other, wanted), condition, other, old.map(club -> club.withLoft(turned)),
            assemblies, notes));
    }

    /**
     * The same with another grip, read in another condition.
     * @param other    the grip
     * @param readHow how its frequency is read
     * @return a copy
     */
    public Favourite gripped(Optional<Grip> other, FrequencyCondition readHow) {
        return new Favourite(name, player, category, number, hand, head, shaft, sleeve, setting, other, carried, target,
            readHow, reading, old, assemblies, notes);
    }

    /**
     * Layers of tape under the grip.
     * @return 0 or more
     */
    public double tapeLayers() {
        return carried.tapeLayers();
    }
}
