package dev.underprop.wire.meaning;

import dev.underprop.engine.plan.Member;
import dev.underprop.engine.section.RectangularSection;

/**
 * The section of one ply as it was understood.
 *
 * @param gross as sold or measured, with nothing missing
 * @param net what is left of it
 * @param nominal whether net is a dressed size of the tables
 * @param label for messages
 * @param remaining what is left, for the engine
 */
record Section(
        RectangularSection gross, RectangularSection net, boolean nominal, String label, Member.Remaining remaining) {

    static Section whole(RectangularSection gross, boolean nominal, String label) {
        return new Section(gross, gross, nominal, label, new Member.Whole());
    }

    Section reducedTo(RectangularSection left, String by, String words) {
        return new Section(gross, left, false, label + ", net " + words, new Member.Reduced(gross, by));
    }
}
