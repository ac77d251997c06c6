package dev.underprop.engine.statics;

/**
 * Deflection of a member between its supports: against the chord from support to support, and beyond an outer support
 * against the line through the two nearest supports. By integrating the curvature M/EI exactly, piece by piece.
 *
 * <p>The span of an overhang counts twice its length, as the deflection tables of the codes have it.
 */
public final class Deflections {

    /** Halvings of the interval that holds an extreme: to the last digit of a double. */
    private static final int HALVINGS = 60;

    private final Diagram diagram;
    private double worst;
    private double worstSize;
    private double worstAt;

    private double slope;
    private double drop;
    private boolean sampled;

    /** @param diagram the curvature to integrate; read anew at each search */
    public Deflections(Diagram diagram) {
        this.diagram = diagram;
    }

    /**
     * Whether the greatest deflection as part of its span may exceed a value; a false answer is certain.
     *
     * @param known value to be exceeded
     * @param greatestMoment a bound on the member's moment, either sign (N·m)
     */
    public boolean mayExceed(double known, double greatestMoment) {
        return diagram.mayExceed(known, greatestMoment);
    }

    /**
     * Looks for the greatest deflection as part of its span.
     *
     * @param supports stations that hold the member, ascending
     * @param known value already found elsewhere: spans that cannot exceed it are not integrated
     * @return the greatest deflection divided by its span, or a number not above {@code known}
     */
    public double search(int[] supports, double known) {
        return search(supports, known, false);
    }

    /** The same after {@link #mayExceed}: spans whose samples show that they cannot exceed are not integrated either. */
    public double searchWhereSamplesAllow(int[] supports, double known) {
        return search(supports, known, true);
    }

    private double search(int[] supports, double known, boolean bySamples) {
        sampled = bySamples;
        worst = 0;
        worstSize = 0;
        worstAt = 0;
        if (supports.length < 2) {
            return 0;
        }
        for (int i = 0; i + 1 < supports.length; i++) {
            searchSpan(supports[i], supports[i + 1], Math.max(known, worst));
        }
        searchOverhang(supports[1], supports[0], 0, known);
        int last = supports.length - 1;
        searchOverhang(supports[last - 1], supports[last], diagram.stations() - 1, known);
        return worst;
    }

    /**
     * Deflection at the sample places, each divided by the span it lies in.
     *
     * @param supports stations that hold the member, ascending
     * @param out receives the values
     * @param base where in {@code out} they begin
     */
    void sample(int[] supports, double[] out, int base) {
        if (supports.length < 2) {
            return;
        }
        double[] places = diagram.samplePlaces();
        double[] atSupports = integrate(supports, places, out, base);
        int last = supports.length - 1;
        int span = 0;
        for (int s = 0; s < places.length; s++) {
            while (span < last - 1 && places[s] > diagram.at(supports[span + 1])) {
                span++;
            }
            double from = diagram.at(supports[span]);
            double to = diagram.at(supports[span + 1]);
            double part = (places[s] - from) / (to - from);
            double chord = atSupports[span] + part * (atSupports[span + 1] - atSupports[span]);
            double length = part < 0
                    ? 2 * (from - diagram.at(0))
                    : part > 1 ? 2 * (diagram.at(diagram.stations() - 1) - to) : to - from;
            out[base + s] = (out[base + s] - chord) / length;
        }
    }

    /** Bends the member from a level start: leaves the drop at each sample place, answers with it at each support. */
    private double[] integrate(int[] supports, double[] places, double[] out, int base) {
        double[] atSupports = new double[supports.length];
        slope = 0;
        drop = 0;
        int support = 0;
        int sample = 0;
        int last = diagram.stations() - 1;
        for (int i = 0; i <= last; i++) {
            if (support < supports.length && supports[support] == i) {
                atSupports[support++] = drop;
            }
            double end = i < last ? diagram.at(i + 1) : Double.POSITIVE_INFINITY;
            while (sample < places.length && places[sample] < end) {
                out[base + sample] = drop + dropAfter(i, places[sample] - diagram.at(i));
                sample++;
            }
            if (i < last) {
                double h = length(i);
                double nextDrop = drop + dropAfter(i, h);
                slope = slopeAfter(i, h);
                drop = nextDrop;
            }
        }
        return atSupports;
    }

    /** Deflection (m) found by the last search, downward positive. */
    public double size() {
        return worstSize;
    }

    /** Where it is (m), member coordinate. */
    public double place() {
        return worstAt;
    }

    private void searchSpan(int from, int to, double known) {
        double span = diagram.at(to) - diagram.at(from);
        // A constant moment of the greatest size bounds the deflection: M L²/8EI.
        double bound = greatestMoment(from, to) * span / (8 * diagram.rigidity());
        if (bound > known && samplesAllow(from, to, known)) {
            start(from, to);
            scan(from, to, diagram.at(from), span);
        }
    }

    private boolean samplesAllow(int from, int to, double known) {
        return !sampled || diagram.mayExceedBetween(diagram.at(from), diagram.at(to), known);
    }

