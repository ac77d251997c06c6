package dev.underprop.engine.statics;

import java.util.Arrays;
import java.util.BitSet;
import org.ojalgo.matrix.decomposition.LU;
import org.ojalgo.matrix.store.R064Store;
import org.ojalgo.matrix.store.RawStore;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.convex.ConvexSolver;
import org.ojalgo.optimisation.linear.LinearSolver;

/**
 * Answers an {@link EnergyProblem} with ojAlgo: a linear programme says whether any contact forces balance the loads, the
 * convex solver names the pressing contacts, and a dense system in those gives the forces to rounding. What comes out is
 * checked against the conditions of Karush, Kuhn and Tucker; where the convex solver named a contact wrongly (a force
 * below its own accuracy) the one most wrong is changed until they hold.
 */
final class Reference {

    /** Part of the total load that must stay out of balance for a mechanism. */
    private static final double UNBALANCED = 1e-7;

    private static final double PULL = 1e-9;
    private static final double OVERLAP = 1e-9;
    private static final int REPAIRS = 60;

    /**
     * The reference.
     *
     * @param held whether any contact forces balance the loads
     * @param force at each contact (N)
     * @param opening at each contact (m)
     * @param movement of the carried member at each contact (m)
     * @param repairs contacts the convex solver named wrongly
     */
    record Answer(boolean held, double[] force, double[] opening, double[] movement, int repairs) {}

    private record Point(double[] force, double[] opening, double[] multipliers) {}

    private final EnergyProblem problem;
    private final double[][] equilibrium;
    private final double[] loads;
    private final double[][] hessian;
    private final double[] slope;
    private final double unit;

    private Reference(EnergyProblem problem) {
        this.problem = problem;
        this.equilibrium = problem.equilibrium();
        this.loads = problem.loads();
        this.hessian = problem.hessian();
        this.slope = problem.slope();
        this.unit = Arrays.stream(hessian)
                .flatMapToDouble(Arrays::stream)
                .map(Math::abs)
                .max()
                .orElse(1);
    }

    static Answer solve(EnergyProblem problem) {
        return new Reference(problem).answer();
    }

    /** Least part of the total load that no contact forces can balance. */
    static double unbalanced(EnergyProblem problem) {
        return new Reference(problem).unbalanced();
    }

    private Answer answer() {
        if (unbalanced() > UNBALANCED) {
            return new Answer(false, new double[0], new double[0], new double[0], 0);
        }
        BitSet pressing = named();
        for (int repairs = 0; repairs <= REPAIRS; repairs++) {
            Point point = solveDense(pressing);
            int wrong = mostWrong(point, pressing);
            if (wrong < 0) {
                return new Answer(true, point.force, point.opening, movements(point), repairs);
            }
            pressing.flip(wrong);
        }
        throw new AssertionError("the reference did not settle");
    }

    /** Least sum of the loads left unbalanced, as part of the total load. */
    private double unbalanced() {
        int n = problem.contacts;
        int m = loads.length;
        int fast = (int) java.util.stream.IntStream.range(0, n)
                .filter(c -> problem.fastened[c])
                .count();
        double[][] body = new double[m][n + fast + 2 * m];
        double[] cost = new double[n + fast + 2 * m];
        double[] right = new double[m];
        for (int r = 0; r < m; r++) {
            int pull = n;
            for (int c = 0; c < n; c++) {
                body[r][c] = equilibrium[r][c];
                if (problem.fastened[c]) {
                    body[r][pull++] = -equilibrium[r][c];
                }
            }
            body[r][n + fast + r] = 1;
            body[r][n + fast + m + r] = -1;
            cost[n + fast + r] = 1;
            cost[n + fast + m + r] = 1;
            right[r] = loads[r] / problem.total;
        }
        Optimisation.Result result = LinearSolver.newBuilder(cost)
                .equalities(RawStore.wrap(body), R064Store.FACTORY.column(right))
                .lower(0)
                .solve();
        if (!result.getState().isOptimal()) {
            throw new AssertionError("the linear programme ended " + result.getState());
        }
        double sum = 0;
        for (int i = n + fast; i < cost.length; i++) {
            sum += Math.abs(result.doubleValue(i));
        }
        return sum;
    }

