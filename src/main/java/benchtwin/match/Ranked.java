package benchtwin.match;

import benchtwin.club.Head;
import benchtwin.club.Quantity;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One option of an answer.
 * @param rank           1 for the nearest
 * @param head           its head
 * @param shaft          its shaft
 * @param sleeve         its sleeve, for a sleeved head
 * @param setting        the sleeve's setting
 * @param plan           what to do
 * @param predicted      what the finished club will measure, by quantity; those that cannot be computed are missing
 * @param uncertainty    standard uncertainty of the prediction, before the reading that judges it
 * @param difference     predicted less target
 * @param terms          each targeted quantity's share of miss²
 * @param cost           miss² and effort: what ranks
 * @param miss           distance from the target, in tolerances
 * @param effort         cost of the work, squared tolerances
 * @param firstTimeRight the chance of measuring within tolerance at the first try
 * @param outOfTolerance quantities beyond their tolerance, worst first
 * @param defaultsUsed   defaults that a targeted quantity feels by a twentieth of its tolerance or more
 * @param tiedWith       tags of heads or shafts it ties with
 * @param rulesWarnings  equipment limits the finished club would cross or come too close to, a sentence each
 * @param workings       what the prediction rests on
 */
public record Ranked(int rank, Head head, Shaft shaft, Optional<Sleeve> sleeve, Optional<String> setting, Plan plan,
                     Map<Quantity, Double> predicted, Map<Quantity, Double> uncertainty,
                     Map<Quantity, Double> difference, Map<Quantity, Double> terms, double cost, double miss,
                     double effort, FirstTimeRight firstTimeRight, List<Quantity> outOfTolerance,
                     List<String> defaultsUsed, List<String> tiedWith, List<String> rulesWarnings,
                     Workings workings) {

    /**
     * Whether every targeted quantity is predicted inside its tolerance.
     * @return false when any is beyond
     */
    public boolean isWithinTolerance() {
        return outOfTolerance.isEmpty();
    }

    Ranked withRank(int newRank) {
        return new Ranked(newRank, head, shaft, sleeve, setting, plan, predicted, uncertainty, difference, terms, cost,
            miss, effort, firstTimeRight, outOfTolerance, defaultsUsed, tiedWith, rulesWarnings, workings);
    }

    /** The same option with what it measured in place of what was predicted; readings tie with nobody. */
    Ranked measured(Map<Quantity, Double> values, Map<Quantity, Double> differences, Map<Quantity, Double> newTerms,
                    double newMiss, List<Quantity> out) {
        return new Ranked(rank, head, shaft, sleeve, setting, plan, values, uncertainty, differences, newTerms,
            newMiss * newMiss + effort, newMiss, effort, firstTimeRight, out, defaultsUsed, List.of(), rulesWarnings,
            workings);
    }
}
