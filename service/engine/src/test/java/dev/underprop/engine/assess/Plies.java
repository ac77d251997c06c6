package dev.underprop.engine.assess;

import dev.underprop.engine.plan.Assembly;
import dev.underprop.engine.plan.Assembly.Joint;
import dev.underprop.engine.plan.Assembly.JointsAt;
import dev.underprop.engine.plan.Assembly.Nails;
import dev.underprop.engine.plan.Restraint;
import dev.underprop.engine.plan.Shore;
import java.util.List;

/** How beams of tests are put together. */
final class Plies {

    /** 0.131 in by 3 in at 24 in, whole plies. */
    static final Assembly NAILED = nailed(nails(0.131, 3, 24));

    private Plies() {}

    /** In inches: two staggered rows from both faces, three at the ends. */
    static Nails nails(double diameter, double length, double spacing) {
        double inch = Plans.INCH;
        return new Nails(diameter * inch, length * inch, 2, spacing * inch, true, true, true, 3);
    }

    static Assembly nailed(Nails nails, Joint... joints) {
        return new Assembly(nails, new JointsAt(List.of(joints)));
    }

    static Shore with(Shore s, Restraint roll, Assembly assembly) {
        Shore.Bracing bracing = new Shore.Bracing(Restraint.Sides.UNDECLARED, roll);
        return new Shore(s.name(), s.y(), s.beam(), s.start(), s.length(), s.gaps(), s.posts(), bracing, assembly);
    }

    static Shore with(Shore shore, Assembly assembly) {
        return with(shore, new Restraint.Undeclared(), assembly);
    }
}
