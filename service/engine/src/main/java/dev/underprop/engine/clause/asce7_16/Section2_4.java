package dev.underprop.engine.clause.asce7_16;

import dev.underprop.engine.clause.nds2018.Section2.Duration;
import dev.underprop.engine.standard.Citation;
import java.util.ArrayList;
import java.util.List;

/** Section 2.4: combining nominal loads using allowable stress design. Wind and seismic combinations are not here yet. */
public final class Section2_4 {

    /** The basic combinations. */
    public static final Citation COMBINATIONS = Citation.read("ASCE 7", "16", "2.4.1");

    /**
     * Snow at strength level times this is snow at allowable-stress level: ASCE 7-22, section 2.4.1, whose combinations
     * take 0.7 S where those of the 2016 edition take S.
     */
    public static final double STRENGTH_SNOW = 0.7;

    private Section2_4() {}

    /**
     * Combinations 1 to 4 of 2.4.1 for the loads present, dead load alone first. A combination that repeats another when
     * absent loads are struck out, or that another covers with the same duration, is left out. Roof live load is given
     * the duration of snow: the longer duration it might claim less strictly needs a stated reason.
     *
     * @param live whether there is floor live load
     * @param roofLive whether there is roof live load
     * @param snow whether there is snow
     */
    public static List<Combination> gravity(boolean live, boolean roofLive, boolean snow) {
        List<Combination> list = new ArrayList<>();
        list.add(new Combination("D", 1, 0, 0, 0, Duration.PERMANENT));
        if (live) {
            list.add(new Combination("D + L", 1, 1, 0, 0, Duration.TEN_YEARS));
        }
        if (roofLive) {
            list.add(new Combination("D + Lr", 1, 0, 1, 0, Duration.TWO_MONTHS));
        }
        if (snow) {
            list.add(new Combination("D + S", 1, 0, 0, 1, Duration.TWO_MONTHS));
        }
        if (live && roofLive) {
            list.add(new Combination("D + 0.75 L + 0.75 Lr", 1, 0.75, 0.75, 0, Duration.TWO_MONTHS));
        }
        if (live && snow) {
            list.add(new Combination("D + 0.75 L + 0.75 S", 1, 0.75, 0, 0.75, Duration.TWO_MONTHS));
        }
        return list;
    }
}
