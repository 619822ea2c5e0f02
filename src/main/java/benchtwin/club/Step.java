package benchtwin.club;

/**
 * One step of a plan.
 * @param kind    what kind it is
 * @param words   what to do, in bench words
 * @param minutes bench minutes
 */
public record Step(StepKind kind, String words, double minutes) {
}
