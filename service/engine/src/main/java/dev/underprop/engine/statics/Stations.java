package dev.underprop.engine.statics;

import java.util.Arrays;
import java.util.List;

/**
 * One member cut wherever something begins, ends or presses, and what acts at each cut. Fixed for a structure; the
 * numbers of a case are laid out by {@link FieldLayout}.
 */
final class Stations {

    /** Deflection is looked at this many places inside each interval between possible supports. */
    static final int SAMPLES = 7;

    private final double[] at;
    private final double rigidity;
    private final int[] contacts;
    private final int[] contactStation;
    private final boolean[] presses;
    private final int[] units;
    private final double[][] uniform;
    private final double[][] point;
    private final double[] samples;
    private final double sampleSlack;
    private final int[] samplePart;

    Stations(Frame frame, Pieces pieces, int member) {
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
        this.contacts = contactsOf(frame, member);
        this.presses = new boolean[contacts.length];
        double[] contactAt = new double[contacts.length];
        for (int i = 0; i < contacts.length; i++) {
            Contact contact = frame.contacts().get(contacts[i]);
            presses[i] = contact instanceof Contact.OnCarrier && !joist;
            contactAt[i] = Math.min(end, Math.max(start, place(frame, contact, joist)));
        }
        List<Pieces.OnMember> loads = pieces.on(member);
        this.at = places(start, end, contactAt, loads);
        this.contactStation = new int[contacts.length];
        for (int i = 0; i < contacts.length; i++) {
            contactStation[i] = find(at, contactAt[i]);
        }
        this.units = new int[loads.size()];
        this.uniform = new double[units.length][at.length];
        this.point = new double[units.length][at.length];
        for (int u = 0; u < units.length; u++) {
            units[u] = loads.get(u).unit();
            for (UnitLoad.Piece piece : loads.get(u).pieces()) {
                addPiece(piece, uniform[u], point[u]);
            }
        }
        this.samples = samplePlaces(contactAt);
        double longest = 0;
        for (int i = 0; i + SAMPLES + 1 < samples.length; i += SAMPLES + 1) {
            longest = Math.max(longest, samples[i + SAMPLES + 1] - samples[i]);
        }
        this.samplePart = new int[samples.length];
        for (int i = 0; i < samples.length; i++) {
            int found = find(at, samples[i]);
            samplePart[i] = found >= 0 ? found : -found - 2;
        }
        this.sampleSlack = longest / (8 * (SAMPLES + 1) * (SAMPLES + 1));
    }

