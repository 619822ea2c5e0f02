package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.HeadSketches;
import benchtwin.bench.HowComputed;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.Target;
import benchtwin.match.Favourite;
import benchtwin.match.Ranked;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Opens how a number of an option was computed, and draws its head: as a part of the page it is on, or as a page of its own. */
final class Explained {

    private static final String SCORE = "score";

    private final Site site;

    Explained(Site site) {
        this.site = site;
    }

    /**
     * Options an address may name.
     * @param options the options
     * @param club    what they are made of
     * @param target  what each is held against
     * @param name    what each is called
     * @param back    address of their page
     */
    record Options(List<Ranked> options, Favourite club, Function<Ranked, Target> target, Function<Ranked, String> name, String back) {

        private Ranked named(Form form) throws BadInput {
            return OptionKey.find(options, Function.identity(), form.need("option", "the option")).orElseThrow(() -> new BadInput(
                "that option is not in the answer any more: something was entered meanwhile. Look at the ranking again"));
        }
    }

    void how(Context ctx, Options options) throws BadInput {
        Form form = Form.query(ctx);
        Ranked option = options.named(form);
        String of = form.need("of", "the number");
        String name = options.name().apply(option);
        Map<String, Object> values = new HashMap<>();
        values.put("name", name);
        if (of.equals(SCORE)) {
            values.put("option", option);
            values.put("target", options.target().apply(option));
            answer(ctx, "howScore", "How " + name + " was ranked", values, options.back());
        } else {
            Quantity quantity = Arrays.stream(Quantity.values()).filter(one -> one.word().equals(of)).findFirst()
                .orElseThrow(() -> new BadInput("\"%s\" is not a quantity".formatted(of)));
            values.put("how", HowComputed.of(option, options.club(), quantity));
            answer(ctx, "how", "How the %s of %s was computed".formatted(QuantityText.name(quantity), name), values, options.back());
        }
    }

    void sketch(Context ctx, Options options) throws BadInput {
        Ranked option = options.named(Form.query(ctx));
        String title = "Head %s before and after".formatted(option.head().tag());
        answer(ctx, "sketch", title, Map.of("svg", HeadSketches.of(option).svg()), options.back());
    }

    private void answer(Context ctx, String template, String title, Map<String, Object> values, String back) {
        if (Site.wantsPart(ctx)) {
            Map<String, Object> part = new HashMap<>(values);
            part.put("title", title);
            site.part(ctx, template, part);
        } else {
            Map<String, Object> page = new HashMap<>(values);
            page.put("back", back);
            site.page(ctx, template + "Page", title, Section.PLAYERS, page);
        }
    }
}
