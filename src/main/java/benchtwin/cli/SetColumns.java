package benchtwin.cli;

import benchtwin.club.Quantity;
import benchtwin.sets.ClubOfSet;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The columns of a set's table: every quantity that is wanted of one of its clubs. Quantities of which no club wants both
 * share a column. A cell is a value and how far it is from its target, marked when that is beyond the tolerance.
 */
final class SetColumns {

    private static final List<List<Quantity>> SHARED = List.of(List.of(Quantity.LOFT), List.of(Quantity.LIE),
        List.of(Quantity.FACE, Quantity.BOUNCE), List.of(Quantity.LENGTH),
        List.of(Quantity.SWING_WEIGHT, Quantity.BUTT_INERTIA), List.of(Quantity.FREQUENCY), List.of(Quantity.TOTAL_MASS));
    private static final String BEYOND = "!";

    private final List<ClubOfSet> clubs;
    private final List<Column> columns = new ArrayList<>();
    private final List<Quantity> left = new ArrayList<>();

    /** One column with how wide its values and its differences are. */
    private record Column(List<Quantity> quantities, int valueWidth, int differenceWidth) {

        int width() {
            return 1 + valueWidth + 1 + differenceWidth;
        }
    }

    /**
     * Lays them out.
     * @param clubs of one player
     * @param room  columns of the page there are for them; what does not fit is named by {@link #beside}
     */
    SetColumns(List<ClubOfSet> clubs, int room) {
        this.clubs = clubs;
        int used = 0;
        for (List<Quantity> shared : SHARED) {
            List<Quantity> wanted = shared.stream().filter(q -> clubs.stream().anyMatch(club -> has(club, q))).toList();
            boolean apart = clubs.stream().anyMatch(club -> wanted.stream().filter(q -> has(club, q)).count() > 1);
            for (List<Quantity> quantities : apart ? wanted.stream().map(List::of).toList() : List.of(wanted)) {
                Column column = column(quantities);
                if (quantities.isEmpty() || used + column.width() > room) {
                    left.addAll(quantities);
                } else {
                    columns.add(column);
                    used += column.width();
                }
            }
        }
    }

    private static boolean has(ClubOfSet club, Quantity quantity) {
        return club.target().flatMap(target -> target.of(quantity)).isPresent();
    }

    private Column column(List<Quantity> quantities) {
        int values = 0;
        int differences = 0;
        for (ClubOfSet club : clubs) {
            for (Quantity quantity : quantities) {
                values = Math.max(values, value(club, quantity).length());
                differences = Math.max(differences, difference(club, quantity).length());
            }
        }
        return new Column(quantities, values, Math.max(differences, title(quantities).length() - values - 1));
    }

    private static String title(List<Quantity> quantities) {
        return quantities.stream().map(q -> switch (q) {
            case LENGTH -> "length";
            case BUTT_INERTIA -> "kg·cm²";
            case TOTAL_MASS -> "mass g";
            default -> Figures.shortName(q);
        }).collect(Collectors.joining("/"));
    }

    /** The line over the columns. */
    String titles() {
        StringBuilder line = new StringBuilder();
        columns.forEach(column -> line.append(' ').append(pad(title(column.quantities()), column.width() - 1)));
        return line.toString();
    }

    /** A club's cells. */
    String cells(ClubOfSet club) {
        StringBuilder line = new StringBuilder();
        for (Column column : columns) {
            Quantity quantity = column.quantities().stream().filter(q -> has(club, q)).findFirst().orElse(null);
            String value = quantity == null ? "" : value(club, quantity);
            String difference = quantity == null ? "" : difference(club, quantity);
            line.append(' ').append(" ".repeat(column.valueWidth() - value.length())).append(value).append(' ')
                .append(pad(difference, column.differenceWidth()));
        }
        return line.toString();
    }

    /** What is wanted of a club and has no column. */
    String beside(ClubOfSet club) {
        return left.stream().filter(q -> has(club, q) && club.build().isPresent() && club.build().get().predicted().containsKey(q))
            .map(q -> "%s %s %s".formatted(Figures.name(q), Figures.value(q, club.build().orElseThrow().predicted().get(q)),
                difference(club, q))).collect(Collectors.joining(", "));
    }

    private static String value(ClubOfSet club, Quantity quantity) {
        if (!has(club, quantity) || club.build().isEmpty()) {
            return "";
        }
        Double value = club.build().get().predicted().get(quantity);
        if (value == null) {
            return "?";
        }
        String text = Figures.value(quantity, value);
        Set<Quantity> withUnit = EnumSet.of(Quantity.LENGTH, Quantity.FREQUENCY, Quantity.TOTAL_MASS, Quantity.BUTT_INERTIA);
        return withUnit.contains(quantity) ? text.substring(0, text.lastIndexOf(' ')) : text.replace("°", "");
    }

    private static String difference(ClubOfSet club, Quantity quantity) {
        Double off = club.build().map(build -> build.difference().get(quantity)).orElse(null);
        if (!has(club, quantity) || off == null) {
            return "";
        }
        String text = Figures.difference(quantity, off);
        String number = text.contains(" ") ? text.substring(0, text.indexOf(' ')) : text.replace("°", "");
        return number + (quantity == Quantity.LENGTH && !number.equals("0") ? "mm" : "")
            + (club.build().orElseThrow().outOfTolerance().contains(quantity) ? BEYOND : "");
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }
}
