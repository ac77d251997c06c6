package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.clause.asce7_16.LoadKind;
import dev.underprop.engine.material.Moisture;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section 2.3: adjustment of reference design values, for load duration and temperature. */
public final class Section2_3 {

    private static final Citation DURATION = Citation.read("NDS", "2018", "Table 2.3.2");
    private static final Citation TEMPERATURE = Citation.remembered("NDS", "2018", "Table 2.3.3");

    private Section2_3() {}

    /**
     * Load duration factor CD, Table 2.3.2: that of the shortest-lasting load of the combination, which is checked beside
     * all others. Never applied to compression perpendicular to grain, E or Emin. Above 1.15 it needs a stated reason.
     */
    public static Cited loadDuration(LoadDuration duration) {
        return new Cited(duration.factor(), "CD", DURATION);
    }

    /**
     * How long a kind of load lasts when the plan gives no reason for less. Table 2.3.2 would let roof live load count as
     * lasting seven days (1.25), wind and earthquake as ten minutes (1.6); here they count as two months (1.15), which
     * is the safe side.
     */
    public static LoadDuration duration(LoadKind kind) {
        return switch (kind) {
            case DEAD -> LoadDuration.PERMANENT;
            case LIVE -> LoadDuration.TEN_YEARS;
            case ROOF_LIVE, SNOW, WIND, SEISMIC -> LoadDuration.TWO_MONTHS;
        };
    }

    /**
     * Temperature factor Ct, Table 2.3.3.
     *
     * @param value which design value it is for
     * @param temperature sustained exposure
     * @param moisture service condition
     */
    public static Cited temperature(DesignValue value, Temperature temperature, Moisture moisture) {
        return new Cited(temperatureFactor(value, temperature, moisture), "Ct", TEMPERATURE);
    }

    private static double temperatureFactor(DesignValue value, Temperature temperature, Moisture moisture) {
        boolean mild = value == DesignValue.TENSION || value == DesignValue.MODULUS || value == DesignValue.MODULUS_MIN;
        return switch (temperature) {
            case ORDINARY -> 1.0;
            case WARM -> mild ? 0.9 : moisture == Moisture.DRY ? 0.8 : 0.7;
            case HOT -> mild ? 0.9 : moisture == Moisture.DRY ? 0.7 : 0.5;
        };
    }
}
