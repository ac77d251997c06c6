package dev.underprop.engine.statics;

/** What a contact state says of one case: by summing its answers to units, or by answering for the whole case at once. */
abstract sealed class CaseAnswer {

    private final ContactState state;
    private final double[] values;

    private CaseAnswer(ContactState state, double[] values) {
        this.state = state;
        this.values = values;
    }

    /** Asks a state for a case, in the way that costs less. */
    static CaseAnswer of(Assembly assembly, ContactState state, LoadCase loadCase) {
        return state.worthUnits() ? new Summed(state, loadCase) : Whole.of(assembly, state, loadCase);
    }

    ContactState state() {
        return state;
    }

    /** The same state's answer to a case with one more unit. */
    CaseAnswer shifted(LoadCase loadCase, int unit, double factor) {
        return new Summed(state, loadCase, values, unit, factor);
    }

    /** Force (N) at each closed contact, opening (m) at each open one. */
    double[] values() {
        return values;
    }

    /** Deflection of the carried member at every contact (m). */
    abstract double[] movements();

    /** Writes the row of the case. */
    abstract void writeRow(double[] row);

    private static final class Summed extends CaseAnswer {
        private final LoadCase loadCase;

        Summed(ContactState state, LoadCase loadCase) {
            super(state, sum(state, loadCase, true));
            this.loadCase = loadCase;
        }

        Summed(ContactState state, LoadCase loadCase, double[] before, int unit, double factor) {
            super(state, before.clone());
            this.loadCase = loadCase;
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

        private static void addScaled(double[] from, double factor, double[] to) {
            for (int c = 0; c < to.length; c++) {
                to[c] += factor * from[c];
            }
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

    private static final class Whole extends CaseAnswer {
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
        double[] movements() {
            return response.movements();
        }

        @Override
        void writeRow(double[] row) {
            state().writeRow(loading, response.values(), row);
        }
    }
}
