package benchtwin.samples;

import benchtwin.club.Category;
import benchtwin.club.FrequencyReading;
import benchtwin.club.Keeping;
import benchtwin.club.Shaft;
import benchtwin.club.ShaftCondition;
import benchtwin.measure.DefaultUncertainty;
import benchtwin.measure.Reading;
import benchtwin.measure.Units;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A shaft being made up: what it was when raw, and what was done to it. */
final class ShaftDraft {

    static final double CLAMP_IN = 5;
    /** On a shaft for woods and hybrids, g. Common practice, no source. */
    private static final double WOOD_TIP_MASS_G = 205;
    /** On a shaft for irons, wedges and putters, nearer to such a head, g. Memory. */
    private static final double IRON_TIP_MASS_G = 255;
    /** Readings over a grip against readings on the bare butt. Memory. */
    private static final double OVER_GRIP = 0.98;

    final ShaftLine line;
    final ShaftLine.Sold sold;
    double rawMassG;
    double rawBalanceMm;
    double rawCpm;
    double rawTorqueDeg;
    double tipCutIn;
    double buttCutIn;
    double gaugeErrorCpm;
    String sleeveOn = "";
    String gripOn = "";
    boolean readOverGrip;
    String orientation = "";
    int pulls;
    ShaftCondition condition = ShaftCondition.NEW;
    boolean noMass;
    boolean noBalance;
    boolean noFrequency;
    boolean conditionLost;
    boolean noTorque;
    String reservedFor = "";
    String place = "";
    String note = "";

    ShaftDraft(ShaftLine line, String madeFor) {
        this.line = line;
        this.sold = line.sold(madeFor);
    }

    double rawMm() {
        return Units.mm(sold.rawLengthIn());
    }

    /** Butt as it lies, from the raw butt. */
    private double buttMm() {
        return Units.mm(buttCutIn);
    }

    /** Tip as it lies, from the raw butt. */
    private double tipMm() {
        return rawMm() - Units.mm(tipCutIn);
    }

    double tipMassG() {
        return line.meantFor().contains(Category.IRON) || line.meantFor().contains(Category.PUTTER) ? IRON_TIP_MASS_G
            : WOOD_TIP_MASS_G;
    }

    private ShaftGauge gauge() {
        return new ShaftGauge(line, rawMm(), rawMassG, rawBalanceMm);
    }

    /** What the gauge shows at a free length of the shaft as it lies. */
    double cpm(double freeMm) {
        ShaftGauge gauge = gauge();
        double raw = gauge.frequency(Units.mm(CLAMP_IN), rawMm(), tipMassG());
        double cut = gauge.frequency(tipMm() - freeMm, tipMm(), tipMassG());
        return Draw.round(rawCpm * cut / raw * (readOverGrip ? OVER_GRIP : 1) + gaugeErrorCpm, 1);
    }

    double lengthMm() {
        return tipMm() - buttMm();
    }

    private double torqueDeg() {
        double clamp = Units.mm(CLAMP_IN);
        ShaftGauge gauge = gauge();
        return rawTorqueDeg * gauge.twist(buttMm() + clamp, tipMm()) / gauge.twist(clamp, rawMm());
    }

    Shaft toShaft(String tag) {
        ShaftGauge gauge = gauge();
        double clampMm = Units.mm(CLAMP_IN);
        Reading cpm = Reading.of(cpm(lengthMm() - clampMm), DefaultUncertainty.FREQUENCY_CPM);
        FrequencyReading frequency = conditionLost
            ? new FrequencyReading(cpm, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                readOverGrip, OptionalDouble.empty())
            : new FrequencyReading(cpm, OptionalDouble.of(clampMm), OptionalDouble.of(lengthMm() - clampMm),
                OptionalDouble.of(tipMassG()), readOverGrip, OptionalDouble.empty());
        double mass = Draw.round(gauge.massG(buttMm(), tipMm()), 1);
        double balanceIn = Draw.round(Units.inches(gauge.balanceMm(buttMm(), tipMm())), 2);
        return new Shaft(tag, line.model(), line.material(), line.meantFor(), text(sold.madeFor()), rawMm(),
            noMass ? Optional.empty() : Optional.of(Reading.of(mass, DefaultUncertainty.MASS_G)),
            noBalance ? Optional.empty()
                : Optional.of(Reading.of(Units.mm(balanceIn), DefaultUncertainty.BALANCE_MM)),
            noTorque ? Optional.empty()
                : Optional.of(Reading.of(Draw.round(torqueDeg(), 1), DefaultUncertainty.TORQUE_DEG)),
            Units.mm(line.tip().diameterIn()), line.tip().kind(), Units.mm(line.buttIn()),
            Units.mm(line.tip().parallelIn()), Units.mm(tipCutIn), Units.mm(buttCutIn),
            noFrequency ? List.of() : List.of(frequency), text(sleeveOn), text(gripOn), text(orientation), pulls,
            condition, new Keeping(text(reservedFor), text(place), text(note), Map.of()));
    }

    private static Optional<String> text(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }
}
