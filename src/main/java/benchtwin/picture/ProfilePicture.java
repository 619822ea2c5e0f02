package benchtwin.picture;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A shaft's bending stiffness from tip to butt, as fitted to readings at several free lengths, and beneath it, on the
 * same millimetres, how far each reading lies from the fit: a reading stands where its clamp face was.
 * @param title        what to see, for instance {@code Shaft H-07 is stiffer at the butt than its default shape}
 * @param fitted       the fit, from tip to butt, at as many places as its curve takes, at least two; the band of one
 *                     standard uncertainty is drawn when all of them have it
 * @param knots        the places where the fit may turn, marked on it, from tip to butt, at least two
 * @param defaultShape what the shaft was taken for before it was fitted, from tip to butt; empty to leave it out
 * @param residuals    the readings; at least one
 */
public record ProfilePicture(String title, List<StiffnessPoint> fitted, List<StiffnessPoint> knots,
                             List<StiffnessPoint> defaultShape, List<ReadingResidual> residuals) implements Picture {

    /** More places than these are a curve to be looked at, not a table to be read out. */
    private static final int FEW = 12;

    /**
     * Checks the numbers and makes the title printable.
     * @throws IllegalArgumentException naming what is missing or cannot be
     */
    public ProfilePicture {
        title = Words.required("title", title);
        fitted = ascending("fitted profile", fitted);
        knots = ascending("row of knots", knots);
        defaultShape = List.copyOf(defaultShape);
        if (!defaultShape.isEmpty()) {
            defaultShape = ascending("default shape", defaultShape);
        }
        residuals = List.copyOf(residuals);
        if (residuals.isEmpty()) {
            throw new IllegalArgumentException("a fitted profile needs the readings it was fitted to");
        }
    }

    @Override
    public String svg() {
        Fonts.require();
        return SvgSheet.text(this, new ProfileDrawing(this));
    }

    @Override
    public byte[] png() {
        Fonts.require();
        return PngSheet.bytes(new ProfileDrawing(this));
    }

    @Override
    public String inWords() {
        String words = "Fitted bending stiffness, from the tip: " + points(knots) + ".";
        if (!defaultShape.isEmpty() && defaultShape.size() <= FEW) {
            words += " Default shape: " + points(defaultShape) + ".";
        }
        return words + " Readings less fit: " + residuals.stream()
            .map(reading -> "%s cpm, ± %s (twice the standard uncertainty), at %s mm free length".formatted(
                Words.difference(reading.residualCpm(), 2), Words.fixed(reading.whiskerCpm(), 2),
                Words.fixed(reading.freeLengthMm(), 0)))
            .collect(Collectors.joining("; ")) + ".";
    }

    /** Whether every knot of the fit says how sure it is. */
    boolean hasUncertainty() {
        return fitted.stream().allMatch(point -> point.standardUncertaintyNm2().isPresent());
    }

    private static String points(List<StiffnessPoint> points) {
        return points.stream().map(point -> "%s N·m²%s at %s mm".formatted(Words.fixed(point.stiffnessNm2(), 2),
            point.standardUncertaintyNm2().isPresent()
                ? " ± " + Words.fixed(point.standardUncertaintyNm2().getAsDouble(), 2) : "",
            Words.fixed(point.fromTipMm(), 0))).collect(Collectors.joining("; "));
    }

    private static List<StiffnessPoint> ascending(String what, List<StiffnessPoint> points) {
        List<StiffnessPoint> copy = List.copyOf(points);
        if (copy.size() < 2) {
            throw new IllegalArgumentException("a %s needs at least two places along the shaft".formatted(what));
        }
        for (int i = 1; i < copy.size(); i++) {
            if (!(copy.get(i).fromTipMm() > copy.get(i - 1).fromTipMm())) {
                throw new IllegalArgumentException("a %s must go from tip to butt, but %s mm follows %s mm"
                    .formatted(what, copy.get(i).fromTipMm(), copy.get(i - 1).fromTipMm()));
            }
        }
        return copy;
    }
}
