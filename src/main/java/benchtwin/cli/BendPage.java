package benchtwin.cli;

import benchtwin.bench.BendRun;
import benchtwin.bench.BendWords;
import benchtwin.bench.Cautions;
import benchtwin.bend.Bend;
import benchtwin.bend.BendAdvice;
import benchtwin.bend.BendDirection;
import benchtwin.bend.BendSession;
import benchtwin.bend.HoselLimits;
import benchtwin.bend.Springback;
import benchtwin.bend.Working;
import benchtwin.club.Hazard;
import benchtwin.club.Quantity;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** A bending session, printed. */
final class BendPage {

    /** A reading that is unsure by more than this part of its tolerance. */
    private static final double COARSE = 0.5;

    private final Page page;

    BendPage(Page page) {
        this.page = page;
    }

    /** What is bent, where to, and how far it may go. */
    void head(BendRun run) {
        page.line("Head %s: %s, %s, %s, read %s%s", run.head().tag(), run.head().category().word(), run.head().model(),
            run.head().material().word(), run.goal().reading().word(), run.job().map(job -> ", for job " + job).orElse(""));
        page.line("          %10s  %9s  %9s", "on record", "target", "tolerance");
        for (Quantity quantity : Quantity.values()) {
            Double recorded = run.recordedDeg().get(quantity);
            Double target = run.goal().targetDeg().get(quantity);
            if (recorded != null || target != null) {
                page.line("  %-7s %10s  %9s  %9s", Figures.name(quantity), recorded == null ? "not read" : Figures.value(quantity, recorded),
                    target == null ? follows(run, quantity) : Figures.value(quantity, target),
                    target == null ? "" : "±" + BendWords.degrees(run.goal().toleranceDeg().get(quantity)));
            }
        }
        run.readingDeg().forEach((quantity, spread) -> {
            Double tolerance = run.goal().toleranceDeg().get(quantity);
            if (tolerance != null && spread > COARSE * tolerance) {
                page.wrapped("", "%s is read to %s here, coarse against ±%s: asks stay timid. Name a surer gauge (--gauge, --uncertainty)."
                    .formatted(sentence(Figures.name(quantity)), BendWords.degrees(spread), BendWords.degrees(tolerance)));
            }
        });
        if (run.bentBefore() > 0) {
            page.wrapped("", "%d %s toward this are on record; this goes on from there.".formatted(run.bentBefore(),
                run.bentBefore() == 1 ? "bend" : "bends"));
        }
    }

    private static String sentence(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }

    private static String follows(BendRun run, Quantity quantity) {
        return run.toRead().contains(quantity) ? "as it is" : "follows";
    }

    void cautions() {
        Cautions.ofHazards(Set.of(Hazard.BEND)).forEach(caution -> page.wrapped("Caution: ", caution));
    }

    /** What a hosel has left, each direction. */
    void left(BendRun run, HoselLimits left) {
        boolean wood = run.goal().isWood();
        page.wrapped("", "Hosel tilt left: %s; of %s each over the head's life%s.".formatted(Arrays.stream(BendDirection.values())
            .map(direction -> "%s %s".formatted(BendWords.degrees(left.leftDeg(direction)), direction.benchWord(wood)))
            .collect(Collectors.joining(", ")), BendWords.degrees(run.lifeLimitDeg()),
            left.historyAssumed() ? " (what it was bent before is not all on record)" : ""));
    }

    void toRead(BendRun run) {
        boolean all = run.recordedDeg().keySet().containsAll(run.toRead());
        page.wrapped("", "Read %s now and type %s%s".formatted(BendLine.names(run.toRead()), run.toRead().size() == 1 ? "it" : "both",
            all ? "; an empty line takes them as on record." : "."));
    }

