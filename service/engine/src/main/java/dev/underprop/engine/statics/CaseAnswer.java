package dev.underprop.engine.statics;

import java.util.BitSet;

/** What a contact state says of one case: by summing its answers to units, or by answering for the whole case at once. */
abstract sealed class CaseAnswer {

    /** Cases that follow from one another before one is summed anew. */
    private static final int MOST_STEPS = 64;

    private final double[] values;
    private final boolean[] pressing;

    private CaseAnswer(double[] values, boolean[] pressing) {
        this.values = values;
        this.pressing = pressing;
    }

    /** Asks a state for a case, in the way that costs less. */
    static CaseAnswer of(Assembly assembly, ContactState state, LoadCase loadCase) {
        return state.worthUnits() ? new Summed(state, loadCase) : Whole.of(assembly, state, loadCase);
    }

    /** The state that was asked; what it answers may hold for a neighbour of it. */
    abstract ContactState state();

    /** Which contacts are closed in it. */
    abstract Closure closure();

    /** By contact, whether it is closed; not to be changed. */
    boolean[] pressing() {
        return pressing;
    }

    /** What the state itself answers. */
    abstract CaseAnswer own();

    /** Members that can move without resistance. */
    BitSet loose() {
        return state().loose();
    }

    /** Stations at which a member is held. */
    abstract int[] supports(int member);

    /** The answer of the state that was asked, to a case with one more unit. */
    CaseAnswer shifted(LoadCase loadCase, int unit, double factor) {
        return new Summed(state(), loadCase, own().values, unit, factor);
    }

    /** The answer of the state that was asked, to a case in which more of some units acts, or less. */
    CaseAnswer varied(LoadCase loadCase, LoadCase more) {
        return new Summed(state(), loadCase, own(), more);
    }

    /** Whether it may be built upon: with as many digits as its state now keeps, and not by so many steps that rounding adds up. */
    abstract boolean fresh();

    /** How many steps of {@link #varied} led to it. */
    int steps() {
        return 0;
    }

    /** The same case in the neighbour where the given contacts have changed. */
    CaseAnswer flipped(Assembly assembly, LoadCase loadCase, Flips flips, Closure closure) {
        return new Flipped(assembly, own(), loadCase, flips, closure);
    }

    /** Force (N) at each closed contact, opening (m) at each open one. */
    double[] values() {
        return values;
    }

    /** Deflection of the carried member at every contact (m). */
    abstract double[] movements();

    /** A bound on the force (N) by which the way to a neighbour has left any member out of balance. */
    double imbalance() {
        return 0;
    }

    /** A bound on the movements (m), either sign. */
    abstract double furthest();

    /** Writes the row of the case. */
    abstract void writeRow(double[] row);

    /** Writes shear, moment and load of one member into the row of the case, and not its deflection. */
    void writeForces(Assembly assembly, LoadCase loadCase, int member, double[] row) {
        assembly.layout().writeForces(assembly.loadings(), loadCase, closure(), values, member, row);
    }

    /** What a state answers for itself. */
    private abstract static sealed class Own extends CaseAnswer {
        private final ContactState state;
        private final boolean twofold;

        Own(ContactState state, double[] values) {
            super(values, state.pressing());
            this.state = state;
            this.twofold = state.twofold();
        }

        @Override
        boolean fresh() {
            return twofold == state.twofold() && steps() < MOST_STEPS;
        }

        @Override
        ContactState state() {
            return state;
        }

        @Override
        Closure closure() {
            return state.closure();
        }

        @Override
        CaseAnswer own() {
            return this;
        }

        @Override
        int[] supports(int member) {
            return state.supports()[member];
        }
    }

    private static final class Flipped extends CaseAnswer {
        private final Assembly assembly;
        private final CaseAnswer own;
        private final LoadCase loadCase;
        private final Flips flips;
        private final double[] sizes;
        private final Closure closure;

        Flipped(Assembly assembly, CaseAnswer own, LoadCase loadCase, Flips flips, Closure closure) {
            this(assembly, own, loadCase, flips, flips.sizes(own.values()), closure);
        }

