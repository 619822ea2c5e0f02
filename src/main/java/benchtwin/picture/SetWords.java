package benchtwin.picture;

import benchtwin.club.Quantity;
import benchtwin.measure.SwingWeightText;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.List;

/** How a set picture writes its quantity: frequency, swing weight, butt inertia or loft. */
record SetWords(Quantity quantity) {

    /** What the value is called. */
    String name() {
        return quantity.word().replace('-', ' ');
    }

    /** A value where the unit is known: {@code D2.5}, {@code 2660}, {@code 24.00°}, {@code 308.1}. */
    String bare(double value) {
        return switch (quantity) {
            case SWING_WEIGHT -> SwingWeightText.format(value).orElseGet(() -> Words.fixed(value, 1) + " pt");
            case LOFT -> Words.fixed(value, 2) + "°";
            default -> Words.fixed(value, decimals());
        };
    }

    /** A value with its unit. */
    String full(double value) {
        return switch (quantity) {
            case SWING_WEIGHT, LOFT -> bare(value);
            default -> bare(value) + " " + quantity.unit();
        };
    }

    /** A tolerance or a whisker, without its unit. */
    String size(double value) {
        return Words.fixed(value, decimals());
    }

    /** A difference with its sign, without its unit. */
    String difference(double value) {
        return Words.difference(value, decimals());
    }

    /** Which way a value is out of tolerance. */
    static String tooFar(int side) {
        return side > 0 ? "too high" : "too low";
    }

    /** A club as one sentence of the table behind the picture. */
    String sentence(SetPoint club, String place) {
        StringBuilder words = new StringBuilder(club.club()).append(place).append(": ");
        if (!club.built()) {
            words.append("not built");
        } else if (club.value().isEmpty()) {
            words.append(name()).append(" not known");
        } else {
            words.append(full(club.value().getAsDouble()));
            if (club.standardUncertainty() > 0) {
                words.append(", ± ").append(size(club.whisker())).append(" (twice the standard uncertainty)");
            }
        }
        club.target().ifPresent(target -> {
            words.append(club.isJudged() ? ", %s from ".formatted(difference(club.off())) : "; target ")
                .append(full(target.value())).append(" ± ").append(size(target.tolerance()));
            target.line().ifPresent(line -> words.append(" on line ").append(line));
            if (club.side() != 0) {
                words.append(", ").append(tooFar(club.side()));
            }
        });
        return words.append('.').toString();
    }

    /** What the title says of how many are right: nothing where nothing is wanted. */
    static String count(List<SetPoint> clubs) {
        long right = clubs.stream().filter(club -> club.isJudged() && club.side() == 0).count();
        long missing = clubs.stream().filter(club -> !club.built()).count();
        String words = clubs.stream().noneMatch(club -> club.target().isPresent()) ? ""
            : ", " + right + " of " + clubs.size() + (clubs.size() == 1 ? " club" : " clubs") + " in tolerance";
        return missing == 0 ? words : words + ", " + missing + " not built";
    }

    /** A span that equal values are given, in the quantity's unit. */
    double leastSpan() {
        return switch (quantity) {
            case SWING_WEIGHT, LOFT -> 4;
            case BUTT_INERTIA -> 60;
            default -> 16;
        };
    }

    /** The scale with its ticks as the quantity is written. */
    Scale dressed(Scale scale) {
        return quantity == Quantity.SWING_WEIGHT ? scale.ticksAs(new Letters(this)) : scale;
    }

    private int decimals() {
        return switch (quantity) {
            case LOFT -> 2;
            case BUTT_INERTIA -> 0;
            default -> 1;
        };
    }

    /** Points above A0 as letter and number. */
    private static final class Letters extends NumberFormat {
        private static final long serialVersionUID = 1L;
        private final transient SetWords words;

        private Letters(SetWords words) {
            this.words = words;
        }

        @Override
        public StringBuffer format(double points, StringBuffer to, FieldPosition at) {
            return to.append(words.bare(points));
        }

        @Override
        public StringBuffer format(long points, StringBuffer to, FieldPosition at) {
            return format((double) points, to, at);
        }

        @Override
        public Number parse(String text, ParsePosition at) {
            throw new UnsupportedOperationException("ticks are only written");
        }
    }
}
