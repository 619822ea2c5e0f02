package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.club.Target;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/** Finds what cannot reach what was asked by itself, and how near it comes. */
final class Shortfalls {

    /** Something that is not usually done for it is named when it leaves less than this of the distance, squared. Ours. */
    private static final double WORTH_SAYING = 0.7;

    private final ChangeRequest request;
    private final Target target;
    private final Map<Quantity, Double> now;
    private final WhyNot whyNot;

    Shortfalls(ChangeRequest request, Target target, Map<Quantity, Double> now, WhyNot whyNot) {
        this.request = request;
        this.target = target;
        this.now = now;
        this.whyNot = whyNot;
    }

    /**
     * The list.
     * @param found    every plan
     * @param reaching the ones that reach; what does so by itself needs no excuse
     * @param way      turns a plan into a way to show
     * @return in the order of the levers
     */
    List<ChangeAnswer.Shortfall> of(List<FoundWay> found, List<FoundWay> reaching, Function<FoundWay, Way> way) {
        Set<Lever> levers = new TreeSet<>(List.of(Lever.values()));
        levers.removeIf(lever -> reaching.stream().anyMatch(f -> isAlone(f, lever)));
        List<ChangeAnswer.Shortfall> list = new ArrayList<>();
        for (Lever lever : levers) {
            Optional<FoundWay> nearest = found.stream().filter(f -> isAlone(f, lever))
                .min(Comparator.comparingDouble(this::askedMiss).thenComparing(FoundWay.ORDER));
            boolean asked = lever == Lever.GRIP && request.asksForAGrip();
            boolean comesNearer = nearest.isPresent() && askedMiss(nearest.get()) < askedMissNow() * WORTH_SAYING;
            if (asked || lever.isUsedFor(request.wished().keySet()) || comesNearer) {
                boolean onlyTheGrip = !asked && nearest.filter(f -> f.missing().isEmpty()).isPresent();
                list.add(new ChangeAnswer.Shortfall(lever, nearest.filter(f -> comesNearer || asked).map(way),
                    nearest.map(FoundWay::missing).orElse(Map.of()),
                    onlyTheGrip ? "it would do; only the grip asked for is not there" : whyNot.text(lever)));
            }
        }
        return List.copyOf(list);
    }

    /** Whether a plan changes this and nothing else, a wished grip aside. */
    private boolean isAlone(FoundWay one, Lever lever) {
        Set<Lever> alone = EnumSet.of(lever);
        if (request.asksForAGrip()) {
            alone.add(Lever.GRIP);
        }
        return one.changed().equals(alone);
    }

    private double askedMiss(FoundWay one) {
        return one.missing().entrySet().stream()
            .mapToDouble(e -> square(e.getValue() / target.of(e.getKey()).orElseThrow().tolerance())).sum();
    }

    private double askedMissNow() {
        return request.wished().keySet().stream()
            .mapToDouble(q -> square(target.of(q).orElseThrow().deviation(now.get(q)))).sum();
    }

    private static double square(double value) {
        return value * value;
    }
}
