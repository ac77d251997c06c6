package dev.underprop.engine.statics;

/**
 * What acts in a unit, a group or a case, in the forms in which statics needs it: linear, so that loadings are summed
 * like the loads themselves.
 */
final class Loading {

    private static final double[] NONE = {};

    private final double[][] onJoists;
    private final double[] onCarriers;
    private final double[][] uniform;
    private final double[][] point;
    private final double[] gaps;
    private boolean offset;
    private double total;

    /** Nothing yet. */
    Loading(int joists, int members, int freedoms, int contacts) {
        this.gaps = new double[contacts];
        this.onJoists = new double[joists][];
        this.onCarriers = new double[freedoms];
        this.uniform = new double[members][];
        this.point = new double[members][];
        java.util.Arrays.fill(onJoists, NONE);
        java.util.Arrays.fill(uniform, NONE);
        java.util.Arrays.fill(point, NONE);
    }

    private Loading alike() {
        return new Loading(onJoists.length, uniform.length, onCarriers.length, gaps.length);
    }

    /** Sum of loadings times factors. */
    static Loading sum(Loading[] parts, double[] factors) {
        Loading sum = parts[0].alike();
        for (int i = 0; i < parts.length; i++) {
            sum.add(parts[i], factors[i]);
        }
        return sum;
    }

    private void add(Loading more, double factor) {
        total += Math.abs(factor) * more.total;
        addScaled(more.onCarriers, factor, onCarriers);
        addLists(more.onJoists, factor, onJoists);
        addLists(more.uniform, factor, uniform);
        addLists(more.point, factor, point);
        if (more.offset) {
            offset = true;
            addScaled(more.gaps, factor, gaps);
        }
    }

    private static void addLists(double[][] from, double factor, double[][] to) {
        for (int i = 0; i < from.length; i++) {
            if (from[i].length > 0) {
                to[i] = to[i].length == 0 ? new double[from[i].length] : to[i];
                addScaled(from[i], factor, to[i]);
            }
        }
    }

    private static void addScaled(double[] from, double factor, double[] to) {
        for (int i = 0; i < from.length; i++) {
            to[i] += factor * from[i];
        }
    }

    void addTotal(double force) {
        total += Math.abs(force);
    }

    void addGap(int contact, double size) {
        offset = true;
        gaps[contact] += size;
    }

    void setOnJoist(int joist, double[] atContacts) {
        onJoists[joist] = atContacts;
    }

    void setOnMember(int member, double[] uniformAfter, double[] pointAt) {
        uniform[member] = uniformAfter;
        point[member] = pointAt;
    }

    /** Sum of the magnitudes of all loads (N). */
    double total() {
        return total;
    }

    /** Clear space at each contact (m), or the change of it; all zero where {@link #offset} is false. */
    double[] gaps() {
        return gaps;
    }

    /** Whether any clear space is given or changed. */
    boolean offset() {
        return offset;
    }

    /** Force at each contact of a joist (N); empty when the joist carries nothing. */
    double[] onJoist(int joist) {
        return onJoists[joist];
    }

    /** Nodal loads of the carriers. */
    double[] onCarriers() {
        return onCarriers;
    }

    /** Load after each station of a member (N/m); empty when there is none. */
    double[] uniform(int member) {
        return uniform[member];
    }

    /** Force at each station of a member (N); empty when there is none. */
    double[] point(int member) {
        return point[member];
    }
}
