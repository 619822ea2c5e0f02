package benchtwin.rules;

import benchtwin.club.Category;

/** Which clubs a limit is for. */
public enum LimitScope {
    /** Every club. */
    EVERY_CLUB,
    /** Every club but a putter. */
    ALL_BUT_PUTTERS,
    /** Drivers, fairway woods, and hybrids read as woods. */
    WOODS,
    /** Putters. */
    PUTTERS;

    /**
     * Whether a club is among them.
     * @param category   the club's
     * @param readAsWood whether its angles are read as a wood's, which tells one hybrid from another
     * @return whether the limit is for it
     */
    public boolean covers(Category category, boolean readAsWood) {
        return switch (this) {
            case EVERY_CLUB -> true;
            case ALL_BUT_PUTTERS -> category != Category.PUTTER;
            case WOODS -> isWood(category, readAsWood);
            case PUTTERS -> category == Category.PUTTER;
        };
    }

    static boolean isWood(Category category, boolean readAsWood) {
        return category.isDriverOrFairway() || category == Category.HYBRID && readAsWood;
    }
}
