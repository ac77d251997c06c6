package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.material.Treatment;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Outcome;
import java.util.List;

/** Section 4.3: adjustment of reference design values of sawn lumber. */
public final class Section4_3 {

    /** Which factors apply to which value. */
    public static final Citation TABLE_4_3_1 = Citation.remembered("NDS", "2018", "Table 4.3.1");

    private static final Citation INCISING = Citation.remembered("NDS", "2018", "Table 4.3.8");
    private static final Citation FIRE = Citation.remembered("NDS", "2018", "2.3.4");
    /** When the repetitive member factor is more than 1. */
    public static final Citation REPETITIVE = Citation.read("NDS", "2018", "4.3.9");

    private Section4_3() {}

    /**
     * Adjusted design value (Pa): the reference value times every factor of its row in Table 4.3.1. Each factor must be
     * there, once: one left out would count as 1 without anyone having said so.
     *
     * @param value which design value
     * @param grade its reference value
     * @param factors the row's factors in any order
     * @throws IllegalArgumentException for a factor that is missing, is there twice or does not belong to the value, such
     *     as CD with Fc⊥ or E, or is not positive
     */
    public static Cited adjusted(DesignValue value, WoodGrade grade, List<Cited> factors) {
        double product = value.of(grade);
        for (String symbol : value.factors()) {
            product *= factor(value, symbol, factors);
        }
        if (factors.size() != value.factors().size()) {
            throw new IllegalArgumentException(
                    value.symbol() + " takes the factors " + value.factors() + " and no others, each once");
        }
        return new Cited(product, value.adjustedSymbol(), TABLE_4_3_1);
    }

    private static double factor(DesignValue value, String symbol, List<Cited> factors) {
        for (Cited factor : factors) {
            if (factor.symbol().equals(symbol)) {
                return Admissible.positive(factor.value(), symbol);
            }
        }
        throw new IllegalArgumentException(value.symbol() + " needs the factor " + symbol);
    }

    /**
     * Incising factor Ci for wood incised to the pattern of 4.3.8; 1 for wood not incised. Refused for fire retardant
     * treatment: design values then come from the treater (2.3.4).
     */
    public static Outcome incising(DesignValue value, Treatment treatment) {
        return switch (treatment) {
            case NONE, PRESERVED -> Outcome.of(1, "Ci", INCISING);
            case INCISED -> Outcome.of(incised(value), "Ci", INCISING);
            case FIRE_RETARDANT ->
                new Outcome.Refused("the effect of fire retardant treatment is known to the treater alone", FIRE);
        };
    }

    private static double incised(DesignValue value) {
        return switch (value) {
            case MODULUS, MODULUS_MIN -> 0.95;
            case BEARING -> 1.0;
            default -> 0.80;
        };
    }

    /**
     * Repetitive member factor Cr: 1.15 for bending of dimension lumber 2 to 4 in thick (nominal), at least three members,
     * in contact or not more than 24 in apart on centres, joined by a floor or another element that spreads the load
     * between them; 1 otherwise.
     *
     * @param members how many run side by side
     * @param spacing greatest distance between neighbours on centres (m), positive; in contact: their thickness; infinite for
     *     one that has no neighbour
     * @param joined whether such an element joins them
     * @param thickness of one member (m), positive
     */
    public static Cited repetitive(int members, double spacing, boolean joined, double thickness) {
        if (!(spacing > 0)) {
            throw new IllegalArgumentException("spacing must be positive, got " + spacing);
        }
        boolean near = Units.atMost(spacing, 24 * Units.INCH);
        boolean applies = members >= 3 && near && joined && Lumber.isDimension(thickness);
        return new Cited(applies ? 1.15 : 1, "Cr", REPETITIVE);
    }
}
