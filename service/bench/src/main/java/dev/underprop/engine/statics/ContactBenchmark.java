package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What a contact state and a combined case cost, one thread, on the structure of the reference plan: eight joists on a sill,
 * a shore of four springs and a girder; a dead unit, a snow unit and fifteen live cells. In the package of what it measures,
 * since a contact state is no part of its door.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@State(Scope.Benchmark)
public class ContactBenchmark {

    private static final int JOISTS = 8;

    private final Frame frame = frame();
    private final List<UnitLoad> units = units();
    private final Assembly assembly = new Assembly(frame, units);
    private final Closure all = all();
    private final ContactSolver solver = new ContactSolver(frame, units);
    private final int group = solver.addGroup(new int[] {2, 3, 4, 5, 6, 7, 8});
    private final LoadCase combined = new LoadCase(new int[] {0, 1, group}, new double[] {1, 0.75, 0.75});
    private final double[] row = new double[solver.rowSize()];

    private static Frame frame() {
        List<Frame.Joist> joists = new ArrayList<>();
        List<Contact> contacts = new ArrayList<>();
        for (int j = 0; j < JOISTS; j++) {
            joists.add(new Frame.Joist(j * 0.6096, 0, 4.572, 369_000));
            contacts.add(new Contact.OnGround(j, 0.04445, Double.POSITIVE_INFINITY, 0, true));
            contacts.add(new Contact.OnGround(j, 4.4196, Double.POSITIVE_INFINITY, 0, true));
            contacts.add(new Contact.OnCarrier(j, 0, 0, false));
        }
        for (int p = 0; p < 4; p++) {
            contacts.add(new Contact.OnProp(0, p * 1.4224, 1.75e7, 0, false));
        }
        return new Frame(joists, List.of(new Frame.Carrier(1.0668, -0.1524, 4.4196, 1_107_000)), contacts);
    }

    private static List<UnitLoad> units() {
        double[] cuts = {0, 1.0668, 4.4196, 4.572};
        List<UnitLoad> units = new ArrayList<>();
        List<UnitLoad.Piece> dead = new ArrayList<>();
        List<UnitLoad.Piece> snow = new ArrayList<>();
        for (int j = 0; j < JOISTS; j++) {
            dead.add(new UnitLoad.Uniform(j, 0, 4.572, 350));
            dead.add(new UnitLoad.Point(j, 0.04445, 2760));
            snow.add(new UnitLoad.Point(j, 0.04445, 1600));
        }
        units.add(new UnitLoad("dead", dead));
        units.add(new UnitLoad("snow", snow));
        for (int cell = 0; cell < 15; cell++) {
            int column = cell / 3;
            int part = cell % 3;
            List<UnitLoad.Piece> pieces = new ArrayList<>();
            for (int j = 0; j < JOISTS; j++) {
                if (j * 5 / JOISTS == column) {
                    pieces.add(new UnitLoad.Uniform(j, cuts[part], cuts[part + 1], 1170));
                }
            }
            units.add(new UnitLoad("live " + cell, pieces));
        }
        return units;
    }

    private Closure all() {
        BitSet closed = new BitSet();
        closed.set(0, frame.contacts().size());
        return new Closure(closed, new BitSet());
    }

    /** Factorises a state: joists reduced anew, carriers factorised, looseness judged. */
    @Benchmark
    public Object factorise() {
        return new ContactState(assembly, assembly.props(), all);
    }

    /** Factorises a state and answers for every unit load: contact forces, movements, diagrams and deflection samples. */
    @Benchmark
    public double factoriseAndAnswerEveryUnit() {
        ContactState state = new ContactState(assembly, assembly.props(), all);
        double sum = 0;
        for (int unit = 0; unit <= units.size(); unit++) {
            sum += state.response(unit).values()[0] + state.row(unit)[0];
        }
        return sum;
    }

    /** One more case in a known state: combined and verified. */
    @Benchmark
    public Solution combineAndVerify() {
        return solver.solve(combined);
    }

    /** One more case in a known state: combined, verified, and the row of all diagrams written. */
    @Benchmark
    public double combineVerifyAndWriteRow() {
        Solution solution = solver.solve(combined);
        solution.writeRow(row);
        return row[0];
    }
}
