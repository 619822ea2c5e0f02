package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.LabelWish;
import benchtwin.bench.Labels;
import benchtwin.ticket.LabelPage;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Sheets of labels, to be printed. */
final class LabelPages implements Routes {

    private final Site site;

    LabelPages(Site site) {
        this.site = site;
    }

    /** What was chosen and how it is printed. */
    private record Asked(Labels.Chosen chosen, LabelPage.Print print, int copies) {
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/labels", this::page);
        routes.get("/labels.pdf", this::pdf);
        routes.post("/labels/printed", this::printed);
    }

    private Asked asked(Form form) throws BadInput {
        List<String> tags = form.all("tag");
        List<String> kinds = form.all("kind");
        Optional<String> place = form.text("place");
        if (tags.isEmpty() && kinds.isEmpty() && place.isEmpty() && !form.isTicked("new")) {
            throw new BadInput("choose what gets a label: a kind, a place, or what has none yet");
        }
        int copies = whole(form, "copies");
        LabelPage.Print print = new LabelWish(form.text("sheet").orElse(LabelWish.USUAL_SHEET.word()), whole(form, "from"), copies,
            form.isTicked("outlines"), form.text("shift")).print();
        return new Asked(Labels.choose(site.stock().of(site.book(), false), Optional.of(site.book()), new Labels.Asked(tags, kinds, place,
            form.isTicked("new"), copies), LocalDate.now()), print, copies);
    }

    private static int whole(Form form, String name) throws BadInput {
        double typed = form.number(name, name).orElse(1.0);
        if (typed != Math.rint(typed) || Math.abs(typed) > 1e6) {
            throw new BadInput("%s: expected a whole number".formatted(name));
        }
        return (int) typed;
    }

    /** The choice, and what will come out of the printer. */
    private void page(Context ctx) throws BadInput {
        Form form = Form.query(ctx);
        Map<String, Object> values = new HashMap<>(Map.of("form", typed(form), "tags", form.all("tag"), "asked", "", "chosen", List.of(),
            "said", List.of(), "wrong", List.of(), "marked", form.isTicked("marked")));
        if (ctx.queryString() != null && !form.isTicked("marked")) {
            try {
                Asked asked = asked(form);
                if (asked.chosen().labels().isEmpty()) {
                    values.put("said", List.of("Nothing is as asked: no label to print."));
                } else {
                    LabelPage.File file = Labels.pdf(asked.chosen(), asked.print(), LocalDate.now());
                    values.put("asked", ctx.queryString());
                    values.put("chosen", asked.chosen().tags());
                    values.put("said", said(asked, file));
                }
            } catch (BadInput wrong) {
                ctx.status(400);
                values.put("wrong", wrong.messages());
            }
        }
        site.page(ctx, "labels", "Labels", Section.STOCK, values);
    }

    private static Map<String, String> typed(Form form) {
        Map<String, String> typed = new HashMap<>();
        for (String name : List.of("kind", "place", "new", "sheet", "from", "copies", "outlines", "shift")) {
            form.text(name).ifPresent(text -> typed.put(name, text));
        }
        return typed;
    }

    private static List<String> said(Asked asked, LabelPage.File file) {
        int labels = asked.chosen().labels().size();
        List<String> said = new ArrayList<>();
        said.add("%d label%s on %d sheet%s %s; %s.".formatted(labels, labels == 1 ? "" : "s", file.sheets(), file.sheets() == 1 ? "" : "s",
            asked.print().sheet().word(), file.next() > asked.print().sheet().count() ? "the last sheet is used up"
                : "next time begin with label " + file.next()));
        said.addAll(file.remarks());
        return said;
    }

    private void pdf(Context ctx) throws BadInput {
        Asked asked = asked(Form.query(ctx));
        if (asked.chosen().labels().isEmpty()) {
            throw new BadInput("nothing is as asked: no label to print");
        }
        Printed.pdf(ctx, Labels.pdf(asked.chosen(), asked.print(), LocalDate.now()).bytes(), "labels.pdf");
    }

    /** They came out of the printer. */
    private void printed(Context ctx) throws BadInput {
        List<String> tags = Form.posted(ctx).all("tag");
        Labels.mark(site.book(ctx), new Labels.Chosen(List.of(), tags), LocalDate.now());
        ctx.redirect("/labels?marked=yes");
    }
}
