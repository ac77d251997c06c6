package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * What does not depend on the contact state: condensed joists, the carriers' nodes and bending stiffness, and the nodal
 * loads of every unit. Nodes of all carriers are numbered by x, so that the band stays narrow however long the floor is.
 */
final class Assembly {

    /** A sum of this many rows costs about what one new row does. */
    private static final int SMALL_GROUP = 12;

    private record Node(int carrier, double x) {}

    private record Element(int from, int to, double rigidity) {}

    private final Frame frame;
    private final List<CondensedJoist> joists = new ArrayList<>();
    private final List<Node> nodes;
    private final List<Element> elements = new ArrayList<>();
    private final int[] nodeOfContact;
    private final List<Loading> loadings = new ArrayList<>();
    private final int units;
    private final double scale;
    private final double shortest;
    private final double longest;
    private final PlainBands bending;
    private final double stiffest;
    private final double heaviest;
    private final RigidMotions motions;
    private final FieldLayout layout;
    private final List<int[]> groups = new ArrayList<>();
    private final List<Double> groupTotals = new ArrayList<>();
    private final Loading notSummed = new Loading(0, 0, 0);
    private final List<TwofoldBands> twofoldOnceAsked = new ArrayList<>(1);

    Assembly(Frame frame, List<UnitLoad> units) {
        this.frame = frame;
        this.motions = new RigidMotions(frame);
        Pieces pieces = new Pieces(frame.members(), units);
        int[][] seats = seatsOfJoists(frame);
        for (int j = 0; j < seats.length; j++) {
            joists.add(new CondensedJoist(frame, j, seats[j]));
        }
        refuseDoubledProps(frame);
        this.layout = new FieldLayout(frame, pieces);
        this.nodes = nodes(frame);
        this.nodeOfContact = new int[frame.contacts().size()];
        Arrays.fill(nodeOfContact, -1);
        for (int c = 0; c < nodeOfContact.length; c++) {
            nodeOfContact[c] = nodeOf(frame.contacts().get(c));
        }
        for (UnitLoad unit : units) {
            Loading loading = new Loading(joists.size(), frame.members(), freedoms());
            unit.pieces().forEach(piece -> loading.addTotal(piece.total()));
            loadings.add(loading);
        }
        this.units = loadings.size();
        for (int c = 0; c < frame.carriers().size(); c++) {
            addCarrier(c, pieces.on(frame.carrierMember(c)));
        }
        for (int j = 0; j < joists.size(); j++) {
            for (Pieces.OnMember unit : pieces.on(j)) {
                loadings.get(unit.unit()).setOnJoist(j, joists.get(j).condense(unit.pieces()));
            }
        }
        for (int m = 0; m < frame.members(); m++) {
            spread(m, pieces.on(m));
        }
        // The gaps and lifts stand after the units: no load of their own.
        loadings.add(new Loading(joists.size(), frame.members(), freedoms()));
        this.scale = frame.carriers().stream()
                .mapToDouble(c -> c.rigidity() / cube(c.end() - c.start()))
                .max()
                .orElse(1);
        double[] lengths = DoubleStream.concat(
                        frame.joists().stream().mapToDouble(j -> j.end() - j.start()),
                        frame.carriers().stream().mapToDouble(c -> c.end() - c.start()))
                .sorted()
                .toArray();
        this.shortest = lengths.length == 0 ? 1 : lengths[0];
        this.longest = lengths.length == 0 ? 1 : lengths[lengths.length - 1];
        this.bending = new PlainBands(2 * nodes.size(), band());
        for (Element element : elements) {
            addStiffness(element, bending);
        }
        this.stiffest = bending.greatest();
        this.heaviest = loadings.stream().mapToDouble(Loading::total).max().orElse(0);
    }

