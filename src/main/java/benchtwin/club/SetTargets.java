package benchtwin.club;

import benchtwin.measure.Units;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The sets that are to be built, and the lines that run through them.
 * @param clubs every wanted club, in file order; player and club name each once
 * @param lines the lines, each name once; every line a club names is among them
 */
public record SetTargets(List<WantedClub> clubs, List<Line> lines) {

    public SetTargets {
        clubs = List.copyOf(clubs);
        lines = List.copyOf(lines);
        Set<List<String>> keys = new HashSet<>();
        for (WantedClub club : clubs) {
            if (!keys.add(List.of(club.player(), club.club()))) {
                throw new IllegalArgumentException("%s of %s is wanted twice".formatted(club.club(), club.player()));
            }
        }
        Set<String> names = new HashSet<>();
        for (Line line : lines) {
            if (!names.add(line.name())) {
                throw new IllegalArgumentException("line %s is there twice".formatted(line.name()));
            }
        }
        for (WantedClub club : clubs) {
            for (String line : club.lineNames()) {
                if (!names.contains(line)) {
                    throw new IllegalArgumentException(
                        "%s of %s: there is no line %s".formatted(club.club(), club.player(), line));
                }
            }
        }
    }

    /**
     * The players.
     * @return each once, in file order
     */
    public List<String> players() {
        return clubs.stream().map(WantedClub::player).distinct().toList();
    }

    /**
     * One player's set.
     * @param player any name
     * @return the player's clubs in file order; none for a player who wants none
     */
    public List<WantedClub> of(String player) {
        return clubs.stream().filter(club -> club.player().equals(player)).toList();
    }

    /**
     * A line.
     * @param name its name
     * @return the line, or empty
     */
    public Optional<Line> line(String name) {
        return lines.stream().filter(line -> line.name().equals(name)).findFirst();
    }

    /**
     * The lines a club lies on.
     * @param club one of the clubs
     * @return its frequency line, then its swing line, then its loft line, those it has
     */
    public List<Line> linesOf(WantedClub club) {
        return club.lineNames().stream().flatMap(name -> line(name).stream()).toList();
    }

    /**
     * What a line gives at a club: the anchor value and the slope times the inches the club is wanted shorter than the
     * anchor club of the same player, or the places it stands after it among all of the player's clubs.
     * @param line any line
     * @param club one of the clubs
     * @return in the line's unit; empty when the player has no such anchor club, or a length that is needed is not wanted
     */
    public OptionalDouble valueAt(Line line, WantedClub club) {
        if (line.isConstant()) {
            return OptionalDouble.of(line.anchorValue());
        }
        List<WantedClub> set = of(club.player());
        Optional<WantedClub> anchor = set.stream().filter(other -> other.club().equals(line.anchorClub())).findFirst();
        if (anchor.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (line.per() == LinePer.CLUB) {
            return OptionalDouble.of(line.valueAfter(set.indexOf(club) - set.indexOf(anchor.get())));
        }
        OptionalDouble own = lengthMm(club);
        OptionalDouble from = lengthMm(anchor.get());
        return own.isEmpty() || from.isEmpty() ? OptionalDouble.empty()
            : OptionalDouble.of(line.valueAfter((from.getAsDouble() - own.getAsDouble()) / Units.MM_PER_INCH));
    }

    /**
     * All that is wanted of a club: what its row names and what its lines give, a row's own value before a line's.
     * @param club one of the clubs
     * @return empty when neither says anything with a weight above 0
     */
    public Optional<Target> targetOf(WantedClub club) {
        Map<Quantity, Wanted> wanted = new EnumMap<>(Quantity.class);
        club.target().ifPresent(target -> wanted.putAll(target.wanted()));
        for (Line line : linesOf(club)) {
            valueAt(line, club).ifPresent(
                value -> wanted.putIfAbsent(line.quantity(), club.margin(line.quantity()).around(value)));
        }
        AngleReading reading = club.target().map(Target::reading).orElse(switch (club.category()) {
            case DRIVER, FAIRWAY, HYBRID -> AngleReading.SOLED;
            case IRON, WEDGE, PUTTER -> AngleReading.EDGE;
        });
        return wanted.values().stream().anyMatch(each -> each.weight() > 0)
            ? Optional.of(new Target(reading, wanted)) : Optional.empty();
    }

    private static OptionalDouble lengthMm(WantedClub club) {
        return club.target().flatMap(target -> target.of(Quantity.LENGTH)).map(Wanted::value).map(OptionalDouble::of)
            .orElse(OptionalDouble.empty());
    }
}
