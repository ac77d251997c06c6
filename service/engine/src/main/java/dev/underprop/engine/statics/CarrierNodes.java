package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The nodes of all carriers: wherever a joist or a prop touches one. Numbered by x over all carriers, so that the band of
 * their matrix stays narrow however long the floor is.
 */
final class CarrierNodes {

    private record Node(int carrier, double x) {}

    private final List<Node> nodes;
    private final int[] ofContact;

    CarrierNodes(Frame frame) {
        refuseDoubledProps(frame);
        this.nodes = nodes(frame);
        this.ofContact = new int[frame.contacts().size()];
        Arrays.fill(ofContact, -1);
        for (int c = 0; c < ofContact.length; c++) {
            ofContact[c] = find(frame, frame.contacts().get(c));
        }
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

    private int find(Frame frame, Contact contact) {
        if (contact instanceof Contact.OnCarrier seat) {
            return nearest(seat.carrier(), frame.joists().get(seat.joist()).x());
        }
        return contact instanceof Contact.OnProp prop ? nearest(prop.carrier(), prop.x()) : -1;
    }

    private int nearest(int carrier, double x) {
        int best = -1;
        for (int i = 0; i < nodes.size(); i++) {
            boolean better = best < 0 || Math.abs(nodes.get(i).x - x) < Math.abs(nodes.get(best).x - x);
            if (nodes.get(i).carrier == carrier && better) {
                best = i;
            }
        }
        return best;
    }

    /** Node under a contact, or -1 for a ground seat. */
    int of(int contact) {
        return ofContact[contact];
    }

    /** Nodes of a carrier, by x. */
    int[] on(int carrier) {
        return IntStream.range(0, nodes.size())
                .filter(i -> nodes.get(i).carrier == carrier)
                .toArray();
    }

    /** Place of a node along its carrier (m). */
    double x(int node) {
        return nodes.get(node).x;
    }

    int count() {
        return nodes.size();
    }
}
