package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.BuildSpec;
import benchtwin.bench.ClubViews;
import benchtwin.bench.ShopTyped;
import benchtwin.club.AngleReading;
import benchtwin.measure.PlainNumber;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the page that says what a build would measure was asked: its parts, and what is done to them. */
public final class PredictForm {

    /** Where it is asked. */
    static final String PATH = "/predict";
    private static final List<String> NAMES = List.of("head", "shaft", "grip", "sleeve", "setting", "length", "buttCut", "tipTrim",
        "extension", "bendLoft", "bendLie", "bendFace", "headMass", "ports", "tipWeight", "tapeLayers", "clamp", "overGrip", "reading");

    private final Fields fields;
    private final BuildSpec build;

    private PredictForm(Fields fields) {
        this.fields = fields;
        build = new BuildSpec(text("head"), text("shaft"), typed("grip"), typed("sleeve"), typed("setting"), lengthMm("length", "playing length", true),
            lengthMm("buttCut", "butt cut", false), lengthMm("tipTrim", "tip trim", false), lengthMm("extension", "extension", false),
            number("bendLie", "bend of the lie", false), number("bendFace", "bend of the face", false),
            number("bendLoft", "bend of the loft", false), number("headMass", "tape or hot melt", true), number("ports", "in the ports", true),
            number("tipWeight", "tip weight", true), number("tapeLayers", "layers of tape", true), lengthMm("clamp", "clamp", true),
            fields.isTicked("overGrip"), fields.at("reading", Optional.<AngleReading>empty(), form -> form.choice("reading",
            "how the loft is read", AngleReading.values())).map(AngleReading::word).orElse(null));
    }

    static PredictForm of(Context ctx) {
        return new PredictForm(Fields.of(ctx));
    }

    private String typed(String name) {
        return fields.form().text(name).orElse(null);
    }

    private Double lengthMm(String name, String called, boolean above0) {
        return fields.at(name, null, form -> {
            Optional<String> typed = form.text(name);
            if (typed.isEmpty()) {
                return null;
            }
            double mm = ShopTyped.lengthMm(called, typed.get().replace(',', '.'));
            if (!(above0 ? mm > 0 : mm >= 0)) {
                throw new BadInput("%s %s is %s".formatted(called, typed.get(), above0 ? "not above 0" : "below 0"));
            }
            return mm;
        });
    }

    private Double number(String name, String called, boolean notBelow0) {
        return fields.at(name, null, form -> {
            Optional<Double> typed = form.number(name, called);
            if (notBelow0 && typed.isPresent() && typed.get() < 0) {
                throw new BadInput("%s %s is below 0".formatted(called, form.text(name).orElse("")));
            }
            return typed.orElse(null);
        });
    }

    /** The build that is asked about. */
    BuildSpec build() {
        return build;
    }

    /**
     * What is still needed before anything can be worked out.
     * @return in words; empty where all of it is there
     */
    public List<String> missing() {
        List<String> missing = new ArrayList<>();
        if (text("head").isEmpty()) {
            missing.add("a head");
        }
        if (text("shaft").isEmpty()) {
            missing.add("a shaft");
        }
        return missing;
    }

    /** All of it, for addresses. */
    Asked asked() {
        return Asked.of(fields.form(), NAMES);
    }

    /**
     * Where its head is drawn.
     * @return an address
     */
    public String sketch() {
        return asked().at(PATH + "/sketch");
    }

    /**
     * What was typed, and what is wrong with it.
     * @return the fields
     */
    public Fields fields() {
        return fields;
    }

    private String text(String name) {
        return fields.text(name);
    }

    /**
     * The question of a recorded club: its parts as they are in it.
     * @param club the club
     * @return an address
     */
    public static String of(ClubViews.Club club) {
        BuildSpec as = BuildSpec.of(club);
        Asked asked = Asked.nothing();
        Map<String, String> tags = new LinkedHashMap<>();
        tags.put("head", as.head());
        tags.put("shaft", as.shaft());
        tags.put("grip", as.grip());
        tags.put("sleeve", as.sleeve());
        tags.put("setting", as.setting());
        tags.forEach((name, tag) -> asked.with(name, tag == null ? "" : tag));
        return asked.with("headMass", text(as.headMassG())).with("tipWeight", text(as.tipWeightG()))
            .with("tapeLayers", text(as.tapeLayers())).at(PATH);
    }

    private static String text(Double number) {
        return number == null ? "" : PlainNumber.text(number);
    }
}
