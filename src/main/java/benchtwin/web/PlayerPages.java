package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.BagGrid;
import benchtwin.bench.ClubBook;
import benchtwin.bench.OpenBook;
import benchtwin.bench.PlayerBook;
import benchtwin.club.Category;
import benchtwin.club.ClubState;
import benchtwin.club.Hand;
import benchtwin.club.Quantity;
import benchtwin.match.ShopSettings;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Players: their clubs, tolerances, jobs and notes; the whole bag; new players and new clubs. */
final class PlayerPages implements Routes {

    /** More rows than these are not shown at once. */
    private static final int MOST = 200;

    private final Site site;

    PlayerPages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/players", ctx -> list(ctx, Draft.empty(site.book().lastEntry())));
        routes.post("/players", ctx -> Entering.post(site, ctx, PlayerPages::add, draft -> list(ctx, draft)));
        routes.get("/players/{name}", ctx -> player(ctx, Draft.empty(site.book().lastEntry())));
        routes.post("/players/{name}/tolerances", ctx -> Entering.post(site, ctx, (form, book) -> prefer(ctx, form, book),
            draft -> player(ctx, draft)));
        routes.get("/players/{name}/bag", this::bag);
        routes.get("/players/{name}/bag/{tag}", this::putRight);
        routes.get("/players/{name}/clubs", ctx -> newClub(ctx, Draft.empty(site.book().lastEntry())));
        routes.post("/players/{name}/clubs", ctx -> Entering.post(site, ctx, (form, book) -> addClub(ctx, form, book),
            draft -> newClub(ctx, draft)));
    }

    private void list(Context ctx, Draft draft) throws BadInput {
        Form form = Form.query(ctx);
        String words = form.text("q").orElse("");
        List<String> asked = Arrays.stream(words.toLowerCase(Locale.ROOT).split("\\s+")).toList();
        List<PlayerBook.InShort> found = PlayerBook.inShort(site.book()).stream()
            .filter(player -> asked.stream().allMatch(player.name().toLowerCase(Locale.ROOT)::contains)).toList();
        int from = Math.max(0, Math.min(form.number("from", "first row").orElse(0.0).intValue(), found.size()));
        int next = Math.min(from + MOST, found.size());
        Map<String, Object> values = new HashMap<>(Map.of("players", found.subList(from, next), "all", found.size(), "from", from,
            "more", next < found.size() ? "/players?q=%s&from=%d".formatted(FindPages.encoded(words), next) : "", "words", words));
        if (Site.wantsPart(ctx)) {
            site.part(ctx, "playerRows", values);
            return;
        }
        values.put("draft", draft);
        site.page(ctx, "players", "Players", Section.PLAYERS, values);
    }

    private void player(Context ctx, Draft draft) throws BadInput {
        PlayerBook.Player player = PlayerBook.show(site.book(), ctx.pathParam("name"));
        site.page(ctx, "player", player.name(), Section.PLAYERS, Map.of("player", player, "draft", draft));
    }

    private void newClub(Context ctx, Draft draft) throws BadInput {
        PlayerBook.Player player = PlayerBook.show(site.book(), ctx.pathParam("name"));
        site.page(ctx, "newClub", "A club of " + player.name(), Section.PLAYERS, Map.of("player", player, "draft", draft));
    }

    private void bag(Context ctx) throws BadInput {
        BagGrid.Bag bag = BagGrid.laidOut(site.book(), ctx.pathParam("name"), Map.of());
        site.page(ctx, "bag", "The bag of " + bag.player(), Section.PLAYERS, Map.of("bag", bag));
    }

    /** What puts one club of the bag right: a part of the bag's page, or a page of its own without scripts. */
    private void putRight(Context ctx) throws BadInput {
        BagGrid.Bag bag = BagGrid.laidOut(site.book(), ctx.pathParam("name"), Map.of());
        BagGrid.Club club = bag.clubs().stream().filter(one -> one.tag().equals(ctx.pathParam("tag"))).findFirst()
            .orElseThrow(() -> new BadInput("no club called %s is in the bag of %s".formatted(ctx.pathParam("tag"), bag.player())));
        club = BagGrid.putRight(site.stock().of(site.book(), true), club, bag.tolerances(), ShopSettings.DEFAULT);
        if (Site.wantsPart(ctx)) {
            site.part(ctx, "putRight", Map.of("club", club));
        } else {
            site.page(ctx, "bagClub", "What puts %s right".formatted(club.tag()), Section.PLAYERS, Map.of("club", club, "player", bag.player()));
        }
    }

    private static Entering.Outcome add(Form form, OpenBook book) throws BadInput {
        String name = PlayerBook.add(book, form.need("name", "the player's name"), form.choice("hand", "the hand", Hand.values()), Map.of(),
            form.text("note"));
        return Entering.Outcome.done(path(name), List.of("%s is in the book.".formatted(name)));
    }

    private static Entering.Outcome prefer(Context ctx, Form form, OpenBook book) throws BadInput {
        String name = ctx.pathParam("name");
        Map<Quantity, Double> tolerances = ToleranceFields.typed(form, Readings.ALL);
        if (tolerances.isEmpty()) {
            throw new BadInput("no tolerance was typed");
        }
        PlayerBook.describe(book.asSeen(Entering.seen(form).player(name)), name, Optional.empty(), tolerances);
        return Entering.Outcome.done(path(name), List.of("The tolerances %s prefers are kept.".formatted(name)));
    }

    private static Entering.Outcome addClub(Context ctx, Form form, OpenBook book) throws BadInput {
        Map<String, String> facts = new TreeMap<>();
        for (String part : ClubBook.PARTS) {
            form.text(part).ifPresent(tag -> facts.put(part, tag));
        }
        ClubBook.Entered entered = ClubBook.add(book, new ClubBook.NewClub(form.need("tag", "the club's tag"), ctx.pathParam("name"),
            form.choice("category", "the category", Category.values()).orElseThrow(() -> new BadInput("the category is missing")),
            form.text("number"), form.choice("hand", "the hand", Hand.values()).orElseThrow(() -> new BadInput("the hand is missing")),
            form.choice("state", "the state", ClubState.values()).orElse(ClubState.IN_PLAY), facts), Readings.of(form));
        List<String> said = new ArrayList<>(List.of("%s is in the book.".formatted(entered.club())));
        said.addAll(entered.remarks());
        return Entering.Outcome.done("/clubs/" + FindPages.encoded(entered.club()), said);
    }

    private static String path(String name) {
        return "/players/" + FindPages.encoded(name);
    }
}
