package benchtwin.web;

import benchtwin.bench.Account;
import benchtwin.bench.BadInput;
import benchtwin.bench.BendRun;
import benchtwin.bench.BendService;
import benchtwin.bench.Cautions;
import benchtwin.bench.HowBend;
import benchtwin.bend.AskPolicy;
import benchtwin.bend.BendAdvice;
import benchtwin.bend.BendDirection;
import benchtwin.bend.Working;
import benchtwin.club.Hazard;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The bend loop, full screen. What a session is asked for stands in the page's address; every reading and bend is in the book before
 * the page answers, so a session that is not in memory any more is opened again from there.
 */
final class BendPages implements Routes {

    private static final List<Quantity> ANGLES = List.of(Quantity.LOFT, Quantity.LIE, Quantity.FACE);
    private static final int MOST_KEPT = 64;
    private static final double MOST_RISK = 0.5;

    /** A session in memory, and the last thing in the book it knows of. */
    private record Kept(BendRun run, long lastEvent) {
    }

    private final Site site;
    private final Map<String, Kept> sessions = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Kept> eldest) {
            return size() > MOST_KEPT;
        }
    };

    BendPages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/bend", this::begin);
        routes.get("/bend/{head}", this::show);
        routes.get("/bend/{head}/how/ask", ctx -> how(ctx, HowBend::ask));
        routes.get("/bend/{head}/how/left", ctx -> how(ctx, HowBend::left));
        routes.post("/bend/{head}", this::typed);
    }

    /** A job's heads, or a head that is named. */
    private void begin(Context ctx) throws BadInput {
        Form form = Form.query(ctx);
        Optional<String> head = form.text("head");
        if (head.isPresent()) {
            ctx.redirect("/bend/" + FindPages.encoded(head.get()));
            return;
        }
        List<String> heads = form.text("job").isPresent() ? service(ctx).headsOf(form.text("job").get()) : List.of();
        site.page(ctx, "bendBegin", "Bend", Section.BEND, Map.of("heads", heads, "job", form.text("job").orElse(""),
            "waiting", heads.isEmpty() ? BendService.waiting(site.book()) : List.of()));
    }

    private BendService service(Context ctx) throws BadInput {
        return BendService.of(site.book(ctx), site.stock().of(site.book(), true));
    }

    private synchronized void show(Context ctx) throws BadInput {
        Form form = Form.query(ctx);
        if (form.text("change").isPresent()) {
            target(ctx, List.of());
            return;
        }
        try {
            Kept kept = session(ctx);
            if (!kept.run().hasBegun()) {
                page(ctx, kept.run(), "bendRead", List.of());
            } else {
                page(ctx, kept.run(), "bend", List.of());
            }
        } catch (BadInput bad) {
            target(ctx, bad.messages());
        }
    }

    /** What the head is to be bent to, asked. */
    private void target(Context ctx, List<String> messages) throws BadInput {
        Form form = Form.query(ctx);
        Map<String, String> typed = new HashMap<>();
        for (Quantity quantity : ANGLES) {
            for (String field : List.of("to-", "by-", "u-", "tol-")) {
                typed.put(field + quantity.word(), form.text(field + quantity.word()).orElse(""));
            }
        }
        for (String field : List.of("gauge", "risk", "limit", "although")) {
            typed.put(field, form.text(field).orElse(""));
        }
        site.page(ctx, "bendTarget", "Bend " + ctx.pathParam("head"), Section.BEND, Map.of("head", ctx.pathParam("head"), "typed", typed,
            "angles", angles(ctx), "working", form.text("working").orElse(Working.LIVE.word()), "job", form.text("job").orElse(""),
            "messages", form.text("sent").isPresent() || messages.size() != 1 || !messages.get(0).startsWith("no angles") ? messages
                : List.of()));
    }

    /** The angles a head is bent in, with what is on record; where there is no such head, every angle there is. */
    private Map<Quantity, OptionalDouble> angles(Context ctx) {
        try {
            return service(ctx).bendable(ctx.pathParam("head"));
        } catch (BadInput noSuchHead) {
            Map<Quantity, OptionalDouble> all = new EnumMap<>(Quantity.class);
            ANGLES.forEach(quantity -> all.put(quantity, OptionalDouble.empty()));
            return all;
        }
    }

    /** A session is one person's: who goes on with it opens it anew from the book, and what they read is theirs. */
    private static String key(Context ctx) {
        return Site.who(ctx) + "/" + ctx.pathParam("head") + "?" + (ctx.queryString() == null ? "" : ctx.queryString());
    }

    /** The session in memory while nobody entered anything else of its head, else the same opened from the book. */
    private Kept session(Context ctx) throws BadInput {
        Kept kept = sessions.get(key(ctx));
        if (kept != null && kept.lastEvent() == BendService.lastEvent(site.book(), kept.run().head().tag())) {
            return kept;
        }
        Form form = Form.query(ctx);
        BendRun run = service(ctx).open(ctx.pathParam("head"), form.text("job"), new BendService.Wish(angles(form, "to-"), angles(form, "by-"),
            above0(angles(form, "tol-")), above0(angles(form, "u-")), form.text("gauge"),
            form.choice("working", "working", Working.values()).orElse(Working.LIVE), risk(form), limit(form),
            form.text("although")));
        if (run.bentBefore() > 0) {
            run.begin(Map.of());
        }
        return keep(ctx, run);
    }

    private Kept keep(Context ctx, BendRun run) throws BadInput {
        Kept kept = new Kept(run, BendService.lastEvent(site.book(), run.head().tag()));
        sessions.put(key(ctx), kept);
        return kept;
    }

    private static double risk(Form form) throws BadInput {
        double risk = form.number("risk", "risk").orElse(AskPolicy.DEFAULT_RISK);
        if (!(risk > 0 && risk <= MOST_RISK)) {
            throw new BadInput("risk: expected above 0 and at most 0.5");
        }
        return risk;
    }

    private static OptionalDouble limit(Form form) throws BadInput {
        Optional<Double> limit = form.number("limit", "limit");
        return limit.isPresent() ? OptionalDouble.of(limit.get()) : OptionalDouble.empty();
    }

    private static Map<Quantity, Double> angles(Form form, String field) throws BadInput {
        Map<Quantity, Double> angles = new EnumMap<>(Quantity.class);
        for (Quantity quantity : ANGLES) {
            form.number(field + quantity.word(), QuantityText.name(quantity)).ifPresent(value -> angles.put(quantity, value));
        }
        return angles;
    }

    private static Map<Quantity, Double> above0(Map<Quantity, Double> values) throws BadInput {
        for (Map.Entry<Quantity, Double> one : values.entrySet()) {
            if (!(one.getValue() > 0)) {
                throw new BadInput("%s: %s is not above 0".formatted(QuantityText.name(one.getKey()), one.getValue()));
            }
        }
        return values;
    }

    private synchronized void typed(Context ctx) throws BadInput {
        Form form = Form.posted(ctx);
        Kept kept = session(ctx);
        BendRun run = kept.run();
        List<String> wrong;
        try {
            wrong = taken(ctx, form, run);
        } catch (BadInput bad) {
            wrong = bad.messages();
        }
        if (wrong.isEmpty()) {
            keep(ctx, run);
            ctx.redirect(address(ctx, ""));
        } else {
            ctx.status(422);
            page(ctx, run, run.hasBegun() ? "bend" : "bendRead", wrong);
        }
    }

    /** Takes what was typed; answers what is wrong with it, if anything is. */
    private List<String> taken(Context ctx, Form form, BendRun run) throws BadInput {
        Map<Quantity, Double> read = angles(form, "read-");
        boolean sure = form.isTicked("sure");
        if (!run.hasBegun()) {
            Optional<String> question = sure ? Optional.empty() : run.question(Optional.empty(), 0, read);
            if (question.isPresent()) {
                return List.of(question.get());
            }
            run.begin(read);
            return List.of();
        }
        if (!form.text("bends").orElse("").equals(number(run))) {
            return List.of("Something was entered of this head meanwhile: this is how it stands now. Nothing of what you typed was entered");
        }
        if (form.isTicked("again")) {
            run.again(form.number("asked", "asked"), read);
            return List.of();
        }
        if (!(run.advice() instanceof BendAdvice.Ask ask)) {
            return List.of("There is no bend to take a reading of");
        }
        double asked = form.number("asked", "asked").orElse(ask.askedDeg());
        Optional<String> question = sure ? Optional.empty() : run.question(Optional.of(ask.direction()), asked, read);
        if (question.isPresent()) {
            return List.of(question.get());
        }
        run.bent(ask.direction(), asked, read);
        return List.of();
    }

    /** A number of a session that may be told of. */
    private interface Told {
        Account of(BendRun run) throws BadInput;
    }

    private synchronized void how(Context ctx, Told told) throws BadInput {
        new Explained(site).show(ctx, Section.BEND, told.of(session(ctx).run()), new Explained.Back(address(ctx, ""), "the bend"));
    }

    /** An address of this session, which the query names. */
    private static String address(Context ctx, String below) {
        return "/bend/" + FindPages.encoded(ctx.pathParam("head")) + below + (ctx.queryString() == null ? "" : "?" + ctx.queryString());
    }

    /** How many bends the page knows of. */
    private static String number(BendRun run) {
        return Integer.toString(run.bentBefore() + run.session().bends().size());
    }

    private void page(Context ctx, BendRun run, String template, List<String> wrong) {
        Map<String, Object> values = new HashMap<>();
        values.put("run", run);
        values.put("messages", wrong);
        values.put("cautions", Cautions.ofHazards(Set.of(Hazard.BEND)));
        values.put("address", address(ctx, ""));
        values.put("howLeft", address(ctx, "/how/left"));
        Map<String, String> typed = new HashMap<>();
        for (Quantity quantity : ANGLES) {
            String sent = ctx.formParam("read-" + quantity.word());
            typed.put(quantity.word(), sent == null || wrong.isEmpty() ? "" : sent);
        }
        values.put("typed", typed);
        values.put("doubted", wrong.stream().anyMatch(message -> message.contains("type it once more")));
        if (template.equals("bend")) {
            values.put("howAsk", address(ctx, "/how/ask"));
            values.put("advice", run.advice());
            values.put("number", number(run));
            values.put("tracks", BendTrack.of(run));
            values.put("directions", BendDirection.values());
        }
        site.page(ctx, template, "Bend " + run.head().tag(), Section.BEND, values);
    }
}
