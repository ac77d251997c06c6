package dev.underprop.app.working;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.app.Demos;
import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.AnswerOptions.Detail;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.quantity.UnitSystem;
import dev.underprop.wire.tree.Format;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every check of every demo, followed line by line. */
class WorkingTest {

    private static final PlanDoor DOOR = new PlanDoor();

    private static PlanCheck answer(String text, UnitSystem units, boolean working) {
        byte[] plan = text.getBytes(StandardCharsets.UTF_8);
        AnswerOptions options = new AnswerOptions(units, Detail.FULL, working);
        return ((Answer.Judged<PlanCheck>) DOOR.check(plan, Format.YAML, options)).model();
    }

    private static List<CheckResult> compared(PlanCheck answer) {
        return answer.getChecks().stream()
                .filter(check -> check.getDemand() != null)
                .toList();
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everyRecordOfTheDemosCanBeFollowed(UnitSystem units) {
        for (String demo : Demos.valid()) {
            for (CheckResult check : compared(answer(Demos.text(demo), units, true))) {
                Walked.follow(demo, check);
            }
        }
    }

    @Test
    void anAnswerWithoutWorkingIsTheSameButForIt() {
        for (String demo : Demos.valid()) {
            PlanCheck plain = answer(Demos.text(demo), UnitSystem.US, false);
            PlanCheck told = answer(Demos.text(demo), UnitSystem.US, true);
            assertThat(plain.getChecks()).allMatch(check -> check.getWorking() == null);
            told.getChecks().forEach(check -> check.setWorking(null));

            assertThat(Documents.json(told, false)).as(demo).isEqualTo(Documents.json(plain, false));
        }
    }

    @Test
    void theDemosTellOfEveryCheckThatCompares() {
        Set<String> ids = new TreeSet<>();
        for (String demo : Demos.valid()) {
            compared(answer(Demos.text(demo), UnitSystem.US, true)).forEach(check -> ids.add(check.getCheck()));
        }
        System.out.println(ids.size() + " checks " + ids);
    }
}
