package benchtwin.sets;

import benchtwin.club.GroupRule;
import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.Quantity;
import benchtwin.club.SetTargets;
import benchtwin.club.Shaft;
import benchtwin.club.Target;
import benchtwin.club.WantedClub;
import benchtwin.match.SlotPlan;
import benchtwin.mechanics.GripFactor;
import benchtwin.mechanics.GripFactors;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/**
 * Builds the numbers a plan of sets is searched in: slots, groups, and for every slot the pairs worth working out with what
 * each costs. Slots are worked out side by side; the result does not depend on how many at a time.
 */
final class SetTables {

    /** Millionths of a squared tolerance. */
    static final double MILLION = 1e6;
    /** What a club of the least priority weighs when it is left out: more than any plan costs. */
    private static final long EMPTY = 100_000_000_000L;
    /** A pair is given up when it costs more than this or than twice its estimate, squared tolerances. */
    private static final double HOPELESS = 6;

    private final SetRequest request;
    private final Inventory inventory;
    private final GripFactor factor;
    private final List<WantedSlot> slots;
    private final List<List<Integer>> groups = new ArrayList<>();
    /** By slot: pairs worked out so far. */
    private final List<Set<OptionChoice.Pair>> known = new ArrayList<>();
    /** Options with a quantity beyond its tolerance. */
    private final Set<Option> out = ConcurrentHashMap.newKeySet();
    private final Map<String, Integer> headIndex = new HashMap<>();
    private final Map<String, Integer> shaftIndex = new HashMap<>();

    /**
     * Looks through the stock for every club.
     * @param request what is asked
     */
    SetTables(SetRequest request) {
        this.request = request;
        this.inventory = request.inventory().without(request.banned());
        SetTargets targets = request.targets();
        DecidedParts pins = new DecidedParts(request.pins());
        GripChoice grips = new GripChoice(request.inventory(), request.grip());
        this.factor = GripFactors.learn(inventory.shafts()).of(Optional.empty());
        List<WantedClub> clubs = targets.clubs().stream().filter(club -> targets.targetOf(club).isPresent()).toList();
        for (int h = 0; h < inventory.heads().size(); h++) {
            headIndex.put(inventory.heads().get(h).tag(), h);
        }
        for (int s = 0; s < inventory.shafts().size(); s++) {
            shaftIndex.put(inventory.shafts().get(s).tag(), s);
        }
        this.slots = IntStream.range(0, clubs.size()).parallel().mapToObj(k -> {
            WantedClub club = clubs.get(k);
            Target target = targets.targetOf(club).orElseThrow();
            return new WantedSlot(k, club, target, grips.of(club), inventory, request.shop(), factor, pins);
        }).toList();
        Map<List<String>, List<Integer>> byGroup = new LinkedHashMap<>();
        for (WantedSlot slot : slots) {
            List<String> key = slot.club().group().isPresent() ? List.of(slot.club().player(), slot.club().group().get())
                : List.of(slot.club().player(), "", slot.club().club());
            byGroup.computeIfAbsent(key, k -> new ArrayList<>()).add(slot.index());
        }
        groups.addAll(byGroup.values());
        slots.forEach(slot -> known.add(new HashSet<>()));
    }

    List<WantedSlot> slots() {
        return slots;
    }

    GripFactor factor() {
        return factor;
    }

    Inventory inventory() {
        return inventory;
    }

    Head head(int index) {
        return inventory.heads().get(index);
    }

    Shaft shaft(int index) {
        return inventory.shafts().get(index);
    }

    /**
     * Works the first options out.
     * @return the problem in whole numbers
     */
    SetModel model() {
        // a pinned club weighs more than all others, so it is built before them
        long all = slots.stream().mapToLong(SetTables::emptyCost).sum();
        long[] empty = slots.stream().mapToLong(slot -> slot.isPinned() ? all + EMPTY : emptyCost(slot)).toArray();
        List<List<Option>> none = slots.stream().map(slot -> List.<Option>of()).toList();
        SetModel bare = new SetModel(groups.stream().map(this::group).toList(), empty,
            models(inventory.heads().stream().map(Head::model).toList()),
            models(inventory.shafts().stream().map(Shaft::model).toList()), none);
        return wider(bare, choose());
    }

    private List<Set<OptionChoice.Pair>> choose() {
        List<Set<OptionChoice.Pair>> chosen = new ArrayList<>();
        slots.forEach(slot -> chosen.add(Set.of()));
        List<List<Set<OptionChoice.Pair>>> ofGroups = groups.parallelStream()
            .map(members -> new OptionChoice(members.stream().map(slots::get).toList(), sameModels(members)).choose()).toList();
        for (int g = 0; g < groups.size(); g++) {
            for (int i = 0; i < groups.get(g).size(); i++) {
                chosen.set(groups.get(g).get(i), ofGroups.get(g).get(i));
            }
        }
        return chosen;
    }

