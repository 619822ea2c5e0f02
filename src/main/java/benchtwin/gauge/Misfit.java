package benchtwin.gauge;

/**
 * What an accepted offset is off the network it is part of.
 * @param link  the accepted offset
 * @param value the link's offset less the network's, in the quantity's unit
 */
public record Misfit(Link link, double value) {

    /**
     * The misfit in standard uncertainties of the link.
     * @return with the misfit's sign
     */
    public double inUncertainties() {
        return value / link.standardUncertainty();
    }
}
