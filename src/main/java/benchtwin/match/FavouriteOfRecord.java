package benchtwin.match;

import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.ClubRow;
import benchtwin.club.FrequencyReading;
import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.HeadAngles;
import benchtwin.club.Inventory;
import benchtwin.club.LengthMethod;
import benchtwin.club.Port;
import benchtwin.club.Quantity;
import benchtwin.club.RecordedClub;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.measure.Reading;
import benchtwin.mechanics.Assemblies;
import benchtwin.mechanics.Assembly;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.GripFactors;
import benchtwin.mechanics.MechanicsDefaults;
import benchtwin.mechanics.RulesLength;
import benchtwin.mechanics.Setup;
import benchtwin.mechanics.SleeveSettings;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Finds what a twin should be from a recorded club: its last sound readings, and its parts. */
public final class FavouriteOfRecord {

    /** Said of a favourite whose own model cannot be compared with what it measured. */
    static final String NOTHING_CARRIED =
        "the old club's parts are not all on record, so nothing the model misses is carried over";

    private final Inventory inventory;
    private final Tolerances tolerances;
    private Assemblies assemblies;
    private final List<String> notes = new ArrayList<>();

    private FavouriteOfRecord(Inventory inventory, Tolerances tolerances) {
        this.inventory = inventory;
        this.tolerances = tolerances;
    }

    /**
     * The favourite of a recorded club.
     * @param club       the club; its newest row before damage is the target
     * @param inventory  where its parts are looked up
     * @param tolerances tolerances and weights
     * @return the favourite
     * @throws NothingToMatch when the record holds no sound row, or a sound row without a single reading
     */
    public static Favourite of(RecordedClub club, Inventory inventory, Tolerances tolerances) throws NothingToMatch {
        return new FavouriteOfRecord(inventory, tolerances).find(club);
    }

    /** The record has nothing a twin could be made of; the message says what is missing. */
    public static final class NothingToMatch extends Exception {
        private static final long serialVersionUID = 1;

        NothingToMatch(String message) {
            super(message);
        }
    }

    private Favourite find(RecordedClub club) throws NothingToMatch {
        ClubRow row = club.lastSound().orElseThrow(() -> new NothingToMatch(
            "club %s has no reading from before it was damaged; a twin needs one".formatted(club.tag())));
        Optional<Head> head = part("head", row.head(), inventory::head);
        Optional<Shaft> shaft = part("shaft", row.shaft(), inventory::shaft);
        Optional<Grip> grip = part("grip", row.grip(), inventory::grip);
        Optional<String> sleeveName = row.sleeve().or(() -> shaft.flatMap(Shaft::sleeveOn));
        Optional<Sleeve> sleeve = part("sleeve", sleeveName, inventory::sleeve);
        FrequencyCondition condition = condition(row.frequency());
        assemblies = new Assemblies(GripFactors.learn(inventory.shafts())
            .of(row.frequency().flatMap(f -> f.cpm().taken().gauge())));
        EnumMap<Quantity, Reading> measured = new EnumMap<>(Quantity.class);
        row.angles().ifPresent(angles -> angles(angles, measured));
        length(row, measured);
        row.swingWeightPoints().ifPresent(r -> measured.put(Quantity.SWING_WEIGHT, r));
        row.frequency().ifPresent(r -> measured.put(Quantity.FREQUENCY, r.cpm()));
        row.totalMassG().ifPresent(r -> measured.put(Quantity.TOTAL_MASS, r));
        AngleReading reading = row.angles().map(HeadAngles::reading)
            .or(() -> head.map(h -> h.angles().reading()))
            .orElse(club.category().usualReading());
        missing(club, reading, measured);
        Optional<OldClub> old = old(row, head, shaft, sleeve, grip, condition, measured);
        shaft.flatMap(Shaft::torqueDeg).ifPresent(torque -> measured.put(Quantity.TORQUE, torque));
        return new Favourite(club.tag(), Optional.of(club.player()), club.category(), club.number(), club.hand(), head,
            shaft, sleeve, row.setting(), grip, row.masses(), target(club, reading, measured), condition,
            reading, old, assemblies, notes);
    }

    private <T> Optional<T> part(String kind, Optional<String> tag, Function<String, Optional<T>> find) {
        Optional<T> part = tag.flatMap(find);
        if (tag.isPresent() && part.isEmpty()) {
            notes.add("%s %s of the club is not in the files".formatted(kind, tag.get()));
        }
        return part;
    }

