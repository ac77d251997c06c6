package dev.underprop.engine.statics;

/**
 * Shear and moment of one member, read from the row of a case. Between stations the load is uniform, so shear is linear
 * and moment a parabola, and the true extremes are found also inside. A view: it shows the row it was last given.
 */
public final class Diagram {

    private final Stations stations;
    private final int n;
    private final int shearBase;
    private final int momentBase;
    private final int loadBase;
    private final double[] partMoment;
    private double[] row = {};
    private double sagging;
    private double saggingAt;
    private double hogging;
    private double hoggingAt;
    private double shear;
    private double shearAt;

    Diagram(Stations stations, int base) {
        this.stations = stations;
        this.n = stations.count();
        this.shearBase = base;
        this.momentBase = base + n;
        this.loadBase = base + 2 * n;
        this.partMoment = new double[n];
    }

    /** Shows the row of a case, as {@link Solution#writeRow} leaves it. */
    public void view(double[] newRow) {
        this.row = newRow;
    }

    /** Force (N) left over at the member's far end: the equilibrium residual. */
    public double residual() {
        return Math.abs(row[shearBase + n - 1]);
    }

    /** Number of stations. */
    public int stations() {
        return n;
    }

    /** Place of a station (m), member coordinate. */
    public double at(int station) {
        return stations.at(station);
    }

    /** Moment at a station (N·m), sagging positive. */
    public double moment(int station) {
        return row[momentBase + station];
    }

    /** Shear just beyond a station (N), positive where the part before it is pushed up. */
    public double shear(int station) {
        return row[shearBase + station];
    }

    /** Load over the part after a station (N/m). */
    double uniform(int station) {
        return row[loadBase + station];
    }

    double rigidity() {
        return stations.rigidity();
    }

    double[] samplePlaces() {
        return stations.samples();
    }

    /**
     * Whether the deflection as part of its span may exceed a value anywhere. Between two samples the curve lies below the
     * parabola through both whose curvature is the greatest there, and a span is never shorter than the interval that its
     * samples divide.
     *
     * @param known value to be exceeded
     * @param greatestMoment a bound on the member's moment, either sign (N·m)
     */
    boolean mayExceed(double known, double greatestMoment) {
        return greatestSample() + stations.greatestSlack() * greatestMoment / 4 > known && mayExceedSomewhere(known);
    }

    private double greatestSample() {
        double greatest = 0;
        double least = 0;
        int from = loadBase + n;
        int to = from + stations.samples().length;
        for (int i = from; i < to; i++) {
            greatest = Math.max(greatest, row[i]);
            least = Math.min(least, row[i]);
        }
        return Math.max(greatest, -least);
    }

    private boolean mayExceedSomewhere(double known) {
        boundMoments();
        return mayExceedBetween(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, known);
    }

    /** The same for the part from one place to another, on the row for which {@link #mayExceed} was true last. */
    boolean mayExceedBetween(double start, double end, double known) {
        int[] parts = stations.samplePart();
        double[] slack = stations.sampleSlack();
        double[] samples = stations.samples();
        int from = loadBase + n;
        for (int i = 0; i < slack.length; i++) {
            if (samples[i] < start || samples[i + 1] > end) {
                continue;
            }
            double greatest = partMoment[parts[i]];
            for (int k = parts[i] + 1; k <= Math.min(parts[i + 1], n - 2); k++) {
                greatest = Math.max(greatest, partMoment[k]);
            }
            double a = row[from + i];
            double b = row[from + i + 1];
            double c = slack[i] * greatest;
            if (Math.max(Math.abs(a), Math.abs(b)) + c / 4 > known
                    && (parabola(a, b, c) > known || parabola(-a, -b, c) > known)) {
                return true;
            }
        }
        return false;
    }

    /** A bound on the moment of each part, either sign: its greater end and what its load can add between. */
    private void boundMoments() {
        double[] places = stations.places();
        double before = Math.abs(row[momentBase]);
        for (int i = 0; i < n - 1; i++) {
            double after = Math.abs(row[momentBase + i + 1]);
            double h = places[i + 1] - places[i];
            partMoment[i] = Math.max(before, after) + Math.abs(row[loadBase + i]) * h * h / 8;
            before = after;
        }
    }

    /** Greatest value of the parabola a + (b - a) t + c t (1 - t) for t from 0 to 1, c not negative. */
    private static double parabola(double a, double b, double c) {
        double d = b - a;
        return c > Math.abs(d) ? a + (d + c) * (d + c) / (4 * c) : Math.max(a, b);
    }

    /** A moment smaller than this part of the member's greatest is rounding of the sums along it. */
    private static final double ROUNDING = 1e-9;

    /** A moment smaller than this is rounding whatever the others are (N·m). */
    private static final double NOTHING = 1e-6;

    /** Looks through the shown row once for the extremes that the methods below then tell. */
    public void scan() {
        sagging = 0;
        hogging = 0;
        shear = 0;
        double[] places = stations.places();
        double v = 0;
        double end = 0;
        for (int i = 0; i < n; i++) {
            // Shear just before the station, then just after it.
            noteShear(Math.abs(end), places[i]);
            v = row[shearBase + i];
            noteShear(i < n - 1 ? Math.abs(v) : 0, places[i]);
            double m = row[momentBase + i];
            double w = row[loadBase + i];
            if (m > sagging) {
                sagging = m;
                saggingAt = places[i];
            } else if (-m > hogging) {
                hogging = -m;
                hoggingAt = places[i];
            }
            if (i < n - 1) {
                end = v - w * (places[i + 1] - places[i]);
                if (v * end < 0) {
                    noteTurn(m + v * v / (2 * w), places[i] + v / w);
                }
            }
        }
        // A member that may not hog at all must not fail for the rounding of a moment that is zero.
        double rounding = Math.max(NOTHING, ROUNDING * Math.max(sagging, hogging));
        sagging = sagging < rounding ? 0 : sagging;
        hogging = hogging < rounding ? 0 : hogging;
    }

    private void noteShear(double size, double place) {
        if (size > shear) {
            shear = size;
            shearAt = place;
        }
    }

    /** Where the shear changes sign inside a part, the moment has an extreme of its own. */
    private void noteTurn(double moment, double place) {
        if (moment > sagging) {
            sagging = moment;
            saggingAt = place;
        } else if (-moment > hogging) {
            hogging = -moment;
            hoggingAt = place;
        }
    }

    /** Greatest sagging moment (N·m), 0 where there is none. */
    public double sagging() {
        return sagging;
    }

    /** Where it is (m), member coordinate. */
    public double saggingAt() {
        return saggingAt;
    }

    /** Greatest hogging moment (N·m) as a positive number, 0 where there is none. */
    public double hogging() {
        return hogging;
    }

    /** Where it is (m), member coordinate. */
    public double hoggingAt() {
        return hoggingAt;
    }

    /** Greatest shear (N) as a positive number. */
    public double shear() {
        return shear;
    }

    /** Where it is (m), member coordinate. */
    public double shearAt() {
        return shearAt;
    }
}
