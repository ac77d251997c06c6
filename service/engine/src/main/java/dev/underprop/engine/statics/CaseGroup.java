package dev.underprop.engine.statics;

import java.util.BitSet;

/** Cases that ended in one contact state, side by side. Arrays are shared for speed, valid for now, and must not be changed. */
public final class CaseGroup {

    private final CaseBlock block;
    private final Closure closure;
    private final boolean[] pressing;
    private final BitSet loose;
    private final CaseRows rows;

    CaseGroup(CaseBlock block, Closure closure, boolean[] pressing, BitSet loose, CaseRows rows) {
        this.block = block;
        this.closure = closure;
        this.pressing = pressing;
        this.loose = loose;
        this.rows = rows;
    }

    /** How many cases. */
    public int size() {
        return rows.count();
    }

    /** Place of the r-th case in its block. */
    public int place(int r) {
        return rows.caseAt(r);
    }

    /** Members that can move without resistance, numbered as in {@link Frame}. */
    public BitSet loose() {
        return (BitSet) loose.clone();
    }

    public boolean closed(int contact) {
        return pressing[contact];
    }

    /** Force (N) at a closed contact, compression positive, or opening (m) at an open one; the first {@link #size} places. */
    public double[] values(int contact) {
        return rows.values(contact);
    }

    /** Writes shear, moment and load of one member in the r-th case into a row of {@link ContactSolver#rowSize()} places. */
    public void writeForces(int r, int member, double[] row) {
        block.writeForces(rows.caseAt(r), closure, rows.column(r), member, row);
    }

    /** Force (N) of the r-th case at a contact before it was changed, 0 where it was open. */
    double before(int contact, int r) {
        return block.forces(contact)[rows.caseAt(r)];
    }
}
