package dev.underprop.engine.assess;

import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.statics.LoadCase;
import dev.underprop.engine.statics.Solution;
import dev.underprop.engine.statics.UnitLoad;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One member under one case from its contact forces and loads alone: moment and shear summed from the left at many places,
 * deflection by the trapezoidal rule twice. Slow, and its own method.
 */
final class ByHand {

    private static final int STEPS = 3000;

    private final double start;
    private final double end;
    private final double rigidity;
    private final List<double[]> points = new ArrayList<>();
    private final List<double[]> spreads = new ArrayList<>();
    private final double[] supports;
    private final double[] moment = new double[STEPS + 1];
    private final double[] bent = new double[STEPS + 1];
    private double sagging;
    private double hogging;
    private double shear;

    ByHand(JobPlan plan, PlanFrame frame, List<UnitLoad> units, LoadCase loads, Solution solution, int member) {
        int joists = plan.floor().joists().size();
        boolean joist = member < joists;
        Joist line = joist ? plan.floor().joists().get(member) : null;
        Shore shore = joist ? null : plan.shores().get(member - joists);
        this.start = joist ? line.start() : shore.start();
        this.end = joist ? line.end() : shore.end();
        this.rigidity = joist
                ? frame.frame().joists().get(member).rigidity()
                : frame.frame().carriers().get(member - joists).rigidity();
        double[] held = new double[frame.places().size()];
        int n = 0;
        for (int c = 0; c < frame.places().size(); c++) {
            double sign = sign(frame.places().get(c), member, joists);
            if (sign != 0 && solution.closed(c)) {
                double at = place(plan, frame.places().get(c), joist);
                points.add(new double[] {at, sign * solution.force(c)});
                if (sign < 0) {
                    held[n++] = at;
                }
            }
        }
        this.supports = Arrays.copyOf(held, n);
        Arrays.sort(supports);
        for (int i = 0; i < loads.size(); i++) {
            if (loads.unit(i) < units.size()) {
                add(units.get(loads.unit(i)), loads.factor(i), member);
            }
        }
        integrate();
    }

    /** -1 where the contact holds the member up, 1 where it presses on it, 0 where it is another's. */
    private static double sign(ContactPlace place, int member, int joists) {
        if (place instanceof ContactPlace.OnBearing seat) {
            return seat.joist() == member ? -1 : 0;
        }
        if (place instanceof ContactPlace.OnShore seat) {
            return seat.joist() == member ? -1 : joists + seat.shore() == member ? 1 : 0;
        }
        return joists + ((ContactPlace.OnPost) place).shore() == member ? -1 : 0;
    }

    private static double place(JobPlan plan, ContactPlace place, boolean onJoist) {
        if (place instanceof ContactPlace.OnBearing seat) {
            return plan.floor().bearings().get(seat.bearing()).y();
        }
        if (place instanceof ContactPlace.OnShore seat) {
            return onJoist
                    ? plan.shores().get(seat.shore()).y()
                    : plan.floor().joists().get(seat.joist()).x();
        }
        ContactPlace.OnPost head = (ContactPlace.OnPost) place;
        return plan.shores().get(head.shore()).posts().get(head.post()).x();
    }

    private void add(UnitLoad unit, double factor, int member) {
        for (UnitLoad.Piece piece : unit.pieces()) {
            if (piece.member() == member && piece instanceof UnitLoad.Point p) {
                points.add(new double[] {p.at(), factor * p.force()});
            } else if (piece.member() == member && piece instanceof UnitLoad.Uniform u) {
                spreads.add(new double[] {u.from(), u.to(), factor * u.intensity()});
            }
        }
    }

    private double at(int i) {
        return start + (end - start) * i / STEPS;
    }

    private void integrate() {
        double slope = 0;
        double h = (end - start) / STEPS;
        for (int i = 0; i <= STEPS; i++) {
            look(at(i));
            moment[i] = momentAt(at(i));
            if (i > 0) {
                double next = slope - h * (moment[i - 1] + moment[i]) / 2 / rigidity;
                bent[i] = bent[i - 1] + h * (slope + next) / 2;
                slope = next;
            }
        }
        points.forEach(p -> look(p[0]));
    }

    private void look(double x) {
        double m = momentAt(x);
        sagging = Math.max(sagging, m);
        hogging = Math.max(hogging, -m);
        shear = Math.max(shear, Math.max(Math.abs(shearAt(x, false)), Math.abs(shearAt(x, true))));
    }

    private double momentAt(double x) {
        double m = 0;
        for (double[] p : points) {
            m -= p[0] < x ? p[1] * (x - p[0]) : 0;
        }
        for (double[] w : spreads) {
            double to = Math.min(x, w[1]);
            m -= to > w[0] ? w[2] * (to - w[0]) * (x - (w[0] + to) / 2) : 0;
        }
        return m;
    }

    private double shearAt(double x, boolean beyond) {
        double v = 0;
        for (double[] p : points) {
            v -= p[0] < x || (beyond && p[0] == x) ? p[1] : 0;
        }
        for (double[] w : spreads) {
            v -= Math.max(0, Math.min(x, w[1]) - w[0]) * w[2];
        }
        return v;
    }

    double sagging() {
        return sagging;
    }

    double hogging() {
        return hogging;
    }

    double shear() {
        return shear;
    }

    /** Greatest deflection over its span: chord between supports; beyond them the nearest chord goes on, span twice. */
    double deflectionOverSpan() {
        double worst = 0;
        for (int i = 0; i <= STEPS && supports.length >= 2; i++) {
            double x = at(i);
            int right = 1;
            while (right < supports.length - 1 && supports[right] < x) {
                right++;
            }
            double a = supports[right - 1];
            double b = supports[right];
            double span = x < a ? 2 * (a - start) : x > b ? 2 * (end - b) : b - a;
            double chord = bentAt(a) + (bentAt(b) - bentAt(a)) * (x - a) / (b - a);
            worst = Math.max(worst, Math.abs(bent[i] - chord) / span);
        }
        return worst;
    }

    private double bentAt(double x) {
        double i = (x - start) / (end - start) * STEPS;
        int low = Math.min(STEPS - 1, (int) i);
        return bent[low] + (i - low) * (bent[low + 1] - bent[low]);
    }
}
