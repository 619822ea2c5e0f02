package benchtwin.samples;

import benchtwin.club.BendHistory;
import benchtwin.club.Bore;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.HeadAngles;
import benchtwin.club.HeadCondition;
import benchtwin.club.HeadMaterial;
import benchtwin.club.HeadSize;
import benchtwin.club.Keeping;
import benchtwin.club.MadeAngles;
import benchtwin.club.MassProperties;
import benchtwin.club.Port;
import benchtwin.club.SleeveSeat;
import benchtwin.club.WeighedWith;
import benchtwin.measure.DefaultUncertainty;
import benchtwin.measure.Reading;
import benchtwin.measure.Units;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A head being made up; NaN and empty text stand for what was not measured. */
final class HeadDraft {

    /** Uncertainty of a measured centre of gravity, mm, and transverse inertia, g·cm². Memory. */
    private static final double CG_MM = 1;
    private static final double INERTIA_G_CM2 = 150;

    final HeadLine line;
    final HeadLine.Size size;
    final Hand hand;
    double loftDeg;
    double lieDeg;
    double faceDeg = Double.NaN;
    double bounceDeg = Double.NaN;
    double offsetMm = Double.NaN;
    double massG;
    Set<WeighedWith> weighedWith = Set.of(WeighedWith.BARE);
    double depthMm = Double.NaN;
    double toGroundMm;
    String readAtSetting = "";
    List<Port> ports;
    double madeLoftDeg;
    double madeLieDeg;
    double madeFaceDeg = Double.NaN;
    double bentUprightDeg = Double.NaN;
    double bentFlatDeg = Double.NaN;
    double bentForwardDeg = Double.NaN;
    double bentBackDeg = Double.NaN;
    double cgToeMm = Double.NaN;
    double cgUpMm = Double.NaN;
    double transverseGCm2 = Double.NaN;
    double verticalGCm2 = Double.NaN;
    double volumeCm3 = Double.NaN;
    double ctUs = Double.NaN;
    String grind = "";
    HeadMaterial material;
    HeadCondition condition = HeadCondition.NEW;
    String reservedFor = "";
    String place = "";
    String note = "";

    HeadDraft(HeadLine line, HeadLine.Size size, Hand hand) {
        this.line = line;
        this.size = size;
        this.hand = hand;
        this.ports = line.ports();
        this.material = line.material();
    }

    /** The mass the weights in it add to what was weighed, if they were on. */
    double portsG() {
        return ports.stream().mapToDouble(Port::massG).sum();
    }

    Head toHead(String tag) {
        boolean wood = line.reading().isWood();
        HeadAngles angles = new HeadAngles(line.reading(),
            read(loftDeg, wood ? DefaultUncertainty.WOOD_LOFT_DEG : DefaultUncertainty.IRON_LOFT_DEG),
            read(lieDeg, wood ? DefaultUncertainty.WOOD_LIE_DEG : DefaultUncertainty.IRON_LIE_DEG),
            read(faceDeg, DefaultUncertainty.FACE_DEG), read(bounceDeg, DefaultUncertainty.BOUNCE_DEG));
        HeadLine.Fitting fitting = line.fitting();
        Optional<Reading> toGround = read(toGroundMm, DefaultUncertainty.BORE_MM);
        Optional<Bore> bore = fitting.seat().isPresent() ? Optional.empty() : Optional.of(new Bore(
            Units.mm(fitting.boreIn()), fitting.kind(), read(depthMm, DefaultUncertainty.BORE_MM), toGround));
        Optional<SleeveSeat> seat = fitting.seat().map(fit -> new SleeveSeat(fit, toGround, text(readAtSetting)));
        MassProperties mass = new MassProperties(read(cgToeMm, CG_MM), read(cgUpMm, CG_MM),
            read(transverseGCm2, INERTIA_G_CM2), read(verticalGCm2, DefaultUncertainty.VERTICAL_INERTIA_G_CM2),
            read(volumeCm3, DefaultUncertainty.VOLUME_CM3), read(ctUs, DefaultUncertainty.CHARACTERISTIC_TIME_US));
        return new Head(tag, line.model(), line.category(), text(size.number()), hand, angles, number(offsetMm),
            text(grind), read(massG, DefaultUncertainty.MASS_G), weighedWith, bore, seat, material, fitting.adjust(),
            ports, line.hotMeltMaxG(),
            new MadeAngles(number(madeLoftDeg), number(madeLieDeg), number(madeFaceDeg)),
            new BendHistory(number(bentUprightDeg), number(bentFlatDeg), number(bentForwardDeg), number(bentBackDeg)),
            mass, HeadSize.UNMEASURED, condition, new Keeping(text(reservedFor), text(place), text(note), Map.of()));
    }

    private static Optional<Reading> read(double value, double uncertainty) {
        return Double.isNaN(value) ? Optional.empty() : Optional.of(Reading.of(value, uncertainty));
    }

    private static OptionalDouble number(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static Optional<String> text(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }
}