    private void searchOverhang(int inner, int outer, int tip, double known) {
        if (tip == outer) {
            return;
        }
        double reach = Math.abs(diagram.at(tip) - diagram.at(outer));
        double span = Math.abs(diagram.at(outer) - diagram.at(inner));
        double bound =
                greatestMoment(Math.min(inner, tip), Math.max(inner, tip)) * (reach + span) / (2 * diagram.rigidity());
        double best = Math.max(known, worst);
        if (bound <= best || !samplesAllow(Math.min(outer, tip), Math.max(outer, tip), best)) {
            return;
        }
        if (tip > outer) {
            start(inner, outer);
            walk(inner, outer);
            scan(outer, tip, diagram.at(outer), 2 * reach);
        } else {
            start(outer, inner);
            double atSupport = slope;
            retreat(tip, outer, atSupport);
            scan(tip, outer, diagram.at(tip), 2 * reach);
        }
    }

    private double greatestMoment(int from, int to) {
        double greatest = 0;
        for (int i = from; i <= to; i++) {
            greatest = Math.max(greatest, Math.abs(diagram.moment(i)));
            double w = diagram.uniform(i);
            if (i < to && w != 0) {
                double s = diagram.shear(i) / w;
                if (s > 0 && s < length(i)) {
                    greatest = Math.max(greatest, Math.abs(diagram.moment(i) + diagram.shear(i) * s / 2));
                }
            }
        }
        return greatest;
    }

    /** Sets slope and drop at {@code from} so that the line through both supports is the zero line. */
    private void start(int from, int to) {
        slope = 0;
        drop = 0;
        walk(from, to);
        slope = -drop / (diagram.at(to) - diagram.at(from));
        drop = 0;
    }

    private void walk(int from, int to) {
        for (int i = from; i < to; i++) {
            double h = length(i);
            double nextDrop = drop + dropAfter(i, h);
            slope = slopeAfter(i, h);
            drop = nextDrop;
        }
    }

    /** Sets slope and drop at an earlier station from the slope at a support where the drop is zero. */
    private void retreat(int from, int support, double slopeAtSupport) {
        slope = 0;
        drop = 0;
        walk(from, support);
        double startSlope = slopeAtSupport - slope;
        drop = -drop - startSlope * (diagram.at(support) - diagram.at(from));
        slope = startSlope;
    }

    private void scan(int from, int to, double origin, double span) {
        note(drop, origin, span);
        for (int i = from; i < to; i++) {
            double h = length(i);
            scanPart(i, 0, h, span);
            double nextDrop = drop + dropAfter(i, h);
            slope = slopeAfter(i, h);
            drop = nextDrop;
            note(drop, diagram.at(i + 1), span);
        }
    }

    /** The slope is monotone between the zeros of the moment, so each such part holds one extreme at the most. */
    private void scanPart(int i, double from, double to, double span) {
        double m = diagram.moment(i);
        double v = diagram.shear(i);
        double w = diagram.uniform(i);
        double low = from;
        for (double zero : momentZeros(m, v, w, to)) {
            noteTurn(i, low, zero, span);
            low = zero;
        }
        noteTurn(i, low, to, span);
    }

    private static double[] momentZeros(double m, double v, double w, double h) {
        double a = Double.NaN;
        double b = Double.NaN;
        if (w == 0) {
            a = v == 0 ? Double.NaN : -m / v;
        } else {
            double root = v * v + 2 * w * m;
            if (root >= 0) {
                a = (v - Math.sqrt(root)) / w;
                b = (v + Math.sqrt(root)) / w;
            }
        }
        double first = Math.min(inside(a, h), inside(b, h));
        double second = Math.max(inside(a, h), inside(b, h));
        return new double[] {first, second};
    }

    private static double inside(double s, double h) {
        return s > 0 && s < h ? s : h;
    }

    private void noteTurn(int i, double from, double to, double span) {
        double low = from;
        double high = to;
        double atLow = slopeAfter(i, low);
        if (!(to > from) || atLow * slopeAfter(i, high) >= 0) {
            return;
        }
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (low + high) / 2;
            if (atLow * slopeAfter(i, middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double s = (low + high) / 2;
        note(drop + dropAfter(i, s), diagram.at(i) + s, span);
    }

    private void note(double size, double place, double span) {
        double part = Math.abs(size) / span;
        if (part > worst) {
            worst = part;
            worstSize = size;
            worstAt = place;
        }
    }

    private double length(int i) {
        return diagram.at(i + 1) - diagram.at(i);
    }

    private double slopeAfter(int i, double s) {
        double turn = (diagram.moment(i) + (diagram.shear(i) / 2 - diagram.uniform(i) * s / 6) * s) * s;
        return slope - turn / diagram.rigidity();
    }

    private double dropAfter(int i, double s) {
        double bend = (diagram.moment(i) / 2 + (diagram.shear(i) / 6 - diagram.uniform(i) * s / 24) * s) * s * s;
        return slope * s - bend / diagram.rigidity();
    }
}
