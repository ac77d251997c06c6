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

    /** Writes the row of a loading in one contact state; that of a carrier that is away is zero. */
    void write(Loading loading, BitSet away, boolean[] pressing, double[] values, int[][] supports, double[] row) {
        for (int m = 0; m < base.length; m++) {
            Stations stations = members.get(m);
            if (m >= joists && away.get(m - joists)) {
                Arrays.fill(row, base[m], base[m] + 3 * stations.count() + stations.samples().length, 0);
                continue;
            }
            stations.fill(loading.uniform(m), loading.point(m), pressing, values, row, base[m]);
            diagrams.get(m).view(row);
            deflections.get(m).sample(supports[m], row, base[m] + 3 * stations.count());
        }
    }
}
