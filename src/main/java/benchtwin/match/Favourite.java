package benchtwin.match;

import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.Grip;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.club.Target;
import benchtwin.mechanics.FrequencyCondition;
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
 * @param tapeLayers layers of tape under it
 * @param target     what the twin should measure; length along the axis
 * @param condition  how its frequency is read
 * @param reading    in which reading its angles are wanted
 * @param old        the old club as numbers; empty when its parts are not on record, and then nothing is carried over
 * @param notes      what could not be matched or was assumed, in plain words
 */
public record Favourite(String name, Optional<String> player, Category category, Optional<String> number, Hand hand,
                        Optional<Head> head, Optional<Shaft> shaft, Optional<Sleeve> sleeve, Optional<String> setting,
                        Optional<Grip> grip, double tapeLayers, Target target, FrequencyCondition condition,
                        AngleReading reading, Optional<OldClub> old, List<String> notes) {

    public Favourite {
        notes = List.copyOf(notes);
    }

    /**
     * The same with another target.
     * @param other what the twin should measure
     * @return a copy
     */
    public Favourite withTarget(Target other) {
        return new Favourite(name, player, category, number, hand, head, shaft, sleeve, setting, grip, tapeLayers, other,
            condition, reading, old, notes);
    }
}