    /** Contacts of each joist in order along it. */
    private static int[][] seatsOfJoists(Frame frame) {
        List<List<Integer>> seats = new ArrayList<>();
        frame.joists().forEach(joist -> seats.add(new ArrayList<>(4)));
        for (int c = 0; c < frame.contacts().size(); c++) {
            if (frame.contacts().get(c) instanceof Contact.OnGround seat) {
                seats.get(seat.joist()).add(c);
            } else if (frame.contacts().get(c) instanceof Contact.OnCarrier seat) {
                seats.get(seat.joist()).add(c);
            }
        }
        int[][] sorted = new int[seats.size()][];
        for (int j = 0; j < sorted.length; j++) {
            seats.get(j)
                    .sort(Comparator.comparingDouble(
                            c -> CondensedJoist.place(frame, frame.contacts().get(c))));
            sorted[j] = seats.get(j).stream().mapToInt(Integer::intValue).toArray();
        }
        return sorted;
    }

    private static double cube(double x) {
        return x * x * x;
    }

    /** Two rigid props at one place could share a load in any way, so each would be given all of it. */
    private static void refuseDoubledProps(Frame frame) {
        List<Node> props = new ArrayList<>();
        for (Contact contact : frame.contacts()) {
            if (contact instanceof Contact.OnProp prop) {
                props.add(new Node(prop.carrier(), prop.x()));
            }
        }
        props.sort(Comparator.comparingInt(Node::carrier).thenComparingDouble(Node::x));
        for (int i = 1; i < props.size(); i++) {
            Node before = props.get(i - 1);
            Node here = props.get(i);
            if (here.carrier == before.carrier && here.x - before.x < Tolerance.SAME_PLACE) {
                throw new IllegalArgumentException("two props of one carrier at one place");
            }
        }
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

    private void addCarrier(int carrier, List<Pieces.OnMember> units) {
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
            elements.add(new Element(mine[e], mine[e + 1], rigidity));
        }
        for (Pieces.OnMember unit : units) {
            double[] own = new double[2 * mine.length];
            double[] nodal = loadings.get(unit.unit()).onCarriers();
            unit.pieces().forEach(piece -> beam.addLoad(piece, own));
            for (int i = 0; i < mine.length; i++) {
                nodal[2 * mine[i]] += own[2 * i];
                nodal[2 * mine[i] + 1] += own[2 * i + 1];
            }
        }
    }

