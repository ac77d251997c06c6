package dev.underprop.engine.statics;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A joist brought down to the deflections at its contacts: stiffness and loads with the slopes condensed out. Done once;
 * what depends on which contacts are closed is in {@link JoistReduction}.
 */
final class CondensedJoist {

    /** What a contact of the joist rests on. */
    enum Support {
        RIGID_GROUND,
        SPRING_GROUND,
        CARRIER
    }

    /** Closed contacts, and the weak springs at all of them (N/m). */
    private record Held(long mask, double regular) {}

    private final int[] contacts;
    private final Support[] supports;
    private final double[] stiffness;
    private final double[] k;
    private final NodedBeam beam;
    private final double[] kvs;
    private final Dense slopes;
    private final double scale;
    private final Map<Held, JoistReduction> reductions = new HashMap<>();

    CondensedJoist(Frame frame, int joist, int[] contacts) {
        this.contacts = contacts;
        int n = contacts.length;
        double[] at = new double[n];
        this.supports = new Support[n];
        this.stiffness = new double[n];
        for (int i = 0; i < n; i++) {
            Contact contact = frame.contacts().get(contacts[i]);
            at[i] = place(frame, contact);
            supports[i] = support(contact);
            stiffness[i] = contact.stiffness();
            if (i > 0 && at[i] - at[i - 1] < Tolerance.SAME_PLACE) {
                throw new IllegalArgumentException("two contacts of one joist at one place");
            }
        }
        double ei = frame.joists().get(joist).rigidity();
        double span = n < 2 ? 1 : at[n - 1] - at[0];
        this.scale = ei / (span * span * span);
        this.k = new double[n * n];
        this.kvs = new double[n * n];
        this.beam = new NodedBeam(at, ei);
        this.slopes = condense();
    }

    private Dense condense() {
        int n = contacts.length;
        double[] kss = new double[n * n];
        for (int e = 0; e < n - 1; e++) {
            addElement(e, kss);
        }
        Dense factor = new Dense(kss, n, 1);
        double[] column = new double[n];
        for (int j = 0; n > 1 && j < n; j++) {
            for (int i = 0; i < n; i++) {
                column[i] = kvs[j * n + i];
            }
            factor.solve(column);
            for (int i = 0; i < n; i++) {
                for (int m = 0; m < n; m++) {
                    k[i * n + j] -= kvs[i * n + m] * column[m];
                }
            }
        }
        return factor;
    }

    private void addElement(int e, double[] kss) {
        int n = contacts.length;
        double h = beam.length(e);
        double b = beam.rigidity() / h;
        int f = e + 1;
        double shear = 12 * b / (h * h);
        k[e * n + e] += shear;
        k[f * n + f] += shear;
        k[e * n + f] -= shear;
        k[f * n + e] -= shear;
        double turn = 6 * b / h;
        kvs[e * n + e] += turn;
        kvs[e * n + f] += turn;
        kvs[f * n + e] -= turn;
        kvs[f * n + f] -= turn;
        kss[e * n + e] += 4 * b;
        kss[f * n + f] += 4 * b;
        kss[e * n + f] += 2 * b;
        kss[f * n + e] += 2 * b;
    }

    /** Load at each contact (N) from the pieces that lie on this joist, slopes condensed out. */
    double[] condense(List<UnitLoad.Piece> pieces) {
        int n = contacts.length;
        double[] forces = new double[n];
        if (n == 0) {
            return forces;
        }
        double[] nodal = new double[2 * n];
        pieces.forEach(piece -> beam.addLoad(piece, nodal));
        double[] moments = new double[n];
        for (int i = 0; i < n; i++) {
            forces[i] = nodal[2 * i];
            moments[i] = nodal[2 * i + 1];
        }
        if (n > 1) {
            slopes.solve(moments);
            for (int i = 0; i < n; i++) {
                for (int m = 0; m < n; m++) {
                    forces[i] -= kvs[i * n + m] * moments[m];
                }
            }
        }
        return forces;
    }

    static double place(Frame frame, Contact contact) {
        if (contact instanceof Contact.OnGround seat) {
            return seat.y();
        }
        return frame.carriers().get(((Contact.OnCarrier) contact).carrier()).y();
    }

    private static Support support(Contact contact) {
        if (contact instanceof Contact.OnCarrier) {
            return Support.CARRIER;
        }
        return Double.isInfinite(contact.stiffness()) ? Support.RIGID_GROUND : Support.SPRING_GROUND;
    }

    int size() {
        return contacts.length;
    }

    int contact(int i) {
        return contacts[i];
    }

    Support support(int i) {
        return supports[i];
    }

    double stiffness(int i) {
        return stiffness[i];
    }

    double k(int i, int j) {
        return k[i * contacts.length + j];
    }

    double scale() {
        return scale;
    }

    /** The joist with the contacts of the mask closed (bit i = i-th contact along the joist). */
    JoistReduction reduce(long mask, double regular) {
        return reductions.computeIfAbsent(new Held(mask, regular), held -> new JoistReduction(this, mask, regular));
    }
}
