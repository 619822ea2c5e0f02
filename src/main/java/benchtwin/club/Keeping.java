package benchtwin.club;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Where a part is kept and for whom, and whatever else its row said.
 * @param reservedFor the job or player it is promised to
 * @param place       the drawer, bin or bench it lies in
 * @param note        free text
 * @param extra       columns the program does not know, kept as written, in file order
 */
public record Keeping(Optional<String> reservedFor, Optional<String> place, Optional<String> note,
                      Map<String, String> extra) {

    /** Nothing recorded. */
    public static final Keeping UNRECORDED =
        new Keeping(Optional.empty(), Optional.empty(), Optional.empty(), Map.of());

    public Keeping {
        extra = Collections.unmodifiableMap(new LinkedHashMap<>(extra));
    }
}
