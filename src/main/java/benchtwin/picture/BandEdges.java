package benchtwin.picture;

import java.util.stream.DoubleStream;

/**
 * Where the edges of an upright tolerance band are.
 * @param leftX  px
 * @param rightX px, not below {@code leftX}
 */
record BandEdges(double leftX, double rightX) {

    /** Nearer than this touches. */
    private static final double CLEAR_PX = 8;
    /** Words that are moved go a little farther. */
    private static final double AWAY_PX = 10;

    /**
     * Places for words that cross neither edge: where they would like to be, if that will do, or else to the left of the
     * band, to the right of it, and within it when they fit.
     * @param x       where the words would like to start
     * @param widthPx how wide they are
     * @return starts, px
     */
    DoubleStream clearOfEdges(double x, double widthPx) {
        if (!touches(x, widthPx) || holds(x, widthPx)) {
            return DoubleStream.of(x);
        }
        DoubleStream outside = DoubleStream.of(leftX - AWAY_PX - widthPx, rightX + AWAY_PX);
        double roomPx = rightX - leftX - 2 * AWAY_PX;
        if (widthPx > roomPx) {
            return outside;
        }
        double within = Math.max(leftX + AWAY_PX, Math.min(rightX - AWAY_PX - widthPx, x));
        return DoubleStream.concat(outside, DoubleStream.of(within));
    }

    /** Whether the words come nearer than a few px to the band. */
    boolean touches(double x, double widthPx) {
        return x + widthPx > leftX - CLEAR_PX && x < rightX + CLEAR_PX;
    }

    /** Whether the words lie on the band, well within its edges. */
    boolean holds(double x, double widthPx) {
        return x >= leftX + CLEAR_PX && x + widthPx <= rightX - CLEAR_PX;
    }
}
