package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.ChangedMeanwhile;
import benchtwin.bench.OpenBook;
import benchtwin.bench.PartReadings;
import benchtwin.bench.Seen;
import benchtwin.bench.StockBook;
import benchtwin.bench.StockList;
import benchtwin.bench.StockViews;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The parts: browse, filter, one part, several at once, counts. */
final class StockPages implements Routes {

    /** More rows than these are not shown at once. */
    private static final int MOST = 200;
    private static final int MOST_AT_ONCE = 500;
    private static final String COUNTED = "count-";
    /** Of these there are several that are alike. */
    private static final List<String> COUNTED_KINDS = List.of("sleeve", "weight");

    private final Site site;
    private final Notices notices;

    StockPages(Site site) {
        this.site = site;
        this.notices = site.notices();
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/stock", this::list);
        routes.get("/stock/several", ctx -> several(ctx, Form.query(ctx).all("tag"), List.of()));
        routes.get("/stock/count", ctx -> tally(ctx, List.of(), Map.of()));
        routes.post("/stock/count", this::count);
        routes.post("/stock/acts/{act}", this::act);
        routes.get("/stock/{tag}", ctx -> show(ctx, ctx.pathParam("tag"), List.of()));
    }

    private void list(Context ctx) throws BadInput {
        Form form = Form.query(ctx);
        String words = form.text("q").orElse("");
        String kind = form.text("kind").orElse("");
        StockViews.Asked asked = new StockViews.Asked(kind.isEmpty() ? List.of() : List.of(kind),
            Arrays.stream(words.split("\\s+")).filter(word -> !word.isEmpty()).toList(), form.isTicked("free"), form.isTicked("retired"));
        StockList.Page page = site.parts().page(site.book(), asked, form.number("from", "first row").orElse(0.0).intValue(), MOST);
        int next = page.from() + MOST;
        Map<String, Object> rows = Map.of("parts", page.parts(), "all", page.all(), "from", page.from(),
            "more", next < page.all() ? address(words, kind, form, next) : "");
        if (Site.wantsPart(ctx)) {
            site.part(ctx, "stockRows", rows);
            return;
        }
        Map<String, Object> values = new LinkedHashMap<>(rows);
        values.putAll(Map.of("words", words, "kind", kind, "free", form.isTicked("free"), "retired", form.isTicked("retired"),
            "said", said(ctx)));
        site.page(ctx, "stock", "Stock", Section.STOCK, values);
    }

    private static String address(String words, String kind, Form form, int from) {
        return "/stock?q=%s&kind=%s%s%s&from=%d".formatted(FindPages.encoded(words), FindPages.encoded(kind),
            form.isTicked("free") ? "&free=yes" : "", form.isTicked("retired") ? "&retired=yes" : "", from);
    }

    private List<String> said(Context ctx) {
        return Form.query(ctx).text("said").map(notices::take).orElse(List.of());
    }

    private void show(Context ctx, String tag, List<String> wrong) throws BadInput {
        long seen = site.book().lastEntry();   // before anything is read, or what came between would be overlooked
        StockViews.PartHistory part = StockViews.show(site.book(), tag);
        site.page(ctx, "part", "%s %s".formatted(part.part().kind(), part.part().tag()), Section.STOCK, Map.of("part", part,
            "said", said(ctx), "wrong", wrong, "typed", typed(ctx), "seen", seen, "quantities", PartReadings.quantities(site.book(),
                part.part().fullTag())));
    }

    private void several(Context ctx, List<String> tags, List<String> wrong) throws BadInput {
        if (tags.isEmpty()) {
            throw new BadInput("no part is ticked: tick some in the list of the stock first");
        }
        if (tags.size() > MOST_AT_ONCE) {
            throw new BadInput("%d parts at once: expected at most %d".formatted(tags.size(), MOST_AT_ONCE));
        }
        long seen = site.book().lastEntry();
        List<StockViews.Part> parts = new ArrayList<>();
        for (String tag : tags) {
            parts.add(StockViews.show(site.book(), tag).part());
        }
        site.page(ctx, "partsTicked", parts.size() == 1 ? "1 part" : parts.size() + " parts", Section.STOCK, Map.of("parts", parts,
            "said", said(ctx), "wrong", wrong, "typed", typed(ctx), "seen", seen));
    }

