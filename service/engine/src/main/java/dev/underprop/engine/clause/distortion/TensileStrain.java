package dev.underprop.engine.clause.distortion;

import dev.underprop.engine.standard.Citation;

/** Categories of damage to walls by the tensile strain that movements bring; for judging cracks that come during a lift. */
public enum TensileStrain {
    NEGLIGIBLE("negligible", 0.0005, 0.0001),
    VERY_SLIGHT("very slight", 0.00075, 0.001),
    SLIGHT("slight", 0.0015, 0.005),
    MODERATE("moderate", 0.003, 0.015),
    SEVERE("severe", Double.POSITIVE_INFINITY, 0.025);

    /** Where the strains and crack widths stand. */
    public static final Citation CITATION = Citation.read(
            "Boscardin and Cording",
            "1989",
            "table of limiting tensile strain, after Burland 1977 (read in a public copy)");

    private final String title;
    private final double strain;
    private final double crack;

    TensileStrain(String title, double strain, double crack) {
        this.title = title;
        this.strain = strain;
        this.crack = crack;
    }

    public String title() {
        return title;
    }

    /** Greatest tensile strain of the category. */
    public double strain() {
        return strain;
    }

    /** Greatest width of a crack that goes with it (m). */
    public double crack() {
        return crack;
    }
}
