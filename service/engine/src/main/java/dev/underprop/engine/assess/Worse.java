package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.standard.Citation;

/** Of two findings of one check at one place, the one that decides: a failure before what is not checked, then by ratio. */
final class Worse {

    private static final Citation NONE = Citation.remembered("common practice, no source", "", "the worse of two");

    private Worse() {}

    static Finding of(Finding one, Finding other) {
        return CheckResult.BEST_FIRST.compare(result(one), result(other)) >= 0 ? one : other;
    }

    private static CheckResult result(Finding finding) {
        return new CheckResult(CheckId.POST_PLATES, "", finding, new CheckResult.NoCase(), NONE);
    }
}