    private void spread(int member, List<Pieces.OnMember> units) {
        Stations stations = layout.stations(member);
        for (Pieces.OnMember unit : units) {
            double[] uniform = new double[stations.count()];
            double[] point = new double[stations.count()];
            stations.spread(unit.pieces(), uniform, point);
            loadings.get(unit.unit()).setOnMember(member, uniform, point);
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
        return nodes.get(e.to).x - nodes.get(e.from).x;
    }

    private void addStiffness(Element e, TwofoldBands matrix) {
        Twofold length = new Twofold().set(nodes.get(e.to).x, 0).add(-nodes.get(e.from).x, 0);
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

    /** Members that can move without resistance while the given contacts are closed. */
    BitSet loose(BitSet closed) {
        return motions.loose(closed);
    }

    int freedoms() {
        return 2 * nodes.size();
    }

    /** Number of unit loads. */
    int units() {
        return units;
    }

    /** What a unit or a group puts on the structure. */
    Loading loading(int unit) {
        if (isGroup(unit) && loadings.get(unit) == notSummed) {
            int[] members = group(unit);
            Loading[] parts = new Loading[members.length];
            double[] factors = new double[members.length];
            for (int i = 0; i < parts.length; i++) {
                parts[i] = loadings.get(members[i]);
                factors[i] = 1;
            }
            loadings.set(unit, Loading.sum(parts, factors));
        }
        return loadings.get(unit);
    }

    /** What a whole case puts on the structure. */
    Loading loading(LoadCase loadCase) {
        Loading[] parts = new Loading[loadCase.size()];
        double[] factors = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = loading(loadCase.unit(i));
            factors[i] = loadCase.factor(i);
        }
        return parts.length == 0 ? loadings.get(units) : Loading.sum(parts, factors);
    }

    FieldLayout layout() {
        return layout;
    }

    /** Makes a group of units that act together at full value; answers with its number as a unit. */
    int addGroup(int[] members) {
        double total = 0;
        for (int member : members) {
            total += loadings.get(member).total();
        }
        groups.add(members.clone());
        groupTotals.add(total);
        loadings.add(notSummed);
        return loadings.size() - 1;
    }

    /** Whether a unit number is that of a group. */
    boolean isGroup(int unit) {
        return unit > units;
    }

    /** Whether summing the answers to a group's units costs less than answering for the group itself. */
    boolean smallGroup(int unit) {
        return isGroup(unit) && group(unit).length <= SMALL_GROUP;
    }

    /** The units of a group. */
    int[] group(int unit) {
        return groups.get(unit - units - 1);
    }

    /** Sum of the magnitudes of a unit's or group's loads (N). */
    double total(int unit) {
        return isGroup(unit)
                ? groupTotals.get(unit - units - 1)
                : loadings.get(unit).total();
    }

    /** Members that have moved further than their own length, from movements and openings at the contacts. */
    BitSet adrift(double[] movements, double[] values, BitSet closed) {
        BitSet adrift = new BitSet();
        for (int c = 0; c < movements.length; c++) {
            Contact contact = frame.contacts().get(c);
            double opening = closed.get(c) ? 0 : values[c];
            if (contact instanceof Contact.OnGround seat) {
                markJoist(seat.joist(), movements[c], adrift);
            } else if (contact instanceof Contact.OnCarrier seat) {
                markJoist(seat.joist(), movements[c], adrift);
                markCarrier(seat.carrier(), movements[c] + opening - seat.gap(), adrift);
            } else if (contact instanceof Contact.OnProp prop) {
                markCarrier(prop.carrier(), movements[c], adrift);
            }
        }
        return adrift;
    }

    private void markJoist(int joist, double movement, BitSet adrift) {
        Frame.Joist member = frame.joists().get(joist);
        if (Math.abs(movement) > member.end() - member.start()) {
            adrift.set(joist);
        }
    }

    private void markCarrier(int carrier, double movement, BitSet adrift) {
        Frame.Carrier member = frame.carriers().get(carrier);
        if (Math.abs(movement) > member.end() - member.start()) {
            adrift.set(frame.carrierMember(carrier));
        }
    }

    /** Bending stiffness of the carriers, a copy to be added to. */
    Bands bending(boolean twofold) {
        return twofold ? twofoldBending().copy() : bending.copy();
    }

    private TwofoldBands twofoldBending() {
        if (twofoldOnceAsked.isEmpty()) {
            TwofoldBands matrix = new TwofoldBands(2 * nodes.size(), band());
            for (Element element : elements) {
                addStiffness(element, matrix);
            }
            twofoldOnceAsked.add(matrix);
        }
        return twofoldOnceAsked.get(0);
    }

    /**
     * Whether rounding in ordinary doubles stays far below the tolerances: stiffness times movement is the size of the
     * terms that must cancel.
     *
     * @param loading what acts
     * @param movements of the nodes
     */
    boolean roundingIsSmall(Loading loading, double[] movements) {
        double furthest = 0;
        for (int i = 0; i < movements.length; i += 2) {
            furthest = Math.max(furthest, Math.abs(movements[i]));
        }
        double load = loading.total() > 0 ? loading.total() : heaviest;
        return Tolerance.ROUNDING * stiffest * furthest <= Tolerance.TENSION * Tolerance.FAR_BELOW * load;
    }

    double scale() {
        return scale;
    }

    /** Length of the shortest member (m). */
    double shortest() {
        return shortest;
    }

    /** Length of the longest member (m). */
    double longest() {
        return longest;
    }

    /** Subtracts the carriers' own bending forces for the movements u, element by element from the chord. */
    void subtractBending(double[] u, double[] out) {
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
    void subtractBending(double[] u, double[] uLow, double[] out) {
        twofoldBending().subtractProduct(u, uLow, out, new double[out.length]);
    }
}
