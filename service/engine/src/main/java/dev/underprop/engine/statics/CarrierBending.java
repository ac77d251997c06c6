package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.List;

/** The bending stiffness of all carriers, without what rests on them or holds them, in one double and in two. */
final class CarrierBending {

    private record Element(int from, int to, double rigidity) {}

    private final CarrierNodes nodes;
    private final int band;
    private final List<Element> elements = new ArrayList<>();
    private final PlainBands plain;
    private final double stiffest;
    private final List<TwofoldBands> twofoldOnceAsked = new ArrayList<>(1);

    /** @param coupling greatest difference of node numbers that joists tie together */
    CarrierBending(Frame frame, CarrierNodes nodes, int coupling) {
        this.nodes = nodes;
        int widest = Math.max(1, 2 * coupling);
        for (int c = 0; c < frame.carriers().size(); c++) {
            int[] mine = nodes.on(c);
            for (int e = 0; e + 1 < mine.length; e++) {
                elements.add(new Element(
                        mine[e], mine[e + 1], frame.carriers().get(c).rigidity()));
                widest = Math.max(widest, 2 * (mine[e + 1] - mine[e]) + 1);
            }
        }
        this.band = widest;
        this.plain = new PlainBands(2 * nodes.count(), band);
        for (Element element : elements) {
            addStiffness(element, plain);
        }
        this.stiffest = plain.greatest();
    }

    /** A copy to be added to. */
    Bands copy(boolean twofold) {
        return twofold ? twofold().copy() : plain.copy();
    }

    /** Greatest stiffness of a single freedom (N/m): what rounding is measured by. */
    double stiffest() {
        return stiffest;
    }

    private TwofoldBands twofold() {
        if (twofoldOnceAsked.isEmpty()) {
            TwofoldBands matrix = new TwofoldBands(2 * nodes.count(), band);
            for (Element element : elements) {
                addStiffness(element, matrix);
            }
            twofoldOnceAsked.add(matrix);
        }
        return twofoldOnceAsked.get(0);
    }

    private void addStiffness(Element e, PlainBands matrix) {
        double length = length(e);
        double b = e.rigidity / length;
        double turn = 6 * b / length;
        double shear = 2 * turn / length;
        int i = 2 * e.from;
        int j = 2 * e.to;
        matrix.add(i, i, shear);
        matrix.add(j, j, shear);
        matrix.add(i, j, -shear);
        matrix.add(i, i + 1, turn);
        matrix.add(i, j + 1, turn);
        matrix.add(j, i + 1, -turn);
        matrix.add(j, j + 1, -turn);
        matrix.add(i + 1, i + 1, 4 * b);
        matrix.add(j + 1, j + 1, 4 * b);
        matrix.add(i + 1, j + 1, 2 * b);
    }

    private double length(Element e) {
        return nodes.x(e.to) - nodes.x(e.from);
    }

    private void addStiffness(Element e, TwofoldBands matrix) {
        Twofold length = new Twofold().set(nodes.x(e.to), 0).add(-nodes.x(e.from), 0);
        int i = 2 * e.from;
        int j = 2 * e.to;
        matrix.add(i, i, term(12, 3, e, length));
        matrix.add(j, j, term(12, 3, e, length));
        matrix.add(i, j, term(-12, 3, e, length));
        matrix.add(i, i + 1, term(6, 2, e, length));
        matrix.add(i, j + 1, term(6, 2, e, length));
        matrix.add(j, i + 1, term(-6, 2, e, length));
        matrix.add(j, j + 1, term(-6, 2, e, length));
        matrix.add(i + 1, i + 1, term(4, 1, e, length));
        matrix.add(j + 1, j + 1, term(4, 1, e, length));
        matrix.add(i + 1, j + 1, term(2, 1, e, length));
    }

    private static Twofold term(double factor, int power, Element e, Twofold length) {
        Twofold term = new Twofold().set(e.rigidity, 0).multiply(factor, 0);
        for (int p = 0; p < power; p++) {
            term.divide(length.hi(), length.lo());
        }
        return term;
    }

    /** Subtracts the carriers' own bending forces for the movements u, element by element from the chord. */
    void subtractForces(double[] u, double[] out) {
        double[] forces = new double[out.length];
        for (Element e : elements) {
            int i = 2 * e.from;
            int j = 2 * e.to;
            FlexuralElement.addForces(e.rigidity, length(e), u[i], u[i + 1], u[j], u[j + 1], forces, i, j);
        }
        for (int i = 0; i < out.length; i++) {
            out[i] -= forces[i];
        }
    }

    /** The same with low parts kept. */
    void subtractForces(double[] u, double[] uLow, double[] out) {
        twofold().subtractProduct(u, uLow, out, new double[out.length]);
    }
}
