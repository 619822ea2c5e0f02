package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.QuantityList;
import benchtwin.club.Quantity;
import benchtwin.match.Tolerances;
import java.util.EnumMap;
import java.util.Map;
import picocli.CommandLine.Option;

/** Tolerances and weights, for commands that rank by a miss. */
final class ToleranceOptions {

    @Option(names = "--tolerance", paramLabel = "LIST", order = 22,
        description = "tolerances, such as loft=0.25,length=1/16,frequency=2; default those the player prefers, else the usual ones")
    private String tolerance;
    @Option(names = "--weight", paramLabel = "LIST", order = 23,
        description = "weights in the miss, such as lie=2,frequency=0.5,total-mass=0")
    private String weight;

    /**
     * What was asked for.
     * @param list      what may be named
     * @param preferred tolerances that stand where none was named
     */
    Tolerances of(QuantityList list, Map<Quantity, Double> preferred) throws BadInput {
        Map<Quantity, Double> tolerances = new EnumMap<>(Quantity.class);
        tolerances.putAll(preferred);
        tolerances.putAll(list.tolerances("--tolerance", tolerance));
        return new Tolerances(tolerances, list.weights("--weight", weight));
    }
}
