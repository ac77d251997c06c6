package dev.underprop.engine.load;

import dev.underprop.engine.plan.Joist;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The floor cut along y wherever a joist begins or ends, so that in each strip the same joists stand side by side. Old
 * floors have trimmed and lapped joists; the tributary width of a joist changes from strip to strip.
 */
final class Strips {

    /**
     * A load may reach this far beyond the outermost joist and still be put on it, 4 in (m): half a wall's thickness. What
     * lies further out bears on that joist by leverage, and is refused.
     */
    private static final double EDGE_REACH = 4 * 0.0254;

    /** Strips shorter than this are rounding (m). */
    private static final double THIN = 1e-9;

    /**
     * One strip.
     *
     * @param from near y (m)
     * @param to far y (m)
     * @param joists indices of the joists present, by x
     */
    record Strip(double from, double to, int[] joists) {}

    /** A joist's share of a load that crosses a strip: the part of x from which it draws. */
    record Width(int joist, double from, double to) {}

    private final List<Joist> joists;
    private final List<Strip> strips = new ArrayList<>();

    Strips(List<Joist> joists) {
        this.joists = joists;
        double[] cuts = joists.stream()
                .flatMapToDouble(j -> DoubleStream.of(j.start(), j.end()))
                .sorted()
                .distinct()
                .toArray();
        for (int i = 0; i + 1 < cuts.length; i++) {
            double from = cuts[i];
            double to = cuts[i + 1];
            if (to - from > THIN) {
                int[] present = present(from, to);
                if (present.length > 0) {
                    strips.add(new Strip(from, to, present));
                }
            }
        }
    }

    private int[] present(double from, double to) {
        double middle = (from + to) / 2;
        return IntStream.range(0, joists.size())
                .filter(j -> joists.get(j).start() < middle && joists.get(j).end() > middle)
                .boxed()
                .sorted((a, b) ->
                        Double.compare(joists.get(a).x(), joists.get(b).x()))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    List<Strip> all() {
        return strips;
    }

    /** The strip that holds y, at a cut the one with more joists; empty where no joist passes. */
    List<Strip> at(double y) {
        return strips.stream()
                .filter(s -> y >= s.from - THIN && y <= s.to + THIN)
                .max(Comparator.comparingInt(s -> s.joists.length))
                .stream()
                .toList();
    }

    /**
     * Tributary widths of a load from {@code from} to {@code to} along x (infinite: as far as the joists go). Half-way
     * to the neighbour on each side. Where the neighbour does not reach this strip, half-way to it all the same; the
     * floor's outermost joists take what reaches a little beyond them.
     *
     * @throws Uncarried where a stated extent lies beyond what the joists of this strip can take
     */
    List<Width> widths(Strip strip, double from, double to) {
        int[] present = strip.joists;
        double edgeFrom = before(joists.get(present[0]).x());
        double edgeTo = beyond(joists.get(present[present.length - 1]).x());
        if ((Double.isFinite(from) && from < edgeFrom - EDGE_REACH)
                || (Double.isFinite(to) && to > edgeTo + EDGE_REACH)) {
            throw new Uncarried();
        }
        double loadFrom = Double.isFinite(from) ? from : edgeFrom;
        double loadTo = Double.isFinite(to) ? to : edgeTo;
        List<Width> widths = new ArrayList<>(present.length);
        for (int k = 0; k < present.length; k++) {
            double x = joists.get(present[k]).x();
            double left = k == 0
                    ? Math.min(loadFrom, edgeFrom)
                    : (x + joists.get(present[k - 1]).x()) / 2;
            double right = k == present.length - 1
                    ? Math.max(loadTo, edgeTo)
                    : (x + joists.get(present[k + 1]).x()) / 2;
            double low = Math.max(left, loadFrom);
            double high = Math.min(right, loadTo);
            if (high > low) {
                widths.add(new Width(present[k], low, high));
            }
        }
        return widths;
    }

    /** Half-way from x to the floor's next joist before it; x itself at the floor's edge. */
    private double before(double x) {
        double next =
                joists.stream().mapToDouble(Joist::x).filter(o -> o < x).max().orElse(x);
        return (x + next) / 2;
    }

    /** Half-way from x to the floor's next joist beyond it; x itself at the floor's edge. */
    private double beyond(double x) {
        double next =
                joists.stream().mapToDouble(Joist::x).filter(o -> o > x).min().orElse(x);
        return (x + next) / 2;
    }

    /** Whether the strip's joists take a load as far as the floor goes on each side where its extent is open. */
    boolean reaches(Strip strip, double from, double to) {
        double first = joists.stream().mapToDouble(Joist::x).min().orElse(0);
        double last = joists.stream().mapToDouble(Joist::x).max().orElse(0);
        double edgeFrom = before(joists.get(strip.joists[0]).x());
        double edgeTo = beyond(joists.get(strip.joists[strip.joists.length - 1]).x());
        return (Double.isFinite(from) || edgeFrom <= first + THIN) && (Double.isFinite(to) || edgeTo >= last - THIN);
    }

    /** A joist's part of a load at one x: lever rule between the joists on either side. */
    record Lever(int joist, double part) {}

    /** @throws Uncarried where x lies too far beyond the outermost joists */
    List<Lever> levers(Strip strip, double x) {
        int[] present = strip.joists;
        double first = joists.get(present[0]).x();
        double last = joists.get(present[present.length - 1]).x();
        if (x < first - EDGE_REACH || x > last + EDGE_REACH) {
            throw new Uncarried();
        }
        if (x <= first) {
            return List.of(new Lever(present[0], 1));
        }
        if (x >= last) {
            return List.of(new Lever(present[present.length - 1], 1));
        }
        int k = 0;
        while (joists.get(present[k + 1]).x() < x) {
            k++;
        }
        double left = joists.get(present[k]).x();
        double right = joists.get(present[k + 1]).x();
        double part = right > left ? (x - left) / (right - left) : 0;
        return List.of(new Lever(present[k], 1 - part), new Lever(present[k + 1], part));
    }

    /** Says that a load lies where no joist can take it. */
    static final class Uncarried extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Uncarried() {
            super("a load lies off the floor", null, false, false);
        }
    }
}
