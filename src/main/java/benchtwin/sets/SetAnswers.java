package benchtwin.sets;

import benchtwin.club.Quantity;
import benchtwin.club.SetTargets;
import benchtwin.club.WantedClub;
import benchtwin.match.Ranked;
import benchtwin.match.SlotPlan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** Turns a choice of parts into what a person reads: exact plans, figures, reasons. */
final class SetAnswers {

    private final SetRequest request;
    private final SetTables tables;
    private final SetModel model;
    private final Option[] chosen;
    private final SlotPlan[] plans;
    private final Ranked[] builds;
    private final double jointGain;

    /**
     * Plans every chosen pair exactly, groups jointly, and puts each plan into words once.
     * @param request what was asked
     * @param tables  the slots
     * @param model   the problem in whole numbers
     * @param chosen  by slot; null for one left out
     */
    SetAnswers(SetRequest request, SetTables tables, SetModel model, Option[] chosen) {
        this.request = request;
        this.tables = tables;
        this.model = model;
        this.chosen = chosen.clone();
        this.plans = new SlotPlan[chosen.length];
        this.builds = new Ranked[chosen.length];
        // added up in order, so that the sum is the same however many groups are planned at a time
        this.jointGain = model.groups().parallelStream().map(this::plan).toList().stream().mapToDouble(gain -> gain).sum();
    }

    private double plan(SlotGroup group) {
        List<Integer> built = group.slots().stream().filter(slot -> chosen[slot] != null).toList();
        JointPass.Better better = new JointPass(request.alikeness(), group, built.stream().map(tables.slots()::get).toList(),
            built.stream().map(slot -> tables.plan(chosen[slot])).toList()).run();
        for (int i = 0; i < built.size(); i++) {
            int slot = built.get(i);
            plans[slot] = better.plans().get(i);
            builds[slot] = tables.slots().get(slot).plans().explained(plans[slot]);
        }
        return better.gain();
    }

    double jointGain() {
        return jointGain;
    }

    /** What every player gets. */
    List<PlayerSet> players() {
        Map<String, WantedClub> takenBy = new HashMap<>();
        Map<WantedClub, WantedSlot> slotOf = new HashMap<>();
        for (WantedSlot slot : tables.slots()) {
            slotOf.put(slot.club(), slot);
            if (chosen[slot.index()] != null) {
                takenBy.put(plans[slot.index()].head().tag(), slot.club());
                takenBy.put(plans[slot.index()].shaft().tag(), slot.club());
            }
        }
        UnbuiltReasons reasons = new UnbuiltReasons(tables.inventory(), takenBy);
        SetTargets targets = request.targets();
        List<PlayerSet> players = new ArrayList<>();
        for (String player : targets.players()) {
            List<ClubOfSet> clubs = targets.of(player).stream().map(club -> club(club, slotOf.get(club), reasons)).toList();
            players.add(new PlayerSet(player, clubs, figures(player)));
        }
        return players;
    }

    private ClubOfSet club(WantedClub club, WantedSlot slot, UnbuiltReasons reasons) {
        if (slot == null) {
            return new ClubOfSet(club, Optional.empty(), Optional.empty(),
                Optional.of(new Unbuilt("nothing is wanted of it that ranks", Optional.empty())), false);
        }
        Optional<Ranked> build = Optional.ofNullable(builds[slot.index()]);
        Optional<Unbuilt> unbuilt = build.isPresent() ? Optional.empty()
            : Optional.of(reasons.of(slot, model.options(slot.index()), request.shop(), tables.factor()));
        return new ClubOfSet(club, Optional.of(slot.target()), build, unbuilt, slot.isPinned());
    }

    private List<GroupFigures> figures(String player) {
        return model.groups().stream().filter(group -> group.slots().size() > 1)
            .filter(group -> tables.slots().get(group.slots().get(0)).club().player().equals(player)).map(this::figures).toList();
    }

