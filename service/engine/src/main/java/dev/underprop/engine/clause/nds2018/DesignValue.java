package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.material.WoodGrade;
import java.util.List;

/**
 * The design values of sawn lumber, each with the factors that Table 4.3.1 gives it for allowable stress design. The load
 * duration factor CD is not among those of compression perpendicular to grain, E and Emin.
 *
 * <p>Source: NDS 2018, Table 4.3.1, from memory. Deviation: CT of Emin (trusses, 4.4.2) is left out, which is safe as it
 * is never below 1.
 */
public enum DesignValue {
    /** Bending, Fb. */
    BENDING("Fb", "CD", "CM", "Ct", "CL", "CF", "Cfu", "Ci", "Cr"),
    /** Bending without CL and Cfu, Fb*, for the stability factor (3.3.3.8). */
    BENDING_STAR("Fb*", "CD", "CM", "Ct", "CF", "Ci", "Cr"),
    /** Tension parallel to grain, Ft. */
    TENSION("Ft", "CD", "CM", "Ct", "CF", "Ci"),
    /** Shear parallel to grain, Fv. */
    SHEAR("Fv", "CD", "CM", "Ct", "Ci"),
    /** Compression perpendicular to grain, Fc⊥. */
    BEARING("Fc⊥", "CM", "Ct", "Ci", "Cb"),
    /** Compression parallel to grain, Fc. */
    COMPRESSION("Fc", "CD", "CM", "Ct", "CF", "Ci", "CP"),
    /** Compression parallel to grain without CP, Fc*, for the column factor (3.7.1.5). */
    COMPRESSION_STAR("Fc*", "CD", "CM", "Ct", "CF", "Ci"),
    /** Modulus of elasticity, E. */
    MODULUS("E", "CM", "Ct", "Ci"),
    /** Modulus of elasticity for stability, Emin. */
    MODULUS_MIN("Emin", "CM", "Ct", "Ci");

    private final String symbol;
    private final List<String> factors;

    DesignValue(String symbol, String... factors) {
        this.symbol = symbol;
        this.factors = List.of(factors);
    }

    /** Symbol of the reference value, or of the starred value. */
    public String symbol() {
        return symbol;
    }

    /** Symbols of the factors, in the order of the table. */
    public List<String> factors() {
        return factors;
    }

    /** The reference value of a grade (Pa). */
    public double of(WoodGrade grade) {
        return switch (this) {
            case BENDING, BENDING_STAR -> grade.bending();
            case TENSION -> grade.tension();
            case SHEAR -> grade.shear();
            case BEARING -> grade.bearing();
            case COMPRESSION, COMPRESSION_STAR -> grade.compression();
            case MODULUS -> grade.modulus();
            case MODULUS_MIN -> grade.modulusMin();
        };
    }

    /** Symbol of the adjusted value: F'b for Fb; a starred value keeps its own. */
    String adjustedSymbol() {
        return symbol.endsWith("*") ? symbol : symbol.charAt(0) + "'" + symbol.substring(1);
    }
}
