package benchtwin.sets;

/**
 * A part that is worth ordering.
 * @param part    what it is, with the readings it should have
 * @param forWhom the clubs it would serve
 * @param gain    what the plan would gain, squared tolerances; infinite when a club could be built that cannot now
 */
public record OrderLine(String part, String forWhom, double gain) {
}
