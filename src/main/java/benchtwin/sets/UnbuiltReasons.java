package benchtwin.sets;

import benchtwin.club.AddedMasses;
import benchtwin.club.Category;
import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.WantedClub;
import benchtwin.match.Favourite;
import benchtwin.match.Ranked;
import benchtwin.match.SlotEstimates;
import benchtwin.match.ShopSettings;
import benchtwin.match.SlotPlan;
import benchtwin.match.SlotPlans;
import benchtwin.mechanics.Assemblies;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.GripFactor;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** Says why a club is left out of a plan, and finds what would stand in for it. */
final class UnbuiltReasons {

    /** Pairs that are worked out for a substitute, best estimates first. */
    private static final int SUBSTITUTES_TRIED = 12;
    /** A build further off than this, in tolerances, stands in for nothing. */
    private static final double FAR = 5;
    /** Names that are listed before the rest is only counted. */
    private static final int NAMED = 3;

    private final Inventory inventory;
    private final Map<String, WantedClub> takenBy;
    private final Inventory left;

    /**
     * @param inventory the stock the plan was made from
     * @param takenBy   the clubs that got each part, by tag
     */
    UnbuiltReasons(Inventory inventory, Map<String, WantedClub> takenBy) {
        this.inventory = inventory;
        this.takenBy = takenBy;
        this.left = inventory.without(takenBy.keySet());
    }

    /**
     * Why a club is not built.
     * @param slot    the club
     * @param options what could have filled it
     * @param shop    what a person can set
     * @param factor  how the machine reads over a grip
     * @return reason and substitute
     */
    Unbuilt of(WantedSlot slot, List<Option> options, ShopSettings shop, GripFactor factor) {
        return new Unbuilt(reason(slot, options), substitute(slot, shop, factor));
    }

    private String reason(WantedSlot slot, List<Option> options) {
        WantedClub club = slot.club();
        List<Head> ofKind = inventory.heads().stream().filter(head -> head.category() == club.category()
            && head.hand() == club.hand() && isNumber(head, club)).toList();
        if (ofKind.isEmpty()) {
            return "no %s in stock".formatted(kind(club));
        }
        List<Head> fit = slot.plans().heads();
        if (fit.isEmpty()) {
            return "%s in stock, none to be had: %s".formatted(counted(ofKind.size(), kind(club)), ruledOut(slot));
        }
        if (options.isEmpty()) {
            return "%s, but no shaft that is left goes with %s".formatted(counted(fit.size(), kind(club)),
                fit.size() == 1 ? "it" : "them");
        }
        List<String> holders = fit.stream().map(head -> takenBy.get(head.tag())).filter(Objects::nonNull)
            .map(other -> "%s's %s".formatted(other.player(), other.club())).distinct().toList();
        if (holders.size() >= fit.stream().map(Head::tag).distinct().count()) {
            return "%s: went to %s".formatted(counted(fit.size(), kind(club)), named(holders));
        }
        return slot.club().group().isPresent() ? "nothing that is left shares the models of its group"
            : "every pair that would serve has a part another club needs more";
    }

    private static boolean isNumber(Head head, WantedClub club) {
        return club.number().isEmpty() || head.number().isEmpty() || club.number().get().equalsIgnoreCase(head.number().get());
    }

    private static String kind(WantedClub club) {
        String number = club.number().filter(n -> club.category() != Category.DRIVER && club.category() != Category.PUTTER)
            .map(n -> n + " ").orElse("");
        return "%s-handed %s%s head".formatted(club.hand().word(), number, club.category().word());
    }

    private static String counted(int count, String what) {
        return "%d %s%s".formatted(count, what, count == 1 ? "" : "s");
    }

    private static String ruledOut(WantedSlot slot) {
        return slot.plans().ruledOut().entrySet().stream().filter(entry -> entry.getKey().startsWith("head: "))
            .filter(entry -> !entry.getKey().contains("category") && !entry.getKey().contains("hand")
                && !entry.getKey().contains("number"))
            .sorted(Map.Entry.comparingByKey())
            .map(entry -> "%d %s".formatted(entry.getValue(), entry.getKey().substring("head: ".length())))
            .collect(Collectors.joining(", "));
    }

    private static String named(List<String> names) {
        String first = names.stream().limit(NAMED).collect(Collectors.joining(", "));
        return names.size() > NAMED ? first + " and %d more".formatted(names.size() - NAMED) : first;
    }

    /** The nearest of what is left, another number of the same kind allowed. */
    private Optional<Ranked> substitute(WantedSlot slot, ShopSettings shop, GripFactor factor) {
        Favourite wanted = slot.plans().wanted();
        Optional<Grip> grip = wanted.grip();
        Favourite anyNumber = new Favourite(wanted.name(), wanted.player(), wanted.category(), Optional.empty(), wanted.hand(),
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), grip, AddedMasses.ONE_LAYER,
            wanted.target(), FrequencyCondition.BARE, wanted.reading(), Optional.empty(), new Assemblies(factor), List.of());
        SlotPlans plans = new SlotPlans(anyNumber, left, shop);
        SlotEstimates estimates = plans.estimates();
        record Pair(int head, int shaft, double cost) {
        }
        List<Pair> pairs = new ArrayList<>();
        for (int h = 0; h < plans.heads().size(); h++) {
            for (int s = 0; s < plans.shafts().size(); s++) {
                if (!Double.isInfinite(estimates.cost(h, s))) {
                    pairs.add(new Pair(h, s, estimates.cost(h, s)));
                }
            }
        }
        return pairs.stream().sorted(Comparator.comparingDouble(Pair::cost)).limit(SUBSTITUTES_TRIED)
            .flatMap(pair -> plans.plan(plans.heads().get(pair.head()), plans.shafts().get(pair.shaft()),
                Double.POSITIVE_INFINITY).stream())
            .min(Comparator.comparingDouble(SlotPlan::cost)).map(plans::explained)
            .filter(build -> build.miss() <= FAR);
    }
}
