package dev.underprop.engine.assess;

import dev.underprop.engine.clause.asce7_16.Combination;
import dev.underprop.engine.clause.asce7_16.LoadKind;
import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.load.Pattern;
import dev.underprop.engine.statics.LoadCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Every combination with every live load pattern it can have. The first case is dead load alone.
 *
 * @param combinations the combinations that act, dead load alone first
 * @param cases the cases
 */
record Cases(List<Combination> combinations, List<Case> cases) {

    /** Name of the pattern of a combination without live load. */
    static final String NO_LIVE = "no live load";

    /**
     * One case.
     *
     * @param combination index of the combination
     * @param pattern name of the live load pattern
     * @param everywhere whether live load lies everywhere or not at all: the plain case of its combination
     * @param load for statics
     */
    record Case(int combination, String pattern, boolean everywhere, LoadCase load) {}

    /**
     * All cases of a situation.
     *
     * @param groups number of each pattern's live load, in the order of the patterns
     */
    static Cases of(LoadModel model, List<Combination> combinations, List<Pattern> patterns, int[] groups) {
        List<Case> cases = new ArrayList<>();
        for (int c = 0; c < combinations.size(); c++) {
            if (!hasLive(combinations.get(c), patterns)) {
                cases.add(new Case(c, NO_LIVE, true, load(model, combinations.get(c), LoadModel.ABSENT)));
            }
        }
        // Pattern by pattern: statics then keeps no more than one pattern's answer.
        for (int p = 0; p < patterns.size(); p++) {
            for (int c = 0; c < combinations.size(); c++) {
                if (hasLive(combinations.get(c), patterns)) {
                    LoadCase load = load(model, combinations.get(c), groups[p]);
                    cases.add(new Case(c, patterns.get(p).name(), p == 0, load));
                }
            }
        }
        return new Cases(List.copyOf(combinations), List.copyOf(cases));
    }

    private static boolean hasLive(Combination combination, List<Pattern> patterns) {
        return combination.factor(LoadKind.LIVE) > 0 && !patterns.isEmpty();
    }

    private static LoadCase load(LoadModel model, Combination combination, int live) {
        int[] units = new int[4];
        double[] factors = new double[4];
        int n = 0;
        n = put(units, factors, n, model.dead(), combination.factor(LoadKind.DEAD));
        n = put(units, factors, n, model.roofLive(), combination.factor(LoadKind.ROOF_LIVE));
        n = put(units, factors, n, model.snow(), combination.factor(LoadKind.SNOW));
        n = put(units, factors, n, live, combination.factor(LoadKind.LIVE));
        return new LoadCase(Arrays.copyOf(units, n), Arrays.copyOf(factors, n));
    }

    private static int put(int[] units, double[] factors, int n, int unit, double factor) {
        if (unit == LoadModel.ABSENT || factor == 0) {
            return n;
        }
        units[n] = unit;
        factors[n] = factor;
        return n + 1;
    }
}
