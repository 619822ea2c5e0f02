package benchtwin.bench;

import benchtwin.book.State;
import benchtwin.club.AngleReading;
import benchtwin.club.Quantity;
import benchtwin.club.Sleeve;
import benchtwin.club.Step;
import benchtwin.club.StepKind;
import benchtwin.club.Wanted;
import benchtwin.match.Ranked;
import benchtwin.measure.PlainNumber;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * A job's plan, as the book keeps it.
 * @param clubs one for every club it builds or changes
 */
record JobPlan(List<Club> clubs) {

    /** No plan yet. */
    static final JobPlan NONE = new JobPlan(List.of());
    /** Under which name a job keeps it. */
    static final String FACT = "plan";
    /** How the words of the step begin that mounts a grip of which only the model is said. */
    private static final String ANY_GRIP = "Mount a grip like";

    JobPlan {
        clubs = List.copyOf(clubs);
    }

    /**
     * A weight that goes in.
     * @param tag   its tag
     * @param moreG what it makes heavier, in place of the one it takes the place of, g; below 0 for lighter
     */
    record WeightIn(String tag, double moreG) {
    }

    /**
     * How the parts come together, as far as the record of parts changes by it.
     * @param sleeveFromTin whether the sleeve is one of those in the tin, bonded on for this
     * @param tipOut        whether the shaft is pulled out of what it is in
     * @param anyGrip       whether a grip goes on of which only the model is said
     */
    record Joins(boolean sleeveFromTin, boolean tipOut, boolean anyGrip) {
    }

    /**
     * One step.
     * @param words   what to do, in bench words
     * @param inShort the same for a narrow column
     * @param kind    what kind it is; empty in a plan kept by a program that did not say
     * @param minutes bench minutes; empty in such a plan
     */
    record Task(String words, String inShort, Optional<StepKind> kind, OptionalDouble minutes) {

        static Task of(Step step) {
            return new Task(step.words(), step.inShort(), Optional.of(step.kind()), OptionalDouble.of(step.minutes()));
        }
    }

    /**
     * The plan of one club.
     * @param name        the club's tag, or what the set calls it
     * @param build       its parts and setting, by name as a club's facts have them
     * @param joins       how the parts come together
     * @param tasks       what to do
     * @param amounts     how much of what is cut, added, bent in all
     * @param weights     weights that go in
     * @param reading     how the predicted angles are read, if that is known
     * @param wanted      what was wanted of it, with tolerances; empty in a plan kept by a program that did not say
     * @param predicted   what it should measure
     * @param uncertainty standard uncertainty of that
     * @param miss        distance from the target, in tolerances
     */
    record Club(String name, Map<String, String> build, Joins joins, List<Task> tasks, Map<String, Double> amounts,
                List<WeightIn> weights, Optional<AngleReading> reading, Map<Quantity, Wanted> wanted,
                Map<Quantity, Double> predicted, Map<Quantity, Double> uncertainty, double miss) {

        Club {
            build = Collections.unmodifiableMap(new TreeMap<>(build));
            tasks = List.copyOf(tasks);
            wanted = byQuantity(wanted);
            amounts = Collections.unmodifiableMap(new TreeMap<>(amounts));
            weights = List.copyOf(weights);
            predicted = byQuantity(predicted);
            uncertainty = byQuantity(uncertainty);
        }

        /** What to do, in bench words. */
        List<String> steps() {
            return tasks.stream().map(Task::words).toList();
        }

        /** Whether it names neither head nor shaft, as the plan of a new grip: then it is for a club that keeps both. */
        boolean saysNoParts() {
            return !build.containsKey("head") && !build.containsKey("shaft");
        }

        /** The same with everything that it says nothing of as the club has it. */
        Club keeping(Map<String, String> has) {
            Map<String, String> whole = new TreeMap<>(build);
            List.of("head", "shaft", "sleeve", "setting").stream().filter(has::containsKey)
                .forEach(part -> whole.putIfAbsent(part, has.get(part)));
            return new Club(name, whole, joins, tasks, amounts, weights, reading, wanted, predicted, uncertainty, miss);
        }

        private static <V> Map<Quantity, V> byQuantity(Map<Quantity, V> values) {
            Map<Quantity, V> copy = new EnumMap<>(Quantity.class);
            copy.putAll(values);
            return Collections.unmodifiableMap(copy);
        }

        /** From an option of an answer. */
        static Club of(JobPlanning.PlannedClub planned) {
            Ranked option = planned.option();
            List<Step> steps = option.plan().steps();
            Map<String, Double> amounts = new TreeMap<>();
            List<WeightIn> weights = new ArrayList<>();
            for (Step step : steps) {
                step.amounts().forEach((what, amount) -> amounts.merge(what, Json.rounded(amount), Double::sum));
                double more = step.amounts().getOrDefault("weightG", step.amounts().getOrDefault("tipWeightG", 0.0));
                step.parts().forEach(tag -> weights.add(new WeightIn(tag, Json.rounded(more))));
            }
            return new Club(planned.name(), build(planned), joins(option), steps.stream().map(Task::of).toList(), amounts,
                weights, planned.reading(), planned.wanted(), option.predicted(), option.uncertainty(), option.miss());
        }

        private static Map<String, String> build(JobPlanning.PlannedClub planned) {
            Ranked option = planned.option();
            Map<String, String> build = new TreeMap<>(Map.of("head", option.head().tag(), "shaft", option.shaft().tag()));
            option.sleeve().map(Sleeve::name).ifPresent(sleeve -> build.put("sleeve", sleeve));
            option.setting().ifPresent(setting -> build.put("setting", setting));
            planned.grip().ifPresentOrElse(grip -> build.put("grip", grip.tag()), () -> {
                boolean ownShaft = option.shaft().tag().equals(planned.inHand().get("shaft"));
                if (!ownShaft && !joins(option).anyGrip()) {
                    option.shaft().gripOn().ifPresent(grip -> build.put("grip", grip));
                }
            });
            planned.tapeLayers().ifPresent(layers -> build.put("tape_layers", PlainNumber.text(layers)));
            return build;
        }

        private static Joins joins(Ranked option) {
            List<Step> steps = option.plan().steps();
            List<Step> pulls = steps.stream().filter(step -> step.kind() == StepKind.PULL_GRAPHITE
                || step.kind() == StepKind.PULL_STEEL).toList();
            boolean bonds = steps.stream().anyMatch(step -> step.kind() == StepKind.BOND);
            boolean freed = option.sleeve().isPresent() && pulls.stream().anyMatch(step ->
                step.words().matches(".*from sleeve \\Q%s\\E[,.].*".formatted(option.sleeve().get().name())));
            return new Joins(option.sleeve().isPresent() && bonds && !freed, !pulls.isEmpty(),
                steps.stream().anyMatch(step -> step.kind() == StepKind.REGRIP && step.words().startsWith(ANY_GRIP)));
        }
    }

    /** What to do, the club's name before each step where there are several. */
    List<String> steps() {
        List<String> steps = new ArrayList<>();
        clubs.forEach(club -> club.steps().forEach(step -> steps.add(clubs.size() > 1 ? club.name() + ": " + step : step)));
        return steps;
    }

    /** The fact a job keeps it under. */
    Map<String, String> facts() {
        return Map.of(FACT, JobPlanJson.write(this));
    }

    /** The plan a job has, if it has one. */
    static Optional<JobPlan> read(State job) {
        return job.fact(FACT).map(JobPlanJson::read);
    }
}
