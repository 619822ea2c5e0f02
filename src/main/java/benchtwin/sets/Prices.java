package benchtwin.sets;

/**
 * What it costs to use a part, besides the plan: 0 for a part nobody else wants, more the more sets want it. Millionths of a
 * squared tolerance. A banned part is not used at any price.
 * @param head  by head
 * @param shaft by shaft
 * @param empty the share of its weight at which leaving a slot empty counts, above 0; 1 but in proofs of the soft level
 */
record Prices(double[] head, double[] shaft, double empty) {

    /** The price of a part that is not to be had: at this price or above, whatever a slot would be worth. */
    static final double BANNED = 1e15;

    Prices {
        if (!(empty > 0)) {
            throw new IllegalArgumentException("share %s of the weight of an empty slot is not above 0".formatted(empty));
        }
    }

    /** Empty slots at their full weight. */
    Prices(double[] head, double[] shaft) {
        this(head, shaft, 1);
    }

    static Prices none(SetModel model) {
        return new Prices(new double[model.heads()], new double[model.shafts()]);
    }

    double of(Option option) {
        return head[option.head()] + shaft[option.shaft()];
    }

    boolean bans(Option option) {
        return head[option.head()] >= BANNED || shaft[option.shaft()] >= BANNED;
    }

    Prices copy() {
        return new Prices(head.clone(), shaft.clone(), empty);
    }

    /** The same prices, with empty slots at another share of their weight. */
    Prices withEmpty(double share) {
        return new Prices(head.clone(), shaft.clone(), share);
    }

    /** Prices under which the parts of a plan cannot be used. */
    void ban(Option option) {
        head[option.head()] = BANNED;
        shaft[option.shaft()] = BANNED;
    }

    /** The sum of all prices; a banned part adds nothing, as no plan uses it. */
    double sum() {
        return sum(head) + sum(shaft);
    }

    private static double sum(double[] prices) {
        double sum = 0;
        for (double price : prices) {
            if (price < BANNED) {
                sum += price;
            }
        }
        return sum;
    }
}
