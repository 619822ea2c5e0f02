package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.JobBook;
import benchtwin.bench.JobPlanning;
import benchtwin.bench.StockViews;
import benchtwin.match.Ranked;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Makes a chosen option a job with its parts promised; whoever comes second is told who has them. */
final class Choice {

    private static final int CONFLICT = 409;
    private static final int BAD_REQUEST = 400;

    private final Site site;

    Choice(Site site) {
        this.site = site;
    }

    /** Shows the page again, with what was in the way. */
    @FunctionalInterface
    interface Again {
        void show(List<String> messages) throws BadInput;
    }

    /** Turns what was chosen into what is planned. */
    @FunctionalInterface
    interface Planned<T> {
        JobPlanning.PlannedClub of(T chosen);
    }

    /**
     * What a job is about.
     * @param what   what it makes
     * @param club   the club; empty where it is for a player whom the form names
     * @param number a job that was taken on before and has no plan yet
     */
    record About(JobBook.What what, Optional<String> club, Optional<String> number) {
    }

    /**
     * Makes it a job.
     * @param ctx     the request, whose form names the option
     * @param about   what the job is about
     * @param options what can be chosen now
     * @param option  the option behind each
     * @param planned what is planned
     * @param again   shows the page again
     */
    <T> void make(Context ctx, About about, List<T> options, Function<T, Ranked> option, Planned<T> planned, Again again)
        throws BadInput {
        Form form = Form.posted(ctx);
        Optional<T> chosen = OptionKey.find(options, option, form.need("option", "the option"));
        if (chosen.isEmpty()) {
            refuse(ctx, again, gone(form.all("part")));
            return;
        }
        Optional<String> player = about.club().isPresent() ? Optional.empty() : form.text("player");
        if (about.club().isEmpty() && player.isEmpty()) {
            again.show(List.of("For whom is it made? The player's name is missing; nothing was made a job."));
            ctx.status(BAD_REQUEST);
            return;
        }
        try {
            String number = JobPlanning.promise(site.book(ctx), new JobPlanning.For(about.number(), new JobBook.Order(about.what(), player,
                about.club(), form.text("due").map(due -> due.replace('T', ' ')), "")), List.of(planned.of(chosen.get())));
            ctx.redirect("/jobs/" + number);
        } catch (BadInput taken) {
            refuse(ctx, again, taken.messages());
        }
    }

    private static void refuse(Context ctx, Again again, List<String> messages) throws BadInput {
        again.show(messages);
        ctx.status(CONFLICT);
    }

    /** Who has the parts that were looked at. */
    private List<String> gone(List<String> parts) {
        List<String> messages = new ArrayList<>();
        for (String tag : parts) {
            try {
                StockViews.Part part = StockViews.show(site.book(), tag).part();
                if (!part.promises().isEmpty()) {
                    messages.add("%s %s is promised to %s by now. Nothing was made a job; below is what is nearest without it.".formatted(
                        part.kind(), part.tag(), String.join(", ", part.promises())));
                }
            } catch (BadInput notInTheBook) {
                messages.addAll(notInTheBook.messages());
            }
        }
        return messages.isEmpty() ? List.of("What you chose is not in the answer any more: something was entered meanwhile. "
            + "Nothing was made a job; below is how it stands now.") : messages;
    }
}
