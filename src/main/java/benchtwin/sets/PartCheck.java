package benchtwin.sets;

import benchtwin.club.AddedMasses;
import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.Shaft;
import benchtwin.club.Target;
import benchtwin.club.WantedClub;
import benchtwin.match.Favourite;
import benchtwin.match.ShopSettings;
import benchtwin.match.SlotPlans;
import benchtwin.mechanics.Assemblies;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.GripFactors;
import java.util.List;
import java.util.Optional;

/** Says why parts cannot be used for a wanted club, before anything is planned around them. */
public final class PartCheck {

    private final Inventory inventory;
    private final ShopSettings shop;
    private final GripChoice grips;

    /**
     * @param inventory the stock
     * @param shop      what a person can set
     * @param grip      the grip every club gets, if that is decided
     */
    public PartCheck(Inventory inventory, ShopSettings shop, Optional<Grip> grip) {
        this.inventory = inventory;
        this.shop = shop;
        this.grips = new GripChoice(inventory, grip);
    }

    /**
     * Why a head cannot be used.
     * @param club   the wanted club
     * @param target what is wanted of it
     * @param head   any head
     * @return the reason in a few words, or empty when it can
     */
    public Optional<String> whyNot(WantedClub club, Target target, Head head) {
        return reason(plans(club, target, List.of(head), List.of()));
    }

    /**
     * Why a shaft cannot be used.
     * @param club   the wanted club
     * @param target what is wanted of it
     * @param shaft  any shaft
     * @return the reason in a few words, or empty when it can
     */
    public Optional<String> whyNot(WantedClub club, Target target, Shaft shaft) {
        return reason(plans(club, target, List.of(), List.of(shaft)));
    }

    /**
     * Whether two parts that can each be used go together.
     * @param club   the wanted club
     * @param target what is wanted of it
     * @param head   a head that can be used
     * @param shaft  a shaft that can be used
     * @return false when tip and bore, sleeve or length stand against it
     */
    public boolean goTogether(WantedClub club, Target target, Head head, Shaft shaft) {
        return plans(club, target, List.of(head), List.of(shaft)).plan(head, shaft, Double.POSITIVE_INFINITY).isPresent();
    }

    private static Optional<String> reason(SlotPlans plans) {
        return plans.ruledOut().keySet().stream().map(key -> key.substring(key.indexOf(' ') + 1)).findFirst();
    }

    private SlotPlans plans(WantedClub club, Target target, List<Head> heads, List<Shaft> shafts) {
        Favourite wanted = new Favourite(club.club(), Optional.of(club.player()), club.category(), club.number(), club.hand(),
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), grips.of(club), AddedMasses.ONE_LAYER,
            target, FrequencyCondition.BARE, target.reading(), Optional.empty(),
            new Assemblies(GripFactors.learn(inventory.shafts()).of(Optional.empty())), List.of());
        return new SlotPlans(wanted, new Inventory(heads, shafts, inventory.grips(), inventory.sleeves(), inventory.weights(),
            inventory.clubs()), shop);
    }
}
