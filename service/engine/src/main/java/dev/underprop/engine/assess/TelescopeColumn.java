package dev.underprop.engine.assess;

import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.aisc360_16.Appendix8;
import dev.underprop.engine.plan.Telescope;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.standard.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A telescopic post as a stepped column with kinks: the inner tube tilts in the outer one by their play over the overlap and
 * by the lean of posts, the screw tilts in its nut. Where the tubes overlap the outer one alone counts, and the kink lies
 * where it is worst: at an end of the overlap or at the middle of the post.
 */
final class TelescopeColumn {

    /** Loads of allowable stress combinations are raised by it for what happens in second order (AISC 360-16, C2.1). */
    private static final double ALPHA = 1.6;

    private static final Citation STEEL = Citation.remembered("AISC", "360-16", "E3");

    private static final Citation STABILITY = Citation.remembered(
            "statics", "", "elastic stability of a stepped column pinned at both ends, found by halving from below");

    /** Halvings of the range of the load; what is left of it is rounding. */
    private static final int HALVINGS = 60;

    /** Pieces shorter than this are none (m). */
    private static final double SHORT = 1e-9;

    private final Telescope post;
    private final List<ShaftPart> parts = new ArrayList<>();
    private final List<BentColumn> shapes = new ArrayList<>();
    private final double critical;
    private final double lean;
    private final int outer;

    /**
     * @param height between the pins (m), above the outer tube and the screw together
     * @param lean of posts (rad), not negative
     */
    TelescopeColumn(Telescope post, Telescope.Pin pin, double height, double lean) {
        this.post = post;
        this.lean = lean;
        double screw = post.thread() instanceof Telescope.Screw thread ? thread.exposed() : 0;
        boolean foot = post.thread() instanceof Telescope.Screw thread && thread.foot();
        if (foot) {
            parts.add(ShaftPart.screw((Telescope.Screw) post.thread()));
        }
        this.outer = parts.size();
        parts.add(ShaftPart.tube("the outer tube", post.outer(), post.outerLength(), pin.hole()));
        parts.add(ShaftPart.tube("the inner tube", post.inner(), height - post.outerLength() - screw, pin.hole()));
        if (post.thread() instanceof Telescope.Screw thread && !foot) {
            parts.add(ShaftPart.screw(thread));
        }
        this.critical = new SteppedColumn(parts.stream()
                        .map(part -> new SteppedColumn.Piece(part.length(), part.rigidity()))
                        .toList())
                .critical();
        double below = foot ? screw : 0;
        shape(0);
        shape(post.overlap());
        double toMiddle = below + post.outerLength() - height / 2;
        if (toMiddle > 0 && toMiddle < post.overlap()) {
            shape(toMiddle);
        }
    }

    /** Adds the shape whose kink lies so far below the top of the outer tube (m). */
    private void shape(double below) {
        double tilt = post.clearance() / post.overlap() + lean;
        List<BentColumn.Piece> pieces = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            ShaftPart part = parts.get(i);
            if (i == outer && below > SHORT) {
                if (part.length() - below > SHORT) {
                    pieces.add(new BentColumn.Piece(i, part.length() - below, part.rigidity(), tilt));
                }
                pieces.add(new BentColumn.Piece(i, below, part.rigidity(), 0));
            } else {
                pieces.add(new BentColumn.Piece(i, part.length(), part.rigidity(), i == outer ? tilt : kinkAfter(i)));
            }
        }
        shapes.add(new BentColumn(pieces, post.eccentricity()));
    }

    /** The tilt of the screw in its nut, between it and the tube beside it (rad). */
    private double kinkAfter(int part) {
        boolean beside = part == outer - 1 || part == outer + 1 && parts.size() > outer + 2;
        return beside && post.thread() instanceof Telescope.Screw screw ? screw.play() / screw.engaged() : 0;
    }

    /** The elastic critical load (N). */
    double critical() {
        return critical;
    }

    /** Why a clause refuses it, empty where none does. */
    String refusal() {
        return parts.stream()
                .flatMap(part -> part.conditions(critical).stream()
                        .filter(Outcome.Refused.class::isInstance)
                        .map(outcome -> part.name() + ": " + ((Outcome.Refused) outcome).reason()))
                .findFirst()
                .orElse("");
    }

    /** The load at which the first part is used up, and that part; searched for from below. No clause may have refused. */
    PinJoint.Limit limit() {
        double holds = 0;
        double fails = Math.min(
                parts.stream().mapToDouble(part -> part.axial(critical)).min().orElseThrow(),
                Appendix8.limit(critical).value());
        for (int i = 0; i < HALVINGS; i++) {
            double load = (holds + fails) / 2;
            if (worst(load).share() <= 1) {
                holds = load;
            } else {
                fails = load;
            }
        }
        return new PinJoint.Limit(worst(holds).name(), holds);
    }

    /** Tells how {@link #limit} comes about, the search left out. @param load that it found (N) */
    void tell(double load, Working working) {
        for (int i = 0; i < parts.size(); i++) {
            parts.get(i).tellStiffness(String.valueOf(i + 1), working);
        }
        working.rule("E", "modulus of steel, 29000 ksi", Dimension.STRESS, ShaftPart.MODULUS, STEEL, "");
        working.rule(
                "Pcr", "critical load: the sines of the parts fit together", Dimension.FORCE, critical, STABILITY, "");
        Used worst = worst(load);
        working.plan("c", "play over overlap, and lean", Dimension.NUMBER, post.clearance() / post.overlap() + lean);
        working.plan("e", "load off the middle at the pins", Dimension.LENGTH, post.eccentricity());
        working.analysis("Pm", "column: greatest load, searched, at which U is at most 1", Dimension.FORCE, load);
        working.analysis("y", "off the axis at 1.6 Pm, from c and e, exactly", Dimension.LENGTH, worst.offset());
        ShaftPart part = parts.get(worst.part());
        String mark = String.valueOf(worst.part() + 1);
        if (worst.holes()) {
            part.tellUseAtHoles(mark, load, worst.offset(), working);
        } else {
            part.tellUse(mark, load, worst.offset(), critical, working);
        }
    }

    /**
     * How much of a part is used.
     *
     * @param part its number
     * @param holes whether at its pin holes
     * @param name of both
     * @param offset of the load from its axis (m)
     * @param share used
     */
    private record Used(int part, boolean holes, String name, double offset, double share) {}

    /** The part that is used most, and its share. */
    private Used worst(double load) {
        return shapes.stream()
                .flatMap(shape -> used(shape, load))
                .reduce(new Used(0, false, "", 0, -1), (one, other) -> one.share() >= other.share() ? one : other);
    }

    private Stream<Used> used(BentColumn shape, double load) {
        double[] offsets = shape.offsets(ALPHA * load, parts.size());
        List<Used> used = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            ShaftPart part = parts.get(i);
            used.add(new Used(i, false, part.name(), offsets[i], part.used(load, offsets[i], critical)));
            if (part.netArea() < part.area()) {
                String name = part.name() + " at its pin holes";
                used.add(new Used(i, true, name, offsets[i], part.usedAtHoles(load, offsets[i])));
            }
        }
        return used.stream();
    }
}
