package benchtwin.sets;

/**
 * One way to fill a slot: a head, a shaft, and what their best plan comes to. Whole numbers, so that every part of the
 * program adds up to the same score.
 * @param slot      the slot
 * @param head      the head
 * @param shaft     the shaft
 * @param cost      miss² and effort of the plan, millionths of a squared tolerance
 * @param frequency residual, thousandths of a tolerance
 * @param swing     residual, thousandths of a tolerance
 * @param shaftMass residual, thousandths of a tolerance
 */
record Option(int slot, int head, int shaft, long cost, int frequency, int swing, int shaftMass) {

    int residual(int kind) {
        return switch (kind) {
            case 0 -> frequency;
            case 1 -> swing;
            default -> shaftMass;
        };
    }
}
