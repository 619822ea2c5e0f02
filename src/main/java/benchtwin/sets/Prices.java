package benchtwin.sets;

/**
 * What it costs to use a part, besides the plan: 0 for a part nobody else wants, more the more sets want it. Millionths of a
 * squared tolerance. A price so high that nobody pays it bans the part.
 * @param head  by head
 * @param shaft by shaft
 */
record Prices(double[] head, double[] shaft) {

    /** More than any plan is worth, less than leaving a club out. */
    static final double BANNED = 1e15;

    static Prices none(SetModel model) {
        return new Prices(new double[model.heads()], new double[model.shafts()]);
    }

    double of(Option option) {
        return head[option.head()] + shaft[option.shaft()];
    }

    Prices copy() {
        return new Prices(head.clone(), shaft.clone());
    }

    /** Prices under which the parts of a plan cannot be used. */
    void ban(Option option) {
        head[option.head()] = BANNED;
        shaft[option.shaft()] = BANNED;
    }

    /** The sum of all prices. */
    double sum() {
        double sum = 0;
        for (double price : head) {
            sum += price;
        }
        for (double price : shaft) {
            sum += price;
        }
        return sum;
    }
}
