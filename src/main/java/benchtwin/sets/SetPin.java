package benchtwin.sets;

import java.util.Optional;

/**
 * A part that is decided for a club.
 * @param player for whom
 * @param club   the club, as its set names it
 * @param head   tag of its head, if that is decided
 * @param shaft  tag of its shaft, if that is decided
 */
public record SetPin(String player, String club, Optional<String> head, Optional<String> shaft) {

    public SetPin {
        if (head.isEmpty() && shaft.isEmpty()) {
            throw new IllegalArgumentException("%s of %s: a pin names a head or a shaft".formatted(club, player));
        }
    }
}
