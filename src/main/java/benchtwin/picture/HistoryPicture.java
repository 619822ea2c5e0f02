package benchtwin.picture;

import benchtwin.club.BenchTime;
import benchtwin.club.Quantity;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The readings of a club or a part over time: a strip a quantity, always in the same order and all on one axis of time. A
 * strip has its target in the middle and its tolerance as a band, in the same scale for all that have a target; a strip
 * without one is scaled to its readings. Each reading is a dot with a whisker of twice its standard uncertainty; one that
 * lies off the strip is an arrow with its number. One that was superseded is crossed out, at the edge of the strip where it
 * lies off it. Readings of one time stand side by side about it; one of which only the day is known stands at its start.
 * Interventions are ticks on a line above the strips, with their words, or, where the words have no room, with a number and a
 * list beneath.
 * @param subject       whose history, as the title names it
 * @param strips        by quantity; one without readings is shown as not read
 * @param interventions what was done; oldest first; may be empty
 */
public record HistoryPicture(String subject, Map<Quantity, HistoryStrip> strips, List<Intervention> interventions)
    implements Picture {

    /**
     * Puts everything in order.
     * @throws IllegalArgumentException when there is neither a strip nor an intervention, or no subject
     */
    public HistoryPicture {
        subject = Words.required("subject", subject);
        if (strips.isEmpty() && interventions.isEmpty()) {
            throw new IllegalArgumentException("a history needs at least one quantity, or something that was done");
        }
        EnumMap<Quantity, HistoryStrip> copy = new EnumMap<>(Quantity.class);
        copy.putAll(strips);
        strips = Collections.unmodifiableMap(copy);
        interventions = interventions.stream().sorted(Comparator.comparing(Intervention::when)).toList();
    }

    @Override
    public String title() {
        return subject + " over time: " + HistoryWords.finding(this);
    }

    @Override
    public String inWords() {
        return HistoryWords.table(this);
    }

    @Override
    public String svg() {
        Fonts.require();
        return SvgSheet.text(this, new HistoryDrawing(this));
    }

    @Override
    public byte[] png() {
        Fonts.require();
        return PngSheet.bytes(new HistoryDrawing(this));
    }

    /** Every time there is something at, oldest first. */
    List<BenchTime> times() {
        return Stream.concat(strips.values().stream().flatMap(strip -> strip.readings().stream()).map(HistoryReading::when),
            interventions.stream().map(Intervention::when)).sorted().toList();
    }

    /** The gauges other than the reference, by name. */
    List<String> otherGauges() {
        return strips.values().stream().flatMap(strip -> strip.readings().stream()).filter(reading -> !reading.superseded())
            .flatMap(reading -> reading.otherGauge().stream()).distinct().sorted().toList();
    }
}
