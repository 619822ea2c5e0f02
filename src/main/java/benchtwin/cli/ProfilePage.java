package benchtwin.cli;

import benchtwin.bench.BuildIdentity;
import benchtwin.bench.ProfileService;
import benchtwin.measure.LengthText;
import benchtwin.measure.Units;
import java.util.List;

/** A shaft's readings, what the fitted stiffness makes of them, and its profile. */
final class ProfilePage {

    private final Page page;
    private final ProfileService.Answer answer;

    ProfilePage(Page page, ProfileService.Answer answer) {
        this.page = page;
        this.answer = answer;
    }

    void print(List<String> remarks) {
        page.line("Stiffness of shaft %s (%s), %s in as it lies", answer.shaft().tag(), answer.shaft().model(),
            LengthText.inchesAndSixteenths(answer.shaft().lengthMm()));
        if (answer.rawCpm().isPresent()) {
            page.line("In the usual condition (bare, 5 in in the clamp, 205 g on the tip): %s cpm%s",
                Figures.fixed(answer.rawCpm().getAsDouble(), 1), answer.rawUCpm().isPresent()
                    ? " ±" + Figures.fixed(answer.rawUCpm().getAsDouble(), 1) : "");
        }
        page.blank();
        if (answer.readings().isEmpty()) {
            page.line("No reading of it can be used.");
        } else {
            readings();
        }
        page.blank();
        if (answer.knots().isEmpty()) {
            page.wrapped("", ProfileService.NO_PROFILE);
        } else {
            profile();
        }
        answer.notes().forEach(note -> page.wrapped("Note: ", note + "."));
        page.wrapped("Note: ", answer.grip() + ".");
        remarks.forEach(remark -> page.wrapped("Files: ", remark));
        page.line("benchtwin %s", BuildIdentity.text());
    }

    private void readings() {
        page.line("   %-12s %-10s %-10s %-13s %-10s %s", "free length", "tip mass", "clamp on", "read, cpm", "fitted",
            "read less fitted");
        for (ProfileService.ReadingLine line : answer.readings()) {
            boolean known = !Double.isNaN(line.computedCpm());
            page.line("   %-12s %-10s %-10s %-13s %-10s %s", Figures.fixed(Units.inches(line.freeLengthMm()), 2) + " in",
                Figures.fixed(line.tipMassG(), 0) + " g", line.overGrip() ? "grip" : "bare butt",
                Figures.fixed(line.readCpm(), 1) + " ±" + Figures.fixed(line.uCpm(), 1),
                known ? Figures.fixed(line.computedCpm(), 1) : "?",
                known ? sign(line.offCpm().orElseThrow()) : "not weighed");
        }
    }

    private static String sign(double cpm) {
        String text = Figures.fixed(Math.abs(cpm), 1);
        return Double.parseDouble(text) == 0 ? "0" : (cpm < 0 ? "−" : "+") + text;
    }

    private void profile() {
        page.line("   %-14s %-18s %s", "from the tip", "stiffness, N·m²", "against the default shape");
        for (ProfileService.KnotLine knot : answer.knots()) {
            page.line("   %-14s %-18s ×%s", Figures.fixed(Units.inches(knot.fromTipMm()), 2) + " in",
                Figures.fixed(knot.stiffnessNm2(), 2) + " ±" + Figures.fixed(knot.uNm2(), 2), Figures.fixed(knot.factor(), 2));
        }
    }
}
