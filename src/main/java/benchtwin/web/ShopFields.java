package benchtwin.web;

import benchtwin.bench.ShopTyped;
import benchtwin.match.ShopSettings;
import java.util.List;
import java.util.Optional;

/** What the workshop sets, as fields of a page: the resin's cure, the least cuts. */
final class ShopFields {

    private static final String CURE = "cure";
    private static final String LENGTH_STEP = "lengthStep";
    private static final String TIP_STEP = "tipStep";

    /** The names of their fields. */
    static final List<String> NAMES = List.of(CURE, LENGTH_STEP, TIP_STEP);

    private ShopFields() {
    }

    static ShopSettings of(Fields fields) {
        ShopSettings shop = ShopSettings.DEFAULT;
        Optional<Double> cure = fields.at(CURE, Optional.empty(), form -> {
            Optional<Double> typed = form.number(CURE, "cure of the resin");
            return typed.isEmpty() ? typed : Optional.of(ShopTyped.cureMinutes("cure of the resin", typed.get()));
        });
        Optional<Double> lengthStep = stepMm(fields, LENGTH_STEP, "least butt cut");
        Optional<Double> tipStep = stepMm(fields, TIP_STEP, "least tip trim");
        shop = cure.map(shop::withCureMinutes).orElse(shop);
        shop = lengthStep.map(shop::withLengthStepMm).orElse(shop);
        return tipStep.map(shop::withTipTrimStepMm).orElse(shop);
    }

    private static Optional<Double> stepMm(Fields fields, String name, String called) {
        return fields.at(name, Optional.empty(), form -> {
            Optional<String> typed = form.text(name);
            return typed.isEmpty() ? Optional.empty() : Optional.of(ShopTyped.stepMm(called, typed.get()));
        });
    }
}
