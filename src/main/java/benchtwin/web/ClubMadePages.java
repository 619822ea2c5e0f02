package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.ClubBook;
import benchtwin.bench.ClubFacts;
import benchtwin.bench.ClubViews;
import benchtwin.bench.ColumnText;
import benchtwin.bench.OpenBook;
import benchtwin.club.ClubState;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What a club is made of and how it stands, put down anew. Only what differs from the record is entered. */
final class ClubMadePages implements Routes {

    private static final String STATE = "state";

    private final Site site;

    ClubMadePages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/clubs/{tag}/made", ctx -> show(ctx, Draft.empty(site.book().lastEntry())));
        routes.post("/clubs/{tag}/made", ctx -> Entering.post(site, ctx, (form, book) -> enter(ctx, form, book), draft -> show(ctx, draft)));
    }

    private void show(Context ctx, Draft draft) throws BadInput {
        ClubViews.Club club = ClubViews.show(site.book(), ctx.pathParam("tag"), ClubViews.When.NOW);
        site.page(ctx, "clubMade", "What %s is made of".formatted(club.tag()), Section.PLAYERS, Map.of("club", club, "draft", draft));
    }

    private Entering.Outcome enter(Context ctx, Form form, OpenBook book) throws BadInput {
        ClubViews.Club club = ClubViews.show(site.book(), ctx.pathParam("tag"), ClubViews.When.NOW);
        Map<String, String> news = new TreeMap<>();
        for (String name : Stream.concat(ClubBook.PARTS.stream(), ClubBook.DETAILS.stream()).toList()) {
            String typed = typed(form, name);
            if (!typed.equals(club.fact(name).orElse("")) && !(typed.isEmpty() && club.fact(name).equals(Optional.of("0")))) {
                news.put(name, typed);
            }
        }
        Optional<ClubState> state = form.choice(STATE, "how it stands", ClubState.values()).filter(now -> !club.fact(STATE).equals(Optional.of(
            now.word())));
        if (news.isEmpty() && state.isEmpty()) {
            throw new BadInput("nothing was changed, so nothing was entered");
        }
        ClubBook.Entered entered = ClubBook.record(book.asSeen(Entering.seen(form).club(club.tag())), club.tag(), Readings.of(form), news, state,
            false);
        List<String> said = new ArrayList<>(List.of("What has changed of %s is entered.".formatted(entered.club())));
        said.addAll(entered.remarks());
        return Entering.Outcome.done("/clubs/" + FindPages.encoded(entered.club()), said);
    }

    private static String typed(Form form, String name) throws BadInput {
        Optional<Double> amount = ClubFacts.isAmount(name) ? form.number(name, ColumnText.name(name)) : Optional.empty();
        return amount.isPresent() ? ClubFacts.amount(name, ColumnText.name(name), amount.get()) : form.text(name).orElse("");
    }
}
