package dev.underprop.app.working;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.api.model.WorkingLine;
import dev.underprop.app.Demos;
import dev.underprop.app.http.CheckCases;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.quantity.UnitSystem;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Calculation records, followed line by line from their printed numbers. */
class WorkingTest {

    /**
     * Checks that compare a demand with a capacity; all others answer yes or no. So does that of ply fastening, unless plies
     * are pieced, which is one of the ways.
     */
    private static final List<String> COMPARE = List.of(
            "base-plate-bearing",
            "beam-bearing-at-joist",
            "beam-bearing-at-post",
            "beam-bending",
            "beam-deflection-live",
            "beam-deflection-long-term",
            "beam-deflection-total",
            "beam-roll-restraint",
            "beam-shear",
            "bearing-transfer",
            "bearing-uplift",
            "girder-bearing-at-pier",
            "girder-bending",
            "girder-deflection-live",
            "girder-deflection-total",
            "girder-shear",
            "joist-bearing",
            "joist-bending",
            "joist-deflection-live",
            "joist-deflection-total",
            "joist-notch",
            "joist-shear",
            "pad-eccentricity",
            "pad-settlement",
            "pad-soil-bearing",
            "pad-strength",
            "post-plates",
            "post-rating",
            "post-sideways",
            "seat-length",
            "seat-strength",
            "sideways-restraint",
            "tipping");

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everyRecordOfTheDemosCanBeFollowed(UnitSystem units) {
        for (String demo : Demos.valid()) {
            Asked.compared(Demos.text(demo), units).forEach(check -> Walked.follow(demo, check));
        }
    }

    @Test
    void everyCheckThatComparesIsFollowedWhereItPassesAndWhereItFails() {
        TreeSet<String> followed = new TreeSet<>();
        for (String plan : CheckCases.plans()) {
            for (CheckResult check : Asked.compared(plan, UnitSystem.US)) {
                Walked.follow("plan of the table", check);
                followed.add(check.getCheck());
            }
        }

        assertThat(followed).containsExactlyElementsOf(COMPARE);
    }

    @ParameterizedTest
    @MethodSource("dev.underprop.app.working.Way#all")
    void everyWayOfAJudgeIsTold(Way way) {
        for (UnitSystem units : UnitSystem.values()) {
            List<CheckResult> checks = Asked.compared(way.plan(), units);
            checks.forEach(check -> Walked.follow(way.name(), check));

            assertThat(checks)
                    .filteredOn(check -> check.getCheck().equals(way.check()))
                    .anySatisfy(check -> assertThat(check.getWorking().getLines())
                            .extracting(WorkingLine::getSymbol)
                            .containsAll(way.symbols()));
        }
    }

    @Test
    void anAnswerWithoutWorkingIsTheSameButForIt() {
        for (String demo : Demos.valid()) {
            PlanCheck plain = Asked.answer(Demos.text(demo), UnitSystem.US, false);
            PlanCheck told = Asked.answer(Demos.text(demo), UnitSystem.US, true);
            assertThat(plain.getChecks()).allMatch(check -> check.getWorking() == null);
            told.getChecks().forEach(check -> check.setWorking(null));

            assertThat(Documents.json(told, false)).as(demo).isEqualTo(Documents.json(plain, false));
        }
    }
}
