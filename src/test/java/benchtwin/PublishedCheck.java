package benchtwin;

/**
 * One of our numbers against a printed one.
 * @param what      the quantity
 * @param source    where it is printed
 * @param printed   the printed value
 * @param ours      what this program computes
 * @param tolerance how far ours may be, same unit: half a unit in the printed value's last digit unless the reason says
 *                  otherwise
 * @param reason    why that tolerance
 */
public record PublishedCheck(String what, String source, double printed, double ours, double tolerance, String reason) {

    /**
     * How far ours is from the printed value.
     * @return ours less printed
     */
    public double difference() {
        return ours - printed;
    }

    /**
     * Whether ours is near enough.
     * @return true inside the tolerance
     */
    public boolean holds() {
        return Math.abs(difference()) <= tolerance;
    }
}
