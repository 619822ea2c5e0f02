package benchtwin.mechanics;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Chebyshev–Lobatto nodes on [−1, 1] and the matrix that integrates a function given at them from −1 up to each node,
 * exact for polynomials through all nodes.
 */
final class PanelRule {

    /** Nodes of one panel. Ten keep a shaft's frequency within 1e-4 cpm; see BeamPropertyTest. */
    static final int NODES = 10;
    /** Node positions on [−1, 1], ascending. */
    static final double[] X = new double[NODES];
    /** CUMULATIVE[j·NODES + i] weighs the value at node j in the integral from −1 to node i. */
    static final double[] CUMULATIVE = new double[NODES * NODES];
    /** WHOLE[j] weighs the value at node j in the integral over the whole panel. */
    static final double[] WHOLE = new double[NODES];

    static {
        for (int i = 0; i < NODES; i++) {
            X[i] = -Math.cos(Math.PI * i / (NODES - 1));
        }
        GaussIntegratorFactory factory = new GaussIntegratorFactory();
        for (int i = 1; i < NODES; i++) {
            GaussIntegrator rule = factory.legendre(NODES, -1, X[i]);
            for (int j = 0; j < NODES; j++) {
                int node = j;
                CUMULATIVE[j * NODES + i] = rule.integrate(x -> lagrange(node, x));
            }
        }
        for (int j = 0; j < NODES; j++) {
            WHOLE[j] = CUMULATIVE[j * NODES + NODES - 1];
        }
    }

    private PanelRule() {
    }

    private static double lagrange(int node, double x) {
        double product = 1;
        for (int k = 0; k < NODES; k++) {
            if (k != node) {
                product *= (x - X[k]) / (X[node] - X[k]);
            }
        }
        return product;
    }
}
