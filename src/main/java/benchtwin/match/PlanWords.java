package benchtwin.match;

import benchtwin.club.Ring;
import benchtwin.club.Sleeve;
import benchtwin.club.Step;
import benchtwin.club.StepKind;
import benchtwin.measure.LengthText;
import benchtwin.mechanics.Setup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Puts a found plan into bench words, in working order. */
final class PlanWords {

    /** The order in which work is done. */
    private static final List<StepKind> WORKING_ORDER = List.of(StepKind.PULL_GRAPHITE, StepKind.PULL_STEEL,
        StepKind.BEND_WOOD, StepKind.BEND_IRON, StepKind.TIP_TRIM, StepKind.REAM, StepKind.SHIM, StepKind.TIP_WEIGHT,
        StepKind.WEIGHT_SCREW, StepKind.HOT_MELT, StepKind.BOND, StepKind.SWAP_HEAD, StepKind.SLEEVE_SETTING,
        StepKind.LEAD_TAPE, StepKind.BUTT_CUT, StepKind.EXTENSION, StepKind.REGRIP);
    private static final Map<StepKind, Integer> PLACE = new EnumMap<>(StepKind.class);

    static {
        for (int i = 0; i < WORKING_ORDER.size(); i++) {
            PLACE.put(WORKING_ORDER.get(i), i);
        }
    }

    private final ShopSettings shop;

    PlanWords(ShopSettings shop) {
        this.shop = shop;
    }

    /**
     * The plan.
     * @param found as searched
     * @return its steps with minutes
     */
    Plan of(FoundPlan found) {
        List<Step> steps = new ArrayList<>();
        boolean turned = found.angle().setting() != null
            && !found.candidate().settingNow().equals(Optional.of(found.angle().setting()));
        double notDone = 0;
        for (Work work : found.candidate().joining()) {
            if (turned && work.kind() == StepKind.SLEEVE_SETTING) {
                notDone += shop.minutes().get(work.kind());   // it is set once, where the plan wants it
            } else {
                steps.add(work.step(shop));
            }
        }
        bends(found, steps);
        setting(found, steps);
        masses(found, steps);
        cuts(found, steps);
        steps.sort(Comparator.comparing(step -> PLACE.get(step.kind())));
        double minutes = steps.stream().mapToDouble(Step::minutes).sum();
        return new Plan(steps, minutes, found.readyMinutes() - notDone);
    }

    /** A step; its words say more than its short form does. */
    private Step step(StepKind kind, String inShort, Map<String, Double> amounts, String format, Object... args) {
        return new Step(kind, String.format(Locale.ROOT, format, args), inShort, shop.minutes().get(kind), amounts,
            List.of());
    }

    private void bends(FoundPlan found, List<Step> steps) {
        double lie = found.angle().lieSteps() * shop.bendStepDeg();
        double turn = found.angle().turnSteps() * shop.bendStepDeg();
        String lieWords = lie == 0 ? "" : String.format(Locale.ROOT, "lie %.1f° %s", Math.abs(lie),
            lie > 0 ? "upright" : "flat");
        if (found.candidate().head().isWood()) {
            String face = turn == 0 ? "" : String.format(Locale.ROOT, "face %.1f° %s", Math.abs(turn),
                turn > 0 ? "closed" : "open");
            String both = lieWords + (lie != 0 && turn != 0 ? ", " : "") + face;
            if (!both.isEmpty()) {
                Map<String, Double> amounts = tilt(found);
                put(amounts, "uprightDeg", lie);
                put(amounts, "closedDeg", turn);
                steps.add(step(StepKind.BEND_WOOD, both, amounts, "Bend %s, then read.", both));
            }
            return;
        }
        if (turn != 0) {
            String loft = String.format(Locale.ROOT, "loft %.1f° %s", Math.abs(turn), turn > 0 ? "weak" : "strong");
            Map<String, Double> amounts = tilt(found);
            put(amounts, "weakDeg", turn);
            steps.add(step(StepKind.BEND_IRON, loft, amounts, "Bend %s, then read.", loft));
        }
        if (lie != 0) {
            Map<String, Double> amounts = turn == 0 ? tilt(found) : new LinkedHashMap<>();
            put(amounts, "uprightDeg", lie);
            steps.add(step(StepKind.BEND_IRON, lieWords, amounts, "Bend %s, then read.", lieWords));
        }
    }

    private void setting(FoundPlan found, List<Step> steps) {
        String label = found.angle().setting();
        if (label == null) {
            return;
        }
        Sleeve sleeve = found.candidate().sleeve().orElseThrow();
        boolean same = found.candidate().settingNow().equals(Optional.of(label));
        String words = settingWords(sleeve, label);
        if (same) {
            return;
        }
        String turns = sleeve.turnsShaft() ? " Grip and markings turn with it." : "";
        steps.add(step(StepKind.SLEEVE_SETTING, settingInShort(sleeve, label), Map.of(), "Set %s.%s", words, turns));
    }

    /**
     * A setting in words.
     * @param sleeve the sleeve
     * @param label  its setting
     * @return for instance {@code the outer ring at 3 of 6, the inner ring at 5 of 5}
     */
    static String settingWords(Sleeve sleeve, String label) {
        List<Ring> rings = sleeve.rings();
        String[] parts = label.split("/");
        if (rings.size() == 2 && parts.length == 2) {
            return "the outer ring at %s of %d, the inner ring at %s of %d".formatted(parts[0].strip(),
                rings.get(0).settings(), parts[1].strip(), rings.get(1).settings());
        }
        if (rings.size() == 1) {
            return "the sleeve at %s of %d".formatted(label, rings.get(0).settings());
        }
        return "the sleeve at " + label;
    }

