package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.ChangeService;
import benchtwin.bench.ChangeWish;
import benchtwin.bench.OpenBook;
import benchtwin.club.AngleReading;
import benchtwin.club.Quantity;
import benchtwin.match.ShopSettings;
import benchtwin.match.Tolerances;
import benchtwin.measure.PlainNumber;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the page that changes a club was asked: its fields, and the wish they make. */
public final class ChangeForm {

    private static final int USUAL_TOP = 6;
    private static final int MOST_TOP = 20;

    private final String tag;
    private final Form form;
    private final ToleranceFields tolerances;
    private final Optional<ChangeService.Wish> wish;

    private ChangeForm(OpenBook book, Context ctx) throws BadInput {
        tag = ctx.pathParam("tag");
        form = Form.query(ctx);
        tolerances = ToleranceFields.of(book, tag, form, ChangeService.ASKABLE);
        Optional<String> line = form.text("ask");
        wish = line.isEmpty() ? Optional.empty() : Optional.of(wish(ChangeWish.typed(line.get())));
    }

    static ChangeForm of(OpenBook book, Context ctx) throws BadInput {
        return new ChangeForm(book, ctx);
    }

    private ChangeService.Wish wish(ChangeWish asked) throws BadInput {
        double top = form.number("top", "how many").orElse((double) USUAL_TOP);
        if (!(top >= 1 && top <= MOST_TOP && top == Math.rint(top))) {
            throw new BadInput("how many: expected 1 to %d".formatted(MOST_TOP));
        }
        return new ChangeService.Wish(asked.amounts(), asked.gripTag(), asked.gripMass(),
            form.choice("reading", "reading", AngleReading.values()), form.isTicked("otherModels"), (int) top,
            new Tolerances(tolerances.all(), Map.of()), ShopSettings.DEFAULT);
    }

    /** Empty as long as nothing was typed. */
    Optional<ChangeService.Wish> wish() {
        return wish;
    }

    /** All of it, for addresses. */
    Asked asked() {
        return Asked.of(form, List.of("ask", "reading", "otherModels", "top")).with(tolerances.typed());
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
     * The tolerance of a quantity, as its field shows it.
     * @param quantity which
     * @return what the player prefers or was typed; empty for the usual one
     */
    public String tolerance(Quantity quantity) {
        return Optional.ofNullable(tolerances.all().get(quantity)).map(PlainNumber::text).orElse("");
    }
}
