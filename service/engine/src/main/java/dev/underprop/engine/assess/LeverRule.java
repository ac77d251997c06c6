package dev.underprop.engine.assess;

import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.statics.LoadCase;
import dev.underprop.engine.statics.UnitLoad;
import java.util.ArrayList;
import java.util.Arrays;
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
    private final SituationFrame situation;
    private final int[][] seats;
    private final double[][] seatPlaces;
    private final Map<Integer, double[]> byUnit = new HashMap<>();

    LeverRule(JobPlan plan, LoadModel model, SituationFrame situation) {
        this.plan = plan;
        this.model = model;
        this.situation = situation;
        this.seats = seatsOfJoists();
        this.seatPlaces = new double[seats.length][];
        for (int j = 0; j < seats.length; j++) {
            seatPlaces[j] =
                    Arrays.stream(seats[j]).mapToDouble(this::joistPlace).toArray();
        }
    }

    /** Load (N) at every contact of the situation's frame; negative means uplift. Linear, so summed over units. */
    double[] loads(LoadCase loadCase) {
        double[] sum = new double[situation.places().size()];
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
        double[] byContact = new double[situation.places().size()];
        int joists = plan.floor().joists().size();
        List<List<double[]>> onShores = new ArrayList<>();
        plan.shores().forEach(shore -> onShores.add(new ArrayList<>()));
        for (UnitLoad.Piece piece : unit.pieces()) {
            if (piece.member() < joists) {
                addToJoist(piece, byContact);
            } else {
                onShores.get(piece.member() - joists).add(load(piece));
            }
        }
        for (int s = 0; s < onShores.size(); s++) {
            addPosts(s, onShores.get(s), byContact);
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

    private void addPosts(int s, List<double[]> own, double[] byContact) {
        Shore shore = plan.shores().get(s);
        List<double[]> loads = new ArrayList<>(own);
        int[] heads = new int[shore.posts().size()];
        for (int c = 0; c < byContact.length; c++) {
            ContactPlace place = situation.places().get(c);
            if (place instanceof ContactPlace.OnShore seat && seat.shore() == s) {
                Joist joist = plan.floor().joists().get(seat.joist());
                loads.add(new double[] {joist.x(), byContact[c]});
            } else if (place instanceof ContactPlace.OnPost head && head.shore() == s) {
                heads[head.post()] = c;
            }
        }
        double[] at = shore.posts().stream().mapToDouble(Post::x).toArray();
        double[] reactions = reactions(at, loads);
        for (int p = 0; p < heads.length; p++) {
            byContact[heads[p]] = reactions[p];
        }
    }

    private int[][] seatsOfJoists() {
        List<List<Integer>> seats = new ArrayList<>();
        plan.floor().joists().forEach(joist -> seats.add(new ArrayList<>()));
        for (int c = 0; c < situation.places().size(); c++) {
            if (situation.places().get(c) instanceof ContactPlace.OnBearing seat) {
                seats.get(seat.joist()).add(c);
            } else if (situation.places().get(c) instanceof ContactPlace.OnShore seat) {
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
        ContactPlace place = situation.places().get(contact);
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
