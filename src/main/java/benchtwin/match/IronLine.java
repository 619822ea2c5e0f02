package benchtwin.match;

import benchtwin.club.Category;
import benchtwin.club.Line;
import benchtwin.club.LinePer;
import benchtwin.club.Margin;
import benchtwin.club.Quantity;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.club.WantedClub;
import benchtwin.measure.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The straight line nearest the frequencies of a set's irons.
 * @param line   cpm per inch shorter, to 0.01, from the 7-iron or the middle one
 * @param worst  the iron furthest off it
 * @param offCpm how far that reads above it, cpm
 */
record IronLine(Line line, String worst, double offCpm) {

    private static final String NAME = "irons of record of %s";
    /** Two always lie on a line. */
    private static final int FEWEST = 3;
    /** Over less, a slope is mostly the scatter of its readings: half a cpm of it would be more than half a cpm an inch. Ours. */
    private static final double LEAST_SPAN_IN = 0.75;
    private static final String USUAL_ANCHOR = "7-iron";
    private static final double HUNDREDTHS = 100;

    /** Fits the line; empty where fewer than three irons have length and frequency, or their lengths hardly differ. */
    static Optional<IronLine> through(List<WantedClub> set) {
        List<WantedClub> irons = set.stream().filter(club -> club.category() == Category.IRON
            && value(club, Quantity.LENGTH).isPresent() && value(club, Quantity.FREQUENCY).isPresent()).toList();
        double[] inches = irons.stream().mapToDouble(IronLine::inches).toArray();
        double[] cpm = irons.stream().mapToDouble(club -> value(club, Quantity.FREQUENCY).orElseThrow()).toArray();
        if (irons.size() < FEWEST || spanIn(inches) < LEAST_SPAN_IN) {
            return Optional.empty();
        }
        FittedLine fitted = FittedLine.through(inches, cpm);
        WantedClub anchor = irons.stream().filter(club -> club.club().equals(USUAL_ANCHOR)).findFirst()
            .orElse(irons.get(irons.size() / 2));
        Line line = new Line(NAME.formatted(anchor.player()), Quantity.FREQUENCY, anchor.club(), rounded(fitted.at(inches(anchor))),
            rounded(-fitted.slope()), LinePer.INCH);
        int worst = 0;
        for (int i = 1; i < cpm.length; i++) {
            worst = Math.abs(cpm[i] - fitted.at(inches[i])) > Math.abs(cpm[worst] - fitted.at(inches[worst])) ? i : worst;
        }
        return Optional.of(new IronLine(line, irons.get(worst).club(), cpm[worst] - fitted.at(inches[worst])));
    }

    /** The set with its irons on the line; one without a length stays as it is. */
    List<WantedClub> straighten(List<WantedClub> set, Tolerances tolerances, List<String> notes) {
        Wanted any = tolerances.wanted(Quantity.FREQUENCY, line.anchorValue());
        Margin margin = new Margin(any.tolerance(), any.weight());
        Map<Quantity, Margin> margins = margin.equals(Margin.ofDefaults(Quantity.FREQUENCY)) ? Map.of()
            : Map.of(Quantity.FREQUENCY, margin);
        notes.add(("the irons lie on a line of %.2f cpm an inch, %.2f cpm at the %s; on record the %s is furthest off it, "
            + "by %+.1f cpm").formatted(line.slope(), line.anchorValue(), line.anchorClub(), worst, offCpm));
        List<WantedClub> straight = new ArrayList<>();
        for (WantedClub club : set) {
            boolean lies = club.category() == Category.IRON && canLie(club);
            if (club.category() == Category.IRON && !lies) {
                notes.add("%s keeps off the line: it has no length, or nothing else of it counts".formatted(club.club()));
            } else if (lies && value(club, Quantity.FREQUENCY).isEmpty()) {
                notes.add("%s takes a frequency from the line".formatted(club.club()));
            }
            straight.add(lies ? onLine(club, margins) : club);
        }
        return straight;
    }

    private static WantedClub onLine(WantedClub club, Map<Quantity, Margin> margins) {
        Target target = club.target().orElseThrow();
        Map<Quantity, Wanted> wanted = new EnumMap<>(target.wanted());
        wanted.remove(Quantity.FREQUENCY);
        return new WantedClub(club.player(), club.club(), club.category(), club.number(), club.hand(), club.group(),
            club.groupRule(), Optional.of(new Target(target.reading(), wanted)), Optional.of(NAME.formatted(club.player())), club.swingLine(),
            club.loftLine(), club.priority(), club.neededBy(), club.keeping(), margins);
    }

    /** A line by the inch takes a length, and a row of its own something that counts. */
    private static boolean canLie(WantedClub club) {
        return value(club, Quantity.LENGTH).isPresent() && club.target().orElseThrow().wanted().entrySet().stream()
            .anyMatch(each -> each.getKey() != Quantity.FREQUENCY && each.getValue().weight() > 0);
    }

    private static double spanIn(double[] inches) {
        return Arrays.stream(inches).max().orElseThrow() - Arrays.stream(inches).min().orElseThrow();
    }

    private static double inches(WantedClub club) {
        return Units.inches(value(club, Quantity.LENGTH).orElseThrow());
    }

    private static Optional<Double> value(WantedClub club, Quantity quantity) {
        return club.target().flatMap(target -> target.of(quantity)).map(Wanted::value);
    }

    private static double rounded(double value) {
        return Math.round(value * HUNDREDTHS) / HUNDREDTHS;
    }
}
