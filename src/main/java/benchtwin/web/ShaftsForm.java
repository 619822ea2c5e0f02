package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import benchtwin.bench.QuantityList;
import benchtwin.bench.ShaftsService;
import benchtwin.club.Quantity;
import benchtwin.club.ShaftMaterial;
import benchtwin.match.Pick;
import benchtwin.match.ShaftRequest;
import benchtwin.match.ShopSettings;
import benchtwin.match.Tolerances;
import benchtwin.measure.LengthText;
import benchtwin.measure.PlainNumber;
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

    private final String tag;
    private final Form form;
    private final ToleranceFields tolerances;
    private final ShaftsService.Wish wish;

    private ShaftsForm(OpenBook book, Context ctx) throws BadInput {
        tag = ctx.pathParam("tag");
        form = Form.query(ctx);
        tolerances = ToleranceFields.of(book, tag, form, ShaftRequest.QUALITIES);
        ShaftRequest.Picking picking = new ShaftRequest.Picking(form.choice("pick", "pick", Pick.values()).orElse(Pick.NEAREST),
            whole("top", "how many", USUAL_TOP, MOST_TOP), MOST_TOP, step(), whole("rungs", "rungs", USUAL_RUNGS, MOST_RUNGS));
        Map<Quantity, Double> written = written();
        OptionalDouble clampMm = clampMm("clamp", "clamp");
        boolean overGrip = form.isTicked("overGrip");
        if ((clampMm.isPresent() || overGrip) && !written.containsKey(Quantity.FREQUENCY)) {
            throw new BadInput("clamp and over the grip say how a frequency written out is read: write one, or leave them empty");
        }
        wish = new ShaftsService.Wish(Optional.of(tag), form.text("head"), form.text("grip"), written, clampMm, overGrip, OptionalDouble.empty(),
            form.choice("material", "material", ShaftMaterial.values()), form.isTicked("sameModel"), clampMm("assumeClamp", "clamp assumed"),
            picking, new Tolerances(tolerances.all(), Map.of()), ShopSettings.DEFAULT);
    }

    static ShaftsForm of(OpenBook book, Context ctx) throws BadInput {
        return new ShaftsForm(book, ctx);
    }

    private int whole(String name, String called, int usual, int most) throws BadInput {
        double value = form.number(name, called).orElse((double) usual);
        if (!(value >= 1 && value <= most && value == Math.rint(value))) {
            throw new BadInput("%s: expected 1 to %d".formatted(called, most));
        }
        return (int) value;
    }

    private double step() throws BadInput {
        double step = form.number("step", "step").orElse(USUAL_STEP_CPM);
        if (!(step > 0 && step <= MOST_STEP_CPM)) {
            throw new BadInput("step: expected cpm above 0, at most 50");
        }
        return step;
    }

    private OptionalDouble clampMm(String name, String called) throws BadInput {
        Optional<String> typed = form.text(name);
        if (typed.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble mm = LengthText.parseMm(typed.get());
        if (mm.isEmpty() || !(mm.getAsDouble() >= LEAST_CLAMP_MM && mm.getAsDouble() <= MOST_CLAMP_MM)) {
            throw new BadInput("%s: \"%s\" is not a clamp from 2 to 12 in".formatted(called, typed.get()));
        }
        return mm;
    }

    private Map<Quantity, Double> written() throws BadInput {
        Map<Quantity, Double> written = new EnumMap<>(Quantity.class);
        for (Quantity quantity : ShaftRequest.QUALITIES) {
            Optional<String> typed = form.text(TARGET + quantity.word());
            if (typed.isPresent()) {
                written.putAll(QuantityList.OF_SHAFTS.values("the target", quantity.word() + "=" + typed.get().replace(',', '.')));
            }
        }
        return written;
    }

    ShaftsService.Wish wish() {
        return wish;
    }

    /** All of it, for addresses. */
    Asked asked() {
        List<String> names = new ArrayList<>(List.of("head", "grip", "pick", "top", "step", "rungs"));
        ShaftRequest.QUALITIES.forEach(quantity -> names.add(TARGET + quantity.word()));
        names.addAll(List.of("clamp", "overGrip", "material", "sameModel", "assumeClamp"));
        return Asked.of(form, names).with(tolerances.typed());
    }

    /**
     * The club.
     * @return its tag, as it was typed
     */
    public String tag() {
        return tag;
    }

    /**
     * A field as it was typed.
     * @param name of the field
     * @return empty when it was not filled in
     */
    public String text(String name) {
        return form.text(name).orElse("");
    }

    /**
     * Whether a box is ticked.
     * @param name of the field
     * @return true when it is
     */
    public boolean isTicked(String name) {
        return form.isTicked(name);
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

    /**
     * The tolerance of a quantity, as its field shows it.
     * @param quantity which
     * @return what the player prefers or was typed; empty for the usual one
     */
    public String tolerance(Quantity quantity) {
        return Optional.ofNullable(tolerances.all().get(quantity)).map(PlainNumber::text).orElse("");
    }
}
