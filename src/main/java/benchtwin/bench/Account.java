package benchtwin.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How a number came about, piece by piece in the order in which it is read. Every number of the pages that was read or worked out has
 * one, and all are shown alike.
 * @param title  what is told
 * @param number the number, with its unit
 * @param spread what stands beside it: its standard uncertainty; empty for none
 * @param pieces what it came from
 */
public record Account(String title, String number, String spread, List<Piece> pieces) {

    /** What a cell says of an input that stands in for a measurement. */
    public static final String DEFAULT = "default";

    public Account {
        pieces = List.copyOf(pieces);
    }

    /** A piece of it. */
    public sealed interface Piece permits Line, Law, Points, Numbers {
    }

    /** How a line is meant. */
    public enum Tone {
        /** To be read. */
        PLAIN(null),
        /** Beside the rest. */
        QUIET("quiet"),
        /** To be minded. */
        WARN("warn");

        private final String style;

        Tone(String style) {
            this.style = style;
        }

        /**
         * The name of its style.
         * @return null for none
         */
        public String style() {
            return style;
        }
    }

    /**
     * A sentence.
     * @param text the sentence
     * @param tone how it is meant
     */
    public record Line(String text, Tone tone) implements Piece {
    }

    /**
     * A formula.
     * @param formula    with its sources
     * @param conditions in which it was used
     */
    public record Law(Formula formula, List<String> conditions) implements Piece {
        public Law {
            conditions = List.copyOf(conditions);
        }
    }

    /**
     * A list.
     * @param lead   what is listed
     * @param points the list
     */
    public record Points(String lead, List<String> points) implements Piece {
        public Points {
            points = List.copyOf(points);
        }
    }

    /**
     * A table.
     * @param caption what is in it
     * @param columns headings; one that ends in {@code #} is of numbers, the mark not being shown
     * @param rows    texts, as many as there are headings, the first naming the row
     * @param folded  whether it is shut until it is asked for
     */
    public record Numbers(String caption, List<String> columns, List<List<String>> rows, boolean folded) implements Piece {
        public Numbers {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            int wide = columns.size();
            if (rows.stream().anyMatch(row -> row.size() != wide)) {
                throw new IllegalArgumentException("%s: a row without %d cells in %s".formatted(caption, wide, rows));
            }
        }

        /**
         * Whether a column is of numbers.
         * @param column its place
         * @return false for words
         */
        public boolean isOfNumbers(int column) {
            return columns.get(column).endsWith("#");
        }

        /**
         * What stands above a column.
         * @param column its place
         * @return the heading
         */
        public String heading(int column) {
            return columns.get(column).replaceFirst("#$", "");
        }
    }

    /** Begins one. */
    static Teller tell(String title, String number, String spread) {
        return new Teller(title, number, spread);
    }

    /** Puts one together. */
    static final class Teller {

        private final String title;
        private final String number;
        private final String spread;
        private final List<Piece> pieces = new ArrayList<>();

        private Teller(String title, String number, String spread) {
            this.title = title;
            this.number = number;
            this.spread = spread;
        }

        Teller say(String text) {
            pieces.add(new Line(text, Tone.PLAIN));
            return this;
        }

        Teller aside(String text) {
            pieces.add(new Line(text, Tone.QUIET));
            return this;
        }

        Teller warn(String text) {
            pieces.add(new Line(text, Tone.WARN));
            return this;
        }

        Teller law(Formula formula, String... conditions) {
            pieces.add(new Law(formula, Arrays.asList(conditions)));
            return this;
        }

        /** A list, where there is something to list. */
        Teller points(String lead, List<String> points) {
            if (!points.isEmpty()) {
                pieces.add(new Points(lead, points));
            }
            return this;
        }

        /** A table, where there is something in it. */
        Teller table(String caption, List<String> columns, List<List<String>> rows) {
            return table(caption, columns, rows, false);
        }

        Teller table(String caption, List<String> columns, List<List<String>> rows, boolean folded) {
            if (!rows.isEmpty()) {
                pieces.add(new Numbers(caption, columns, rows, folded));
            }
            return this;
        }

        Account done() {
            return new Account(title, number, spread, pieces);
        }
    }
}
