package dev.underprop.wire.catalogue;

import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.standard.Citation;
import java.util.List;

/**
 * A species group.
 *
 * @param name as the tables write it
 * @param spellings other spellings, lower case
 * @param sizes which rule adjusts its values for size
 * @param gravity specific gravity G
 * @param citation where G stands
 */
public record Species(String name, List<String> spellings, WoodGrade.Sizes sizes, double gravity, Citation citation) {

    static final Citation WEIGHT = Citation.remembered("NDS Supplement", "2018", "3.1.3, at 19 % moisture");

    /** Water in the timber when its weight is computed (percent): the most that dry lumber holds. */
    private static final double MOISTURE = 19;

    /** One pound per cubic foot (N/m3). */
    private static final double PCF = 4.4482216152605 / (0.3048 * 0.3048 * 0.3048);

    public Species {
        spellings = List.copyOf(spellings);
    }

    /**
     * Weight of a volume of its timber at 19 % moisture (N/m3): 62.4 G / (1 + 0.009 G m) (1 + m/100) pounds per cubic
     * foot with the moisture m in percent. NDS Supplement 2018, 3.1.3; from memory.
     */
    public double unitWeight() {
        return 62.4 * gravity / (1 + 0.009 * gravity * MOISTURE) * (1 + MOISTURE / 100) * PCF;
    }
}
