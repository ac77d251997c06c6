package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Bending energy of one member as a function of the contact forces on it, from integrals of M·M/EI. The moment at s is
 * the sum of force times arm of all that acts before s, which is right wherever the member is in equilibrium.
 */
final class MemberEnergy {

    /** One force place: contact number, +1 where it carries this member and -1 where this member carries, arm (m). */
    record Arm(int contact, int sign, double at) {}

    /** Points and weights of the three-point rule on (-1, 1), exact to the fifth degree. */
    private static final double[][] RULE = {{-Math.sqrt(0.6), 5.0 / 9}, {0, 8.0 / 9}, {Math.sqrt(0.6), 5.0 / 9}};

    final List<Arm> arms;
    final double length;
    final double force;
    final double moment;
    private final double[][] flexibility;
    private final double[] start;

    MemberEnergy(List<Arm> arms, double length, double rigidity, List<UnitLoad.Piece> loads) {
        this.arms = List.copyOf(arms);
        this.length = length;
        this.flexibility = new double[arms.size()][arms.size()];
        this.start = new double[arms.size()];
        double w = 0;
        double m = 0;
        for (UnitLoad.Piece piece : loads) {
            w += piece.total();
            m += piece.total() * centre(piece);
        }
        this.force = w;
        this.moment = m;
        integrate(rigidity, loads);
    }

    private static double centre(UnitLoad.Piece piece) {
        if (piece instanceof UnitLoad.Uniform uniform) {
            return (uniform.from() + uniform.to()) / 2;
        }
        return ((UnitLoad.Point) piece).at();
    }

    private void integrate(double rigidity, List<UnitLoad.Piece> loads) {
        List<Double> cuts = cuts(loads);
        for (int i = 0; i + 1 < cuts.size(); i++) {
            double half = (cuts.get(i + 1) - cuts.get(i)) / 2;
            double middle = (cuts.get(i + 1) + cuts.get(i)) / 2;
            for (double[] rule : RULE) {
                addAt(middle + half * rule[0], half * rule[1] / rigidity, loads);
            }
        }
    }

    private List<Double> cuts(List<UnitLoad.Piece> loads) {
        TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, length));
        arms.forEach(arm -> cuts.add(arm.at));
        for (UnitLoad.Piece piece : loads) {
            if (piece instanceof UnitLoad.Uniform uniform) {
                cuts.add(uniform.from());
                cuts.add(uniform.to());
            } else if (piece instanceof UnitLoad.Point point) {
                cuts.add(point.at());
            }
        }
        return new ArrayList<>(cuts);
    }

    private void addAt(double s, double weight, List<UnitLoad.Piece> loads) {
        double outer = 0;
        for (UnitLoad.Piece piece : loads) {
            outer -= arm(piece, s);
        }
        for (int i = 0; i < arms.size(); i++) {
            double mi = arms.get(i).sign * ramp(s - arms.get(i).at);
            start[i] += weight * mi * outer;
            for (int j = 0; j < arms.size(); j++) {
                flexibility[i][j] += weight * mi * arms.get(j).sign * ramp(s - arms.get(j).at);
            }
        }
    }

    private static double arm(UnitLoad.Piece piece, double s) {
        if (piece instanceof UnitLoad.Uniform u) {
            double a = ramp(s - u.from());
            double b = ramp(s - u.to());
            return u.intensity() * (a * a - b * b) / 2;
        }
        UnitLoad.Point point = (UnitLoad.Point) piece;
        return point.force() * ramp(s - point.at());
    }

    private static double ramp(double x) {
        return Math.max(0, x);
    }

    double flexibility(int i, int j) {
        return flexibility[i][j];
    }

    /** Part of the energy's slope at arm i that the loads cause (m). */
    double start(int i) {
        return start[i];
    }

    /** Slope of the bending energy with the force at arm i (m), for all contact forces p (N). */
    double slope(int i, double[] p) {
        double sum = start[i];
        for (int j = 0; j < arms.size(); j++) {
            sum += flexibility[i][j] * p[arms.get(j).contact];
        }
        return sum;
    }
}