    private static int[] contactsOf(Frame frame, int member) {
        int[] found = new int[frame.contacts().size()];
        int n = 0;
        for (int c = 0; c < found.length; c++) {
            if (touches(frame, frame.contacts().get(c), member)) {
                found[n++] = c;
            }
        }
        return Arrays.copyOf(found, n);
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

    private static double place(Frame frame, Contact contact, boolean onJoist) {
        if (contact instanceof Contact.OnGround seat) {
            return seat.y();
        }
        if (contact instanceof Contact.OnCarrier seat) {
            return onJoist
                    ? frame.carriers().get(seat.carrier()).y()
                    : frame.joists().get(seat.joist()).x();
        }
        return ((Contact.OnProp) contact).x();
    }

    private static double[] places(double start, double end, double[] contactAt, List<Pieces.OnMember> loads) {
        int most = 2 + contactAt.length;
        for (Pieces.OnMember load : loads) {
            most += 2 * load.pieces().size();
        }
        double[] all = Arrays.copyOf(contactAt, most);
        int n = contactAt.length;
        all[n++] = start;
        all[n++] = end;
        for (Pieces.OnMember load : loads) {
            for (UnitLoad.Piece piece : load.pieces()) {
                if (piece instanceof UnitLoad.Uniform uniform) {
                    all[n++] = uniform.from();
                    all[n++] = uniform.to();
                } else if (piece instanceof UnitLoad.Point point) {
                    all[n++] = point.at();
                }
            }
        }
        return distinct(all, n);
    }

    private static double[] distinct(double[] all, int n) {
        Arrays.sort(all, 0, n);
        int kept = 0;
        for (int i = 0; i < n; i++) {
            if (kept == 0 || all[i] != all[kept - 1]) {
                all[kept++] = withoutSignOfZero(all[i]);
            }
        }
        return Arrays.copyOf(all, kept);
    }

    private static int find(double[] places, double place) {
        return Arrays.binarySearch(places, withoutSignOfZero(place));
    }

    /** A binary search tells minus zero from zero; a beam that starts at minus zero inches does not. */
    private static double withoutSignOfZero(double place) {
        return place + 0.0;
    }

    private void addPiece(UnitLoad.Piece piece, double[] w, double[] p) {
        if (piece instanceof UnitLoad.Uniform load) {
            int to = find(at, load.to());
            for (int i = find(at, load.from()); i < to; i++) {
                w[i] += load.intensity();
            }
        } else if (piece instanceof UnitLoad.Point load) {
            p[find(at, load.at())] += load.force();
        }
    }

    private double[] samplePlaces(double[] contactAt) {
        double[] cuts = new double[contactAt.length + 2];
        int n = 0;
        for (int i = 0; i < contactAt.length; i++) {
            if (!presses[i]) {
                cuts[n++] = contactAt[i];
            }
        }
        cuts[n++] = at[0];
        cuts[n++] = at[at.length - 1];
        double[] ends = distinct(cuts, n);
        double[] places = new double[(ends.length - 1) * (SAMPLES + 1) + 1];
        for (int i = 0; i + 1 < ends.length; i++) {
            for (int k = 0; k <= SAMPLES; k++) {
                places[i * (SAMPLES + 1) + k] = ends[i] + (ends[i + 1] - ends[i]) * k / (SAMPLES + 1);
            }
        }
        places[places.length - 1] = ends[ends.length - 1];
        return places;
    }

    int count() {
        return at.length;
    }

    double at(int station) {
        return at[station];
    }

    /** Places of all stations (m); not to be changed. */
    double[] places() {
        return at;
    }

    double rigidity() {
        return rigidity;
    }

    /** The station at or before each sample place. */
    int[] samplePart() {
        return samplePart;
    }

    /** Longest sampled interval over 8 times the square of its parts (m): see {@link Deflections#mayExceed}. */
    double sampleSlack() {
        return sampleSlack;
    }

    /** Places where deflection is sampled, ascending (m). */
    double[] samples() {
        return samples;
    }

    /** Stations that hold the member when the given contacts are closed, ascending. */
    int[] supports(java.util.BitSet closed) {
        int[] found = new int[contacts.length];
        int n = 0;
        for (int i = 0; i < contacts.length; i++) {
            if (!presses[i] && closed.get(contacts[i])) {
                found[n++] = contactStation[i];
            }
        }
        Arrays.sort(found, 0, n);
        return Arrays.copyOf(found, n);
    }

    /**
     * Shear, moment and load of one unit by statics, from the member's start to its end.
     *
     * @param unit unit load
     * @param closed which contacts are closed
     * @param values force at each closed contact (N)
     * @param out receives shear, moment and uniform load, one run after another
     * @param base where in {@code out} this member begins
     */
    void fill(int unit, java.util.BitSet closed, double[] values, double[] out, int base) {
        int n = at.length;
        int local = Arrays.binarySearch(units, unit);
        double[] jump = local < 0 ? new double[n] : point[local].clone();
        for (int i = 0; i < contacts.length; i++) {
            if (closed.get(contacts[i])) {
                jump[contactStation[i]] += presses[i] ? values[contacts[i]] : -values[contacts[i]];
            }
        }
        double v = 0;
        double m = 0;
        for (int i = 0; i < n; i++) {
            v -= jump[i];
            double w = local < 0 ? 0 : uniform[local][i];
            out[base + i] = v;
            out[base + n + i] = m;
            out[base + 2 * n + i] = w;
            if (i < n - 1) {
                double h = at[i + 1] - at[i];
                m += (v - w * h / 2) * h;
                v -= w * h;
            }
        }
    }
}