    private GroupFigures figures(SlotGroup group) {
        List<WantedSlot> built = group.slots().stream().filter(slot -> plans[slot] != null).map(tables.slots()::get).toList();
        WantedClub first = tables.slots().get(group.slots().get(0)).club();
        Optional<Quantity> swing = built.isEmpty() ? Optional.empty() : built.get(0).swing();
        boolean oneSwing = swing.isPresent() && built.stream().allMatch(slot -> slot.swing().equals(swing));
        return new GroupFigures(first.group().orElse(first.club()), first.groupRule(), built.size(),
            built.stream().map(slot -> plans[slot.index()].head().model()).distinct().sorted().toList(),
            built.stream().map(slot -> plans[slot.index()].shaft().model()).distinct().sorted().toList(),
            Spread.of(values(built, slot -> off(slot, Quantity.FREQUENCY))), oneSwing ? swing : Optional.empty(),
            Spread.of(values(built, slot -> oneSwing ? off(slot, swing.get()) : Double.NaN)),
            Spread.of(values(built, slot -> plans[slot.index()].shaft().massG().orElseThrow().value())));
    }

    private static double[] values(List<WantedSlot> slots, ToDoubleFunction<WantedSlot> value) {
        return slots.stream().mapToDouble(value).filter(v -> !Double.isNaN(v)).toArray();
    }

    private double off(WantedSlot slot, Quantity quantity) {
        return slot.target().of(quantity).map(w -> plans[slot.index()].value(quantity) - w.value()).orElse(Double.NaN);
    }

    /** Sleeves and weights are counted, not chosen: what all plans together take more of than there is. */
    List<String> shortages() {
        Map<String, Integer> sleeves = new TreeMap<>();
        for (SlotPlan plan : plans) {
            if (plan != null) {
                plan.freshSleeve().ifPresent(sleeve -> sleeves.merge(sleeve.name(), 1, Integer::sum));
            }
        }
        List<String> shortages = new ArrayList<>();
        sleeves.forEach((name, used) -> tables.inventory().sleeve(name).filter(s -> s.count().isPresent()
            && s.count().getAsInt() < used).ifPresent(s -> shortages.add(
            "the plans take %d sleeves %s from the drawer and there are %d: pull some, or order them".formatted(used, name,
                s.count().getAsInt()))));
        Map<String, Integer> weights = new TreeMap<>();
        for (SlotPlan plan : plans) {
            if (plan != null) {
                plan.weights().forEach(weight -> weights.merge(weight.tag(), 1, Integer::sum));
            }
        }
        tables.inventory().weights().stream().filter(w -> weights.getOrDefault(w.tag(), 0) > w.count()).forEach(w ->
            shortages.add("the plans take %d weights %s and there are %d: use lead tape for some, or order them".formatted(
                weights.get(w.tag()), w.tag(), w.count())));
        return shortages;
    }

    /** What each rule costs each group, dearest first. */
    List<CostLine> why() {
        List<CostLine> lines = new ArrayList<>();
        for (SlotGroup group : model.groups()) {
            WantedClub first = tables.slots().get(group.slots().get(0)).club();
            String name = first.group().orElse(first.club());
            List<Ranked> built = group.slots().stream().map(slot -> builds[slot]).filter(Objects::nonNull).toList();
            add(lines, first, name, "distance from target", built.stream().mapToDouble(b -> b.miss() * b.miss()).sum());
            add(lines, first, name, "work and metal used", built.stream().mapToDouble(Ranked::effort).sum());
            for (Residual residual : Residual.values()) {
                if (group.weights()[residual.ordinal()] > 0) {
                    add(lines, first, name, words(residual), request.alikeness().of(residual) * squares(group, residual));
                }
            }
            Option[] options = group.slots().stream().map(slot -> chosen[slot]).toArray(Option[]::new);
            add(lines, first, name, "further models in the group",
                new GroupPlan(group, options).modelCost(model) / SetTables.MILLION);
        }
        lines.sort((a, b) -> Double.compare(b.cost(), a.cost()));
        return lines;
    }

    private static void add(List<CostLine> lines, WantedClub first, String group, String rule, double cost) {
        if (cost > 0) {
            lines.add(new CostLine(first.player(), group, rule, cost));
        }
    }

    private double squares(SlotGroup group, Residual residual) {
        return Spread.squares(group.slots().stream().filter(slot -> plans[slot] != null)
            .mapToDouble(slot -> tables.slots().get(slot).tolerancesOff(residual, plans[slot])).toArray());
    }

    private static String words(Residual residual) {
        return switch (residual) {
            case FREQUENCY -> "frequencies unlike about their line";
            case SWING -> "swing unlike about its line";
            case SHAFT_MASS -> "raw shafts unlike in mass";
        };
    }
}
