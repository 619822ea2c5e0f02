package benchtwin.bench;

import benchtwin.club.Hazard;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.StepKind;
import benchtwin.club.Wanted;
import benchtwin.ticket.TicketLine;
import benchtwin.ticket.TicketStep;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The steps of one club's plan as the bench does them: bonding taken apart into preparing, dry fit, glue and cure, a bend after
 * the dry fit and before the glue, the measuring at the end; each with the lines that are written on.
 */
final class TicketSteps {

    /** The order of work; each kind of step of a plan has its place in it. */
    private enum Stage {
        PULL("Pull"), CUT("Cut and ream"), PREPARE("Prepare"), WEIGHT("Weight"), DRY_FIT("Dry fit"), BEND("Bend"), GLUE("Glue"),
        CURE("Cure"), SCREW_ON("Screw on"), SET("Set"), TAPE("Tape"), BUTT("Butt"), BUTT_CURE("Cure"), GRIP("Grip"),
        MEASURE("Final measure");

        private final String title;

        Stage(String title) {
            this.title = title;
        }

        static Stage of(StepKind kind) {
            return switch (kind) {
                case PULL_GRAPHITE, PULL_STEEL -> PULL;
                case TIP_TRIM, REAM -> CUT;
                case SHIM, TIP_WEIGHT, WEIGHT_SCREW, HOT_MELT -> WEIGHT;
                case BEND_IRON, BEND_WOOD -> BEND;
                case BOND -> GLUE;
                case SWAP_HEAD -> SCREW_ON;
                case SLEEVE_SETTING -> SET;
                case LEAD_TAPE -> TAPE;
                case BUTT_CUT, EXTENSION -> BUTT;
                case REGRIP -> GRIP;
            };
        }
    }

    private record Placed(Stage stage, TicketStep step) {
    }

    private final String job;
    private final JobPlan.Club plan;
    private final TicketParts parts;
    private final TicketTimes times;
    private final Set<Hazard> told = EnumSet.noneOf(Hazard.class);
    private final List<Placed> steps = new ArrayList<>();

    private TicketSteps(String job, JobPlan.Club plan, TicketParts parts, TicketTimes times) {
        this.job = job;
        this.plan = plan;
        this.parts = parts;
        this.times = times;
    }

    static List<TicketStep> of(String job, JobPlan.Club plan, TicketParts parts, TicketTimes times) {
        return new TicketSteps(job, plan, parts, times).steps();
    }

    /** Whether a step comes before the glue is on, or is the gluing itself. */
    static boolean isUpToGlue(JobPlan.Task task) {
        return task.kind().filter(kind -> Stage.of(kind).compareTo(Stage.GLUE) > 0).isEmpty();
    }

    private List<TicketStep> steps() {
        List<JobPlan.Task> inOrder = plan.tasks().stream().sorted(Comparator.comparing(TicketSteps::stage)).toList();
        boolean bonds = has(StepKind.BOND);
        if (bonds) {
            put(Stage.PREPARE, "Take the old resin out, roughen the tip, clean tip and bore and let them dry. Mark how far it goes in.",
                parts.insertion(plan).map(deep -> List.of(new TicketLine("goes in", Optional.empty(), Optional.empty(), Optional.of(deep), Optional.empty())))
                    .orElse(List.of()));
            put(Stage.DRY_FIT, "Seat it on the bottom without resin; see that the shaft's markings stand right.",
                lines(List.of(Quantity.LENGTH, Quantity.SWING_WEIGHT)));
        }
        inOrder.forEach(task -> put(stage(task), task));
        if (bonds || has(StepKind.TIP_WEIGHT) || has(StepKind.SHIM)) {
            put(Stage.CURE, "Leave it at rest until it may be handled. Nobody swings it before the full cure.", times.cureLines());
        } else if (has(StepKind.EXTENSION)) {
            put(Stage.BUTT_CURE, "Leave it at rest until it may be handled. Nobody swings it before the full cure.",
                times.cureLines());
        }
        put(Stage.MEASURE, measureAndEnter(job), lines(measured()));
        steps.sort(Comparator.comparing(Placed::stage));
        return steps.stream().map(Placed::step).map(this::withCautions).toList();
    }

    static String measureAndEnter(String job) {
        return "Measure the finished club, and hand job %s over with what it measures.".formatted(job);
    }

    private boolean has(StepKind kind) {
        return plan.tasks().stream().anyMatch(task -> task.kind().equals(Optional.of(kind)));
    }

