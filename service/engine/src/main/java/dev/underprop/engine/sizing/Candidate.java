package dev.underprop.engine.sizing;

import dev.underprop.engine.plan.Pad;

/**
 * A pad at hand.
 *
 * @param pad the pad
 * @param price in whatever money all prices are in, NaN where not known
 * @param weight to be carried to its place (N), NaN where not known
 */
public record Candidate(Pad pad, double price, double weight) {

    public Candidate {
        if (price < 0 || weight < 0) {
            throw new IllegalArgumentException("neither price nor weight is negative");
        }
    }

    /** A pad whose weight follows from its unit weight; a slab is there already, and weighs nothing to carry. */
    public static Candidate of(Pad pad, double price) {
        return new Candidate(pad, price, weight(pad));
    }

    private static double weight(Pad pad) {
        if (pad.kind() == Pad.Kind.SLAB) {
            return 0;
        }
        return pad.weight() instanceof Pad.Known known ? pad.weightOf(known) : Double.NaN;
    }

    /** Pieces that it is carried in, 0 where it is cast in place or there already. */
    public int pieces() {
        if (pad.make() instanceof Pad.Cast || pad.kind() == Pad.Kind.SLAB) {
            return 0;
        }
        if (pad.make() instanceof Pad.Mat mat) {
            return mat.sleepers() + mat.bearers() + (mat.spread() instanceof Pad.SpreadPlate ? 1 : 0);
        }
        return pad.make() instanceof Pad.Stack crib
                ? crib.members() * Math.max(1, (int) Math.rint(pad.thickness() / crib.timber()))
                : 1;
    }

    /** Whether another pad is of the same kind and make. */
    boolean alike(Candidate other) {
        return pad.kind() == other.pad.kind()
                && pad.make().getClass() == other.pad.make().getClass();
    }

    /** Whether this pad is nowhere larger than another one of its kind, and somewhere smaller. */
    public boolean within(Candidate other) {
        boolean nowhereLarger = pad.along() <= other.pad.along()
                && pad.across() <= other.pad.across()
                && pad.thickness() <= other.pad.thickness();
        boolean somewhereSmaller = pad.along() < other.pad.along()
                || pad.across() < other.pad.across()
                || pad.thickness() < other.pad.thickness();
        return alike(other) && nowhereLarger && somewhereSmaller;
    }
}
