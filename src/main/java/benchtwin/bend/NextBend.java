package benchtwin.bend;

/**
 * What to ask of the next bend, in degrees of hosel tilt.
 * @param askedDeg        what to ask under load, above 0
 * @param expectedDeg     what it should leave, on average
 * @param spreadDeg       standard deviation of that
 * @param withinChance    chance that it ends within tolerance, 0 to 1
 * @param beyondChance    chance that it passes the far end of the tolerance, 0 to 1
 */
public record NextBend(double askedDeg, double expectedDeg, double spreadDeg, double withinChance, double beyondChance) {
}
