package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import benchtwin.bench.PlayerBook;
import benchtwin.bench.QuantityList;
import benchtwin.bench.ShaftsService;
import benchtwin.club.Quantity;
import benchtwin.club.ShaftMaterial;
import benchtwin.match.Pick;
import benchtwin.match.ShaftRequest;
import benchtwin.measure.LengthText;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the page that chooses shafts was asked: its fields, and the wish they make. */
public final class ShaftsForm {

    private static final String TARGET = "target-";
    private static final int USUAL_TOP = 6;
    private static final int MOST_TOP = 24;
    private static final int USUAL_RUNGS = 5;
    private static final int MOST_RUNGS = 25;
    private static final double USUAL_STEP_CPM = 3;
    private static final double MOST_STEP_CPM = 50;
    private static final double LEAST_CLAMP_MM = 50;
    private static final double MOST_CLAMP_MM = 300;
    private static final double LEAST_ADDED_G = -30;
    private static final double MOST_ADDED_G = 60;

    private static final List<String> NAMES = List.of("head", "grip", "pick", "top", "perModel", "step", "rungs", "clamp", "overGrip",
        "headAdded", "material", "sameModel", "assumeClamp", "job");

    private final String tag;
    private final Fields fields;
    private final ToleranceFields tolerances;
    private final ShaftsService.Wish wish;

    private ShaftsForm(OpenBook book, Context ctx) throws BadInput {
        tag = ctx.pathParam("tag");
        fields = Fields.of(ctx);
        tolerances = ToleranceFields.of(fields, PlayerBook.tolerancesFor(book, tag), ShaftRequest.QUALITIES);
        ShaftRequest.Picking picking = new ShaftRequest.Picking(fields.at("pick", Pick.NEAREST, form -> form.choice("pick", "pick",
            Pick.values()).orElse(Pick.NEAREST)), fields.whole("top", "how many", USUAL_TOP, MOST_TOP),
            fields.whole("perModel", "of one model", MOST_TOP, MOST_TOP), step(), fields.whole("rungs", "rungs", USUAL_RUNGS, MOST_RUNGS));
        Map<Quantity, Double> written = new EnumMap<>(Quantity.class);
        for (Quantity quantity : ShaftRequest.QUALITIES) {
            written.putAll(fields.at(TARGET + quantity.word(), Map.<Quantity, Double>of(), form -> written(form, quantity)));
        }
        OptionalDouble clampMm = clampMm(fields, "clamp", "clamp");
        boolean overGrip = fields.isTicked("overGrip");
        if ((clampMm.isPresent() || overGrip) && !written.containsKey(Quantity.FREQUENCY)) {
            fields.refuse("clamp", "clamp and over the grip say how a frequency written out is read: write one, or leave them empty");
        }
        wish = new ShaftsService.Wish(Optional.of(tag), fields.form().text("head"), fields.form().text("grip"), written, clampMm, overGrip,
            headAdded(), fields.at("material", Optional.empty(), form -> form.choice("material", "material", ShaftMaterial.values())),
            fields.isTicked("sameModel"), clampMm(fields, "assumeClamp", "clamp assumed"), picking, tolerances.all(), ShopFields.of(fields));
    }

    static ShaftsForm of(OpenBook book, Context ctx) throws BadInput {
        return new ShaftsForm(book, ctx);
    }

    private double step() {
        return fields.at("step", USUAL_STEP_CPM, form -> {
            double step = form.number("step", "step").orElse(USUAL_STEP_CPM);
            if (!(step > 0 && step <= MOST_STEP_CPM)) {
                throw new BadInput("step: expected cpm above 0, at most 50");
            }
            return step;
        });
    }

    private OptionalDouble headAdded() {
        return fields.at("headAdded", OptionalDouble.empty(), form -> {
            Optional<Double> added = form.number("headAdded", "added to the head");
            if (added.isPresent() && !(added.get() >= LEAST_ADDED_G && added.get() <= MOST_ADDED_G)) {
                throw new BadInput("added to the head: expected grams from -30 to 60");
            }
            return added.map(OptionalDouble::of).orElse(OptionalDouble.empty());
        });
    }

    /** A clamp, from a field. */
    static OptionalDouble clampMm(Fields fields, String name, String called) {
        return fields.at(name, OptionalDouble.empty(), form -> {
            Optional<String> typed = form.text(name);
            if (typed.isEmpty()) {
                return OptionalDouble.empty();
            }
            OptionalDouble mm = LengthText.parseMm(typed.get());
            if (mm.isEmpty() || !(mm.getAsDouble() >= LEAST_CLAMP_MM && mm.getAsDouble() <= MOST_CLAMP_MM)) {
                throw new BadInput("%s: \"%s\" is not a clamp from 2 to 12 in".formatted(called, typed.get()));
            }
            return mm;
        });
    }

    private static Map<Quantity, Double> written(Form form, Quantity quantity) throws BadInput {
        Optional<String> typed = form.text(TARGET + quantity.word());
        return typed.isEmpty() ? Map.of() : QuantityList.OF_SHAFTS.values("the target", quantity.word() + "=" + typed.get().replace(',', '.'));
    }

    ShaftsService.Wish wish() {
        return wish;
    }

    /** The job that is planned, where one was taken on before. */
    Optional<String> job() {
        return fields.form().text("job");
    }

    /** All of it, for addresses. */
    Asked asked() {
        List<String> names = new ArrayList<>(NAMES);
        ShaftRequest.QUALITIES.forEach(quantity -> names.add(TARGET + quantity.word()));
        names.addAll(ShopFields.NAMES);
        return Asked.of(fields.form(), names).with(tolerances.typed());
    }

    /**
     * What was typed, and what is wrong with it.
     * @return the fields
     */
    public Fields fields() {
        return fields;
    }

    /**
     * The tolerances and weights.
     * @return as typed
     */
    public ToleranceFields tolerances() {
        return tolerances;
    }

    /**
     * The weight a quantity has where none is typed.
     * @param quantity one that shafts are chosen by
     * @return 0 or more
     */
    public double usualWeight(Quantity quantity) {
        return ShaftRequest.usualWeight(wish.picking().pick(), quantity);
    }

    /**
     * The club.
     * @return its tag, as it was typed
     */
    public String tag() {
        return tag;
    }

    /**
     * Where its options' numbers are accounted for.
     * @return addresses
     */
    public HowAddress how() {
        return new HowAddress("/clubs/" + FindPages.encoded(tag) + "/shafts", asked().query());
    }

    /**
     * Whether a ladder is asked for.
     * @return false for the nearest
     */
    public boolean isLadder() {
        return wish.picking().pick() == Pick.LADDER;
    }
}
