package dev.underprop.wire.meaning;

import dev.underprop.engine.plan.Assembly;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.SeatGap;
import dev.underprop.engine.plan.Shore;
import java.util.List;
import java.util.Optional;

/** A shore as far as it was understood; NaN where a quantity was faulty. */
record ShoreDraft(
        Spot spot,
        String name,
        double y,
        Optional<Member> beam,
        double start,
        double length,
        List<SeatGap> gaps,
        List<PostDraft> posts,
        Shore.Bracing bracing,
        Assembly assembly) {

    private static final double ROUNDING = 1e-9;

    double end() {
        return start + length;
    }

    boolean under(JoistDraft joist) {
        return joist.crosses(y) && joist.within(start, end());
    }

    boolean known() {
        return !Double.isNaN(y + start + length);
    }

    /** Whether x lies beside the beam; not when one of them is not known. */
    boolean beside(double x) {
        return x < start - ROUNDING || x > end() + ROUNDING;
    }

    Shore shore() {
        return new Shore(
                name,
                y,
                beam.orElseThrow(),
                start,
                length,
                gaps,
                posts.stream().map(PostDraft::post).toList(),
                bracing,
                assembly);
    }
}
