package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Cases.Case;
import dev.underprop.engine.assess.Cases.Level;
import dev.underprop.engine.clause.asce7_16.Combination;
import dev.underprop.engine.clause.asce7_16.LoadKind;
import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.statics.LoadCase;
import dev.underprop.engine.statics.Solution;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Cases that try to lift the floor off what carries it: for every bearing, post and pier 0.6 of the dead load that presses it,
 * and in full whatever relieves it. By influence in the state under dead load, as for live load patterns. With all of dead
 * load instead, they are what opens a contact furthest without making anything tip.
 */
final class StabilityCases {

    /** Part of dead load that holds: ASCE 7-16 2.4.1 item 7. */
    static final double HOLDING = 0.6;

    private static final double ROUNDING = 1e-9;

    private record Relief(BitSet dead, BitSet live, boolean roofLive, boolean snow) {}

    private final LoadModel model;
    private final List<Combination> gravity;
    private final double holding;
    private final Set<Relief> known = new HashSet<>();
    private final List<Case> cases = new ArrayList<>();

    StabilityCases(LoadModel model, List<Combination> gravity) {
        this(model, gravity, HOLDING);
    }

    /** @param holding part of dead load that holds, 1 for all of it */
    StabilityCases(LoadModel model, List<Combination> gravity, double holding) {
        this.model = model;
        this.gravity = gravity;
        this.holding = holding;
    }

    /** Adds the cases that relieve each bearing, post and pier, grouped by what they are. */
    List<Case> of(PlanFrame frame, Names names, Solution dead, Solution full) {
        Map<String, List<Integer>> targets = new LinkedHashMap<>();
        for (int c = 0; c < frame.contacts(); c++) {
            ContactPlace place = frame.places().get(c);
            if (place instanceof ContactPlace.OnBearing seat) {
                targets.computeIfAbsent(names.bearing(seat.bearing()), k -> new ArrayList<>())
                        .add(c);
            } else if (!(place instanceof ContactPlace.OnShore)) {
                targets.computeIfAbsent(names.contact(place), k -> new ArrayList<>())
                        .add(c);
            }
        }
        targets.forEach((name, contacts) -> add(name, contacts, dead, full));
        return cases;
    }

    private void add(String name, List<Integer> contacts, Solution dead, Solution full) {
        Solution state = contacts.stream().anyMatch(dead::closed) ? dead : full;
        List<Integer> closed = contacts.stream().filter(state::closed).toList();
        if (!closed.isEmpty()) {
            Relief relief = new Relief(
                    relieving(model.deadCells(), closed, state),
                    relieving(model.cells(), closed, state),
                    relieves(model.roofLive(), closed, state),
                    relieves(model.snow(), closed, state));
            boolean some = !relief.live.isEmpty() || relief.roofLive || relief.snow || !relief.dead.isEmpty();
            if (some && known.add(relief)) {
                for (int i = 0; i < gravity.size(); i++) {
                    add(name, relief, i);
                }
            }
        }
    }

    private static BitSet relieving(List<LoadModel.Cell> cells, List<Integer> contacts, Solution state) {
        double[] influence = new double[cells.size()];
        double most = 0;
        for (int i = 0; i < influence.length; i++) {
            influence[i] = influence(cells.get(i).unit(), contacts, state);
            most = Math.max(most, Math.abs(influence[i]));
        }
        BitSet relieving = new BitSet();
        for (int i = 0; i < influence.length; i++) {
            relieving.set(i, influence[i] < -ROUNDING * most);
        }
        return relieving;
    }

    private static boolean relieves(int unit, List<Integer> contacts, Solution state) {
        return unit != LoadModel.ABSENT && influence(unit, contacts, state) < 0;
    }

    private static double influence(int unit, List<Integer> contacts, Solution state) {
        return contacts.stream().mapToDouble(c -> state.influence(c, unit)).sum();
    }

    private void add(String name, Relief relief, int index) {
        Combination combination = gravity.get(index);
        boolean whole = holding == 1;
        int most = 3 + relief.dead.cardinality() + relief.live.cardinality();
        int[] units = new int[most];
        double[] factors = new double[most];
        int n = Cases.put(units, factors, 0, model.dead(), holding);
        for (int i = whole ? -1 : relief.dead.nextSetBit(0); i >= 0; i = relief.dead.nextSetBit(i + 1)) {
            n = Cases.put(units, factors, n, model.deadCells().get(i).unit(), 1 - holding);
        }
        int before = n;
        n = Cases.put(
                units,
                factors,
                n,
                relief.roofLive ? model.roofLive() : LoadModel.ABSENT,
                combination.factor(LoadKind.ROOF_LIVE));
        n = Cases.put(
                units, factors, n, relief.snow ? model.snow() : LoadModel.ABSENT, combination.factor(LoadKind.SNOW));
        for (int i = relief.live.nextSetBit(0); i >= 0; i = relief.live.nextSetBit(i + 1)) {
            n = Cases.put(units, factors, n, model.cells().get(i).unit(), combination.factor(LoadKind.LIVE));
        }
        boolean deadAlone = !whole && combination.controlling() == LoadKind.DEAD;
        if (n > before || deadAlone) {
            cases.add(new Case(
                    Level.STABILITY,
                    whole ? index : -1,
                    whole ? combination.name() : "0.6 D where it holds, " + combination.name() + " where it lifts",
                    "load where it relieves " + name,
                    false,
                    new LoadCase(Arrays.copyOf(units, n), Arrays.copyOf(factors, n))));
        }
    }
}
