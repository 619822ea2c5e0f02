package benchtwin.bend;

/** Counts how heads came out. */
public final class BendTally {

    private final int[] byBends;
    private int heads;
    private long bends;
    private int passed;
    private int right;
    private int stopped;

    BendTally(int mostBends) {
        byBends = new int[mostBends + 1];
    }

    void head(int taken, boolean passedFarEnd, boolean endedRight, boolean stoppedEarly) {
        byBends[taken]++;
        heads++;
        bends += taken;
        passed += passedFarEnd ? 1 : 0;
        right += endedRight ? 1 : 0;
        stopped += stoppedEarly ? 1 : 0;
    }

    /**
     * How many heads were bent.
     * @return 1 or more
     */
    public int heads() {
        return heads;
    }

    /**
     * Bends a head, on average.
     * @return 0 or more
     */
    public double meanBends() {
        return (double) bends / heads;
    }

    /**
     * The share of heads that took so many bends.
     * @param least at least so many
     * @param most  at most so many
     * @return 0 to 1
     */
    public double share(int least, int most) {
        int sum = 0;
        for (int k = least; k <= Math.min(most, byBends.length - 1); k++) {
            sum += byBends[k];
        }
        return (double) sum / heads;
    }

    /**
     * The share of heads that truly passed the far end of the tolerance at some bend.
     * @return 0 to 1
     */
    public double passedShare() {
        return (double) passed / heads;
    }

    /**
     * The share of heads that truly ended within tolerance.
     * @return 0 to 1
     */
    public double rightShare() {
        return (double) right / heads;
    }

    /**
     * The share of heads left because no ask was safe enough.
     * @return 0 to 1
     */
    public double stoppedShare() {
        return (double) stopped / heads;
    }
}
