package benchtwin.mechanics;

/**
 * How a shaft's bending stiffness varies along it, up to one scale. Positions z are from the tip of the raw shaft, mm.
 */
interface StiffnessShape {

    /**
     * Relative stiffness.
     * @param z from the tip of the raw shaft, mm
     * @return above 0, 1 at the butt of the raw shaft for the default shape
     */
    double at(double z);

    /**
     * Places where the shape has a corner, so that a quadrature can meet there.
     * @return from the tip of the raw shaft, mm, ascending
     */
    double[] cornersMm();
}
