package dev.underprop.engine.assess;

import dev.underprop.engine.clause.asce7_16.Combination;
import dev.underprop.engine.clause.asce7_16.LoadKind;
import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.load.Pattern;
import dev.underprop.engine.statics.LoadCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Makes every combination with every live load pattern it can have. The first case is dead load alone. */
final class Cases {

    /** Name of the pattern of a combination without live load. */
    static final String NO_LIVE = "no live load";

    private Cases() {}

    /** What a case is for. */
    enum Level {
        /** Everything that is judged by allowable stress. */
        ALLOWABLE,
        /** Concrete. */
        STRENGTH,
        /** Whether anything tips or lifts off, 0.6 of dead load against all that would make it. */
        STABILITY
    }

    /**
     * One case.
     *
     * @param level what it is for
     * @param combination index of the combination among those of its level; -1 for stability
     * @param name of the combination
     * @param pattern name of the live load pattern
     * @param everywhere whether live load lies everywhere or not at all: the plain case of its combination
     * @param load for statics
     */
    record Case(Level level, int combination, String name, String pattern, boolean everywhere, LoadCase load) {}

    /**
     * All cases of allowable stress and strength combinations.
     *
     * @param groups number of each pattern's live load, in the order of the patterns
     */
    static List<Case> of(
            LoadModel model, Level level, List<Combination> combinations, List<Pattern> patterns, int[] groups) {
        List<Case> cases = new ArrayList<>();
        for (int c = 0; c < combinations.size(); c++) {
            if (!hasLive(combinations.get(c), patterns)) {
                cases.add(one(level, c, combinations.get(c), NO_LIVE, true, model, LoadModel.ABSENT));
            }
        }
        // Pattern by pattern: statics then keeps no more than one pattern's answer.
        for (int p = 0; p < patterns.size(); p++) {
            for (int c = 0; c < combinations.size(); c++) {
                if (hasLive(combinations.get(c), patterns)) {
                    cases.add(one(level, c, combinations.get(c), patterns.get(p).name(), p == 0, model, groups[p]));
                }
            }
        }
        return cases;
    }

    private static Case one(
            Level level, int c, Combination combination, String pattern, boolean plain, LoadModel model, int live) {
        return new Case(level, c, combination.name(), pattern, plain, load(model, combination, live));
    }

    private static boolean hasLive(Combination combination, List<Pattern> patterns) {
        return combination.factor(LoadKind.LIVE) > 0 && !patterns.isEmpty();
    }

    private static LoadCase load(LoadModel model, Combination combination, int live) {
        int[] units = new int[6];
        double[] factors = new double[6];
        int n = 0;
        n = put(units, factors, n, model.dead(), combination.factor(LoadKind.DEAD));
        n = put(units, factors, n, model.roofLive(), combination.factor(LoadKind.ROOF_LIVE));
        n = put(units, factors, n, model.snow(), combination.factor(LoadKind.SNOW));
        n = put(units, factors, n, model.wind(), combination.factor(LoadKind.WIND));
        n = put(units, factors, n, model.seismic(), combination.factor(LoadKind.SEISMIC));
        n = put(units, factors, n, live, combination.factor(LoadKind.LIVE));
        return new LoadCase(Arrays.copyOf(units, n), Arrays.copyOf(factors, n));
    }

    static int put(int[] units, double[] factors, int n, int unit, double factor) {
        if (unit == LoadModel.ABSENT || factor == 0) {
            return n;
        }
        units[n] = unit;
        factors[n] = factor;
        return n + 1;
    }
}
