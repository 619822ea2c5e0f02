package benchtwin.bench;

import benchtwin.stock.Nearest;
import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.stream.Collectors;

/** What somebody probably meant by a name that is not there. */
final class NearNames {

    private static final int NAMED = 3;

    private NearNames() {
    }

    /**
     * The nearest three, fewest edits first, case aside.
     * @param name  as typed
     * @param names what there is
     * @return with commas between them
     */
    static String of(String name, Collection<String> names) {
        return names.stream().distinct()
            .sorted(Comparator.comparingInt((String other) -> distance(name, other)).thenComparing(other -> other))
            .limit(NAMED).collect(Collectors.joining(", "));
    }

    private static int distance(String from, String to) {
        return Nearest.distance(from.toLowerCase(Locale.ROOT), to.toLowerCase(Locale.ROOT));
    }
}
