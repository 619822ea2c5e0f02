package benchtwin.web;

import benchtwin.bench.Account;
import benchtwin.bench.BadInput;
import benchtwin.bench.HeadSketches;
import benchtwin.bench.HowOption;
import benchtwin.club.Target;
import benchtwin.match.Ranked;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Opens how a number came about, and draws an option's head: as a part of the page it is on, or as a page of its own. */
public final class Explained {

    private final Site site;

    Explained(Site site) {
        this.site = site;
    }

    /**
     * The page a number stands on.
     * @param path  its address
     * @param words what it is
     */
    public record Back(String path, String words) {
    }

    /**
     * Options an address may name.
     * @param options the options
     * @param club    what the club is called that they are made of
     * @param target  what each is held against
     * @param name    what each is called
     * @param back    address of their page
     */
    record Options(List<Ranked> options, String club, Function<Ranked, Target> target, Function<Ranked, String> name, String back) {

        private Ranked named(Form form) throws BadInput {
            return OptionKey.find(options, Function.identity(), form.need("option", "the option")).orElseThrow(() -> new BadInput(
                "that option is not in the answer any more: something was entered meanwhile. Look at the ranking again"));
        }
    }

    /** A number of an option. */
    void how(Context ctx, Options options) throws BadInput {
        Form form = Form.query(ctx);
        Ranked option = options.named(form);
        show(ctx, Section.PLAYERS, HowOption.of(option, options.target().apply(option), options.name().apply(option), options.club(), of(ctx)),
            new Back(options.back(), "the options"));
    }

    /** Which number an address asks for. */
    static String of(Context ctx) throws BadInput {
        return Form.query(ctx).need("of", "the number");
    }

    /** Any number. */
    void show(Context ctx, Section section, Account account, Back back) {
        if (Site.wantsPart(ctx)) {
            site.part(ctx, "how", Map.of("account", account));
        } else {
            site.page(ctx, "howPage", account.title(), section, Map.of("account", account, "back", back));
        }
    }

    void sketch(Context ctx, Options options) throws BadInput {
        Ranked option = options.named(Form.query(ctx));
        String title = "Head %s before and after".formatted(option.head().tag());
        site.drawing(ctx, title, Section.PLAYERS, HeadSketches.of(option).svg(), options.back());
    }
}