    private static void angles(HeadAngles angles, Map<Quantity, Reading> measured) {
        angles.loftDeg().ifPresent(r -> measured.put(Quantity.LOFT, r));
        angles.lieDeg().ifPresent(r -> measured.put(Quantity.LIE, r));
        if (angles.reading().isWood()) {
            angles.faceDeg().ifPresent(r -> measured.put(Quantity.FACE, r));
        } else {
            angles.bounceDeg().ifPresent(r -> measured.put(Quantity.BOUNCE, r));
        }
    }

    private FrequencyCondition condition(Optional<FrequencyReading> frequency) {
        if (frequency.isPresent() && frequency.get().clampMm().isEmpty()) {
            notes.add("the clamp of the club's frequency is not recorded: taken as %.0f mm (5 in, default)"
                .formatted(MechanicsDefaults.CLAMP_MM));
        }
        return frequency.map(f -> new FrequencyCondition(f.clampMm().orElse(MechanicsDefaults.CLAMP_MM), f.overGrip()))
            .orElse(FrequencyCondition.BARE);
    }

    /** Every length is carried to the axis before it is compared. */
    private void length(ClubRow row, Map<Quantity, Reading> measured) {
        if (row.lengthMm().isEmpty()) {
            return;
        }
        Reading length = row.lengthMm().get();
        if (row.lengthMethod() == LengthMethod.RULES60) {
            Reading lie = measured.get(Quantity.LIE);
            if (lie == null) {
                notes.add("its length was taken by the 60-degree procedure and cannot be carried to the axis without a lie");
                return;
            }
            double centre = RulesLength.soleCentreMm(row.angles().orElseThrow().reading().isWood());
            double more = RulesLength.shorterByMm(lie.value(), centre, RulesLength.SOLE_RADIUS_MM);
            length = new Reading(length.value() + more, length.standardUncertainty(), length.taken());
        }
        measured.put(Quantity.LENGTH, length);
    }

    private void missing(RecordedClub club, AngleReading reading, Map<Quantity, Reading> measured) {
        List<Quantity> usual = new ArrayList<>(List.of(Quantity.LOFT, Quantity.LIE,
            reading.isWood() ? Quantity.FACE : Quantity.BOUNCE, Quantity.LENGTH, Quantity.SWING_WEIGHT,
            Quantity.FREQUENCY, Quantity.TOTAL_MASS));
        if (club.category() == Category.PUTTER || club.category() == Category.HYBRID) {
            usual.remove(Quantity.BOUNCE);
        }
        usual.removeIf(measured::containsKey);
        for (Quantity quantity : usual) {
            notes.add("%s was never read on club %s: it cannot be matched, the rest is"
                .formatted(quantity.word().replace('-', ' '), club.tag()));
        }
    }

    private Optional<OldClub> old(ClubRow row, Optional<Head> head, Optional<Shaft> shaft, Optional<Sleeve> sleeve,
                                  Optional<Grip> grip, FrequencyCondition condition, Map<Quantity, Reading> measured) {
        if (head.isEmpty() || shaft.isEmpty() || head.get().seat().isPresent() && sleeve.isEmpty()) {
            notes.add(NOTHING_CARRIED);
            return Optional.empty();
        }
        Optional<Sleeve> fitted = head.get().seat().isPresent() ? sleeve : Optional.empty();
        Assembly assembly = assemblies.of(head.get(), shaft.get(), fitted, grip);
        Setup.Aim aim = fitted.flatMap(s -> row.setting().flatMap(label ->
            SleeveSettings.aim(s, head.get().hand(), head.get().seat().get().readAtSetting(), label)))
            .orElse(Setup.AS_READ);
        double added = head.get().ports().stream().mapToDouble(Port::massG).sum() + row.masses().tapeG()
            + row.masses().meltG();
        Setup setup = new Setup(0, 0, 0, 0, row.masses().tapeLayers(), added, row.masses().tipWeightG(), aim);
        return Optional.of(new OldClub(assembly, setup, condition, measured));
    }

    private Target target(RecordedClub club, AngleReading reading, Map<Quantity, Reading> measured)
        throws NothingToMatch {
        EnumMap<Quantity, Wanted> wanted = new EnumMap<>(Quantity.class);
        measured.forEach((quantity, r) -> wanted.put(quantity, tolerances.wanted(quantity, r.value())));
        if (wanted.values().stream().noneMatch(w -> w.weight() > 0)) {
            throw new NothingToMatch(
                "club %s has no reading that a twin could be matched to".formatted(club.tag()));
        }
        return new Target(reading, wanted);
    }
}
