package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.ClubFacts;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import picocli.CommandLine.Option;

/** What a club is made of and what a player would notice of it. */
final class ClubFactOptions {

    @Option(names = "--head", paramLabel = "TAG", order = 3, description = "its head; an empty text takes a part off")
    private String head;
    @Option(names = "--shaft", paramLabel = "TAG", order = 3, description = "its shaft")
    private String shaft;
    @Option(names = "--grip", paramLabel = "TAG", order = 3, description = "its grip")
    private String grip;
    @Option(names = "--sleeve", paramLabel = "NAME", order = 3, description = "its sleeve")
    private String sleeve;
    @Option(names = "--setting", paramLabel = "SETTING", order = 3, description = "the sleeve's setting, such as 3 or 3/5")
    private String setting;
    @Option(names = "--orientation", paramLabel = "TEXT", order = 4, description = "how the shaft's markings lie: logo down")
    private String orientation;
    @Option(names = "--grip-orientation", paramLabel = "TEXT", order = 4, description = "how the grip's markings lie")
    private String gripOrientation;
    @Option(names = "--rib", paramLabel = "TEXT", order = 4, description = "where the rib sits, or round")
    private String rib;
    @Option(names = "--tape-layers", paramLabel = "N", order = 4, description = "layers of tape under the grip")
    private Double tapeLayers;
    @Option(names = "--ferrule", paramLabel = "TEXT", order = 4, description = "its ferrule")
    private String ferrule;
    @Option(names = "--finish", paramLabel = "TEXT", order = 4, description = "the head's finish")
    private String finish;
    @Option(names = "--grind", paramLabel = "TEXT", order = 4, description = "the sole's grind")
    private String grind;
    @Option(names = "--tip-weight", paramLabel = "G", order = 4, description = "weight in the tip, g")
    private Double tipWeight;
    @Option(names = "--tape", paramLabel = "G", order = 4, description = "lead tape on the head, g")
    private Double tape;
    @Option(names = "--melt", paramLabel = "G", order = 4, description = "hot melt in the head, g")
    private Double melt;

    /** What was given, by the name the book keeps it under; an empty text takes something back. */
    Map<String, String> facts() throws BadInput {
        Map<String, String> facts = new TreeMap<>();
        put(facts, "head", head);
        put(facts, "shaft", shaft);
        put(facts, "grip", grip);
        put(facts, "sleeve", sleeve);
        put(facts, "setting", setting);
        put(facts, "orientation", orientation);
        put(facts, "grip_orientation", gripOrientation);
        put(facts, "rib", rib);
        put(facts, "ferrule", ferrule);
        put(facts, "finish", finish);
        put(facts, "grind", grind);
        amount(facts, "tape_layers", "--tape-layers", tapeLayers);
        amount(facts, "tip_weight_g", "--tip-weight", tipWeight);
        amount(facts, "tape_g", "--tape", tape);
        amount(facts, "melt_g", "--melt", melt);
        return facts;
    }

    Optional<String> setting() {
        return Optional.ofNullable(setting);
    }

    private static void put(Map<String, String> facts, String name, String typed) {
        if (typed != null) {
            facts.put(name, typed.strip());
        }
    }

    private static void amount(Map<String, String> facts, String name, String option, Double typed) throws BadInput {
        if (typed != null) {
            facts.put(name, ClubFacts.amount(name, option, typed));
        }
    }
}
