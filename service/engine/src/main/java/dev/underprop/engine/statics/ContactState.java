package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
     * @param furthest greatest of them, either sign
     */
    record Response(double[] values, double[] movements, double furthest) {
        static final Response NONE = new Response(NOT_YET, NOT_YET, 0);

        static Response of(double[] values, double[] movements) {
            double furthest = 0;
            for (double movement : movements) {
                furthest = Math.max(furthest, Math.abs(movement));
            }
            return new Response(values, movements, furthest);
        }

        static Response sum(int[] units, IntFunction<Response> of) {
            Response first = of.apply(units[0]);
            double[] values = first.values.clone();
            double[] movements = first.movements.clone();
            for (int k = 1; k < units.length; k++) {
                Response more = of.apply(units[k]);
                add(more.values, values);
                add(more.movements, movements);
            }
            return of(values, movements);
        }
    }

    private static void add(double[] more, double[] sum) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += more[i];
        }
    }

    private static void multiply(double[] numbers, double factor) {
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] *= factor;
        }
    }

    /** Cases a state is asked for before it answers unit by unit. */
    private static final int FEW = 3;

    /** What is held for each contact beside answers, in numbers. */
    private static final int OF_CONTACT = 8;

    private static final double[] NOT_YET = {};
    private static final int NO_GROUP = -1;

    private final Assembly assembly;
    private final Props props;
    private final Closure closure;
    private final boolean[] pressing;
    private final JoistReduction[] joists;
    private Bands matrix;
    private Bands unconstrained;
    private boolean twofold;
    private final int[][] supports;
    private final List<Response> responses = new ArrayList<>();
    private final List<double[]> rows = new ArrayList<>();
    private double[] rowOfGroup = NOT_YET;
    private int rowedGroup = NO_GROUP;
    private int asked;
    private final BitSet loose;
    private final double weak;
    private final Response[] changes;
    private final double[] imbalances;
    private final Map<BitSet, Flips> flips = new LinkedHashMap<>(16, 0.75f, true);
    private final Kept.Parts kept;
    private int numbers;

    /** Weak springs that hold a loose structure, as part of the members' own stiffness: far below, yet above rounding. */
    static final double WEAK = 1e-9;

    /** The true structure; where it is loose, on weak springs, so that the way it goes can be seen. */
    ContactState(Assembly assembly, Props props, Closure closure) {
        this(assembly, props, closure, new Kept.Parts());
    }

    /**
     * The same as one of many.
     *
     * @param kept bounds the rows of all of them
     */
    ContactState(Assembly assembly, Props props, Closure closure, Kept.Parts kept) {
        this(assembly, props, closure, assembly.loose(closure), kept);
    }

    private ContactState(Assembly assembly, Props props, Closure closure, BitSet loose, Kept.Parts kept) {
        this(assembly, props, closure, loose, loose.isEmpty() ? 0 : WEAK, kept);
    }

    /** The structure on weak springs, whether they are needed or not. */
    static ContactState onWeakSprings(Assembly assembly, Props props, Closure closure) {
        return new ContactState(assembly, props, closure, new BitSet(), WEAK, new Kept.Parts());
    }

    private ContactState(
            Assembly assembly, Props props, Closure closure, BitSet loose, double regular, Kept.Parts kept) {
        assembly.halt().check();
        BitSet closed = closure.closed();
        this.kept = kept;
        this.props = props;
        this.closure = closure;
        this.loose = loose;
        this.weak = regular * assembly.scale();
        this.assembly = assembly;
        this.pressing = new boolean[assembly.frame().contacts().size()];
        this.changes = new Response[pressing.length];
        Arrays.fill(changes, Response.NONE);
        this.imbalances = new double[pressing.length];
        Arrays.fill(imbalances, Double.NaN);
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
        for (int i = 0; i < props.count(); i++) {
            if (pressing[props.contact(i)] && props.rigid(i)) {
                matrix.prescribe(props.freedom(i));
            }
        }
        for (int freedom : assembly.freedomsOf(closure.away())) {
            matrix.prescribe(freedom);
        }
        matrix.factor(assembly.scale());
    }

    /** From here on with low parts: what was answered is answered anew when asked again. */
    void keepMoreDigits() {
        twofold = true;
        matrix = stiffness(true);
        unconstrained = matrix.copy();
        factorise();
        responses.clear();
        rows.clear();
        rowedGroup = NO_GROUP;
        Arrays.fill(changes, Response.NONE);
        Arrays.fill(imbalances, Double.NaN);
        dropWays();
        numbers = 0;
    }

    /** Lets go of rows; they are written again when asked for. */
    void dropRows() {
        rows.clear();
        rowOfGroup = NOT_YET;
        rowedGroup = NO_GROUP;
    }

    /** About how many numbers it holds, its rows and ways to neighbours aside. */
    int numbers() {
        return numbers + 2 * matrix.numbers() + OF_CONTACT * pressing.length;
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
        for (int i = 0; i < props.count(); i++) {
            if (pressing[props.contact(i)] && !props.rigid(i)) {
                stiffness.add(props.freedom(i), props.freedom(i), props.stiffness(i));
            }
        }
        for (int i = 0; weak > 0 && i < assembly.freedoms(); i += 2) {
            stiffness.add(i, i, weak);
        }
    }

    /** Whether it stands on these props. */
    boolean of(Props others) {
        return props == others;
    }

    boolean pressing(int contact) {
        return pressing[contact];
    }

    /** By contact, whether it is closed; not to be changed. */
    boolean[] pressing() {
        return pressing;
    }

    BitSet closed() {
        return closure.closed();
    }

    Closure closure() {
        return closure;
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

    /** Answer to a unit or group, found once for each; the unit after the last load is the gaps and lifts. */
    Response response(int unit) {
        if (unit < responses.size() && responses.get(unit) != Response.NONE) {
            return responses.get(unit);
        }
        Response response = assembly.loadings().smallGroup(unit)
                ? Response.sum(assembly.loadings().group(unit), this::response)
                : respond(assembly.loadings().of(unit));
        while (responses.size() <= unit) {
            responses.add(Response.NONE);
        }
        responses.set(unit, response);
        numbers += 2 * pressing.length;
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
        kept.rows().more(this, row.length);
        return row;
    }

    private void writeGroup(int unit) {
        if (rowOfGroup == NOT_YET) {
            rowOfGroup = new double[assembly.layout().size()];
            kept.rows().more(this, rowOfGroup.length);
        }
        if (assembly.loadings().smallGroup(unit)) {
            Arrays.fill(rowOfGroup, 0);
            for (int part : assembly.loadings().group(unit)) {
                add(row(part), rowOfGroup);
            }
        } else {
            writeRow(assembly.loadings().of(unit), response(unit).values(), rowOfGroup);
        }
    }

    /** Writes the row of a loading whose forces at the contacts are known. */
    void writeRow(Loading loading, double[] values, double[] row) {
        assembly.layout().write(loading, closure, values, supports, row);
    }

    /**
     * Answer to the change of one contact: a metre of clear space where it is closed, a newton between what it keeps apart where
     * it is open. Found once for each.
     */
    Response changed(int contact) {
        Response known = changes[contact];
        if (known == Response.NONE) {
            known = respond(assembly.change(contact, pressing[contact]));
            if (pressing[contact]) {
                multiply(known.values, 1 / Assembly.LITTLE);
                multiply(known.movements, 1 / Assembly.LITTLE);
                known = Response.of(known.values, known.movements);
            }
            changes[contact] = known;
            numbers += 2 * pressing.length;
        }
        return known;
    }

    /** By how much (N) the answer to a contact's change is out of balance: what rounding leaves of it. */
    double imbalance(int contact) {
        if (Double.isNaN(imbalances[contact])) {
            imbalances[contact] = findImbalance(contact);
        }
        return imbalances[contact];
    }

    private double findImbalance(int contact) {
        double[] forces = changed(contact).values().clone();
        for (int c = 0; c < forces.length; c++) {
            forces[c] = pressing[c] ? forces[c] : 0;
        }
        forces[contact] = pressing[contact] ? forces[contact] : 1;
        ForceChange balance = assembly.balance();
        balance.of(forces);
        return balance.imbalance();
    }

    /** The way to the neighbour in which the given contacts have changed; found once for each. */
    Flips flips(BitSet flipped) {
        Flips known = flips.get(flipped);
        if (known == null) {
            known = new Flips(this, flipped);
            flips.put(flipped, known);
            kept.ways().more(this, known.numbers());
            boundWays();
        }
        return known;
    }

    private void boundWays() {
        Iterator<Flips> eldest = flips.values().iterator();
        while (kept.ways().tooMuch() && flips.size() > 1) {
            kept.ways().more(this, -eldest.next().numbers());
            eldest.remove();
        }
    }

    /** Lets go of the ways to neighbours. */
    void dropWays() {
        flips.clear();
    }

    /** What a contact itself gives under load (m/N). */
    double flexibility(int contact) {
        return 1 / props.stiffness(contact, assembly.frame());
    }

    /** Whether neighbours may be reached from here: nothing is loose. */
    boolean firm() {
        return loose.isEmpty();
    }

    /** Whether its answers have been found with more digits than doubles keep. */
    boolean twofold() {
        return twofold;
    }

    /** Whether nothing is loose in the neighbour in which the given contacts have changed. */
    boolean firmWith(BitSet flipped) {
        BitSet closed = (BitSet) closure.closed().clone();
        closed.xor(flipped);
        return assembly.loose(closure.with(closed)).isEmpty();
    }

    /** Answers for a loading. */
    Response respond(Loading loading) {
        assembly.halt().check();
        double[][] held = new double[joists.length][];
        double[][] gaps = new double[joists.length][];
        double[] moves = loading.onCarriers().clone();
        double[] movesLow = new double[moves.length];
        for (int j = 0; j < joists.length; j++) {
            double[] load = loading.onJoist(j);
            gaps[j] = gapsOf(assembly.joists().get(j), loading);
            held[j] = joists[j].freeDeflections(load, gaps[j]);
            for (int t = 0; t < joists[j].ties(); t++) {
                int c = assembly.joists().get(j).contact(joists[j].tie(t));
                moves[2 * assembly.node(c)] += joists[j].heldForce(t, load, held[j], gaps[j]);
            }
        }
        solveCarriers(moves, movesLow, loading);
        if (!twofold && !assembly.roundingIsSmall(loading, moves)) {
            keepMoreDigits();
            return respond(loading);
        }
        double[] value = new double[pressing.length];
        double[] movement = new double[value.length];
        double[] residual = loading.onCarriers().clone();
        for (int j = 0; j < joists.length; j++) {
            recoverJoist(j, loading.onJoist(j), gaps[j], held[j], moves, value, movement, residual);
        }
        if (twofold) {
            assembly.bending().subtractForces(moves, movesLow, residual);
        } else {
            assembly.bending().subtractForces(moves, residual);
        }
        for (int i = 0; i < residual.length; i += 2) {
            residual[i] -= weak * moves[i];
        }
        recoverProps(loading.gaps(), moves, residual, value, movement);
        return Response.of(value, movement);
    }

    private static double[] gapsOf(CondensedJoist joist, Loading loading) {
        if (!loading.offset()) {
            return NOT_YET;
        }
        double[] gaps = new double[joist.size()];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = loading.gaps()[joist.contact(i)];
        }
        return gaps;
    }

    /** Takes nodal loads, gives nodal movements; the second array holds the low parts. */
    private void solveCarriers(double[] nodal, double[] nodalLow, Loading loading) {
        double[] gaps = loading.gaps();
        double[] prescribed = new double[nodal.length];
        for (int i = 0; i < props.count(); i++) {
            int c = props.contact(i);
            if (pressing[c] && props.rigid(i)) {
                prescribed[props.freedom(i)] = gaps[c];
            } else if (pressing[c]) {
                nodal[props.freedom(i)] += props.stiffness(i) * gaps[c];
            }
        }
        if (loading.offset()) {
            unconstrained.subtractProduct(prescribed, new double[nodal.length], nodal, nodalLow);
        }
        for (int i = 0; i < props.count(); i++) {
            if (pressing[props.contact(i)] && props.rigid(i)) {
                nodal[props.freedom(i)] = prescribed[props.freedom(i)];
                nodalLow[props.freedom(i)] = 0;
            }
        }
        for (int freedom : assembly.freedomsOf(closure.away())) {
            nodal[freedom] = 0;
            nodalLow[freedom] = 0;
        }
        matrix.solve(nodal, nodalLow);
    }

    private void recoverJoist(
            int j,
            double[] load,
            double[] gaps,
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
        joists[j].recover(load, held, carrier, gaps, deflection, force);
        for (int i = 0; i < n; i++) {
            int c = joist.contact(i);
            int node = assembly.node(c);
            movement[c] = deflection[i];
            value[c] = pressing[c] ? force[i] : carrier[i] + (gaps.length > 0 ? gaps[i] : 0) - deflection[i];
            if (node >= 0) {
                residual[2 * node] += force[i];
            }
        }
    }

    private void recoverProps(double[] gaps, double[] moves, double[] residual, double[] value, double[] movement) {
        for (int i = 0; i < props.count(); i++) {
            int c = props.contact(i);
            int freedom = props.freedom(i);
            movement[c] = moves[freedom];
            if (!pressing[c]) {
                value[c] = gaps[c] - moves[freedom];
            } else if (props.rigid(i)) {
                value[c] = residual[freedom];
            } else {
                value[c] = props.stiffness(i) * (moves[freedom] - gaps[c]);
            }
        }
    }
}
