package dev.underprop.engine.statics;

/**
 * A prismatic beam cut at nodes. Two freedoms a node: deflection (down, m) and slope (rad). Loads on the parts beyond
 * the outer nodes are carried to the outer node as force and moment, which is exact by statics.
 */
final class NodedBeam {

    private final double[] at;
    private final double ei;

    /** @param at node places in ascending order (m), at least one; ei flexural rigidity (N·m²) */
    NodedBeam(double[] at, double ei) {
        this.at = at;
        this.ei = ei;
    }

    int nodes() {
        return at.length;
    }

    double rigidity() {
        return ei;
    }

    double length(int element) {
        return at[element + 1] - at[element];
    }

    /** Adds the nodal loads of one piece to out, which has two places a node. */
    void addLoad(UnitLoad.Piece piece, double[] out) {
        if (piece instanceof UnitLoad.Point point) {
            addPoint(point.at(), point.force(), out);
        } else if (piece instanceof UnitLoad.Uniform uniform) {
            addUniform(uniform, out);
        }
    }

    private void addPoint(double place, double force, double[] out) {
        int last = at.length - 1;
        if (place <= at[0] || place >= at[last]) {
            int node = place <= at[0] ? 0 : last;
            out[2 * node] += force;
            out[2 * node + 1] += force * (place - at[node]);
            return;
        }
        int element = elementAt(place);
        FlexuralElement.addPoint(length(element), place - at[element], force, out, 2 * element, 2 * element + 2);
    }

    private void addUniform(UnitLoad.Uniform load, double[] out) {
        int last = at.length - 1;
        addBeyond(load, load.from(), Math.min(load.to(), at[0]), 0, out);
        for (int element = 0; element < last; element++) {
            double from = Math.max(load.from(), at[element]);
            double to = Math.min(load.to(), at[element + 1]);
            if (to > from) {
                double origin = at[element];
                FlexuralElement.addUniform(
                        length(element),
                        from - origin,
                        to - origin,
                        load.intensity(),
                        out,
                        2 * element,
                        2 * element + 2);
            }
        }
        addBeyond(load, Math.max(load.from(), at[last]), load.to(), last, out);
    }

    private void addBeyond(UnitLoad.Uniform load, double from, double to, int node, double[] out) {
        if (to > from) {
            double force = load.intensity() * (to - from);
            out[2 * node] += force;
            out[2 * node + 1] += force * ((from + to) / 2 - at[node]);
        }
    }

    private int elementAt(double place) {
        int element = 0;
        while (element < at.length - 2 && place >= at[element + 1]) {
            element++;
        }
        return element;
    }
}
