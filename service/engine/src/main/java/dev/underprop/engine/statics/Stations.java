package dev.underprop.engine.statics;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One member cut wherever something begins, ends or presses, and what acts at each cut. Fixed for a structure; the
 * numbers of a case are laid out by {@link FieldLayout}.
 */
final class Stations {

    /** Parts into which the longest interval between possible supports is cut to look at its deflection. */
    private static final int PARTS = 8;

    private final double[] at;
    private final double rigidity;
    private final int[] contacts;
    private final int[] contactStation;
    private final int[] contactsAlong;
    private final boolean[] presses;
    private final double[] samples;
    private final double[] sampleSlack;
    private final double greatestSlack;
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
        this.contactsAlong = sortedAlong();
        this.samples = samplePlaces(contactAt);
        this.samplePart = new int[samples.length];
        for (int i = 0; i < samples.length; i++) {
            int found = find(at, samples[i]);
            samplePart[i] = found >= 0 ? found : -found - 2;
        }
        this.sampleSlack = slack(cuts(contactAt));
        double greatest = 0;
        for (double slack : sampleSlack) {
            greatest = Math.max(greatest, slack);
        }
        this.greatestSlack = greatest;
    }

    /** What each sample part of each interval between cuts allows for. */
    private double[] slack(double[] cuts) {
        double[] slack = new double[samples.length - 1];
        int interval = 0;
        for (int i = 0; i < slack.length; i++) {
            double middle = (samples[i] + samples[i + 1]) / 2;
            while (cuts[interval + 1] < middle) {
                interval++;
            }
            double step = samples[i + 1] - samples[i];
            slack[i] = step * step / (2 * rigidity * (cuts[interval + 1] - cuts[interval]));
        }
        return slack;
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

    /** Writes the pieces that lie on this member as load after each station (N/m) and force at each station (N). */
    void spread(List<UnitLoad.Piece> pieces, double[] uniform, double[] point) {
        pieces.forEach(piece -> addPiece(piece, uniform, point));
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

    /** Places that part the member into intervals: its ends and whatever may support it. */
    private double[] cuts(double[] contactAt) {
        double[] cuts = new double[contactAt.length + 2];
        int n = 0;
        for (int i = 0; i < contactAt.length; i++) {
            if (!presses[i]) {
                cuts[n++] = contactAt[i];
            }
        }
        cuts[n++] = at[0];
        cuts[n++] = at[at.length - 1];
        return distinct(cuts, n);
    }

    /** The longest interval is sampled in {@link #PARTS} parts, shorter ones in fewer, none in less than two. */
    private double[] samplePlaces(double[] contactAt) {
        double[] cuts = cuts(contactAt);
        double longest = 0;
        for (int i = 0; i + 1 < cuts.length; i++) {
            longest = Math.max(longest, cuts[i + 1] - cuts[i]);
        }
        double[] places = new double[(cuts.length - 1) * PARTS + 1];
        int n = 0;
        for (int i = 0; i + 1 < cuts.length; i++) {
            double length = cuts[i + 1] - cuts[i];
            int parts = Math.max(2, (int) Math.ceil(PARTS * length / longest));
            for (int k = 0; k < parts; k++) {
                places[n++] = cuts[i] + length * k / parts;
            }
        }
        places[n++] = cuts[cuts.length - 1];
        return Arrays.copyOf(places, n);
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

    /**
     * For each sampled interval what a moment there adds to the deflection's parabola, as part of the span (1/(N·m)):
     * h²/2EI over a span of at least h times the samples' parts.
     */
    double[] sampleSlack() {
        return sampleSlack;
    }

    /** Greatest of {@link #sampleSlack}. */
    double greatestSlack() {
        return greatestSlack;
    }

    /** Places where deflection is sampled, ascending (m). */
    double[] samples() {
        return samples;
    }

    /** Which of the member's contacts come one after another along it. */
    int[] contactsAlong() {
        return contactsAlong;
    }

    private int[] sortedAlong() {
        return IntStream.range(0, contacts.length)
                .boxed()
                .sorted(Comparator.comparingInt(i -> contactStation[i]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    int contact(int i) {
        return contacts[i];
    }

    double contactAt(int i) {
        return at[contactStation[i]];
    }

    /** Whether the i-th contact loads the member; else it holds it. */
    boolean presses(int i) {
        return presses[i];
    }

    /** Stations that hold the member when the given contacts are closed, ascending. */
    int[] supports(BitSet closed) {
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
     * Shear, moment and load by statics, from the member's start to its end.
     *
     * @param uniform load after each station (N/m), empty when there is none
     * @param point force at each station (N), empty when there is none
     * @param closed which contacts are closed
     * @param values force at each closed contact (N)
     * @param out receives shear, moment and uniform load, one run after another
     * @param base where in {@code out} this member begins
     */
    void fill(double[] uniform, double[] point, BitSet closed, double[] values, double[] out, int base) {
        int n = at.length;
        // The shear's run holds the jumps first, and is then summed in place.
        for (int i = 0; i < n; i++) {
            out[base + i] = point.length == 0 ? 0 : point[i];
        }
        for (int i = 0; i < contacts.length; i++) {
            if (closed.get(contacts[i])) {
                double force = values[contacts[i]];
                out[base + contactStation[i]] += presses[i] ? force : -force;
            }
        }
        double v = 0;
        double m = 0;
        for (int i = 0; i < n; i++) {
            v -= out[base + i];
            double w = uniform.length == 0 ? 0 : uniform[i];
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
