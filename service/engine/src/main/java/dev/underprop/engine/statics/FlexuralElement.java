package dev.underprop.engine.statics;

/**
 * The slender beam element with cubic shape functions: deflection w (down) and slope dw/ds at each end.
 *
 * <p>Stiffness and consistent loads by integrating the shape functions exactly, so that nodal values are those of
 * Euler-Bernoulli theory for any load inside the element. Method: J. S. Przemieniecki, Theory of Matrix Structural
 * Analysis, 1968, section 5.6 (from memory).
 */
final class FlexuralElement {

    private FlexuralElement() {}

    /**
     * End forces of an element from its end movements, written with the chord's slope so that a short element that moves
     * as a rigid body gives no false force: shear and moment at each end are added to {@code out}.
     */
    static void addForces(
            double ei, double length, double w1, double s1, double w2, double s2, double[] out, int at1, int at2) {
        double chord = (w2 - w1) / length;
        double m1 = ei / length * (4 * (s1 - chord) + 2 * (s2 - chord));
        double m2 = ei / length * (2 * (s1 - chord) + 4 * (s2 - chord));
        double v = (m1 + m2) / length;
        out[at1] += v;
        out[at1 + 1] += m1;
        out[at2] -= v;
        out[at2 + 1] += m2;
    }

    /** Adds the consistent end loads of a uniform load over [a, b] of an element of the given length. */
    static void addUniform(double length, double a, double b, double intensity, double[] out, int at1, int at2) {
        double l = intensity * length;
        out[at1] += l * (n1(b / length) - n1(a / length));
        out[at1 + 1] += l * length * (n2(b / length) - n2(a / length));
        out[at2] += l * (n3(b / length) - n3(a / length));
        out[at2 + 1] += l * length * (n4(b / length) - n4(a / length));
    }

    /** Adds the consistent end loads of a force at distance a from the element's first end. */
    static void addPoint(double length, double a, double force, double[] out, int at1, int at2) {
        double t = a / length;
        double u = 1 - t;
        out[at1] += force * u * u * (1 + 2 * t);
        out[at1 + 1] += force * length * t * u * u;
        out[at2] += force * t * t * (3 - 2 * t);
        out[at2 + 1] -= force * length * t * t * u;
    }

    // Integrals of the four shape functions from 0 to t.
    private static double n1(double t) {
        return t - t * t * t + t * t * t * t / 2;
    }

    private static double n2(double t) {
        return t * t / 2 - 2 * t * t * t / 3 + t * t * t * t / 4;
    }

    private static double n3(double t) {
        return t * t * t - t * t * t * t / 2;
    }

    private static double n4(double t) {
        return -t * t * t / 3 + t * t * t * t / 4;
    }
}
