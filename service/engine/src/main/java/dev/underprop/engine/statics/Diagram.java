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
    }

    /** Shows the row of a case, as {@link Solution#writeRow} leaves it. */
    public void view(double[] newRow) {
        this.row = newRow;
    }

    /** Force (N) left over at the member's far end: the equilibrium residual. */
    public double residual() {
        return Math.abs(row[shearBase + n - 1]);
    }

    /** Moment (N·m) left over at the member's far end. */
    public double residualMoment() {
        return Math.abs(row[momentBase + n - 1]);
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

    /** The bound of {@link Deflections#mayExceed} with the greatest moment near each sample. */
    boolean mayExceedBetweenSamples(double known) {
        double[] samples = stations.samples();
        int[] parts = stations.samplePart();
        int from = loadBase + n;
        for (int i = 0; i + 1 < samples.length; i++) {
            double larger = Math.max(Math.abs(row[from + i]), Math.abs(row[from + i + 1]));
            double step = samples[i + 1] - samples[i];
            double slack = step / (8 * (Stations.SAMPLES + 1)) / rigidity();
            if (larger + slack * momentNear(parts[i], parts[i + 1]) > known) {
                return true;
            }
        }
        return false;
    }

    private double momentNear(int first, int last) {
        double greatest = 0;
        for (int i = first; i <= last; i++) {
            greatest = Math.max(greatest, Math.abs(moment(i)));
            if (i < n - 1) {
                double v = shear(i);
                double w = uniform(i);
                greatest = Math.max(greatest, Math.abs(moment(i + 1)));
                if (v * (v - w * (at(i + 1) - at(i))) < 0) {
                    greatest = Math.max(greatest, Math.abs(moment(i) + v * v / (2 * w)));
                }
            }
        }
        return greatest;
    }

    double sampleSlack() {
        return stations.sampleSlack();
    }

    /** Greatest deflection at the sample places, as part of the span it lies in: never above the true greatest. */
    public double sampledDeflection() {
        double greatest = 0;
        int from = loadBase + n;
        for (int i = from; i < from + stations.samples().length; i++) {
            greatest = Math.max(greatest, Math.abs(row[i]));
        }
        return greatest;
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
