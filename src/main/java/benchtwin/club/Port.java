package benchtwin.club;

/**
 * A weight port of a head.
 * @param type  which weights fit, matched against the weight's own port
 * @param massG the mass in it now, g, 0 when empty
 */
public record Port(String type, double massG) {

    public Port {
        if (!(massG >= 0)) {
            throw new IllegalArgumentException("port %s cannot hold %s g".formatted(type, massG));
        }
    }
}
