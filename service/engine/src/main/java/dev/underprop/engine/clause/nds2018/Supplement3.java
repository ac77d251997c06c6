package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** NDS Supplement, chapter 3: section properties and weight. */
public final class Supplement3 {

    /** Weight of water in the formula (N/m³), 62.4 pcf. */
    private static final double WATER = 62.4 * Units.PCF;

    private static final Citation WEIGHT = Citation.remembered("NDS Supplement", "2018", "3.1.3");

    private Supplement3() {}

    /**
     * Weight of wood by volume (N/m³): 62.4 pcf · G/(1 + G·0.009·m) · (1 + m/100).
     *
     * @param gravity specific gravity G on oven-dry weight and volume, positive
     * @param moisture content m (per cent), not negative
     */
    public static Cited weight(double gravity, double moisture) {
        Admissible.positive(gravity, "G");
        Admissible.notNegative(moisture, "moisture content");
        double volume = 1 + gravity * 0.009 * moisture;
        return new Cited(WATER * gravity / volume * (1 + moisture / 100), "γ", WEIGHT);
    }
}
