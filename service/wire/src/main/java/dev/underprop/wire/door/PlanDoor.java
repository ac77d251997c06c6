package dev.underprop.wire.door;

import dev.underprop.api.model.LayoutAnalysis;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.wire.tree.Format;

/** Reads a plan, has it judged and words the answer. Holds no state between plans; safe for any number of threads. */
public final class PlanDoor {

    /** Forces, reactions, deflections, checks and advisories of a layout. */
    public Answer<LayoutAnalysis> analyse(byte[] text, Format format, AnswerOptions options) {
        throw new UnsupportedOperationException("not built");
    }

    /** All that the plan contains, judged to one verdict. */
    public Answer<PlanCheck> check(byte[] text, Format format, AnswerOptions options) {
        throw new UnsupportedOperationException("not built");
    }
}
