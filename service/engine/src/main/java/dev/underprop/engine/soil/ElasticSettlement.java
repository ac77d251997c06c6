package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import java.util.List;

/** Settlement of bases on elastic ground. */
public final class ElasticSettlement {

    private static final String DAS = "Das, Principles of Foundation Engineering";
    private static final Citation LAYER =
            Citation.read(DAS, "companion edition", "5.4, F1 and F2 by Steinbrenner (1934)");
    private static final Citation HALF_SPACE = Citation.read(
            "FHWA-SA-02-054, Shallow Foundations", "2002", "Table 5-12, flexible bases by the closed form");
    private static final Citation RIGID = Citation.read("NIST GCR 12-917-21", "2012", "Table 2-2a, Pais and Kausel");

    /** A rigid base settles by so much of what the centre of a flexible one does. */
    private static final double STIFF = 0.93;

    private ElasticSettlement() {}

    /**
     * A layer of ground below a base.
     *
     * @param modulus Es (Pa), positive
     * @param thickness (m), positive
     */
    public record Layer(double modulus, double thickness) {}

    /** Mean modulus of layers by their thickness (Pa). */
    public static Cited mean(List<Layer> layers) {
        double sum = 0;
        double thickness = 0;
        for (Layer layer : layers) {
            sum += layer.modulus() * layer.thickness();
            thickness += layer.thickness();
        }
        return new Cited(sum / thickness, "Es", LAYER);
    }

    /** F1 of a corner, m = length over breadth, n = thickness over breadth. */
    public static Cited first(double m, double n) {
        double mm = m * m;
        double nn = n * n;
        double a =
                m * StrictMath.log((1 + Math.sqrt(mm + 1)) * Math.sqrt(mm + nn) / (m * (1 + Math.sqrt(mm + nn + 1))));
        double b = StrictMath.log((m + Math.sqrt(mm + 1)) * Math.sqrt(1 + nn) / (m + Math.sqrt(mm + nn + 1)));
        return new Cited((a + b) / StrictMath.PI, "F1", LAYER);
    }

    /** F2 of a corner. */
    public static Cited second(double m, double n) {
        double inner = m / (n * Math.sqrt(m * m + n * n + 1));
        return new Cited(n / (2 * StrictMath.PI) * StrictMath.atan(inner), "F2", LAYER);
    }

    /**
     * Settlement of a rigid rectangle on a layer (m).
     *
     * @param pressure (Pa)
     * @param breadth B (m), positive
     * @param length L (m), not less
     * @param thickness of the layer (m), positive
     * @param modulus Es (Pa), positive
     * @param poisson Poisson's ratio
     * @param embedment factor If by Fox, 1 where depth is not counted
     */
    public static Cited rigid(
            double pressure,
            double breadth,
            double length,
            double thickness,
            double modulus,
            double poisson,
            double embedment) {
        double half = breadth / 2;
        double m = length / breadth;
        double n = thickness / half;
        double shape = first(m, n).value()
                + (1 - 2 * poisson) / (1 - poisson) * second(m, n).value();
        double centre = pressure * 4 * half * (1 - poisson * poisson) / modulus * shape * embedment;
        return new Cited(STIFF * centre, "S", LAYER);
    }

    /** Cd of the centre of a flexible rectangle on ground without end, s = Cd q B (1 - nu²)/E. @param m length over breadth */
    public static Cited centre(double m) {
        return new Cited(2 * corner(m).value(), "Cd", HALF_SPACE);
    }

    /** Cd of a corner of it. */
    public static Cited corner(double m) {
        double root = Math.sqrt(1 + m * m);
        double sum = m * StrictMath.log((1 + root) / m) + StrictMath.log(m + root);
        return new Cited(sum / StrictMath.PI, "Cd", HALF_SPACE);
    }

    /** Cd of the centre of a flexible circle, with its diameter for B. */
    public static Cited circle() {
        return new Cited(1, "Cd", HALF_SPACE);
    }

    /** Cd of a rigid circle. */
    public static Cited rigidCircle() {
        return new Cited(StrictMath.PI / 4, "Cd", HALF_SPACE);
    }

    /**
     * Stiffness of a rigid rectangle on ground without end (N/m).
     *
     * @param breadth whole shorter side (m), positive
     * @param length whole longer side (m)
     * @param modulus E (Pa), positive
     * @param poisson Poisson's ratio
     */
    public static Cited stiffness(double breadth, double length, double modulus, double poisson) {
        double shear = modulus / (2 * (1 + poisson));
        double shape = 3.1 * StrictMath.pow(length / breadth, 0.75) + 1.6;
        return new Cited(shear * breadth / 2 / (1 - poisson) * shape, "Kz", RIGID);
    }

    /**
     * How far the surface of ground without end sinks at a point for each newton on a flexible rectangle, times E/(1 - nu²)
     * (1/m): four rectangles with a corner at the point.
     *
     * @param along size in x (m), positive
     * @param across size in y (m), positive
     * @param x from its middle to the point (m)
     * @param y the same in y (m)
     */
    public static Cited beside(double along, double across, double x, double y) {
        double right = along / 2 - x;
        double left = along / 2 + x;
        double above = across / 2 - y;
        double below = across / 2 + y;
        double sum = part(right, above) + part(left, above) + part(right, below) + part(left, below);
        return new Cited(sum / (along * across), "w E / (P (1 - nu²))", HALF_SPACE);
    }

    private static double part(double one, double other) {
        double a = Math.abs(one);
        double b = Math.abs(other);
        if (a == 0 || b == 0) {
            return 0;
        }
        double diagonal = Math.sqrt(a * a + b * b);
        double sum = a * StrictMath.log((b + diagonal) / a) + b * StrictMath.log((a + diagonal) / b);
        return (one < 0 == other < 0 ? sum : -sum) / StrictMath.PI;
    }
}
