package benchtwin.match;

import benchtwin.club.AngleReading;
import benchtwin.club.Quantity;
import benchtwin.mechanics.Assembly;
import benchtwin.mechanics.Factor;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.Setup;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What one build would measure, on its own: nothing is carried over from another club.
 * @param values      by quantity; those an input is missing for are absent
 * @param uncertainty standard uncertainty of each, before the reading that judges it
 * @param inputs      everything that went in, with its uncertainty and origin
 */
public record BuildPrediction(Map<Quantity, Double> values, Map<Quantity, Double> uncertainty, List<Factor> inputs) {

    /**
     * Predicts a build.
     * @param assembly  its parts
     * @param setup     what is done to them
     * @param condition how its frequency will be read
     * @param loftIn    in which reading a wood's loft is wanted
     * @return the prediction
     */
    public static BuildPrediction of(Assembly assembly, Setup setup, FrequencyCondition condition,
                                     AngleReading loftIn) {
        TwinModel model = new TwinModel(Optional.empty(), Keep.NONE, condition, loftIn);
        double[] predicted = model.predict(assembly, setup);
        List<Contribution> contributions =
            new Propagation(model).ofInputs(assembly, setup, predicted);
        Map<Quantity, Double> values = TwinModel.known(predicted);
        Map<Quantity, Double> uncertainty = new EnumMap<>(Quantity.class);
        values.keySet().forEach(quantity -> uncertainty.put(quantity, Propagation.u(contributions, quantity, false)));
        return new BuildPrediction(values, uncertainty, new ArrayList<>(assembly.factors()));
    }
}