    private static String settingInShort(Sleeve sleeve, String label) {
        String[] parts = label.split("/");
        return sleeve.rings().size() == 2 && parts.length == 2
            ? "outer ring at %s, inner at %s".formatted(parts[0].strip(), parts[1].strip()) : "sleeve at " + label;
    }

    private void masses(FoundPlan found, List<Step> steps) {
        steps.addAll(masses(found.mass()));
    }

    /** What goes into and onto the head. */
    List<Step> masses(HeadMass.Option mass) {
        List<Step> steps = new ArrayList<>();
        for (HeadMass.PortChoice choice : mass.ports()) {
            if (choice.isChanged()) {
                steps.add(step(StepKind.WEIGHT_SCREW, grams(choice.massG()) + " g in port " + choice.port().type(),
                    Map.of("weightG", choice.massG() - choice.port().massG()),
                    "Change the weight in port %s: %s g out, %s g in (%s).", choice.port().type(), grams(choice.port().massG()),
                    grams(choice.massG()), choice.weight().tag()).using(choice.weight().tag()));
            }
        }
        if (mass.tapeG() > 0) {
            steps.add(step(StepKind.LEAD_TAPE, "+" + grams(mass.tapeG()) + " g tape", Map.of("tapeG", mass.tapeG()),
                "Add %s g of lead tape to the head.", grams(mass.tapeG())));
        }
        if (mass.tapeG() < 0) {
            steps.add(step(StepKind.LEAD_TAPE, grams(-mass.tapeG()) + " g tape off", Map.of("tapeG", mass.tapeG()),
                "Take %s g of lead tape off the head.",
                grams(-mass.tapeG())));
        }
        if (mass.meltG() > 0) {
            steps.add(step(StepKind.HOT_MELT, "+" + grams(mass.meltG()) + " g hot melt", Map.of("meltG", mass.meltG()),
                "Add %s g of hot melt in the head.", grams(mass.meltG())));
        }
        return steps;
    }

    private void cuts(FoundPlan found, List<Step> steps) {
        Cut cut = found.cut();
        if (cut.tipTrimMm() > 0) {
            steps.add(step(StepKind.TIP_TRIM, "tip " + decimals(cut.tipTrimMm()) + " mm", Map.of("tipCutMm", cut.tipTrimMm()),
                "Trim %s off the tip.", trim(cut.tipTrimMm())));
        }
        if (cut.tipWeight() != null) {
            steps.add(step(StepKind.TIP_WEIGHT, grams(cut.tipWeightG()) + " g in the tip",
                Map.of("tipWeightG", cut.tipWeightG()),
                "Put the %s g weight (%s) in the tip; its flange lifts the shaft 1 mm.", grams(cut.tipWeightG()),
                cut.tipWeight().tag()).using(cut.tipWeight().tag()));
        }
        if (cut.buttCutMm() > 0) {
            steps.add(step(StepKind.BUTT_CUT, "butt " + decimals(cut.buttCutMm()) + " mm", Map.of("buttCutMm", cut.buttCutMm()),
                "Cut %s off the butt.", butt(cut.buttCutMm())));
        }
        if (cut.extensionMm() > 0) {
            steps.add(step(StepKind.EXTENSION, "extend " + decimals(cut.extensionMm()) + " mm",
                Map.of("extensionMm", cut.extensionMm()),
                "Extend the butt by %s (about %s g).", butt(cut.extensionMm()), grams(cut.extensionMassG())));
        }
        if (cut.regrip()) {
            steps.add(step(StepKind.REGRIP, "grip off and on", Map.of(),
                "Take the grip off before the butt is touched and mount it again."));
        }
    }

    /** What the hosel's metal sees of all bends of a plan; it stands with the first of them. */
    private static Map<String, Double> tilt(FoundPlan found) {
        Map<String, Double> amounts = new LinkedHashMap<>();
        if (found.angle().aim() instanceof Setup.Tilted tilted) {
            put(amounts, "tiltUprightDeg", tilted.tilt().uprightDeg());
            put(amounts, "tiltForwardDeg", tilted.tilt().forwardDeg());
        }
        return amounts;
    }

    private static void put(Map<String, Double> amounts, String name, double amount) {
        if (amount != 0) {
            amounts.put(name, amount);
        }
    }

    private static String grams(double grams) {
        return decimals(grams);
    }

    /** A decimal only where there is one. */
    private static String decimals(double value) {
        return String.format(Locale.ROOT, value == Math.rint(value) ? "%.0f" : "%.1f", value);
    }

    private static String trim(double mm) {
        return "%s in (%s mm)".formatted(LengthText.inchesAndSixteenths(mm), String.format(Locale.ROOT, "%.1f", mm));
    }


    private static String butt(double mm) {
        return mm == Math.rint(mm) ? String.format(Locale.ROOT, "%.0f mm", mm)
            : "%s in (%s mm)".formatted(LengthText.inchesAndSixteenths(mm), String.format(Locale.ROOT, "%.1f", mm));
    }
}
