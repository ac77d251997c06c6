package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * What does not depend on the contact state: condensed joists, the carriers' nodes and bending stiffness, and the nodal
 * loads of every unit. Nodes of all carriers are numbered by x, so that the band stays narrow however long the floor is.
 */
final class Assembly {

    private record Node(int carrier, double x) {}

    private record Element(int from, int to, double rigidity, double length) {}

    private final Frame frame;
    private final List<CondensedJoist> joists = new ArrayList<>();
    private final List<Node> nodes;
    private final List<Element> elements = new ArrayList<>();
    private final int[] nodeOfContact;
    private final double[][] loads;
    private final double[] totals;
    private final double scale;
    private final Banded bending;

    Assembly(Frame frame, List<UnitLoad> units) {
        this.frame = frame;
        for (int j = 0; j < frame.joists().size(); j++) {
            joists.add(new CondensedJoist(frame, j, units));
        }
        this.nodes = nodes(frame);
        this.nodeOfContact = new int[frame.contacts().size()];
        Arrays.fill(nodeOfContact, -1);
        for (int c = 0; c < nodeOfContact.length; c++) {
            nodeOfContact[c] = nodeOf(frame.contacts().get(c));
        }
        this.loads = new double[units.size()][2 * nodes.size()];
        this.totals = units.stream()
                .mapToDouble(u -> u.pieces().stream()
                        .mapToDouble(p -> Math.abs(p.total()))
                        .sum())
                .toArray();
        for (int c = 0; c < frame.carriers().size(); c++) {
            addCarrier(c, units);
        }
        this.scale = frame.carriers().stream()
                .mapToDouble(c -> c.rigidity() / cube(c.end() - c.start()))
                .max()
                .orElse(1);
        this.bending = new Banded(2 * nodes.size(), band());
        elements.forEach(this::addStiffness);
    }

    private static double cube(double x) {
        return x * x * x;
    }

    private static List<Node> nodes(Frame frame) {
        List<Node> wanted = new ArrayList<>();
        for (Contact contact : frame.contacts()) {
            if (contact instanceof Contact.OnCarrier seat) {
                wanted.add(new Node(
                        seat.carrier(), frame.joists().get(seat.joist()).x()));
            } else if (contact instanceof Contact.OnProp prop) {
                wanted.add(new Node(prop.carrier(), prop.x()));
            }
        }
        wanted.sort(Comparator.comparingInt(Node::carrier).thenComparingDouble(Node::x));
        List<Node> merged = new ArrayList<>();
        for (Node node : wanted) {
            Node last = merged.isEmpty() ? new Node(-1, 0) : merged.get(merged.size() - 1);
            if (last.carrier != node.carrier || node.x - last.x >= Tolerance.SAME_PLACE) {
                merged.add(node);
            }
        }
        merged.sort(Comparator.comparingDouble(Node::x).thenComparingInt(Node::carrier));
        return merged;
    }

    private int nodeOf(Contact contact) {
        if (contact instanceof Contact.OnCarrier seat) {
            return nodeAt(seat.carrier(), frame.joists().get(seat.joist()).x());
        }
        return contact instanceof Contact.OnProp prop ? nodeAt(prop.carrier(), prop.x()) : -1;
    }

    private int nodeAt(int carrier, double x) {
        int best = -1;
        for (int i = 0; i < nodes.size(); i++) {
            boolean better = best < 0 || Math.abs(nodes.get(i).x - x) < Math.abs(nodes.get(best).x - x);
            if (nodes.get(i).carrier == carrier && better) {
                best = i;
            }
        }
        return best;
    }

    private void addCarrier(int carrier, List<UnitLoad> units) {
        int[] mine = java.util.stream.IntStream.range(0, nodes.size())
                .filter(i -> nodes.get(i).carrier == carrier)
                .toArray();
        if (mine.length == 0) {
            throw new IllegalArgumentException("a carrier touches nothing");
        }
        double[] at = Arrays.stream(mine).mapToDouble(i -> nodes.get(i).x).toArray();
        double rigidity = frame.carriers().get(carrier).rigidity();
        NodedBeam beam = new NodedBeam(at, rigidity);
        for (int e = 0; e < mine.length - 1; e++) {
            elements.add(new Element(mine[e], mine[e + 1], rigidity, beam.length(e)));
        }
        double[] own = new double[2 * mine.length];
        for (int u = 0; u < units.size(); u++) {
            Arrays.fill(own, 0);
            for (UnitLoad.Piece piece : units.get(u).pieces()) {
                if (piece.member() == frame.carrierMember(carrier)) {
                    beam.addLoad(piece, own);
                }
            }
            for (int i = 0; i < mine.length; i++) {
                loads[u][2 * mine[i]] += own[2 * i];
                loads[u][2 * mine[i] + 1] += own[2 * i + 1];
            }
        }
    }

    private int band() {
        int band = 1;
        for (Element element : elements) {
            band = Math.max(band, 2 * Math.abs(element.to - element.from) + 1);
        }
        for (CondensedJoist joist : joists) {
            for (int i = 0; i < joist.size(); i++) {
                for (int k = 0; k < i; k++) {
                    int a = nodeOfContact[joist.contact(i)];
                    int b = nodeOfContact[joist.contact(k)];
                    band = a < 0 || b < 0 ? band : Math.max(band, 2 * Math.abs(a - b));
                }
            }
        }
        return band;
    }

    private void addStiffness(Element e) {
        double b = e.rigidity / e.length;
        double shear = 12 * b / (e.length * e.length);
        double turn = 6 * b / e.length;
        int i = 2 * e.from;
        int j = 2 * e.to;
        bending.add(i, i, shear);
        bending.add(j, j, shear);
        bending.add(i, j, -shear);
        bending.add(i, i + 1, turn);
        bending.add(i, j + 1, turn);
        bending.add(j, i + 1, -turn);
        bending.add(j, j + 1, -turn);
        bending.add(i + 1, i + 1, 4 * b);
        bending.add(j + 1, j + 1, 4 * b);
        bending.add(i + 1, j + 1, 2 * b);
    }

    Frame frame() {
        return frame;
    }

    List<CondensedJoist> joists() {
        return joists;
    }

    /** Carrier node under a contact, or -1 for a ground seat. */
    int node(int contact) {
        return nodeOfContact[contact];
    }

    int carrierOfNode(int node) {
        return nodes.get(node).carrier;
    }

    int freedoms() {
        return 2 * nodes.size();
    }

    int units() {
        return loads.length;
    }

    /** Sum of the magnitudes of a unit's loads (N). */
    double total(int unit) {
        return totals[unit];
    }

    /** Nodal loads of a unit on the carriers; zeros for the offsets unit. */
    double[] carrierLoad(int unit) {
        return unit < loads.length ? loads[unit] : new double[freedoms()];
    }

    Banded bending() {
        return bending.copy();
    }

    double scale() {
        return scale;
    }

    /** Subtracts the carriers' own bending forces for the movements u. */
    void subtractBending(double[] u, double[] out) {
        double[] forces = new double[out.length];
        for (Element e : elements) {
            int i = 2 * e.from;
            int j = 2 * e.to;
            FlexuralElement.addForces(e.rigidity, e.length, u[i], u[i + 1], u[j], u[j + 1], forces, i, j);
        }
        for (int i = 0; i < out.length; i++) {
            out[i] -= forces[i];
        }
    }
}
