package benchtwin.club;

import java.util.Comparator;
import java.util.List;

/**
 * All that happened to one club or part.
 * @param of      what it is the timeline of, as a heading names it
 * @param entries oldest first; of those of one time the order is kept
 */
public record Timeline(String of, List<TimelineEntry> entries) {

    public Timeline {
        of = of.strip();
        if (of.isEmpty()) {
            throw new IllegalArgumentException("a timeline must say what it is of");
        }
        entries = entries.stream().sorted(Comparator.comparing(TimelineEntry::when)).toList();
    }
}
