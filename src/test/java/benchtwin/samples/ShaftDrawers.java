package benchtwin.samples;

import benchtwin.club.Category;
import benchtwin.club.Shaft;
import benchtwin.club.ShaftCondition;
import benchtwin.club.TipKind;
import benchtwin.measure.Units;
import benchtwin.samples.CsvTable.Row;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** The shafts in the rack: new ones, pulled ones, some with a sleeve or a grip still on, some not read to the end. */
final class ShaftDrawers {

    private static final Consumer<ShaftDraft> AS_IT_IS = shaft -> { };
    private static final String QUAD = "quad-335";

    /** Models of which the first whole, new shaft was read on the bare butt and over a grip, to teach bench 1 its factor. */
    private static final List<ShaftLine> READ_BOTH_WAYS = List.of(ShaftLines.BROOK_70_S, ShaftLines.GHYLL_75_S,
        ShaftLines.LINDEN_85_S, ShaftLines.EDDY_95_S, ShaftLines.SILL_105_S, ShaftLines.GHYLL_65_X);
    /** The one of them whose grip was read with an inch more in the clamp. */
    private static final ShaftLine DEEPER = ShaftLines.SILL_105_S;
    /** What bench 1 truly reads over a grip, and how grips differ on it. Invented, near the default. */
    private static final double BENCH_1_OVER_GRIP = 0.978;
    private static final double GRIP_TO_GRIP = 0.002;

    private final Draw draw;
    private final Shelf<Shaft> shelf;
    private final Grips grips;
    private final List<Row> along = new ArrayList<>();
    private final Set<ShaftLine> readBothWays = new HashSet<>();
    private final List<Row> bothWays = new ArrayList<>();

    ShaftDrawers(Draw draw, Shelf<Shaft> shelf, Grips grips) {
        this.draw = draw;
        this.shelf = shelf;
        this.grips = grips;
    }

    /** Fills the rack, with what there is to replace a broken shaft. */
    void fill(BuiltClub harkwell) {
        several(24, ShaftLines.BROOK_60_S, "");
        several(9, ShaftLines.BROOK_60_R, "");
        several(12, ShaftLines.BROOK_50_R, "");
        several(9, ShaftLines.GHYLL_65_S, "");
        for (ShaftLine line : List.of(ShaftLines.BROOK_60_S, ShaftLines.BROOK_60_R, ShaftLines.GHYLL_65_S,
            ShaftLines.GHYLL_65_X, ShaftLines.GHYLL_75_S)) {
            readAlong(line);
        }
        forHarkwell(harkwell.shaftDraft());
        several(8, ShaftLines.GHYLL_65_X, "");
        several(12, ShaftLines.BROOK_70_S, "");
        several(12, ShaftLines.GHYLL_75_S, "");
        several(13, ShaftLines.LINDEN_85_S, "");
        for (String number : List.of("4", "5", "6", "7", "8", "9", "PW")) {
            several(3, ShaftLines.STAITH_120_S, number);
        }
        several(6, ShaftLines.STAITH_120_S, "W");
        several(12, ShaftLines.SILL_105_S, "");
        several(9, ShaftLines.EDDY_95_S, "");
        several(3, ShaftLines.ROD, "");
    }

    /** What came in for the sets of the week. */
    void fillForSets() {
        for (String number : List.of("4", "5", "6", "7", "8", "9", "PW")) {
            more(number.equals("4") ? 1 : 2, ShaftLines.STAITH_120_S, number);
        }
        more(8, ShaftLines.STAITH_120_S, "W");
        more(22, ShaftLines.SILL_105_S, "");
        more(4, ShaftLines.EDDY_95_S, "");
    }

    /** Read at three further free lengths, the clamp moved toward the tip each time. */
    private void readAlong(ShaftLine line) {
        Draw own = draw.of("along " + line.model());
        ShaftDraft shaft = new ShaftMaker(own).make(line, "");
        shaft.place = "rack 7";
        shaft.note = "read at four free lengths";
        Shaft tagged = shelf.add(shaft::toShaft);
        double longestIn = shaft.sold.rawLengthIn() - ShaftDraft.CLAMP_IN;
        for (int shorterIn = 3; shorterIn <= 9; shorterIn += 3) {
            shaft.gaugeErrorCpm = own.near(0, 0.3, 0.8);
            along.add(new Row().put("tag", tagged.tag())
                .put("frequency_cpm", Cells.number(shaft.cpm(Units.mm(longestIn - shorterIn)), 1)).put("clamp_in", "")
                .put("free_length_in", Cells.number(longestIn - shorterIn, 2))
                .put("tip_mass_g", Cells.number(shaft.tipMassG(), 0)).put("over_grip", "no")
                .put("measured_on", "2026-04-28").put("measured_by", "Jo").put("gauge", "bench 1"));
        }
    }

    /** Rows of the further readings. */
    List<Row> furtherReadings() {
        List<Row> rows = new ArrayList<>(along);
        rows.addAll(bothWays);
        return List.copyOf(rows);
    }

    /** One already in the right sleeve and near the broken one's length; one in another sleeve; one cut too short. */
    private void forHarkwell(ShaftDraft broken) {
        double tipCutIn = broken.tipCutIn;
        double buttCutIn = broken.buttCutIn;
        one("sleeved", ShaftLines.GHYLL_65_S, "", shaft -> {
            cut(shaft, tipCutIn, buttCutIn - 0.02);
            shaft.rawCpm = broken.rawCpm + 0.6;
            shaft.sleeveOn = QUAD;
            shaft.gripOn = grips.onto(Grips.MOSS, "a shaft in the rack").tag();
            shaft.readOverGrip = true;
            shaft.note = "from a driver that was shortened";
        });
        one("other sleeve", ShaftLines.GHYLL_65_S, "", shaft -> {
            cut(shaft, tipCutIn + 0.25, buttCutIn - 0.6);
            shaft.sleeveOn = "lock-1-335";
        });
        one("short", ShaftLines.GHYLL_65_S, "", shaft -> {
            cut(shaft, tipCutIn + 1, buttCutIn + 1.5);
            shaft.sleeveOn = QUAD;
            shaft.note = "cut for a fairway wood";
        });
    }

