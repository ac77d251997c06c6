package dev.underprop.engine.assess;

import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.statics.Contact;
import dev.underprop.engine.statics.LoadCase;
import dev.underprop.engine.statics.UnitLoad;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The check by hand that stands beside the analysis: every joist and beam cut into simple spans at its supports, lever
 * rule on each and on overhangs. It knows nothing of continuity, which is the point of comparing.
 */
final class LeverRule {

    private final JobPlan plan;
    private final LoadModel model;
    private final PlanFrame frame;
    private final BitSet taken;
    private final int[][] seats;
    private final double[][] seatPlaces;
    private final Map<Integer, double[]> byUnit = new HashMap<>();

    /** @param taken contacts that are taken away */
    LeverRule(LoadModel model, PlanFrame frame, BitSet taken) {
        this.plan = frame.plan();
        this.model = model;
        this.frame = frame;
        this.taken = taken;
        this.seats = seatsOfJoists();
        this.seatPlaces = new double[seats.length][];
        for (int j = 0; j < seats.length; j++) {
            seatPlaces[j] =
                    Arrays.stream(seats[j]).mapToDouble(this::joistPlace).toArray();
        }
    }

    /** Load (N) at every contact of the situation's frame; negative means uplift. Linear, so summed over units. */
    double[] loads(LoadCase loadCase) {
        double[] sum = new double[frame.places().size()];
        for (int k = 0; k < loadCase.size(); k++) {
            double[] unit = ofUnit(loadCase.unit(k));
            for (int c = 0; c < sum.length; c++) {
                sum[c] += loadCase.factor(k) * unit[c];
            }
        }
        return sum;
    }

    private double[] ofUnit(int unit) {
        return byUnit.computeIfAbsent(unit, u -> take(model.units().get(u)));
    }

    private double[] take(UnitLoad unit) {
        double[] byContact = new double[frame.places().size()];
        int joists = plan.floor().joists().size();
        List<List<double[]>> onCarriers = new ArrayList<>();
        frame.frame().carriers().forEach(carrier -> onCarriers.add(new ArrayList<>()));
        for (UnitLoad.Piece piece : unit.pieces()) {
            if (piece.member() < joists) {
                addToJoist(piece, byContact);
            } else {
                onCarriers.get(piece.member() - joists).add(load(piece));
            }
        }
        for (int c = 0; c < onCarriers.size(); c++) {
            addProps(c, onCarriers.get(c), byContact);
        }
        return byContact;
    }

    private void addToJoist(UnitLoad.Piece piece, double[] byContact) {
        int[] contacts = seats[piece.member()];
        double[] reactions = reactions(seatPlaces[piece.member()], List.of(load(piece)));
        for (int i = 0; i < contacts.length; i++) {
            byContact[contacts[i]] += reactions[i];
        }
    }

    /** A load as a {place, force} pair or a {from, to, intensity} triple. */
    private static double[] load(UnitLoad.Piece piece) {
        if (piece instanceof UnitLoad.Point point) {
            return new double[] {point.at(), point.force()};
        }
        UnitLoad.Uniform uniform = (UnitLoad.Uniform) piece;
        return new double[] {uniform.from(), uniform.to(), uniform.intensity()};
    }

    private void addProps(int carrier, List<double[]> own, double[] byContact) {
        List<double[]> loads = new ArrayList<>(own);
        int[] heads = new int[byContact.length];
        int n = 0;
        for (int c = 0; c < byContact.length; c++) {
            Contact contact = frame.frame().contacts().get(c);
            if (contact instanceof Contact.OnCarrier seat && seat.carrier() == carrier) {
                loads.add(new double[] {plan.floor().joists().get(seat.joist()).x(), byContact[c]});
            } else if (contact instanceof Contact.OnProp head && head.carrier() == carrier && !taken.get(c)) {
                heads[n++] = c;
            }
        }
        double[] at = new double[n];
        for (int i = 0; i < n; i++) {
            at[i] = ((Contact.OnProp) frame.frame().contacts().get(heads[i])).x();
        }
        double[] reactions = reactions(at, loads);
        for (int i = 0; i < n; i++) {
            byContact[heads[i]] = reactions[i];
        }
    }

    private int[][] seatsOfJoists() {
        List<List<Integer>> seats = new ArrayList<>();
        plan.floor().joists().forEach(joist -> seats.add(new ArrayList<>()));
        for (int c = 0; c < frame.places().size(); c++) {
            if (taken.get(c)) {
                continue;
            }
            if (frame.places().get(c) instanceof ContactPlace.OnBearing seat) {
                seats.get(seat.joist()).add(c);
            } else if (frame.places().get(c) instanceof ContactPlace.OnShore seat) {
                seats.get(seat.joist()).add(c);
            }
        }
        int[][] sorted = new int[seats.size()][];
        for (int j = 0; j < sorted.length; j++) {
            seats.get(j).sort(Comparator.comparingDouble(this::joistPlace));
            sorted[j] = seats.get(j).stream().mapToInt(Integer::intValue).toArray();
        }
        return sorted;
    }

    private double joistPlace(int contact) {
        ContactPlace place = frame.places().get(contact);
        return place instanceof ContactPlace.OnBearing seat
                ? plan.floor().bearings().get(seat.bearing()).y()
                : plan.shores().get(((ContactPlace.OnShore) place).shore()).y();
    }

    private static double[] reactions(double[] supports, List<double[]> loads) {
        double[] out = new double[supports.length];
        for (double[] load : loads) {
            if (load.length == 2) {
                addPoint(supports, load[0], load[1], out);
            } else {
                addUniform(supports, load[0], load[1], load[2], out);
            }
        }
        return out;
    }

    private static void addUniform(double[] supports, double from, double to, double intensity, double[] out) {
        double start = from;
        for (double support : supports) {
            if (support > start && support < to) {
                addPoint(supports, (start + support) / 2, intensity * (support - start), out);
                start = support;
            }
        }
        addPoint(supports, (start + to) / 2, intensity * (to - start), out);
    }

    private static void addPoint(double[] supports, double at, double force, double[] out) {
        int n = supports.length;
        if (n == 0) {
            return;
        }
        if (n == 1) {
            out[0] += force;
            return;
        }
        int left = 0;
        while (left < n - 2 && at > supports[left + 1]) {
            left++;
        }
        double part = (at - supports[left]) / (supports[left + 1] - supports[left]);
        out[left] += force * (1 - part);
        out[left + 1] += force * part;
    }
}
