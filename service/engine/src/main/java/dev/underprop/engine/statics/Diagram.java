package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * Shear and moment of one member, by statics from the loads and contact forces of a case. Filled again for each case, so
 * that thousands of cases cost no memory; not safe for several threads.
 *
 * <p>Between stations the load is uniform, so shear is linear and moment a parabola, and the true extremes are found
 * also inside.
 */
public final class Diagram {

    private final double[] at;
    private final double rigidity;
    private final int[][] pressing;
    private final int[][] supporting;
    private final int[] localOf;
    private final double[][] unitUniform;
    private final double[][] unitPoint;
    private final double[] uniform;
    private final double[] point;
    private final double[] shear;
    private final double[] moment;
    private double residual;

    /**
     * @param frame the structure
     * @param units the loads that cases combine
     * @param member member number
     */
    public Diagram(Frame frame, List<UnitLoad> units, int member) {
        boolean joist = member < frame.joists().size();
        int carrier = member - frame.joists().size();
        double start = joist
                ? frame.joists().get(member).start()
                : frame.carriers().get(carrier).start();
        double end = joist
                ? frame.joists().get(member).end()
                : frame.carriers().get(carrier).end();
        this.rigidity = joist
                ? frame.joists().get(member).rigidity()
                : frame.carriers().get(carrier).rigidity();
        TreeSet<Double> places = new TreeSet<>(List.of(start, end));
        for (Contact contact : frame.contacts()) {
            if (touches(frame, contact, member)) {
                places.add(Math.min(end, Math.max(start, place(frame, contact, member))));
            }
        }
        units.forEach(u -> u.pieces().stream().filter(p -> p.member() == member).forEach(p -> addPlaces(p, places)));
        this.at = places.stream().mapToDouble(Double::doubleValue).toArray();
        this.pressing = new int[at.length][];
        this.supporting = new int[at.length][];
        placeContacts(frame, member, start, end);
        this.localOf = new int[units.size()];
        List<double[]> uniforms = new ArrayList<>();
        List<double[]> points = new ArrayList<>();
        for (int u = 0; u < units.size(); u++) {
            localOf[u] = addUnit(units.get(u), member, uniforms, points);
        }
        this.unitUniform = uniforms.toArray(new double[0][]);
        this.unitPoint = points.toArray(new double[0][]);
        this.uniform = new double[at.length];
        this.point = new double[at.length];
        this.shear = new double[at.length];
        this.moment = new double[at.length];
    }

    private void placeContacts(Frame frame, int member, double start, double end) {
        int[] none = {};
        Arrays.fill(pressing, none);
        Arrays.fill(supporting, none);
        for (int c = 0; c < frame.contacts().size(); c++) {
            Contact contact = frame.contacts().get(c);
            if (touches(frame, contact, member)) {
                double where = Math.min(end, Math.max(start, place(frame, contact, member)));
                int station = Arrays.binarySearch(at, where);
                int[][] list = carries(contact, frame, member) ? pressing : supporting;
                list[station] = append(list[station], c);
            }
        }
    }

    private static int[] append(int[] list, int value) {
        int[] longer = Arrays.copyOf(list, list.length + 1);
        longer[list.length] = value;
        return longer;
    }

    private static boolean touches(Frame frame, Contact contact, int member) {
        if (contact instanceof Contact.OnGround seat) {
            return seat.joist() == member;
        }
        if (contact instanceof Contact.OnCarrier seat) {
            return seat.joist() == member || frame.carrierMember(seat.carrier()) == member;
        }
        return frame.carrierMember(((Contact.OnProp) contact).carrier()) == member;
    }

    /** Whether the member carries what presses at the contact (a carrier under a joist). */
    private static boolean carries(Contact contact, Frame frame, int member) {
        return contact instanceof Contact.OnCarrier seat && frame.carrierMember(seat.carrier()) == member;
    }

    private static double place(Frame frame, Contact contact, int member) {
        if (contact instanceof Contact.OnGround seat) {
            return seat.y();
        }
        if (contact instanceof Contact.OnCarrier seat) {
            return seat.joist() == member
                    ? frame.carriers().get(seat.carrier()).y()
                    : frame.joists().get(seat.joist()).x();
        }
        return ((Contact.OnProp) contact).x();
    }

    private static void addPlaces(UnitLoad.Piece piece, TreeSet<Double> places) {
        if (piece instanceof UnitLoad.Uniform load) {
            places.add(load.from());
            places.add(load.to());
        } else if (piece instanceof UnitLoad.Point load) {
            places.add(load.at());
        }
    }

    private int addUnit(UnitLoad unit, int member, List<double[]> uniforms, List<double[]> points) {
        double[] w = new double[at.length];
        double[] p = new double[at.length];
        boolean acts = false;
        for (UnitLoad.Piece piece : unit.pieces()) {
            if (piece.member() == member) {
                acts = true;
                addPiece(piece, w, p);
            }
        }
        if (!acts) {
            return -1;
        }
        uniforms.add(w);
        points.add(p);
        return uniforms.size() - 1;
    }