    /** A step whose kind is not known stands among the bends, where nothing is out of order that cannot be told. */
    private static Stage stage(JobPlan.Task task) {
        return task.kind().map(Stage::of).orElse(Stage.BEND);
    }

    private void put(Stage stage, JobPlan.Task task) {
        List<TicketLine> lines = task.kind().map(this::linesOf).orElse(List.of(TicketLine.of("reading")));
        TicketStep step = new TicketStep(task.kind().isPresent() ? stage.title : "Step", words(task), lines,
            task.kind().flatMap(StepKind::hazard).map(hazard -> List.of(hazard.name())).orElse(List.of()));
        steps.add(new Placed(stage, step));
    }

    /** Bonding is several steps here, so its own no longer says all of them. */
    private static String words(JobPlan.Task task) {
        return task.kind().equals(Optional.of(StepKind.BOND)) ? task.words().replaceFirst("^Prepare, dry fit and bond ", "Bond ")
            : task.words();
    }

    private void put(Stage stage, String words, List<TicketLine> lines) {
        steps.add(new Placed(stage, new TicketStep(stage.title, words, lines, List.of())));
    }

    /** A caution stands with the first step that needs it. */
    private TicketStep withCautions(TicketStep step) {
        List<String> cautions = step.cautions().stream().map(Hazard::valueOf).filter(told::add).map(Hazard::caution).toList();
        return new TicketStep(step.title(), step.words(), step.lines(), cautions);
    }

    private List<TicketLine> linesOf(StepKind kind) {
        return switch (kind) {
            case BEND_WOOD -> bent(List.of(Quantity.LOFT, Quantity.LIE, Quantity.FACE));
            case BEND_IRON -> bent(List.of(Quantity.LOFT, Quantity.LIE));
            case HOT_MELT, WEIGHT_SCREW -> List.of(parts.headMass(plan));
            case BOND -> List.of(TicketLine.of("resin, batch"), TicketLine.of("glued at"));
            case BUTT_CUT, EXTENSION -> lines(List.of(Quantity.LENGTH));
            case LEAD_TAPE -> lines(List.of(Quantity.SWING_WEIGHT));
            case TIP_TRIM -> List.of(TicketLine.of("cut off"));
            default -> List.of();
        };
    }

    private List<TicketLine> bent(List<Quantity> angles) {
        return angles.stream().flatMap(angle -> line(angle, parts.headAngle(plan, angle)).stream()).toList();
    }

    private List<TicketLine> lines(List<Quantity> quantities) {
        return quantities.stream().flatMap(quantity -> line(quantity, Optional.empty()).stream()).toList();
    }

    /** What a club of this plan is measured in at the end. */
    private List<Quantity> measured() {
        List<Quantity> asked = Quantity.targetable().stream().filter(quantity -> quantity != Quantity.TORQUE)
            .filter(quantity -> plan.wanted().containsKey(quantity) || plan.predicted().containsKey(quantity)).toList();
        return asked.isEmpty() ? List.of(Quantity.LENGTH, Quantity.SWING_WEIGHT, Quantity.TOTAL_MASS) : asked;
    }

    private Optional<TicketLine> line(Quantity quantity, Optional<String> now) {
        Optional<TicketLine> line = wanted(plan, quantity).map(wanted -> new TicketLine(QuantityText.name(quantity), now,
            comesTo(quantity, wanted), Optional.of(QuantityText.value(quantity, wanted.value())), Optional.of(QuantityText.size(quantity, wanted.tolerance()))));
        return line.or(() -> quantity.isAngle() ? Optional.empty()
            : Optional.of(new TicketLine(QuantityText.name(quantity), now, Optional.empty(), Optional.empty(),
                Optional.empty())));
    }

    /** What the plan brings a quantity to, where that is out of tolerance: a change drags things along that nobody asked for. */
    private Optional<String> comesTo(Quantity quantity, Wanted wanted) {
        return Optional.ofNullable(plan.predicted().get(quantity)).filter(value -> Math.abs(value - wanted.value()) > wanted.tolerance())
            .map(value -> QuantityText.value(quantity, value));
    }

    /** What a quantity should be: what was wanted, else what is expected, to the usual tolerance; empty when neither is known. */
    static Optional<Wanted> wanted(JobPlan.Club plan, Quantity quantity) {
        return Optional.ofNullable(plan.wanted().get(quantity)).or(() -> Optional.ofNullable(plan.predicted().get(quantity))
            .map(value -> new Wanted(value, quantity.defaultTolerance(), 1)));
    }
}
