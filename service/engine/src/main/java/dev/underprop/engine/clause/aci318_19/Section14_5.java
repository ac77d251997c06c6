package dev.underprop.engine.clause.aci318_19;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section 14.5: design strength of plain concrete in bending and shear, phi = 0.60 (21.2.1) included. */
public final class Section14_5 {

    /** Strength reduction factor of plain concrete. */
    public static final double PHI = 0.60;

    private static final Citation FLEXURE = Citation.remembered("ACI", "318-19", "14.5.2.1(a) with Table 21.2.1");
    private static final Citation ONE_WAY = Citation.remembered("ACI", "318-19", "Table 14.5.5.1(a) with Table 21.2.1");
    private static final Citation TWO_WAY = Citation.remembered("ACI", "318-19", "Table 14.5.5.1(b) with Table 21.2.1");

    private Section14_5() {}

    /** Design stress of the tension face in bending, phi 5 lambda root f'c (Pa); times the section modulus, a moment. */
    public static Cited flexure(double strength, double lambda) {
        return new Cited(PHI * 5 * lambda * Psi.root(strength), "phi 5 lambda root f'c", FLEXURE);
    }

    /**
     * Design one-way shear (N): phi 4/3 lambda root f'c b h.
     *
     * @param strength f'c (Pa)
     * @param lambda factor for lightweight concrete
     * @param width b (m), positive
     * @param depth h (m), positive
     */
    public static Cited oneWay(double strength, double lambda, double width, double depth) {
        double area = Admissible.positive(width, "b") * Admissible.positive(depth, "h");
        return new Cited(PHI * 4 / 3 * lambda * Psi.root(strength) * area, "phi Vn", ONE_WAY);
    }

    /**
     * Design two-way shear (N): phi (1 + 2/beta) (4/3) lambda root f'c bo h, at most phi 2.66 lambda root f'c bo h.
     *
     * @param strength f'c (Pa)
     * @param lambda factor for lightweight concrete
     * @param beta long over short side of the loaded area, at least 1
     * @param around bo (m), positive
     * @param depth h (m), positive
     */
    public static Cited twoWay(double strength, double lambda, double beta, double around, double depth) {
        if (!(beta >= 1)) {
            throw new IllegalArgumentException("beta must be at least 1");
        }
        double factor = Math.min((1 + 2 / beta) * 4 / 3, 2.66);
        double area = Admissible.positive(around, "bo") * Admissible.positive(depth, "h");
        return new Cited(PHI * factor * lambda * Psi.root(strength) * area, "phi Vn", TWO_WAY);
    }
}
