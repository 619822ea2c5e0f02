package benchtwin.club;

/**
 * One step of a plan.
 * @param kind    what kind it is
 * @param words   what to do, in bench words
 * @param inShort the same for a narrow column, such as {@code tip 12.7 mm}: no capital, no full stop
 * @param minutes bench minutes
 */
public record Step(StepKind kind, String words, String inShort, double minutes) {

    /**
     * A step whose kind says it all in short.
     * @param kind    what kind it is
     * @param words   what to do, in bench words
     * @param minutes bench minutes
     */
    public Step(StepKind kind, String words, double minutes) {
        this(kind, words, kind.word(), minutes);
    }
}