    /** What to do next. Answers whether there is a bend to do. */
    boolean advice(BendRun run, int number) {
        BendSession session = run.session();
        boolean wood = run.goal().isWood();
        BendAdvice advice = run.advice();
        if (advice instanceof BendAdvice.Ask ask) {
            Quantity quantity = ask.direction().quantity(wood);
            double last = lastAsk(session, ask.direction());
            String push = session.working() == Working.FEEL && last > 0 ? ": " + BendWords.againstTheLast(ask.askedDeg() / last) : "";
            page.wrapped("Bend %d, %s: ".formatted(number, Figures.name(quantity)), BendWords.ask(ask, wood) + push + ".");
            String along = BendWords.alongWith(ask, session.nowDeg(), wood);
            page.wrapped("  ", "%s%s.".formatted(BendWords.chances(ask), along.isEmpty() ? "" : "; " + along));
            page.wrapped("  ", BendWords.restsOn(ask.known(), ask.direction(), wood) + ".");
            return true;
        }
        if (advice instanceof BendAdvice.PastLimit limit) {
            page.wrapped("", BendWords.stop(limit, wood));
        } else if (advice instanceof BendAdvice.TooRisky risky) {
            page.wrapped("", BendWords.stop(risky, wood));
        } else {
            page.wrapped("", "Within tolerance: %s. Leave it.".formatted(run.goal().targetDeg().keySet().stream()
                .map(quantity -> "%s %s".formatted(Figures.name(quantity), Figures.value(quantity, session.nowDeg().get(quantity))))
                .collect(Collectors.joining(", "))));
        }
        return false;
    }

    private static double lastAsk(BendSession session, BendDirection direction) {
        double last = 0;
        for (Bend bend : session.bends()) {
            last = bend.direction() == direction ? bend.askedDeg() : last;
        }
        return last;
    }

    /** Where the angles stand after a reading. */
    void standing(BendRun run) {
        BendSession session = run.session();
        run.goal().targetDeg().forEach((quantity, target) -> {
            double now = session.nowDeg().get(quantity);
            double tolerance = run.goal().toleranceDeg().get(quantity);
            double before = session.bends().isEmpty() ? Double.NaN
                : (session.bends().get(session.bends().size() - 1).beforeDeg().get(quantity) - target) / tolerance;
            page.line("  %-5s %8s  %s  %s", Figures.name(quantity), Figures.value(quantity, now),
                ToleranceStrip.of((now - target) / tolerance, session.readingDeg().get(quantity) / tolerance, before),
                Figures.difference(quantity, now - target));
        });
    }

    /** How the next ask was worked out. */
    void why(BendRun run) {
        BendAdvice advice = run.advice();
        run.session().known().forEach((direction, known) -> page.wrapped("  %-8s ".formatted(direction.benchWord(run.goal().isWood())),
            law(known)));
        page.wrapped("  ", "All in degrees of hosel tilt; a bend scatters by %s about that.".formatted(
            run.session().working() == Working.LIVE ? BendWords.degrees(Working.LIVE.scatterDeg(1)) : "0.3 of what is asked"));
        if (advice instanceof BendAdvice.Ask ask) {
            page.wrapped("  ", ("The ask is the one of highest chance to end within tolerance (%.0f %%), of those that pass its far end, "
                + "or the hosel's limit, in at most %.0f %% of cases. %s asked is %s of hosel tilt, and should leave %s ± %s.").formatted(
                    100 * ask.tilt().withinChance(), 100 * run.session().risk(), BendWords.degrees(ask.askedDeg()),
                    BendWords.degrees(ask.tilt().askedDeg()), BendWords.degrees(ask.tilt().expectedDeg()),
                    BendWords.degrees(ask.tilt().spreadDeg())));
        }
    }

    static String law(Springback known) {
        return "got = %.2f (± %.2f) of the ask, less %s (± %s); from %d %s".formatted(known.gain(), known.gainSpread(),
            BendWords.degrees(known.lossDeg()), BendWords.degrees(known.lossSpreadDeg()), known.trials(),
            known.trials() == 1 ? "bend" : "bends");
    }

    void help(BendRun run) {
        List<Quantity> order = run.toRead();
        page.line("  %s", BendLine.example(order));
        page.line("  asked 1.2 %s    when you asked for something else", order.get(0) == Quantity.LOFT ? "34.2" : "58.4");
        page.line("  again %s        puts the last reading right", order.get(0) == Quantity.LOFT ? "34.1" : "58.3");
        page.line("  why               how the ask was worked out");
        page.line("  skip, stop        go on with the next head; end. Everything typed so far is kept");
    }

    void said(String sentence) {
        page.wrapped("", sentence);
    }

    void blank() {
        page.blank();
    }

    void echo(String line) {
        page.line("> %s", line);
    }
}
