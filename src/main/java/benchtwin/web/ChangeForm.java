package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.ChangeService;
import benchtwin.bench.ChangeWish;
import benchtwin.bench.OpenBook;
import benchtwin.bench.PlayerBook;
import benchtwin.club.AngleReading;
import benchtwin.match.ShopSettings;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/** What the page that changes a club was asked: its fields, and the wish they make. */
public final class ChangeForm {

    private static final int USUAL_TOP = 6;
    private static final int MOST_TOP = 20;

    private final String tag;
    private final Fields fields;
    private final ToleranceFields tolerances;
    private final Optional<ChangeService.Wish> wish;

    private ChangeForm(OpenBook book, Context ctx) throws BadInput {
        tag = ctx.pathParam("tag");
        fields = Fields.of(ctx);
        tolerances = ToleranceFields.of(fields, PlayerBook.tolerancesFor(book, tag), ChangeService.ASKABLE);
        int top = fields.whole("top", "how many", USUAL_TOP, MOST_TOP);
        Optional<AngleReading> reading = fields.at("reading", Optional.empty(), form -> form.choice("reading", "reading",
            AngleReading.values()));
        ShopSettings shop = ShopFields.of(fields);
        Optional<ChangeWish> asked = fields.at("ask", Optional.empty(), form -> {
            Optional<String> line = form.text("ask");
            return line.isEmpty() ? Optional.empty() : Optional.of(ChangeWish.typed(line.get()));
        });
        wish = asked.map(one -> new ChangeService.Wish(one.amounts(), one.gripTag(), one.gripMass(), reading, fields.isTicked("otherModels"), top,
            tolerances.all(), shop));
    }

    static ChangeForm of(OpenBook book, Context ctx) throws BadInput {
        return new ChangeForm(book, ctx);
    }

    /** Empty as long as nothing was typed. */
    Optional<ChangeService.Wish> wish() {
        return wish;
    }

    /** The job that is planned, where one was taken on before. */
    Optional<String> job() {
        return fields.form().text("job");
    }

    /** All of it, for addresses. */
    Asked asked() {
        return Asked.of(fields.form(), List.of("ask", "reading", "otherModels", "top", "job")).with(Asked.of(fields.form(), ShopFields.NAMES))
            .with(tolerances.typed());
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
     * The club.
     * @return its tag, as it was typed
     */
    public String tag() {
        return tag;
    }
}
