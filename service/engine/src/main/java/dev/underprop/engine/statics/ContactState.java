package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.IntFunction;

/**
 * The structure with a given set of contacts closed: linear, factorised once, answering for one unit load after another.
 * The answer of a unit is one number a contact: its force (N) where closed, its opening (m) where open.
 */
final class ContactState {

    /**
     * What a state answers: one number a contact.
     *
     * @param values force (N) where closed, opening (m) where open
     * @param movements deflection of the carried member (m)
     */
    record Response(double[] values, double[] movements) {
        static final Response NONE = new Response(NOT_YET, NOT_YET);

        static Response sum(int[] units, IntFunction<Response> of) {
            Response first = of.apply(units[0]);
            Response sum = new Response(first.values.clone(), first.movements.clone());
            for (int k = 1; k < units.length; k++) {
                Response more = of.apply(units[k]);
                add(more.values, sum.values);
                add(more.movements, sum.movements);
            }
            return sum;
        }
    }

    private static void add(double[] more, double[] sum) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += more[i];
        }
    }

    /** Cases a state is asked for before it answers unit by unit. */
    private static final int FEW = 3;

    private static final double[] NOT_YET = {};
    private static final int NO_GROUP = -1;

    private final Assembly assembly;
    private final BitSet closed;
    private final boolean[] pressing;
    private final JoistReduction[] joists;
    private Bands matrix;
    private Bands unconstrained;
    private boolean twofold;
    private final int[][] supports;
    private final List<Response> responses = new ArrayList<>();
    private final List<double[]> rows = new ArrayList<>();
    private Response answerOfGroup = Response.NONE;
    private int answeredGroup = NO_GROUP;
    private double[] rowOfGroup = NOT_YET;
    private int rowedGroup = NO_GROUP;
    private int asked;
    private final BitSet loose;
    private final double weak;

    /** Weak springs that hold a loose structure, as part of the members' own stiffness: far below, yet above rounding. */
    static final double WEAK = 1e-9;

    /** The true structure; where it is loose, on weak springs, so that the way it goes can be seen. */
    ContactState(Assembly assembly, BitSet closed) {
        this(assembly, closed, assembly.loose(closed));
    }

    private ContactState(Assembly assembly, BitSet closed, BitSet loose) {
        this(assembly, closed, loose, loose.isEmpty() ? 0 : WEAK);
    }

    /** The structure on weak springs, whether they are needed or not. */
    static ContactState onWeakSprings(Assembly assembly, BitSet closed) {
        return new ContactState(assembly, closed, new BitSet(), WEAK);
    }

    private ContactState(Assembly assembly, BitSet closed, BitSet loose, double regular) {
        this.loose = loose;
        this.weak = regular * assembly.scale();
        this.assembly = assembly;
        this.closed = (BitSet) closed.clone();
        this.pressing = new boolean[assembly.frame().contacts().size()];
        for (int c = 0; c < pressing.length; c++) {
            pressing[c] = closed.get(c);
        }
        this.supports = assembly.layout().supports(closed);
        this.joists = new JoistReduction[assembly.joists().size()];
        for (int j = 0; j < joists.length; j++) {
            joists[j] = reduce(assembly.joists().get(j), regular);
        }
        this.matrix = stiffness(false);
        this.unconstrained = matrix.copy();
        factorise();
    }

    private JoistReduction reduce(CondensedJoist joist, double regular) {
        long mask = 0;
        for (int i = 0; i < joist.size(); i++) {
            mask |= pressing[joist.contact(i)] ? 1L << i : 0;
        }
        return joist.reduce(mask, regular * joist.scale());
    }

    private Bands stiffness(boolean withLowParts) {
        Bands stiffness = assembly.bending().copy(withLowParts);
        for (int j = 0; j < joists.length; j++) {
            addJoist(j, stiffness);
        }
        addProps(stiffness);
        return stiffness;
    }

    private void factorise() {
        List<Contact> contacts = assembly.frame().contacts();
        for (int c = 0; c < contacts.size(); c++) {
            if (contacts.get(c) instanceof Contact.OnProp prop && pressing[c] && rigid(prop)) {
                matrix.prescribe(2 * assembly.node(c));
            }
        }
        matrix.factor(assembly.scale());
    }

    /** From here on with low parts: what was answered is answered anew when asked again. */
    private void keepMoreDigits() {
        twofold = true;
        matrix = stiffness(true);
        unconstrained = matrix.copy();
        factorise();
        responses.clear();
        rows.clear();
        answeredGroup = NO_GROUP;
        rowedGroup = NO_GROUP;
    }

    private void addJoist(int j, Bands stiffness) {
        CondensedJoist joist = assembly.joists().get(j);
        JoistReduction reduction = joists[j];
        for (int s = 0; s < reduction.ties(); s++) {
            int a = 2 * assembly.node(joist.contact(reduction.tie(s)));
            for (int t = 0; t <= s; t++) {
                int b = 2 * assembly.node(joist.contact(reduction.tie(t)));
                stiffness.add(a, b, reduction.offered(s, t));
            }
        }
    }

    private void addProps(Bands stiffness) {
        List<Contact> contacts = assembly.frame().contacts();
        for (int c = 0; c < contacts.size(); c++) {
            if (contacts.get(c) instanceof Contact.OnProp prop && pressing[c] && !rigid(prop)) {
                stiffness.add(2 * assembly.node(c), 2 * assembly.node(c), prop.stiffness());
            }
        }
        for (int i = 0; weak > 0 && i < assembly.freedoms(); i += 2) {
            stiffness.add(i, i, weak);
        }
    }

    private static boolean rigid(Contact.OnProp prop) {
        return Double.isInfinite(prop.stiffness());
    }

    boolean pressing(int contact) {
        return pressing[contact];
    }

    BitSet closed() {
        return closed;
    }

    /** Number of the unit that stands for the gaps and lifts themselves; it always acts, once. */
    int offsetsUnit() {
        return assembly.loadings().units();
    }

    /** Members (numbered as in {@link Frame}) that can move without resistance; empty when all is held. */
    BitSet loose() {
        return loose;
    }

    /** Stations at which each member is held. */
    int[][] supports() {
        return supports;
    }

    /**
     * Whether enough cases have asked for this state that answers to single units pay off; a state seen once or twice
     * is asked for whole cases.
     */
    boolean worthUnits() {
        return ++asked > FEW;
    }

    /** Answer to a unit or group; the unit after the last load is the gaps and lifts. Of groups the last is kept. */
    Response response(int unit) {
        if (assembly.loadings().isGroup(unit)) {
            if (unit != answeredGroup) {
                answerOfGroup = assembly.loadings().smallGroup(unit)
                        ? Response.sum(assembly.loadings().group(unit), this::response)
                        : respond(assembly.loadings().of(unit), false);
                answeredGroup = unit;
            }
            return answerOfGroup;
        }
        if (unit < responses.size() && responses.get(unit) != Response.NONE) {
            return responses.get(unit);
        }
        Response response = respond(
                assembly.loadings().of(unit), unit == assembly.loadings().units());
        while (responses.size() <= unit) {
            responses.add(Response.NONE);
        }
        responses.set(unit, response);
        return response;
    }

    /**
     * Row of a unit or group, as {@link FieldLayout} lays it out. Of groups the last is kept, in one place for all of
     * them: cases that follow each other share their group.
     */
    double[] row(int unit) {
        if (assembly.loadings().isGroup(unit)) {
            if (unit != rowedGroup) {
                writeGroup(unit);
                rowedGroup = unit;
            }
            return rowOfGroup;
        }
        if (unit < rows.size() && rows.get(unit) != NOT_YET) {
            return rows.get(unit);
        }
        double[] row = new double[assembly.layout().size()];
        writeRow(assembly.loadings().of(unit), response(unit).values(), row);
        while (rows.size() <= unit) {
            rows.add(NOT_YET);
        }
        rows.set(unit, row);
        return row;
    }

    private void writeGroup(int unit) {
        if (rowOfGroup == NOT_YET) {
            rowOfGroup = new double[assembly.layout().size()];
        }
        if (assembly.loadings().smallGroup(unit)) {
            java.util.Arrays.fill(rowOfGroup, 0);
            for (int part : assembly.loadings().group(unit)) {
                add(row(part), rowOfGroup);
            }
        } else {
            writeRow(assembly.loadings().of(unit), response(unit).values(), rowOfGroup);
        }
    }

    /** Writes the row of a loading whose forces at the contacts are known. */
    void writeRow(Loading loading, double[] values, double[] row) {
        assembly.layout().write(loading, pressing, values, supports, row);
    }

    /**
     * Answers for a loading.
     *
     * @param offsets whether the gaps and lifts act with it
     */
    Response respond(Loading loading, boolean offsets) {
        double[][] held = new double[joists.length][];
        double[] moves = loading.onCarriers().clone();
        double[] movesLow = new double[moves.length];
        for (int j = 0; j < joists.length; j++) {
            double[] load = loading.onJoist(j);
            held[j] = joists[j].freeDeflections(load, offsets);
            for (int t = 0; t < joists[j].ties(); t++) {
                int c = assembly.joists().get(j).contact(joists[j].tie(t));
                moves[2 * assembly.node(c)] += joists[j].heldForce(t, load, held[j], offsets);
            }
        }
        solveCarriers(moves, movesLow, offsets);
        if (!twofold && !assembly.roundingIsSmall(loading, moves)) {
            keepMoreDigits();
            return respond(loading, offsets);
        }
        double[] value = new double[pressing.length];
        double[] movement = new double[value.length];
        double[] residual = loading.onCarriers().clone();
        for (int j = 0; j < joists.length; j++) {
            recoverJoist(j, loading.onJoist(j), offsets, held[j], moves, value, movement, residual);
        }
        if (twofold) {
            assembly.bending().subtractForces(moves, movesLow, residual);
        } else {
            assembly.bending().subtractForces(moves, residual);
        }
        for (int i = 0; i < residual.length; i += 2) {
            residual[i] -= weak * moves[i];
        }
        recoverProps(offsets, moves, residual, value, movement);
        return new Response(value, movement);
    }

    /** Takes nodal loads, gives nodal movements; the second array holds the low parts. */
    private void solveCarriers(double[] nodal, double[] nodalLow, boolean offsets) {
        List<Contact> contacts = assembly.frame().contacts();
        double[] prescribed = new double[nodal.length];
        for (int c = 0; c < contacts.size(); c++) {
            if (contacts.get(c) instanceof Contact.OnProp prop && pressing[c]) {
                int node = 2 * assembly.node(c);
                if (rigid(prop)) {
                    prescribed[node] = offsets ? prop.gap() : 0;
                } else if (offsets) {
                    nodal[node] += prop.stiffness() * prop.gap();
                }
            }
        }
        if (offsets) {
            unconstrained.subtractProduct(prescribed, new double[nodal.length], nodal, nodalLow);
        }
        for (int c = 0; c < contacts.size(); c++) {
            if (contacts.get(c) instanceof Contact.OnProp prop && pressing[c] && rigid(prop)) {
                int node = 2 * assembly.node(c);
                nodal[node] = prescribed[node];
                nodalLow[node] = 0;
            }
        }
        matrix.solve(nodal, nodalLow);
    }

    private void recoverJoist(
            int j,
            double[] load,
            boolean offsets,
            double[] held,
            double[] moves,
            double[] value,
            double[] movement,
            double[] residual) {
        CondensedJoist joist = assembly.joists().get(j);
        int n = joist.size();
        double[] carrier = new double[n];
        double[] deflection = new double[n];
        double[] force = new double[n];
        for (int i = 0; i < n; i++) {
            int node = assembly.node(joist.contact(i));
            carrier[i] = node < 0 ? 0 : moves[2 * node];
        }
        joists[j].recover(load, held, carrier, offsets, deflection, force);
        for (int i = 0; i < n; i++) {
            int c = joist.contact(i);
            int node = assembly.node(c);
            movement[c] = deflection[i];
            value[c] = pressing[c] ? force[i] : carrier[i] + (offsets ? joist.gap(i) : 0) - deflection[i];
            if (node >= 0) {
                residual[2 * node] += force[i];
            }
        }
    }

    private void recoverProps(boolean offsets, double[] moves, double[] residual, double[] value, double[] movement) {
        List<Contact> contacts = assembly.frame().contacts();
        for (int c = 0; c < contacts.size(); c++) {
            if (contacts.get(c) instanceof Contact.OnProp prop) {
                int node = 2 * assembly.node(c);
                double gap = offsets ? prop.gap() : 0;
                movement[c] = moves[node];
                if (!pressing[c]) {
                    value[c] = gap - moves[node];
                } else if (rigid(prop)) {
                    value[c] = residual[node];
                } else {
                    value[c] = prop.stiffness() * (moves[node] - gap);
                }
            }
        }
    }
}
