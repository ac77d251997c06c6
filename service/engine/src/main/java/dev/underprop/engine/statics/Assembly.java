package dev.underprop.engine.statics;

import dev.underprop.engine.Halt;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** What does not depend on the contact state: condensed joists, the carriers' nodes and bending stiffness, and the loads. */
final class Assembly {

    /** Clear space (m) of the size in which floors move, so that no digits are lost to it. */
    static final double LITTLE = 1e-3;

    private static final int[] NONE = {};

    private final Halt halt;
    private final Frame frame;
    private final List<CondensedJoist> joists = new ArrayList<>();
    private final CarrierNodes nodes;
    private final CarrierBending bending;
    private final Loadings loadings;
    private final RigidMotions motions;
    private final Map<Closure, BitSet> loose = new HashMap<>();
    private final Map<Closure, KnownState> known = new HashMap<>();
    private final int[][] contactsOfCarrier;
    private final FieldLayout layout;
    private final double scale;
    private final double shortest;
    private final double longest;
    private final ForceChange balance;

    Assembly(Frame frame, List<UnitLoad> units) {
        this(frame, units, Halt.NEVER);
    }

    Assembly(Frame frame, List<UnitLoad> units, Halt halt) {
        this.halt = halt;
        this.frame = frame;
        this.motions = new RigidMotions(frame);
        this.contactsOfCarrier = contactsOfCarriers(frame);
        Pieces pieces = new Pieces(frame.members(), units);
        int[][] seats = seatsOfJoists(frame);
        for (int j = 0; j < seats.length; j++) {
            joists.add(new CondensedJoist(frame, j, seats[j]));
        }
        this.nodes = new CarrierNodes(frame);
        this.layout = new FieldLayout(frame, pieces);
        this.loadings = new Loadings(frame, units, pieces, joists, nodes, layout, halt);
        this.bending = new CarrierBending(frame, nodes, coupling());
        double stiffest = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (Frame.Joist joist : frame.joists()) {
            least = Math.min(least, joist.end() - joist.start());
            most = Math.max(most, joist.end() - joist.start());
        }
        for (Frame.Carrier carrier : frame.carriers()) {
            double length = carrier.end() - carrier.start();
            stiffest = Math.max(stiffest, carrier.rigidity() / (length * length * length));
            least = Math.min(least, length);
            most = Math.max(most, length);
        }
        this.scale = stiffest > 0 ? stiffest : 1;
        this.shortest = most > 0 ? least : 1;
        this.longest = most > 0 ? most : 1;
        this.balance = forceChange();
    }

