package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Setting.Give;
import dev.underprop.engine.assess.Setting.History;
import dev.underprop.engine.assess.Setting.Ties;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.statics.ContactSolver;
import dev.underprop.engine.statics.LoadCase;
import dev.underprop.engine.statics.Rules;
import dev.underprop.engine.statics.Solution;
import dev.underprop.engine.statics.UnitLoad;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What happens when a bearing or a pier goes: the load still on it just before, how far the floor comes down there, and how
 * much further all posts must be raised first so that it carries nothing. Under dead load, in the history as found, with the
 * posts raised as the situation says.
 */
final class Transfers {

    /** Nobody raises a floor further than this to take the load off a wall, 3 in (m). */
    private static final double FURTHEST = 3 * 0.0254;

    /** Turns openings into a force of the size of the forces, so that one function runs through zero (N/m). */
    private static final double OPENING = 1e7;

    private static final int STEPS = 40;

    /** Lift found to within this (m). */
    private static final double FINE = 1e-7;

    private final Structure structure;
    private final Situation situation;
    private final Seats seats;
    private final BitSet gone;
    private final Names names;

    /** @param before the situation before, or one without removals */
    Transfers(Structure structure, Situation before, Situation situation, Seats seats) {
        this.structure = structure;
        this.situation = situation;
        this.seats = seats;
        this.names = new Names(structure.plan());
        this.gone = structure.frame().taken(situation);
        gone.andNot(structure.frame().taken(before));
    }

    List<SituationResult.Transfer> all() {
        Map<String, List<Integer>> targets = new LinkedHashMap<>();
        for (int c = gone.nextSetBit(0); c >= 0; c = gone.nextSetBit(c + 1)) {
            ContactPlace place = structure.frame().places().get(c);
            // A girder that goes whole takes its piers with it: they carry nothing of the floor any more.
            if (place instanceof ContactPlace.OnPier pier && situation.removed().contains(pier.bearing())) {
                continue;
            }
            String name = place instanceof ContactPlace.OnPier pier
                    ? names.pier(pier.bearing(), pier.pier())
                    : names.bearing(((ContactPlace.OnBearing) place).bearing());
            targets.computeIfAbsent(name, k -> new ArrayList<>()).add(c);
        }
        List<SituationResult.Transfer> all = new ArrayList<>();
        targets.forEach((name, contacts) -> {
            List<Integer> carried =
                    contacts.stream().filter(c -> Double.isFinite(distance(c))).toList();
            if (!carried.isEmpty()) {
                all.add(worst(name, carried));
            }
        });
        return all;
    }

    private SituationResult.Transfer worst(String name, List<Integer> contacts) {
        SituationResult.Transfer worst =
                transfer(name, contacts, structure.gives().get(0));
        for (Give give : structure.gives().subList(1, structure.gives().size())) {
            worst = worse(worst, transfer(name, contacts, give));
        }
        return worst;
    }

    private static SituationResult.Transfer worse(SituationResult.Transfer a, SituationResult.Transfer b) {
        SituationResult.Transfer moves = b.movement() / b.allowed() > a.movement() / a.allowed() ? b : a;
        return new SituationResult.Transfer(
                a.name(),
                Math.max(a.load(), b.load()),
                Math.max(a.seat(), b.seat()),
                moves.movement(),
                moves.place(),
                moves.allowed(),
                Math.max(a.lift(), b.lift()));
    }

    private SituationResult.Transfer transfer(String name, List<Integer> contacts, Give give) {
        BitSet there = structure.frame().taken(situation);
        there.andNot(gone);
        Rules before = new Rules(there, structure.frame().fastened(Ties.HOLD));
        ContactSolver solver = structure.solver(give);
        Solution was = solver.solve(dead(give), before);
        Solution is = seats.dead(give, History.AS_FOUND);
        double load = 0;
        double seat = 0;
        double moved = 0;
        double allowed = Double.POSITIVE_INFINITY;
        String place = "";
        for (int c : contacts) {
            load += was.force(c);
            seat = Math.max(seat, was.force(c));
            double move = is.movement(c) - was.movement(c);
            double limit = structure.plan().circumstances().limits().transfer().slope() * distance(c);
            if (place.isEmpty() || move / limit > moved / allowed) {
                moved = move;
                allowed = limit;
                place = names.contact(structure.frame().places().get(c));
            }
        }
        return new SituationResult.Transfer(name, load, seat, moved, place, allowed, lift(contacts, there, give));
    }

    private LoadCase dead(Give give) {
        LoadCase dead = new LoadCase(new int[] {structure.model().dead()}, new double[] {1});
        return seats.placed(dead, History.AS_FOUND, give);
    }

    /** To the nearest thing that goes on carrying the same member (m). */
    private double distance(int contact) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int c = 0; c < structure.frame().contacts(); c++) {
            if (!structure.frame().taken(c, situation)
                    && structure.frame().held(c) == structure.frame().held(contact)) {
                nearest = Math.min(
                        nearest,
                        Math.abs(structure.frame().at(c) - structure.frame().at(contact)));
            }
        }
        return nearest;
    }

    /** Smallest lift of all posts beyond what the situation says at which the contacts carry nothing (m). */
    private double lift(List<Integer> contacts, BitSet there, Give give) {
        List<UnitLoad.Offset> posts = new ArrayList<>();
        for (int c = 0; c < structure.frame().contacts(); c++) {
            if (structure.frame().places().get(c) instanceof ContactPlace.OnPost) {
                posts.add(new UnitLoad.Offset(c, 1));
            }
        }
        if (posts.isEmpty()) {
            return Double.NaN;
        }
        BitSet fastened = structure.frame().fastened(Ties.HOLD);
        contacts.forEach(fastened::clear);
        Rules rules = new Rules(there, fastened);
        int unit = structure.solver(give).addOffsets(posts);
        double low = 0;
        double high = FURTHEST;
        double atLow = still(contacts, give, rules, unit, low);
        double atHigh = still(contacts, give, rules, unit, high);
        if (atLow <= 0) {
            return 0;
        }
        if (!(atHigh <= 0)) {
            return Double.NaN;
        }
        // Regula falsi, halving the end that stays (Illinois rule): exact on straight pieces.
        int kept = 0;
        for (int step = 0; step < STEPS && high - low > FINE; step++) {
            double next = high - atHigh * (high - low) / (atHigh - atLow);
            double value = still(contacts, give, rules, unit, next);
            if (value > 0) {
                low = next;
                atLow = value;
                atHigh = kept > 0 ? atHigh / 2 : atHigh;
                kept = 1;
            } else {
                high = next;
                atHigh = value;
                atLow = kept < 0 ? atLow / 2 : atLow;
                kept = -1;
            }
        }
        return high;
    }

    /** What the contacts still carry (N); below zero once all of them are clear. */
    private double still(List<Integer> contacts, Give give, Rules rules, int unit, double lift) {
        Solution solution = structure.solver(give).solve(withLift(give, unit, lift), rules);
        if (solution.outcome() != Solution.Outcome.SETTLED) {
            return Double.NaN;
        }
        double force = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int c : contacts) {
            force += solution.force(c);
            least = Math.min(least, solution.opening(c));
        }
        return least > 0 ? -OPENING * least : force;
    }

    private LoadCase withLift(Give give, int unit, double lift) {
        return dead(give).with(unit, -lift);
    }
}