    /** The contacts that press in the convex solver's own answer. */
    private BitSet named() {
        int n = problem.contacts;
        int m = loads.length;
        double[][] q = new double[n][n];
        double[] linear = new double[n];
        double[] right = new double[m];
        double[][] sides = new double[n][n];
        int rows = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                q[i][j] = hessian[i][j] / unit;
            }
            linear[i] = -slope[i] / (unit * problem.total);
            if (!problem.fastened[i]) {
                sides[rows++][i] = -1;
            }
        }
        for (int r = 0; r < m; r++) {
            right[r] = loads[r] / problem.total;
        }
        ConvexSolver.Builder builder = ConvexSolver.newBuilder()
                .objective(RawStore.wrap(q), R064Store.FACTORY.column(linear))
                .equalities(RawStore.wrap(equilibrium), R064Store.FACTORY.column(right));
        if (rows > 0) {
            builder.inequalities(RawStore.wrap(Arrays.copyOf(sides, rows)), R064Store.FACTORY.column(new double[rows]));
        }
        Optimisation.Result result = builder.solve();
        BitSet pressing = new BitSet();
        for (int c = 0; c < n; c++) {
            pressing.set(c, problem.fastened[c] || result.doubleValue(c) > 1e-7);
        }
        return pressing;
    }

    /** Stationary point with the forces of the other contacts zero. */
    private Point solveDense(BitSet pressing) {
        int[] on = pressing.stream().toArray();
        int k = on.length;
        int size = k + loads.length;
        R064Store matrix = R064Store.FACTORY.make(size, size);
        R064Store right = R064Store.FACTORY.make(size, 1);
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                matrix.set(i, j, hessian[on[i]][on[j]] / unit);
            }
            right.set(i, 0, -slope[on[i]] / (unit * problem.total));
            for (int r = 0; r < loads.length; r++) {
                matrix.set(i, k + r, -equilibrium[r][on[i]]);
                matrix.set(k + r, i, equilibrium[r][on[i]]);
            }
        }
        for (int r = 0; r < loads.length; r++) {
            right.set(k + r, 0, loads[r] / problem.total);
        }
        return point(on, refined(matrix, right));
    }

    private static R064Store refined(R064Store matrix, R064Store right) {
        LU<Double> lu = LU.R064.make();
        lu.decompose(matrix);
        R064Store x = R064Store.FACTORY.copy(lu.getSolution(right));
        for (int round = 0; round < 2; round++) {
            R064Store rest = R064Store.FACTORY.copy(right.subtract(matrix.multiply(x)));
            x = R064Store.FACTORY.copy(x.add(lu.getSolution(rest)));
        }
        return x;
    }

    private Point point(int[] on, R064Store x) {
        double[] force = new double[problem.contacts];
        for (int i = 0; i < on.length; i++) {
            force[on[i]] = x.doubleValue(i) * problem.total;
        }
        double[] multipliers = new double[loads.length];
        for (int r = 0; r < loads.length; r++) {
            multipliers[r] = x.doubleValue(on.length + r) * unit * problem.total;
        }
        double[] opening = new double[problem.contacts];
        for (int c = 0; c < problem.contacts; c++) {
            opening[c] = slope[c];
            for (int j = 0; j < problem.contacts; j++) {
                opening[c] += hessian[c][j] * force[j];
            }
            for (int r = 0; r < loads.length; r++) {
                opening[c] -= equilibrium[r][c] * multipliers[r];
            }
        }
        return new Point(force, opening, multipliers);
    }

    private int mostWrong(Point point, BitSet pressing) {
        double largest = Arrays.stream(point.opening).map(Math::abs).max().orElse(0);
        double most = Arrays.stream(point.force).map(Math::abs).max().orElse(0);
        int wrong = -1;
        double worst = 0;
        for (int c = 0; c < problem.contacts; c++) {
            double by = pressing.get(c)
                    ? (problem.fastened[c] ? 0 : -point.force[c] / Math.max(most, problem.total) - PULL)
                    : -point.opening[c] / largest - OVERLAP;
            if (!(by <= worst)) {
                worst = by;
                wrong = c;
            }
        }
        return wrong;
    }

    /** The multipliers of equilibrium are the movements of each member as a rigid body; bending comes on top. */
    private double[] movements(Point point) {
        double[] movement = new double[problem.contacts];
        for (int m = 0; m < problem.members.size(); m++) {
            MemberEnergy member = problem.members.get(m);
            for (int i = 0; i < member.arms.size(); i++) {
                MemberEnergy.Arm arm = member.arms.get(i);
                if (arm.sign() > 0) {
                    movement[arm.contact()] = point.multipliers[2 * m]
                            + point.multipliers[2 * m + 1] * arm.at() / member.length
                            - member.slope(i, point.force);
                }
            }
        }
        return movement;
    }
}
