package benchtwin.samples;

import benchtwin.club.ShaftCondition;

/** Makes shafts of a line, each with its own scatter. Scatter: common practice, no source. */
final class ShaftMaker {

    private static final double CPM_SD = 1.8;
    private static final double CPM_MOST = 4;
    private static final double MASS_SD_SHARE = 0.008;
    private static final double BALANCE_SD_SHARE = 0.004;

    private final Draw draw;

    ShaftMaker(Draw draw) {
        this.draw = draw;
    }

    ShaftDraft make(ShaftLine line, String madeFor) {
        ShaftDraft shaft = new ShaftDraft(line, madeFor);
        double mass = shaft.sold.massG();
        shaft.rawMassG = draw.near(mass, mass * MASS_SD_SHARE, mass * MASS_SD_SHARE * 2.5);
        double share = draw.near(line.balanceFraction(), BALANCE_SD_SHARE, BALANCE_SD_SHARE * 2.5);
        shaft.rawBalanceMm = share * shaft.rawMm();
        shaft.rawCpm = draw.near(shaft.sold.cpm(), CPM_SD, CPM_MOST);
        shaft.rawTorqueDeg = draw.near(shaft.sold.torqueDeg(), 0.1, 0.3);
        shaft.gaugeErrorCpm = draw.near(0, 0.3, 0.8);
        return shaft;
    }

    /** A shaft that was in a club: trimmed at the tip by eighths of an inch, cut at the butt to a club's length. */
    ShaftDraft pulled(ShaftLine line, String madeFor, double tipCutIn, double buttCutIn) {
        ShaftDraft shaft = make(line, madeFor);
        shaft.tipCutIn = tipCutIn;
        shaft.buttCutIn = Draw.round(buttCutIn, 2);
        shaft.condition = ShaftCondition.PULLED;
        shaft.pulls = draw.chance(0.25) ? 2 : 1;
        return shaft;
    }
}
