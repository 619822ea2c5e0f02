package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.JobBook;
import benchtwin.bench.JobDone;
import benchtwin.bench.JobSheet;
import benchtwin.bench.OddReading;
import benchtwin.bench.OpenBook;
import benchtwin.bench.Seen;
import benchtwin.bench.Sitting;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** One job: what it is, its plan, handing it over, calling it off. */
final class JobPages implements Routes {

    private final Site site;

    JobPages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/jobs/{number}", ctx -> show(ctx, "job", Draft.empty(site.book().lastEntry())));
        routes.get("/jobs/{number}/sketch", this::sketch);
        routes.get("/jobs/{number}/hand-over", ctx -> show(ctx, "handOver", Draft.empty(site.book().lastEntry())));
        routes.post("/jobs/{number}/hand-over", ctx -> Entering.post(site, ctx, (form, book) -> handOver(ctx, form, book),
            draft -> show(ctx, "handOver", draft)));
        routes.post("/jobs/{number}/call-off", ctx -> Entering.post(site, ctx, (form, book) -> callOff(ctx, form, book),
            draft -> show(ctx, "job", draft)));
    }

    private void show(Context ctx, String template, Draft draft) throws BadInput {
        JobSheet sheet = JobSheet.of(site.book(), ctx.pathParam("number"));
        site.page(ctx, template, "Job " + sheet.job().number(), Section.TODAY, Map.of("sheet", sheet, "draft", draft));
    }

    private void sketch(Context ctx) throws BadInput {
        String number = ctx.pathParam("number");
        String club = Form.query(ctx).need("club", "the club");
        site.drawing(ctx, "The head of %s before and after".formatted(club), Section.TODAY, JobSheet.of(site.book(), number).sketch(club).svg(),
            "/jobs/" + number);
    }

    private Entering.Outcome callOff(Context ctx, Form form, OpenBook book) throws BadInput {
        String number = ctx.pathParam("number");
        List<JobBook.PartInShort> freed = JobBook.cancel(book.asSeen(Entering.seen(form).job(number)), number,
            form.text("why").orElse(""));
        return Entering.Outcome.done("/jobs/" + number, List.of("Job %s is called off%s.".formatted(number, freed.isEmpty() ? ""
            : "; free again: " + String.join(", ", freed.stream().map(JobBook.PartInShort::tag).toList()))));
    }

    private Entering.Outcome handOver(Context ctx, Form form, OpenBook book) throws BadInput {
        String number = ctx.pathParam("number");
        Optional<String> club = JobBook.show(site.book(), number).club();
        Sitting sitting = Readings.of(form);
        List<String> odd = club.isPresent() ? OddReading.questions(site.book(), club.get(), sitting) : List.of();
        if (!odd.isEmpty() && !Entering.isSo(form, Readings.typed(form))) {
            return Entering.Outcome.asked(odd, Readings.typed(form));
        }
        Seen seen = Entering.seen(form).job(number);
        Map<String, String> facts = new TreeMap<>();
        form.text("grip").ifPresent(grip -> facts.put("grip", grip));
        List<String> said = new ArrayList<>(List.of("Job %s is handed over.".formatted(number)));
        said.addAll(JobDone.handOver(book.asSeen(club.isPresent() ? seen.club(club.get()) : seen), number, new JobDone.Result(sitting,
            form.text("as"), facts, Optional.empty(), form.isTicked("oldCracked"), form.isTicked("oldBroken"))));
        return Entering.Outcome.done("/jobs/" + number, said);
    }
}