    /**
     * The same problem with more options.
     * @param model  the problem so far
     * @param chosen by slot: pairs to work out; those known are passed over
     * @return the model itself when there is nothing new
     */
    SetModel wider(SetModel model, List<Set<OptionChoice.Pair>> chosen) {
        List<List<Option>> fresh = slots.parallelStream()
            .map(slot -> options(slot, chosen.get(slot.index()))).toList();
        boolean any = false;
        List<List<Option>> options = new ArrayList<>();
        for (WantedSlot slot : slots) {
            known.get(slot.index()).addAll(chosen.get(slot.index()));
            List<Option> all = new ArrayList<>(model.options(slot.index()));
            all.addAll(fresh.get(slot.index()));
            all.sort(Comparator.comparingInt(Option::head).thenComparingInt(Option::shaft));
            options.add(all);
            any |= !fresh.get(slot.index()).isEmpty();
        }
        return any ? model.withOptions(options) : model;
    }

    boolean isKnown(WantedSlot slot, OptionChoice.Pair pair) {
        return known.get(slot.index()).contains(pair);
    }

    int index(Head head) {
        return headIndex.get(head.tag());
    }

    int index(Shaft shaft) {
        return shaftIndex.get(shaft.tag());
    }

    /** Pairs that fit by their rough costs, over all slots. */
    long pairs() {
        long pairs = 0;
        for (WantedSlot slot : slots) {
            for (int h = 0; h < slot.plans().heads().size(); h++) {
                for (int s = 0; s < slot.plans().shafts().size(); s++) {
                    pairs += Double.isInfinite(slot.roughCost(h, s)) ? 0 : 1;
                }
            }
        }
        return pairs;
    }

    /**
     * Whether a built club would be beyond a tolerance.
     * @param option one of the model's
     * @return true when a quantity that ranks is predicted beyond
     */
    boolean isOut(Option option) {
        return out.contains(option);
    }

    /** What a club weighs that is left out, by its priority. */
    private static long emptyCost(WantedSlot slot) {
        return EMPTY * (WantedClub.LAST_PRIORITY + 1 - slot.club().priority());
    }

    private static int[] models(List<String> names) {
        Map<String, Integer> numbers = new HashMap<>();
        return names.stream().mapToInt(name -> numbers.computeIfAbsent(name, n -> numbers.size())).toArray();
    }

    private boolean sameModels(List<Integer> group) {
        return group.size() > 1 && slots.get(group.get(0)).club().groupRule() == GroupRule.MUST;
    }

    private SlotGroup group(List<Integer> members) {
        List<WantedSlot> clubs = members.stream().map(slots::get).toList();
        long[] weights = new long[Residual.COUNT];
        if (clubs.stream().allMatch(slot -> slot.counts(Quantity.FREQUENCY))) {
            weights[Residual.FREQUENCY.ordinal()] = 1;
        }
        if (clubs.stream().map(WantedSlot::swing).distinct().count() == 1 && clubs.get(0).swing().isPresent()) {
            weights[Residual.SWING.ordinal()] = 1;
        }
        weights[Residual.SHAFT_MASS.ordinal()] = 1;
        for (Residual residual : Residual.values()) {
            if (members.size() < 2 || request.alikeness().of(residual) == 0) {
                weights[residual.ordinal()] = 0;
            }
        }
        boolean same = sameModels(members);
        long modelCost = same || members.size() < 2 ? 0 : Math.round(request.alikeness().model() * MILLION);
        return new SlotGroup(members, same, weights, modelCost);
    }

    private List<Option> options(WantedSlot slot, Set<OptionChoice.Pair> chosen) {
        List<Head> heads = slot.plans().heads();
        List<Shaft> shafts = slot.plans().shafts();
        List<Option> options = new ArrayList<>();
        for (OptionChoice.Pair pair : chosen) {
            if (isKnown(slot, pair)) {
                continue;
            }
            double below = Math.max(HOPELESS, 2 * slot.roughCost(pair.head(), pair.shaft()));
            slot.plans().plan(heads.get(pair.head()), shafts.get(pair.shaft()), below).ifPresent(plan -> {
                Option option = option(slot, plan);
                options.add(option);
                if (slot.isOut(plan)) {
                    out.add(option);
                }
            });
        }
        return options;
    }

    /**
     * A plan in whole numbers.
     * @param slot the club
     * @param plan a plan for it
     * @return the option
     */
    Option option(WantedSlot slot, SlotPlan plan) {
        int[] residuals = Arrays.stream(Residual.values())
            .mapToInt(residual -> request.alikeness().scaled(residual, slot.tolerancesOff(residual, plan))).toArray();
        return new Option(slot.index(), headIndex.get(plan.head().tag()), shaftIndex.get(plan.shaft().tag()),
            Math.round(plan.cost() * MILLION), residuals[Residual.FREQUENCY.ordinal()], residuals[Residual.SWING.ordinal()],
            residuals[Residual.SHAFT_MASS.ordinal()]);
    }

    /**
     * The plan behind an option, worked out again.
     * @param option one of the model's
     * @return the plan
     */
    SlotPlan plan(Option option) {
        return slots.get(option.slot()).plans().plan(head(option.head()), shaft(option.shaft()), Double.POSITIVE_INFINITY)
            .orElseThrow();
    }
}