    /** What was typed into a form that could not be done, so that nobody types it twice. */
    private static Map<String, String> typed(Context ctx) {
        Map<String, String> typed = new LinkedHashMap<>();
        ctx.formParamMap().forEach((name, values) -> typed.put(name, values.isEmpty() ? "" : values.get(0)));
        return typed;
    }

    private void act(Context ctx) throws BadInput {
        Form form = Form.posted(ctx);
        List<String> tags = form.all("tag");
        boolean one = tags.size() == 1 && !form.isTicked("several");
        try {
            Seen seen = Entering.seen(form);
            for (String tag : tags) {
                seen = seen.part(tag);
            }
            OpenBook book = site.book(ctx);
            // a note overwrites nothing, so what came between does not matter to it
            boolean note = ctx.pathParam("act").equals("note");
            List<String> said = new StockActs(note ? book : book.asSeen(seen), form, tags).done(ctx.pathParam("act"));
            StringBuilder back = new StringBuilder(one ? "/stock/" + FindPages.encoded(tags.get(0)) + "?" : "/stock/several?");
            if (!one) {
                tags.forEach(tag -> back.append("tag=").append(FindPages.encoded(tag)).append('&'));
            }
            ctx.redirect(back + "said=" + notices.keep(said));
        } catch (ChangedMeanwhile changed) {
            List<String> wrong = new ArrayList<>(List.of("Nothing was entered: somebody else entered something first. If it still holds, "
                + "send it again."));
            wrong.addAll(changed.messages());
            again(ctx, 409, one, tags, wrong);
        } catch (BadInput cannot) {
            again(ctx, 400, one, tags, cannot.messages());
        }
    }

    private void again(Context ctx, int status, boolean one, List<String> tags, List<String> wrong) throws BadInput {
        ctx.status(status);
        if (one) {
            show(ctx, tags.get(0), wrong);
        } else {
            several(ctx, tags, wrong);
        }
    }

    private void tally(Context ctx, List<String> wrong, Map<String, String> typed) throws BadInput {
        String kind = Form.query(ctx).text("kind").orElse("");
        List<String> kinds = kind.isEmpty() ? List.of() : List.of(kind);
        List<StockViews.Part> counted = kinds.isEmpty() || COUNTED_KINDS.containsAll(kinds) ? StockViews.list(site.book(),
            new StockViews.Asked(kinds.isEmpty() ? COUNTED_KINDS : kinds, List.of(), false, false)) : List.of();
        site.page(ctx, "stockCount", "Count the stock", Section.STOCK, Map.of("kind", kind,
            "tallies", site.parts().tally(site.book(), kinds), "counted", counted,
            "said", said(ctx), "wrong", wrong, "typed", typed));
    }

    private void count(Context ctx) throws BadInput {
        Map<String, Integer> counts = new LinkedHashMap<>();
        try {
            for (Map.Entry<String, List<String>> field : ctx.formParamMap().entrySet()) {
                String typed = field.getKey().startsWith(COUNTED) ? field.getValue().get(0).strip() : "";
                if (!typed.isEmpty()) {
                    String tag = field.getKey().substring(COUNTED.length());
                    if (!typed.matches("\\d{1,6}")) {
                        throw new BadInput("%s: \"%s\"; expected how many were counted, 0 or more".formatted(tag, typed));
                    }
                    counts.put(tag, Integer.parseInt(typed));
                }
            }
            if (counts.isEmpty()) {
                throw new BadInput("no count was filled in");
            }
            String said = notices.keep(List.of("Put down: " + String.join(", ", StockBook.count(site.book(ctx), counts)) + "."));
            ctx.redirect("/stock/count?said=" + said);
        } catch (BadInput cannot) {
            ctx.status(400);
            tally(ctx, cannot.messages(), typed(ctx));
        }
    }
}
