package benchtwin.match;

import benchtwin.club.AddedMasses;
import benchtwin.mechanics.Setup;

/**
 * The best plan found for a candidate, in the search's own terms.
 * @param candidate   the parts
 * @param start       what the club carries before the plan
 * @param angle       how the angles are set
 * @param cut         what is done to the shaft
 * @param mass        what goes into and onto the head
 * @param cost        miss² + effort
 * @param readyMinutes bench minutes and the longest wait
 */
record FoundPlan(Candidate candidate, AddedMasses start, AngleOption angle, Cut cut, HeadMass.Option mass, double cost,
                 double readyMinutes) {

    FoundPlan withCost(double other) {
        return new FoundPlan(candidate, start, angle, cut, mass, other, readyMinutes);
    }

    /** The plan as the mechanics take it. */
    Setup setup() {
        return setup(cut, start, mass.addedG(), angle.aim());
    }

    static Setup setup(Cut cut, AddedMasses start, double headAddedG, Setup.Aim aim) {
        return new Setup(cut.tipTrimMm(), cut.buttCutMm(), cut.extensionMm(), cut.extensionMassG(), start.tapeLayers(),
            headAddedG, start.tipWeightG() + cut.tipWeightG(), aim);
    }
}
