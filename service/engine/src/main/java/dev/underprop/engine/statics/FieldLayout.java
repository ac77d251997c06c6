package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Where the numbers of all members lie in one long row: for each member shear, moment and load at its stations, then its
 * deflection at sample places as part of the span it lies in. Linear in the loads within a contact state, so the row of
 * a case is the sum of the rows of its units.
 */
final class FieldLayout {

    private final List<Stations> members = new ArrayList<>();
    private final List<Diagram> diagrams = new ArrayList<>();
    private final List<Deflections> deflections = new ArrayList<>();
    private final int[] base;
    private final int size;
    private final int joists;

    FieldLayout(Frame frame, Pieces pieces) {
        this.base = new int[frame.members()];
        this.joists = frame.joists().size();
        int next = 0;
        for (int m = 0; m < base.length; m++) {
            Stations stations = new Stations(frame, pieces, m);
            members.add(stations);
            base[m] = next;
            diagrams.add(new Diagram(stations, next));
            deflections.add(new Deflections(diagrams.get(m)));
            next += 3 * stations.count() + stations.samples().length;
        }
        this.size = next;
    }

    int size() {
        return size;
    }

    int base(int member) {
        return base[member];
    }

    Stations stations(int member) {
        return members.get(member);
    }

    int[][] supports(BitSet closed) {
        int[][] supports = new int[base.length][];
        for (int m = 0; m < base.length; m++) {
            supports[m] = members.get(m).supports(closed);
        }
        return supports;
    }

    int[] supports(int member, BitSet closed) {
        return members.get(member).supports(closed);
    }

    /** Writes the row of a loading in one contact state; that of a carrier that is away is zero. */
    void write(Loading loading, Closure closure, double[] values, double[] row) {
        write(loading, closure, values, supports(closure.closed()), row);
    }

    /** The same where the supports are known. */
    void write(Loading loading, Closure closure, double[] values, int[][] supports, double[] row) {
        for (int m = 0; m < base.length; m++) {
            Stations stations = members.get(m);
            if (m >= joists && closure.gone(m - joists)) {
                Arrays.fill(row, base[m], base[m] + 3 * stations.count() + stations.samples().length, 0);
                continue;
            }
            stations.fill(loading.uniform(m), loading.point(m), closure.closed(), values, row, base[m]);
            diagrams.get(m).view(row);
            deflections.get(m).sample(supports[m], row, base[m] + 3 * stations.count());
        }
    }

    /** Writes shear, moment and load of one member in a case; nothing where it is a carrier that is away. */
    void writeForces(Loadings loadings, LoadCase loadCase, Closure closure, double[] values, int member, double[] row) {
        Stations stations = members.get(member);
        if (member >= joists && closure.gone(member - joists)) {
            Arrays.fill(row, base[member], base[member] + 3 * stations.count(), 0);
            return;
        }
        double[] uniform = new double[stations.count()];
        double[] point = new double[stations.count()];
        for (int i = 0; i < loadCase.size(); i++) {
            if (loadings.gapsAlone(loadCase.unit(i))) {
                continue;
            }
            Loading loading = loadings.of(loadCase.unit(i));
            addScaled(loading.uniform(member), loadCase.factor(i), uniform);
            addScaled(loading.point(member), loadCase.factor(i), point);
        }
        stations.fill(uniform, point, closure.closed(), values, row, base[member]);
    }

    private static void addScaled(double[] from, double factor, double[] to) {
        for (int i = 0; i < from.length; i++) {
            to[i] += factor * from[i];
        }
    }
}