    private void addPiece(UnitLoad.Piece piece, double[] w, double[] p) {
        if (piece instanceof UnitLoad.Uniform load) {
            int to = Arrays.binarySearch(at, load.to());
            for (int i = Arrays.binarySearch(at, load.from()); i < to; i++) {
                w[i] += load.intensity();
            }
        } else if (piece instanceof UnitLoad.Point load) {
            p[Arrays.binarySearch(at, load.at())] += load.force();
        }
    }

    /** Fills the diagram for a case. */
    public void set(Solution solution) {
        Arrays.fill(uniform, 0);
        Arrays.fill(point, 0);
        LoadCase loadCase = solution.loadCase();
        for (int k = 0; k < loadCase.size(); k++) {
            int local = localOf[loadCase.unit(k)];
            if (local >= 0) {
                addScaled(unitUniform[local], loadCase.factor(k), uniform);
                addScaled(unitPoint[local], loadCase.factor(k), point);
            }
        }
        for (int i = 0; i < at.length; i++) {
            for (int c : pressing[i]) {
                point[i] += solution.force(c);
            }
            for (int c : supporting[i]) {
                point[i] -= solution.force(c);
            }
        }
        integrate();
    }

    /** Makes this the difference of two diagrams of the same member: what one case adds to another. */
    public void setDifference(Diagram more, Diagram less) {
        for (int i = 0; i < at.length; i++) {
            uniform[i] = more.uniform[i] - less.uniform[i];
            shear[i] = more.shear[i] - less.shear[i];
            moment[i] = more.moment[i] - less.moment[i];
            point[i] = more.point[i] - less.point[i];
        }
    }

    private static void addScaled(double[] from, double factor, double[] to) {
        for (int i = 0; i < to.length; i++) {
            to[i] += factor * from[i];
        }
    }

    private void integrate() {
        double v = 0;
        double m = 0;
        for (int i = 0; i < at.length - 1; i++) {
            v -= point[i];
            shear[i] = v;
            moment[i] = m;
            double h = at[i + 1] - at[i];
            m += (v - uniform[i] * h / 2) * h;
            v -= uniform[i] * h;
        }
        int last = at.length - 1;
        shear[last] = v - point[last];
        moment[last] = m;
        residual = Math.abs(shear[last]);
    }

    /** Force (N) left over at the member's far end: the equilibrium residual. */
    public double residual() {
        return residual;
    }

    /** Moment (N·m) left over at the member's far end. */
    public double residualMoment() {
        return Math.abs(moment[at.length - 1]);
    }

    /** Number of stations. */
    public int stations() {
        return at.length;
    }

    /** Place of a station (m), member coordinate. */
    public double at(int station) {
        return at[station];
    }

    /** Moment at a station (N·m), sagging positive. */
    public double moment(int station) {
        return moment[station];
    }

    /** Shear just beyond a station (N), positive where the part before it is pushed up. */
    public double shear(int station) {
        return shear[station];
    }

    /** Shear just before a station (N). */
    public double shearBefore(int station) {
        return station == 0 ? 0 : shear[station - 1] - uniform[station - 1] * (at[station] - at[station - 1]);
    }

    /** Load over the part after a station (N/m). */
    double uniform(int station) {
        return uniform[station];
    }

    double rigidity() {
        return rigidity;
    }

    /** Stations whose supports are closed in a case, ascending. */
    public int[] supports(Solution solution) {
        int[] found = new int[at.length];
        int n = 0;
        for (int i = 0; i < at.length; i++) {
            boolean closed = false;
            for (int c : supporting[i]) {
                closed |= solution.closed(c);
            }
            if (closed) {
                found[n++] = i;
            }
        }
        return Arrays.copyOf(found, n);
    }

    /** Greatest sagging moment, 0 where there is none; leaves its place in {@code place[0]}. */
    public double sagging(double[] place) {
        return extremeMoment(1, place);
    }

    /** Greatest hogging moment as a positive number, 0 where there is none; leaves its place in {@code place[0]}. */
    public double hogging(double[] place) {
        return extremeMoment(-1, place);
    }

    private double extremeMoment(int sign, double[] place) {
        double best = 0;
        place[0] = at[0];
        for (int i = 0; i < at.length; i++) {
            double m = sign * moment[i];
            if (m > best) {
                best = m;
                place[0] = at[i];
            }
            double w = uniform[i];
            if (w != 0 && i < at.length - 1) {
                double s = shear[i] / w;
                if (s > 0 && s < at[i + 1] - at[i]) {
                    double inside = sign * (moment[i] + shear[i] * s / 2);
                    if (inside > best) {
                        best = inside;
                        place[0] = at[i] + s;
                    }
                }
            }
        }
        return best;
    }

    /** Greatest shear as a positive number; leaves its place in {@code place[0]}. */
    public double shear(double[] place) {
        double best = 0;
        place[0] = at[0];
        for (int i = 0; i < at.length - 1; i++) {
            double near = Math.abs(shear[i]);
            double far = Math.abs(shear[i] - uniform[i] * (at[i + 1] - at[i]));
            if (near > best) {
                best = near;
                place[0] = at[i];
            }
            if (far > best) {
                best = far;
                place[0] = at[i + 1];
            }
        }
        return best;
    }
}
