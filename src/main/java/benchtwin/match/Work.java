package benchtwin.match;

import benchtwin.club.Step;
import benchtwin.club.StepKind;
import java.util.List;
import java.util.Locale;

/**
 * A step before it is put into words: most candidates are never shown, so their words are never made.
 * @param kind   what kind it is
 * @param format what to do, in bench words, with places for the rest
 * @param args   what goes into the places
 */
record Work(StepKind kind, String format, List<Object> args) {

    static Work of(StepKind kind, String format, Object... args) {
        return new Work(kind, format, List.of(args));
    }

    Step step(ShopSettings shop) {
        return new Step(kind, String.format(Locale.ROOT, format, args.toArray()), shop.minutes().get(kind));
    }
}
