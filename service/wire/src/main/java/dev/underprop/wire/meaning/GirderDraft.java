package dev.underprop.wire.meaning;

import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Seat;
import java.util.List;
import java.util.Optional;

/** A girder as far as it was understood; NaN where a quantity was faulty. Its piers come in order of x. */
record GirderDraft(Optional<Member> member, double start, double length, List<Pier> piers) {

    private static final double ROUNDING = 1e-9;

    /** One pier. */
    record Pier(Spot spot, String name, double x, double length, double stiffness, Fastening fastening, Seat seat) {
        Girder.Pier pier() {
            return new Girder.Pier(name, x, length, stiffness, fastening, seat);
        }
    }

    double end() {
        return start + length;
    }

    /** Whether x lies beside the girder; not when one of them is not known. */
    boolean beside(double x) {
        return x < start - ROUNDING || x > end() + ROUNDING;
    }

    Girder girder() {
        return new Girder(
                member.orElseThrow(),
                start,
                length,
                piers.stream().map(Pier::pier).toList());
    }
}
