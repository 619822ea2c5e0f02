package benchtwin.picture;

import java.awt.Graphics2D;
import java.util.List;

/** The marks that all pictures of a set share, each only where it is used. */
final class SetLegend {

    private SetLegend() {
    }

    /** Upright marks stand on an upright scale, the others lie. */
    static Legend of(List<SetPoint> clubs, boolean upright) {
        Legend legend = new Legend();
        boolean whiskers = clubs.stream().anyMatch(club -> club.value().isPresent() && club.standardUncertainty() > 0);
        if (clubs.stream().anyMatch(club -> club.value().isPresent())) {
            legend.add(whiskers && !upright ? 40 : 14, (g, x, width, y) -> {
                if (whiskers) {
                    whisker(g, x, width, y, upright);
                }
                Marks.dot(g, x + width / 2, y);
            }, whiskers ? "predicted, ± 2 standard uncertainties" : "predicted");
        }
        if (clubs.stream().anyMatch(club -> club.side() != 0)) {
            legend.add(46, (g, x, width, y) -> {
                Marks.arrow(g, x + 10, y, upright ? 0 : -1, upright ? 1 : 0);
                Marks.arrow(g, x + width - 10, y, upright ? 0 : 1, upright ? -1 : 0);
            }, "out of tolerance, too low or too high");
        }
        return legend;
    }

    static void addNotBuilt(Legend legend, List<SetPoint> clubs) {
        if (clubs.stream().anyMatch(club -> !club.built() && club.target().isPresent())) {
            legend.add(20, (g, x, width, y) -> Marks.openDiamond(g, x + width / 2, y), "target of a club not built");
        }
    }

    private static void whisker(Graphics2D g, double x, double width, double y, boolean upright) {
        if (upright) {
            Marks.whiskerUp(g, x + width / 2, y - 12, y + 12);
        } else {
            Marks.whiskerAcross(g, x, x + width, y);
        }
    }
}
