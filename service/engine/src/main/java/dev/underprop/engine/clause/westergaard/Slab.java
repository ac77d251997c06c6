package dev.underprop.engine.clause.westergaard;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/**
 * A slab on ground that gives in proportion to pressure, Poisson's ratio 0.15.
 *
 * @param thickness h (m), positive
 * @param modulus E of the concrete (Pa), positive
 * @param subgrade k (N/m³), positive
 */
public record Slab(double thickness, double modulus, double subgrade) {

    /** Where a load stands on a slab. */
    public enum Place {
        INTERIOR(8),
        EDGE(1 / 0.431),
        CORNER(1 / 1.205);

        private final double spread;

        Place(double spread) {
            this.spread = spread;
        }
    }

    /** Poisson's ratio that the constants below hold for. */
    public static final double POISSON = 0.15;

    private static final String BOOK = "Huang, Pavement Analysis and Design";
    private static final Citation STIFFNESS = Citation.remembered(BOOK, "2nd edition", "4.2.1, relative stiffness");
    private static final Citation INTERIOR = Citation.remembered(BOOK, "2nd edition", "4.2.1, interior loading");
    private static final Citation EDGE = Citation.remembered(BOOK, "2nd edition", "4.2.1, edge loading, circle");
    private static final Citation CORNER = Citation.remembered(BOOK, "2nd edition", "4.2.1, corner loading");

    public Slab {
        Admissible.positive(thickness, "h");
        Admissible.positive(modulus, "E");
        Admissible.positive(subgrade, "k");
    }

    /** Radius of relative stiffness l (m). */
    public Cited stiffnessRadius() {
        double cube = thickness * thickness * thickness;
        double fourth = modulus * cube / (12 * (1 - POISSON * POISSON) * subgrade);
        return new Cited(Math.sqrt(Math.sqrt(fourth)), "l", STIFFNESS);
    }

    /**
     * Whether a round load is small enough for the rules below: a radius of at most 0.3 l. Where to stop is common
     * practice without a source; a corner has no stress at all from 0.56 l on, by its formula.
     */
    public boolean holdsFor(double radius) {
        return radius <= 0.3 * relative();
    }

    /** Radius b (m) that stands for a round load of radius a (m). */
    public Cited resistingRadius(double radius) {
        double b = Admissible.positive(radius, "a") >= 1.724 * thickness
                ? radius
                : Math.sqrt(1.6 * radius * radius + thickness * thickness) - 0.675 * thickness;
        return new Cited(b, "b", INTERIOR);
    }

    /** Greatest tension (Pa) under a load (N) of radius a (m) far from edges. */
    public Cited interior(double load, double radius) {
        double b = resistingRadius(radius).value();
        double stress = 0.316 * unit(load) * (4 * StrictMath.log10(relative() / b) + 1.069);
        return new Cited(stress, "sigma i", INTERIOR);
    }

    /** Greatest tension (Pa) under a load (N) of radius a (m) that touches an edge. */
    public Cited edge(double load, double radius) {
        double a = Admissible.positive(radius, "a");
        double stress = 0.803 * unit(load) * (4 * StrictMath.log10(relative() / a) + 0.666 * a / relative() - 0.034);
        return new Cited(stress, "sigma e", EDGE);
    }

    /** Greatest tension (Pa), at the top, from a load (N) of radius a (m) in a corner. */
    public Cited corner(double load, double radius) {
        double side = 1.772 * Admissible.positive(radius, "a") / relative();
        double stress = 3 * unit(load) * (1 - StrictMath.pow(side, 0.72));
        return new Cited(stress, "sigma c", CORNER);
    }

    /** Deflection (m) under a load (N) of radius a (m) far from edges. */
    public Cited interiorDeflection(double load, double radius) {
        double l = relative();
        double share = Admissible.positive(radius, "a") / l;
        double spread = (StrictMath.log(share / 2) - 0.673) * share * share / (2 * StrictMath.PI);
        return new Cited(load / (8 * subgrade * l * l) * (1 + spread), "w i", INTERIOR);
    }

    /**
     * Area (m²) over which a load would have to press evenly to press the ground as hard as it does under the point where it
     * stands: load over k times the deflection there, for a load on a point, which deflects most.
     */
    public double spread(Place place) {
        return place.spread * relative() * relative();
    }

    private double unit(double load) {
        return Admissible.notNegative(load, "load") / (thickness * thickness);
    }

    private double relative() {
        return stiffnessRadius().value();
    }
}