    private static int[][] contactsOfCarriers(Frame frame) {
        List<List<Integer>> found = new ArrayList<>();
        frame.carriers().forEach(carrier -> found.add(new ArrayList<>()));
        for (int c = 0; c < frame.contacts().size(); c++) {
            if (frame.contacts().get(c) instanceof Contact.OnCarrier seat) {
                found.get(seat.carrier()).add(c);
            } else if (frame.contacts().get(c) instanceof Contact.OnProp prop) {
                found.get(prop.carrier()).add(c);
            }
        }
        return found.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
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

    /** Greatest difference of the numbers of two nodes that one joist ties together. */
    private int coupling() {
        int widest = 0;
        for (CondensedJoist joist : joists) {
            for (int i = 0; i < joist.size(); i++) {
                for (int k = 0; k < i; k++) {
                    int a = nodes.of(joist.contact(i));
                    int b = nodes.of(joist.contact(k));
                    widest = a < 0 || b < 0 ? widest : Math.max(widest, Math.abs(a - b));
                }
            }
        }
        return widest;
    }

    /** Whether what is worked out here is still wanted. */
    Halt halt() {
        return halt;
    }

    Frame frame() {
        return frame;
    }

    List<CondensedJoist> joists() {
        return joists;
    }

    CarrierBending bending() {
        return bending;
    }

    /** The props as the frame has them. */
    Props props() {
        return Props.of(frame, nodes);
    }

    int addOffsets(List<UnitLoad.Offset> offsets) {
        return loadings.addOffsets(frame, nodes, offsets);
    }

    Loadings loadings() {
        return loadings;
    }

    /** {@link #LITTLE} more of clear space at a contact, or a newton between what it keeps apart. */
    Loading change(int contact, boolean closed) {
        Loading change = Loadings.nothing(frame, nodes);
        if (closed) {
            change.addGap(contact, LITTLE);
            return change;
        }
        change.addTotal(1);
        for (int j = 0; j < joists.size(); j++) {
            for (int i = 0; i < joists.get(j).size(); i++) {
                if (joists.get(j).contact(i) == contact) {
                    double[] up = new double[joists.get(j).size()];
                    up[i] = -1;
                    change.setOnJoist(j, up);
                }
            }
        }
        if (nodes.of(contact) >= 0) {
            boolean prop = frame.contacts().get(contact) instanceof Contact.OnProp;
            change.onCarriers()[2 * nodes.of(contact)] += prop ? -1 : 1;
        }
        return change;
    }

    FieldLayout layout() {
        return layout;
    }

    /** Carrier node under a contact, or -1 for a ground seat. */
    int node(int contact) {
        return nodes.of(contact);
    }

    int freedoms() {
        return 2 * nodes.count();
    }

    /** Freedoms of the given carriers, ascending for each. */
    int[] freedomsOf(BitSet carriers) {
        if (carriers.isEmpty()) {
            return NONE;
        }
        return carriers.stream()
                .flatMap(k -> Arrays.stream(nodes.on(k)))
                .flatMap(node -> IntStream.of(2 * node, 2 * node + 1))
                .toArray();
    }

    /** The one object for a contact state. */
    KnownState known(Closure closure) {
        return known.computeIfAbsent(closure, KnownState::new);
    }

    /** Members that can move without resistance in a state; found once for each. */
    BitSet loose(Closure closure) {
        return loose.computeIfAbsent(closure, this::findLoose);
    }

    private BitSet findLoose(Closure closure) {
        BitSet found = motions.loose(closure.closed());
        for (int c = 0; c < frame.carriers().size(); c++) {
            if (closure.gone(c)) {
                found.clear(frame.carrierMember(c));
            }
        }
        return found;
    }

    /** Carriers all of whose contacts are absent by the rules. */
    BitSet away(Rules rules) {
        BitSet gone = new BitSet();
        for (int k = 0; k < frame.carriers().size(); k++) {
            boolean none = true;
            for (int c : contactsOfCarrier[k]) {
                none &= rules.isAbsent(c);
            }
            gone.set(k, none);
        }
        return gone;
    }

    /**
     * Members that have moved further than their own length, from movements and openings at the contacts that are there.
     */
    BitSet adrift(CaseAnswer answer, Question question) {
        BitSet adrift = new BitSet();
        double[] movements = answer.movements();
        for (int c = 0; c < movements.length; c++) {
            Contact contact = frame.contacts().get(c);
            double opening = answer.pressing()[c] ? 0 : answer.values()[c];
            if (question.absent()[c]) {
                continue;
            }
            if (contact instanceof Contact.OnGround seat) {
                markJoist(seat.joist(), movements[c], adrift);
            } else if (contact instanceof Contact.OnCarrier seat) {
                markJoist(seat.joist(), movements[c], adrift);
                markCarrier(seat.carrier(), movements[c] + opening - loadings.gap(c, question.loadCase()), adrift);
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
        return roundingIsSmall(loading.total(), furthest);
    }

    /** The same from the sum of the magnitudes of all loads (N) and a bound on the movements (m). */
    boolean roundingIsSmall(double total, double furthest) {
        double load = total > 0 ? total : loadings.heaviest();
        return Tolerance.ROUNDING * bending.stiffest() * furthest <= Tolerance.TENSION * Tolerance.FAR_BELOW * load;
    }

    /** A place to work out what a change of forces does to all members. */
    ForceChange forceChange() {
        return new ForceChange(layout, frame.members(), frame.contacts().size());
    }

    /** The same place again and again, for what is looked at and done with. */
    ForceChange balance() {
        return balance;
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
}
