package benchtwin.match;

import benchtwin.mechanics.Setup;

/**
 * One way to set a head's angles.
 * @param aim      the tilt or the measured changes, from where the head was read
 * @param setting  the sleeve setting; null for a bored head
 * @param lieSteps steps of lie bent, upright positive; 0 for a sleeve
 * @param turnSteps steps of face closed (woods) or loft weakened (irons); 0 for a sleeve
 * @param lieDeg   lie afterwards, degrees
 * @param cost     its angle terms of miss² and its effort
 */
record AngleOption(Setup.Aim aim, String setting, int lieSteps, int turnSteps, double lieDeg, double cost)
    implements Comparable<AngleOption> {

    @Override
    public int compareTo(AngleOption other) {
        int byCost = Double.compare(cost, other.cost);
        if (byCost != 0) {
            return byCost;
        }
        int bySteps = Integer.compare(Math.abs(lieSteps) + Math.abs(turnSteps),
            Math.abs(other.lieSteps) + Math.abs(other.turnSteps));
        return bySteps != 0 ? bySteps : Integer.compare(lieSteps, other.lieSteps);
    }
}
