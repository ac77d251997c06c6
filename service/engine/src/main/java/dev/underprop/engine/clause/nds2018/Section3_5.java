package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.material.Moisture;
import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section 3.5: bending members, deflection. */
public final class Section3_5 {

    private static final Citation LONG_TERM = Citation.read("NDS", "2018", "3.5.2");

    private Section3_5() {}

    /**
     * Time dependent deformation factor Kcr of sawn lumber: 1.5 seasoned and in dry service, 2.0 unseasoned or in wet
     * service.
     *
     * @param seasoned whether the wood was dry when first loaded
     */
    public static Cited creep(Moisture moisture, boolean seasoned) {
        return new Cited(moisture == Moisture.DRY && seasoned ? 1.5 : 2.0, "Kcr", LONG_TERM);
    }

    /**
     * Total deflection with creep, ΔT = Kcr·ΔLT + ΔST (m).
     *
     * @param creep Kcr, at least 1
     * @param longTerm immediate deflection under the lasting part of the load, ΔLT (m)
     * @param shortTerm deflection under the rest, ΔST (m)
     */
    public static Cited totalDeflection(double creep, double longTerm, double shortTerm) {
        if (Admissible.finite(creep, "Kcr") < 1) {
            throw new IllegalArgumentException("Kcr must be at least 1, got " + creep);
        }
        return new Cited(creep * longTerm + shortTerm, "ΔT", LONG_TERM);
    }
}