    private static void cut(ShaftDraft shaft, double tipCutIn, double buttCutIn) {
        shaft.tipCutIn = Draw.round(tipCutIn, 3);
        shaft.buttCutIn = Draw.round(buttCutIn, 2);
        shaft.condition = ShaftCondition.PULLED;
        shaft.pulls = 1;
    }

    /** So many of a length, each with what chance tells of it. */
    void several(int count, ShaftLine line, String madeFor) {
        for (int i = 1; i <= count; i++) {
            one(Integer.toString(i), line, madeFor, AS_IT_IS);
        }
    }

    private void more(int count, ShaftLine line, String madeFor) {
        for (int i = 1; i <= count; i++) {
            one("came in later " + i, line, madeFor, AS_IT_IS);
        }
    }

    private void one(String name, ShaftLine line, String madeFor, Consumer<ShaftDraft> story) {
        Draw own = draw.of(name + line.model() + madeFor);
        ShaftDraft shaft = new ShaftMaker(own).make(line, madeFor);
        shaft.place = "rack " + (1 + Math.abs(line.model().hashCode() % 6));
        if (story == AS_IT_IS) {
            chanceStory(own, shaft);
        } else {
            story.accept(shaft);
        }
        Shaft tagged = shelf.add(shaft::toShaft);
        boolean whole = shaft.condition == ShaftCondition.NEW && tagged.massG().isPresent()
            && tagged.balanceMm().isPresent() && !tagged.frequencies().isEmpty() && !shaft.conditionLost
            && shaft.reservedFor.isEmpty();
        if (whole && READ_BOTH_WAYS.contains(line) && readBothWays.add(line)) {
            readBothWays(shaft, tagged);
        }
    }

    private void readBothWays(ShaftDraft shaft, Shaft tagged) {
        Draw own = draw.of("both ways " + shaft.line.model());
        double overClampIn = ShaftDraft.CLAMP_IN + (shaft.line == DEEPER ? 1 : 0);
        shaft.gaugeErrorCpm = own.near(0, 0.3, 0.8);
        double bare = shaft.cpm(shaft.lengthMm() - Units.mm(ShaftDraft.CLAMP_IN));
        shaft.gaugeErrorCpm = 0;
        double over = shaft.cpm(shaft.lengthMm() - Units.mm(overClampIn))
            * own.near(BENCH_1_OVER_GRIP, GRIP_TO_GRIP, 2.5 * GRIP_TO_GRIP) + own.near(0, 0.3, 0.8);
        bothWays.add(row(tagged, shaft, bare, ShaftDraft.CLAMP_IN, false));
        bothWays.add(row(tagged, shaft, over, overClampIn, true));
    }

    private static Row row(Shaft tagged, ShaftDraft shaft, double cpm, double clampIn, boolean over) {
        return new Row().put("tag", tagged.tag()).put("frequency_cpm", Cells.number(cpm, 1))
            .put("clamp_in", Cells.number(clampIn, 2)).put("free_length_in", "")
            .put("tip_mass_g", Cells.number(shaft.tipMassG(), 0)).put("over_grip", Cells.yesOrNo(over))
            .put("measured_on", "2026-05-04").put("measured_by", "Kim").put("gauge", "bench 1");
    }

    private void chanceStory(Draw own, ShaftDraft shaft) {
        if (own.chance(0.25)) {
            boolean taper = shaft.line.tip().kind() == TipKind.TAPER;
            double tipCutIn = taper ? 0 : own.pick(List.of(0.0, 0.25, 0.5, 0.75, 1.0));
            double roomIn = shaft.sold.rawLengthIn() - (shaft.sold.rawLengthIn() > 45 ? 42 : shaft.sold.rawLengthIn() - 2);
            cut(shaft, tipCutIn, own.between(0.5, Math.max(1, roomIn - tipCutIn)));
            shaft.pulls = own.chance(0.3) ? 2 : 1;
            sleeveFor(shaft).filter(sleeve -> own.chance(0.5)).ifPresent(sleeve -> shaft.sleeveOn =
                sleeve.equals(QUAD) ? own.pick(List.of(QUAD, "lock-2-335", "lock-1-335", "notch-335")) : sleeve);
            if (own.chance(0.5)) {
                shaft.gripOn = grips.onto(Grips.MOSS, "a shaft in the rack").tag();
                shaft.readOverGrip = true;
                shaft.orientation = "logo down";
            }
        }
        if (own.chance(0.06)) {
            shaft.reservedFor = own.pick(List.of("J. Quillby", "E. Ashcutter", "K. Larkfield"));
        }
        if (own.chance(0.05)) {
            shaft.noFrequency = true;
        } else if (own.chance(0.05)) {
            shaft.noMass = true;
            shaft.noBalance = true;
        } else if (own.chance(0.08)) {
            shaft.noBalance = true;
        }
        if (own.chance(0.15)) {
            shaft.noTorque = true;
        }
        shaft.conditionLost = own.chance(0.02);
    }

    private static Optional<String> sleeveFor(ShaftDraft shaft) {
        if (shaft.line.meantFor().contains(Category.DRIVER) || shaft.line.meantFor().contains(Category.FAIRWAY)) {
            return Optional.of(QUAD);
        }
        return shaft.line.meantFor().contains(Category.HYBRID) ? Optional.of("quad-370") : Optional.empty();
    }
}
