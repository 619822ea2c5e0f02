package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.BuildIdentity;
import benchtwin.bench.BuildSpec;
import benchtwin.bench.PredictJson;
import benchtwin.bench.PredictService;
import benchtwin.bench.Workshop;
import benchtwin.club.Quantity;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code benchtwin predict}. */
@Command(name = "predict", mixinStandardHelpOptions = true, sortOptions = false,
    description = "What would this build measure? Every quantity with its uncertainty, and where each input came from.",
    footer = {"", "Examples:",
        "  benchtwin predict --stock inventory-samples --head H-101 --shaft S-001 --grip G-01 --length 45.25",
        "  benchtwin predict --stock inventory-samples --build my-build.json",
        "", "Changes: bends are from the head's own reading; upright, open and weak are positive."})
final class PredictCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;
    @Option(names = "--head", paramLabel = "TAG", order = 1, description = "head")
    private String head;
    @Option(names = "--shaft", paramLabel = "TAG", order = 2, description = "shaft")
    private String shaft;
    @Option(names = "--grip", paramLabel = "TAG", order = 3, description = "grip; default the one on the shaft")
    private String grip;
    @Option(names = "--build", paramLabel = "FILE", order = 4, description = "the whole build as JSON instead")
    private Path build;
    @Mixin
    private StockOptions stock;
    @Option(names = "--sleeve", paramLabel = "NAME", order = 20, description = "sleeve; default the one on the shaft")
    private String sleeve;
    @Option(names = "--setting", paramLabel = "SETTING", order = 21, description = "sleeve setting, such as 3 or 3/5")
    private String setting;
    @Option(names = "--length", paramLabel = "LENGTH", order = 22, description = "playing length; the butt is cut to it")
    private String length;
    @Option(names = "--butt-cut", paramLabel = "LENGTH", order = 23, description = "off the butt")
    private String buttCut;
    @Option(names = "--tip-trim", paramLabel = "LENGTH", order = 24, description = "off the tip")
    private String tipTrim;
    @Option(names = "--extension", paramLabel = "LENGTH", order = 25, description = "added at the butt")
    private String extension;
    @Option(names = "--bend-lie", paramLabel = "DEG", order = 26, description = "bend of the lie")
    private Double bendLie;
    @Option(names = "--bend-face", paramLabel = "DEG", order = 27, description = "bend of a wood's face")
    private Double bendFace;
    @Option(names = "--bend-loft", paramLabel = "DEG", order = 28, description = "bend of an iron's loft")
    private Double bendLoft;
    @Option(names = "--head-mass", paramLabel = "G", order = 29, description = "tape or hot melt at the head")
    private Double headMass;
    @Option(names = "--ports", paramLabel = "G", order = 30, description = "what is in the ports, in all; default as recorded")
    private Double ports;
    @Option(names = "--tip-weight", paramLabel = "G", order = 31, description = "weight in the shaft's tip")
    private Double tipWeight;
    @Option(names = "--tape-layers", paramLabel = "N", order = 32, description = "tape under the grip; default 1")
    private Double tapeLayers;
    @Option(names = "--clamp", paramLabel = "LENGTH", order = 33, description = "clamp of the frequency; default 5 in")
    private String clamp;
    @Option(names = "--over-grip", order = 34, description = "the clamp closes over the grip")
    private boolean overGrip;
    @Option(names = "--reading", paramLabel = "WORD", order = 35, description = "soled or square, for a wood's loft")
    private String reading;
    @Mixin
    private SketchOption sketch;
    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws BadInput {
        sketch.check();
        BuildSpec wanted = build();
        Workshop workshop = stock.load();
        PredictService.Answer answer = PredictService.predict(workshop, wanted);
        if (sketch.isAsked()) {
            sketch.draw(Optional.of(PredictService.sketch(workshop, answer)), spec.commandLine().getErr());
        }
        PrintWriter out = spec.commandLine().getOut();
        if (output.isJson()) {
            out.println(PredictJson.text(answer));
        } else {
            print(output.page(out), answer, workshop);
        }
        return Main.DONE;
    }

    private BuildSpec build() throws BadInput {
        if (build != null) {
            boolean alone = spec.commandLine().getParseResult().matchedOptions().stream()
                .noneMatch(o -> o.order() != 4 && (o.order() < 10 || o.order() >= 20 && o.order() < 40));
            if (!alone) {
                throw new BadInput("--build says everything about the build; leave out the options that say it too");
            }
            return BuildSpec.read(build);
        }
        if (head == null || shaft == null) {
            throw new BadInput("a build needs --head TAG and --shaft TAG, or --build FILE");
        }
        return new BuildSpec(head, shaft, grip, sleeve, setting, ShopOptions.mm("--length", length), ShopOptions.mm("--butt-cut", buttCut),
            ShopOptions.mm("--tip-trim", tipTrim), ShopOptions.mm("--extension", extension), bendLie, bendFace, bendLoft, headMass, ports,
            tipWeight, tapeLayers, ShopOptions.mm("--clamp", clamp), overGrip, reading);
    }

    private static void print(Page page, PredictService.Answer answer, Workshop workshop) {
        page.line("Head %s on shaft %s: what it would measure (angles read %s)", answer.spec().head(),
            answer.spec().shaft(), answer.reading().word());
        if (answer.buttCutMm() > 0) {
            page.line("Butt cut: %.1f mm", answer.buttCutMm());
        }
        page.blank();
        page.line("   %-15s %-14s %s", "", "predicted", "standard uncertainty");
        for (Quantity quantity : Quantity.values()) {
            Double value = answer.values().get(quantity);
            if (value == null) {
                continue;
            }
            String also = quantity == Quantity.LENGTH || quantity == Quantity.RULES_LENGTH
                ? String.format(Locale.ROOT, "   (%.1f mm)", value) : "";
            page.line("   %-15s %-14s ±%s%s", Figures.name(quantity), Figures.value(quantity, value),
                uncertainty(quantity, answer.uncertainty().get(quantity)), also);
        }
        page.blank();
        page.line("What it rests on");
        page.line("   %-44s %10s  %-8s %s", "", "value", "±", "origin");
        for (PredictService.InputLine input : answer.inputs()) {
            page.line("   %-44.44s %10s  %-8s %s", input.what(), Figures.fixed(input.value(), 2),
                Figures.fixed(input.u(), 2), input.origin());
        }
        answer.notes().forEach(note -> page.wrapped("Note: ", note + "."));
        RulesLines.print(page, "", answer.rulesWarnings());
        RulesLines.whoDecides(page, answer.rulesWarnings().isEmpty());
        workshop.remarks().forEach(remark -> page.wrapped("Files: ", remark));
        page.line("benchtwin %s", BuildIdentity.text());
    }

    private static String uncertainty(Quantity quantity, double u) {
        return Figures.fixed(u, 2) + (quantity.isAngle() || quantity == Quantity.TORQUE ? "°" : " " + quantity.unit());
    }
}