        private Flipped(
                Assembly assembly, CaseAnswer own, LoadCase loadCase, Flips flips, double[] sizes, Closure closure) {
            super(flips.apply(own.values(), sizes), flips.pressing());
            this.assembly = assembly;
            this.own = own;
            this.loadCase = loadCase;
            this.flips = flips;
            this.sizes = sizes;
            this.closure = closure;
        }

        @Override
        ContactState state() {
            return own.state();
        }

        @Override
        Closure closure() {
            return closure;
        }

        @Override
        CaseAnswer own() {
            return own;
        }

        @Override
        boolean fresh() {
            return own.fresh();
        }

        @Override
        int[] supports(int member) {
            return assembly.layout().supports(member, closure.closed());
        }

        @Override
        double imbalance() {
            return flips.imbalance(sizes);
        }

        @Override
        double furthest() {
            double furthest = own.furthest();
            for (int k = 0; k < flips.count(); k++) {
                furthest +=
                        Math.abs(sizes[k]) * state().changed(flips.contact(k)).furthest();
            }
            return furthest;
        }

        @Override
        double[] movements() {
            double[] movements = own.movements().clone();
            for (int k = 0; k < flips.count(); k++) {
                addScaled(state().changed(flips.contact(k)).movements(), sizes[k], movements);
            }
            return movements;
        }

        @Override
        void writeRow(double[] row) {
            assembly.layout().write(assembly.loadings().of(loadCase), closure, values(), row);
        }
    }

    private static void addScaled(double[] from, double factor, double[] to) {
        for (int c = 0; c < to.length; c++) {
            to[c] += factor * from[c];
        }
    }

    private static final class Summed extends Own {
        private final LoadCase loadCase;
        private final int steps;

        Summed(ContactState state, LoadCase loadCase) {
            super(state, sum(state, loadCase, true));
            this.loadCase = loadCase;
            this.steps = 0;
        }

        Summed(ContactState state, LoadCase loadCase, CaseAnswer before, LoadCase more) {
            super(state, before.values.clone());
            this.loadCase = loadCase;
            this.steps = before.steps() + 1;
            for (int i = 0; i < more.size(); i++) {
                addScaled(state.response(more.unit(i)).values(), more.factor(i), values());
            }
        }

        @Override
        int steps() {
            return steps;
        }

        Summed(ContactState state, LoadCase loadCase, double[] before, int unit, double factor) {
            super(state, before.clone());
            this.loadCase = loadCase;
            this.steps = 0;
            addScaled(state.response(unit).values(), factor, values());
        }

        private static double[] sum(ContactState state, LoadCase loadCase, boolean values) {
            double[] sum = pick(state.response(state.offsetsUnit()), values).clone();
            for (int i = 0; i < loadCase.size(); i++) {
                addScaled(pick(state.response(loadCase.unit(i)), values), loadCase.factor(i), sum);
            }
            return sum;
        }

        private static double[] pick(ContactState.Response response, boolean values) {
            return values ? response.values() : response.movements();
        }

        @Override
        double furthest() {
            double furthest = state().response(state().offsetsUnit()).furthest();
            for (int i = 0; i < loadCase.size(); i++) {
                furthest += Math.abs(loadCase.factor(i))
                        * state().response(loadCase.unit(i)).furthest();
            }
            return furthest;
        }

        @Override
        double[] movements() {
            return sum(state(), loadCase, false);
        }

        @Override
        void writeRow(double[] row) {
            System.arraycopy(state().row(state().offsetsUnit()), 0, row, 0, row.length);
            for (int i = 0; i < loadCase.size(); i++) {
                addScaled(state().row(loadCase.unit(i)), loadCase.factor(i), row);
            }
        }
    }

    private static final class Whole extends Own {
        private final Loading loading;
        private final ContactState.Response response;

        private Whole(ContactState state, Loading loading, ContactState.Response response) {
            super(state, response.values());
            this.loading = loading;
            this.response = response;
        }

        static Whole of(Assembly assembly, ContactState state, LoadCase loadCase) {
            Loading loading = assembly.loadings().of(loadCase);
            return new Whole(state, loading, state.respond(loading));
        }

        @Override
        double furthest() {
            return response.furthest();
        }

        @Override
        double[] movements() {
            return response.movements();
        }

        @Override
        void writeRow(double[] row) {
            state().writeRow(loading, response.values(), row);
        }
    }
}
