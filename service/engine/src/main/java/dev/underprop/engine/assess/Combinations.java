package dev.underprop.engine.assess;

import dev.underprop.engine.clause.asce7_16.Combination;
import dev.underprop.engine.clause.asce7_16.LoadKind;
import dev.underprop.engine.clause.asce7_16.Section2_3;
import dev.underprop.engine.clause.asce7_16.Section2_4;
import dev.underprop.engine.load.LoadModel;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The combinations that a plan's loads can act in.
 *
 * @param gravity allowable stress, gravity alone, dead load first
 * @param allowable those and the ones with vertical wind and earthquake
 * @param strength for concrete
 */
record Combinations(List<Combination> gravity, List<Combination> allowable, List<Combination> strength) {

    static Combinations of(LoadModel model) {
        Set<LoadKind> kinds = present(model);
        List<Combination> gravity = Section2_4.gravity(kinds);
        List<Combination> allowable = new ArrayList<>(gravity);
        allowable.addAll(Section2_4.lateral(kinds));
        return new Combinations(gravity, allowable, Section2_3.strength(kinds));
    }

    int count() {
        return allowable.size() + strength.size();
    }

    private static Set<LoadKind> present(LoadModel model) {
        Set<LoadKind> kinds = EnumSet.of(LoadKind.DEAD);
        if (!model.cells().isEmpty()) {
            kinds.add(LoadKind.LIVE);
        }
        add(model.roofLive(), LoadKind.ROOF_LIVE, kinds);
        add(model.snow(), LoadKind.SNOW, kinds);
        add(model.wind(), LoadKind.WIND, kinds);
        add(model.seismic(), LoadKind.SEISMIC, kinds);
        return kinds;
    }

    private static void add(int unit, LoadKind kind, Set<LoadKind> kinds) {
        if (unit != LoadModel.ABSENT) {
            kinds.add(kind);
        }
    }
}
