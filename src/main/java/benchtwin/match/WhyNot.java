package benchtwin.match;

import benchtwin.bend.HoselLimits;
import benchtwin.club.Adjust;
import benchtwin.club.AngleReading;
import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.HeadMaterial;
import benchtwin.club.Quantity;
import benchtwin.club.ShaftMaterial;
import benchtwin.club.TipKind;
import benchtwin.mechanics.SleeveSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Says why one thing alone does not change a club as far as was asked. */
final class WhyNot {

    private static final String SOLED_LOFT_STAYS = "%s turns a wood's lie and face; its soled loft stays. The loft with the "
        + "face square does move: ask for the loft read square";

    private final ChangeParts parts;
    private final ChangeRequest request;
    private final Map<Quantity, Double> now;
    private final List<Grip> wishedGrips;

    WhyNot(ChangeParts parts, ChangeRequest request, Map<Quantity, Double> now, List<Grip> wishedGrips) {
        this.parts = parts;
        this.request = request;
        this.now = now;
        this.wishedGrips = wishedGrips;
    }

    String text(Lever lever) {
        return switch (lever) {
            case SETTING -> setting();
            case BEND -> bend();
            case WEIGHT -> weight();
            case TAPE -> "none to %d layers go under a grip".formatted(ChangeSearch.MOST_LAYERS);
            case GRIP -> grip();
            case BUTT -> format("at most %.0f mm come off a trusted butt, and an extension is at most %.1f mm",
                request.shop().buttCutMaxMm(),
                parts.shaft().material() == ShaftMaterial.STEEL ? Cuts.STEEL_EXTENSION_MAX_MM : Cuts.GRAPHITE_EXTENSION_MAX_MM);
            case TIP -> tip();
            case HEAD, SHAFT -> stock(lever);
        };
    }

    /** A wood's soled loft, which no tilt of its hosel changes. */
    private boolean asksForSoledLoft() {
        return request.wished().containsKey(Quantity.LOFT) && request.club().reading() == AngleReading.SOLED;
    }

    private String setting() {
        if (asksForSoledLoft() && parts.sleeve().isPresent()) {
            return SOLED_LOFT_STAYS.formatted("a sleeve");
        }
        return parts.sleeve().map(sleeve -> "none of the %d settings of sleeve %s comes nearer".formatted(
            SleeveSettings.labels(sleeve).size(), sleeve.name())).orElse("its head takes no sleeve");
    }

    private String bend() {
        Head head = parts.head();
        if (head.seat().isPresent()) {
            return "a head with a sleeve is never bent";
        }
        if (head.adjust() == Adjust.FIXED) {
            return "its head is not made to be bent";
        }
        if (HoselLimits.lifeLimitDeg(head.material()) == 0) {
            return "a hosel of %s is never bent%s".formatted(head.material().word(),
                head.material() == HeadMaterial.UNKNOWN ? " until somebody says what it is" : "");
        }
        HoselLimits limits = HoselLimits.of(head);
        String left = format("its hosel has %.1f° upright, %.1f° flat, %.1f° forward and %.1f° back left",
            limits.uprightDeg(), limits.flatDeg(), limits.forwardDeg(), limits.backDeg());
        return asksForSoledLoft() ? SOLED_LOFT_STAYS.formatted("a bend") : left;
    }

    private String weight() {
        List<HeadMass.Option> options = new HeadMass.Table(request.inventory().weights(), request.shop(),
            request.club().carried(), true).of(parts.head().ports(), parts.head().hotMeltMaxG());
        double asItIs = options.stream().filter(HeadMass.Option::isAsItIs).findFirst().orElseThrow().addedG();
        return format("its ports, tape and hot melt take it from %s to %s g of what is there now",
            signed(options.get(0).addedG() - asItIs), signed(options.get(options.size() - 1).addedG() - asItIs));
    }

    private String grip() {
        if (request.grip().isPresent()) {
            return "that grip is what was asked for, and it does not bring the rest";
        }
        List<Double> masses = parts.freeGrips().stream().map(g -> g.massG().orElseThrow().value()).sorted().toList();
        if (masses.isEmpty()) {
            return "no other weighed grip is free";
        }
        String range = format("the free grips weigh %.1f to %.1f g", masses.get(0), masses.get(masses.size() - 1));
        if (request.gripMassG().isPresent() && !wishedGrips.isEmpty()) {
            Grip nearest = wishedGrips.get(0);
            return format("the nearest free grip to %.1f g is %s (%s) with %.1f g; %s", request.gripMassG().getAsDouble(),
                nearest.tag(), nearest.model(), nearest.massG().orElseThrow().value(), range);
        }
        return range;
    }

    private String tip() {
        if (parts.shaft().tipKind() != TipKind.PARALLEL) {
            return "a %s tip is not trimmed".formatted(parts.shaft().tipKind().word());
        }
        List<Candidate> candidates = parts.tipOut().candidates();
        if (candidates.isEmpty()) {
            return "the shaft does not go back once it is pulled";
        }
        double most = Cuts.mostTipTrimMm(candidates.get(0));
        double softer = request.wished().getOrDefault(Quantity.FREQUENCY, Double.NaN)
            - now.getOrDefault(Quantity.FREQUENCY, Double.NaN);
        return softer < 0 ? "a trim only stiffens" : format("%.0f mm of its parallel tip can still be cut", most);
    }

    private String stock(Lever lever) {
        ChangeParts.Base base = lever == Lever.HEAD ? parts.heads() : parts.shafts();
        String what = lever == Lever.HEAD ? "head" : "shaft";
        long fit = base.candidates().stream().map(c -> lever == Lever.HEAD ? c.head().tag() : c.shaft().tag()).distinct()
            .count();
        String out = parts.ruledOut(lever).entrySet().stream().map(e -> e.getValue() + " " + e.getKey())
            .collect(Collectors.joining(", "));
        List<String> words = new ArrayList<>();
        words.add(fit == 0 ? "no %s in stock fits".formatted(what)
            : fit == 1 ? "the one %s that fits does not bring it".formatted(what)
            : "none of the %d %ss that fit brings it".formatted(fit, what));
        if (!out.isEmpty()) {
            words.add("ruled out: " + out);
        }
        return String.join("; ", words);
    }

    private static String signed(double grams) {
        return (grams < 0 ? "\u2212" : "+") + format("%.1f", Math.abs(grams));
    }

    private static String format(String format, Object... args) {
        return String.format(Locale.ROOT, format, args);
    }
}
