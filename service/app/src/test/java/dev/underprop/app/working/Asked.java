package dev.underprop.app.working;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.AnswerOptions.Detail;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.quantity.UnitSystem;
import dev.underprop.wire.tree.Format;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Asks for the answer to a plan. */
final class Asked {

    private static final PlanDoor DOOR = new PlanDoor();

    private Asked() {}

    static PlanCheck answer(String text, UnitSystem units, boolean working) {
        byte[] plan = text.getBytes(StandardCharsets.UTF_8);
        Answer<PlanCheck> answer = DOOR.check(plan, Format.YAML, new AnswerOptions(units, Detail.FULL, working));
        if (answer instanceof Answer.Judged<PlanCheck> judged) {
            return judged.model();
        }
        throw new AssertionError(answer + " to " + text);
    }

    /** Checks that compare a demand with something, each with its working. */
    static List<CheckResult> compared(String text, UnitSystem units) {
        return answer(text, units, true).getChecks().stream()
                .filter(check -> check.getDemand() != null)
                .toList();
    }
}
