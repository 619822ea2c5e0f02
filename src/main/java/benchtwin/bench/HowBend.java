package benchtwin.bench;

import benchtwin.bend.BendAdvice;
import benchtwin.bend.BendDirection;
import benchtwin.bend.Springback;
import benchtwin.club.BendHistory;
import benchtwin.club.QuantityText;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** How the numbers of a bending session came about: what to ask for, and what the hosel has left. */
public final class HowBend {

    private HowBend() {
    }

    /**
     * What to ask for next.
     * @param run the session
     * @return the account
     * @throws BadInput when there is nothing to ask for
     */
    public static Account ask(BendRun run) throws BadInput {
        if (!run.hasBegun() || !(run.advice() instanceof BendAdvice.Ask ask)) {
            throw new BadInput("there is no bend to ask for now");
        }
        boolean wood = run.goal().isWood();
        Springback known = ask.known();
        String from = known.trials() == 0 ? Account.DEFAULT + " (memory)" : "default and %d bend%s".formatted(known.trials(), known.trials() == 1 ? "" : "s");
        double scatter = run.session().working().scatterDeg(ask.tilt().askedDeg());
        return Account.tell("How the ask for the %s was worked out".formatted(QuantityText.name(ask.direction().quantity(wood))),
                BendWords.degrees(ask.askedDeg()) + " " + ask.direction().benchWord(wood), "to get about %s ± %s".formatted(
                    BendWords.degrees(Math.max(0, ask.expectedDeg())), BendWords.degrees(ask.spreadDeg())))
            .say("It " + BendWords.restsOn(known, ask.direction(), wood) + ".")
            .table("What the metal gives of an ask, in degrees of hosel tilt", List.of("What", "Value#", "±#", "From"), List.of(
                List.of("share that is kept", HowText.fixed(known.gain(), 3), HowText.fixed(known.gainSpread(), 3), from),
                List.of("constant that is lost", BendWords.degrees(known.lossDeg()), BendWords.degrees(known.lossSpreadDeg()), from),
                List.of("scatter of one bend", BendWords.degrees(scatter), "", Account.DEFAULT + " (memory)")))
            .say("Asked %1$s of tilt, it gives %2$s × %1$s − %3$s = %4$s.".formatted(BendWords.degrees(ask.tilt().askedDeg()),
                HowText.fixed(known.gain(), 3), BendWords.degrees(known.lossDeg()), BendWords.degrees(ask.tilt().expectedDeg())))
            .say("Chance to end within tolerance: %s %%. That is the highest of the asks that pass its far end, or what the hosel has left, in at most %s %% of cases."
                .formatted(HowText.fixed(100 * ask.tilt().withinChance(), 0), HowText.fixed(100 * run.session().risk(), 0)))
            .law(Formula.NEXT_BEND).done();
    }

    /**
     * What the hosel has left.
     * @param run the session
     * @return the account
     */
    public static Account left(BendRun run) {
        boolean wood = run.goal().isWood();
        double limit = run.lifeLimitDeg();
        List<List<String>> rows = new ArrayList<>();
        for (BendDirection direction : BendDirection.values()) {
            OptionalDouble recorded = recorded(run.head().bent(), direction);
            double left = run.leftDeg().leftDeg(direction);
            double here = run.hasBegun() ? used(run, direction) : 0;
            rows.add(List.of(direction.benchWord(wood), BendWords.degrees(limit), BendWords.degrees(Math.max(0, limit - left - here)),
                recorded.isPresent() ? "recorded" : Account.DEFAULT + ": change since it was made", BendWords.degrees(here), BendWords.degrees(left)));
        }
        return Account.tell("What the hosel of %s has left".formatted(run.head().tag()), "%s each way in its life".formatted(BendWords.degrees(limit)), "")
            .say("Made of %s. All in degrees of permanent hosel tilt, each way by itself.".formatted(run.head().material().word()))
            .table("Way by way", List.of("Way", "Limit#", "Used before#", "From", "Used here#", "Left#"), rows)
            .law(Formula.HOSEL).done();
    }

    /** What this session used one way. */
    private static double used(BendRun run, BendDirection direction) {
        return run.session().bends().stream().mapToDouble(bend -> Math.max(0, direction.part(bend.used()))).sum();
    }

    private static OptionalDouble recorded(BendHistory bent, BendDirection direction) {
        return switch (direction) {
            case UPRIGHT -> bent.uprightDeg();
            case FLAT -> bent.flatDeg();
            case FORWARD -> bent.forwardDeg();
            case BACK -> bent.backDeg();
        };
    }
}
