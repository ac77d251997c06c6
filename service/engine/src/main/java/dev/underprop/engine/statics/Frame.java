package dev.underprop.engine.statics;

import java.util.List;

/**
 * The structure as statics sees it: joists along y, carriers (shore beams, girders) along x, and the contacts between
 * them. Members are numbered joists first, then carriers.
 *
 * @param joists the joists
 * @param carriers the beams across the joists
 * @param contacts every place where one thing may press on another
 */
public record Frame(List<Joist> joists, List<Carrier> carriers, List<Contact> contacts) {

    /**
     * A joist: a straight prismatic beam along y.
     *
     * @param x position along the carriers (m)
     * @param start y of its near end (m)
     * @param end y of its far end (m), greater than start
     * @param rigidity flexural rigidity E·I (N·m²), positive
     */
    public record Joist(double x, double start, double end, double rigidity) {
        public Joist {
            requireSpan(start, end);
            requirePositive(rigidity, "rigidity");
            requireFinite(x, "x");
        }
    }

    /**
     * A beam across the joists: a straight prismatic beam along x.
     *
     * @param y position along the joists (m)
     * @param start x of its left end (m)
     * @param end x of its right end (m), greater than start
     * @param rigidity flexural rigidity E·I (N·m²), positive
     */
    public record Carrier(double y, double start, double end, double rigidity) {
        public Carrier {
            requireSpan(start, end);
            requirePositive(rigidity, "rigidity");
            requireFinite(y, "y");
        }
    }

    public Frame {
        joists = List.copyOf(joists);
        carriers = List.copyOf(carriers);
        contacts = List.copyOf(contacts);
        for (Contact contact : contacts) {
            checkPlace(contact, joists, carriers);
        }
    }

    /** Number of members: joists, then carriers. */
    public int members() {
        return joists.size() + carriers.size();
    }

    /** Member number of a carrier. */
    public int carrierMember(int carrier) {
        return joists.size() + carrier;
    }

    private static void checkPlace(Contact contact, List<Joist> joists, List<Carrier> carriers) {
        if (contact instanceof Contact.OnGround seat) {
            Joist joist = joists.get(seat.joist());
            requireWithin(seat.y(), joist.start(), joist.end(), "a ground seat lies off its joist");
        } else if (contact instanceof Contact.OnCarrier seat) {
            Joist joist = joists.get(seat.joist());
            Carrier carrier = carriers.get(seat.carrier());
            requireWithin(carrier.y(), joist.start(), joist.end(), "a carrier passes beyond the end of its joist");
            requireWithin(joist.x(), carrier.start(), carrier.end(), "a joist lies off its carrier");
        } else if (contact instanceof Contact.OnProp prop) {
            Carrier carrier = carriers.get(prop.carrier());
            requireWithin(prop.x(), carrier.start(), carrier.end(), "a prop lies off its carrier");
        }
    }

    private static void requireWithin(double at, double from, double to, String message) {
        if (!(at >= from - Tolerance.SAME_PLACE && at <= to + Tolerance.SAME_PLACE)) {
            throw new IllegalArgumentException(message);
        }
    }

    private static void requireSpan(double start, double end) {
        requireFinite(start, "start");
        requireFinite(end, "end");
        if (!(end > start)) {
            throw new IllegalArgumentException("a member must end after it starts");
        }
    }

    private static void requirePositive(double value, String what) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be positive and finite");
        }
    }

    private static void requireFinite(double value, String what) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be finite");
        }
    }
}
