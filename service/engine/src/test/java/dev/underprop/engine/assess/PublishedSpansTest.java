package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.standard.Basis;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Fixtures;
import dev.underprop.fixtures.Inputs;
import dev.underprop.fixtures.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Joist span tables of the residential code through the whole assessment: a floor of three joists on two bearings, its
 * span widened until bending or live load deflection is at its limit.
 */
class PublishedSpansTest {

    @TestFactory
    Stream<DynamicTest> everyJoistSpanOfTheTablesIsReproduced() {
        return Fixtures.ofKind("joist-span-table").stream()
                .flatMap(c -> c.expected().stream().map(e -> DynamicTest.dynamicTest(c + " " + e, () -> check(c, e))));
    }

    private static void check(Case table, Expected row) {
        double span = span(table.inputs(), row.given()) / Plans.INCH;
        Verdict printed = row.check(span);
        assertThat(printed.agrees()).as(printed.toString()).isTrue();
        if (row.computed().isPresent()) {
            Verdict computed = row.checkComputed(span);
            assertThat(computed.agrees()).as(computed.toString()).isTrue();
        }
    }

    /** Span (m) at which the worse of the two ratios is 1: bending goes with its square, deflection with its cube. */
    private static double span(Inputs table, Inputs row) {
        double span = 4;
        for (int step = 0; step < 3; step++) {
            Assessment assessment = Assessor.assess(plan(table, row, span));
            double bending = worst(assessment, CheckId.JOIST_BENDING);
            double deflection = worst(assessment, CheckId.JOIST_DEFLECTION_LIVE);
            span *= Math.min(Math.pow(bending, -1 / 2.0), Math.pow(deflection, -1 / 3.0));
        }
        Assessment atLimit = Assessor.assess(plan(table, row, span));
        double worst = Math.max(worst(atLimit, CheckId.JOIST_BENDING), worst(atLimit, CheckId.JOIST_DEFLECTION_LIVE));
        assertThat(worst).isCloseTo(1, within(1e-9));
        return span;
    }

    private static double worst(Assessment assessment, CheckId id) {
        return assessment.checks().stream()
                .filter(r -> r.id() == id)
                .mapToDouble(CheckResult::ratio)
                .max()
                .orElseThrow();
    }

    private static JobPlan plan(Inputs table, Inputs row, double span) {
        double spacing = row.number("spacing_in") * Plans.INCH;
        Member member = Lumber.member(table.text("species"), table.text("grade"), row.text("size"), 1);
        List<Joist> joists = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            joists.add(new Joist("J" + (i + 1), i * spacing, 0, span, member));
        }
        Intensity floor =
                new Intensity(table.number("dead_psf") * Plans.PSF, table.number("live_psf") * Plans.PSF, 0, 0);
        return new JobPlan(
                Basis.US_ASD,
                new Floor(
                        joists,
                        List.of(
                                Plans.bearing("near", 0, new Fastening.Loose()),
                                Plans.bearing("far", span, new Fastening.Loose())),
                        List.of(new Load.Area("floor", floor, -Plans.ANY, Plans.ANY, -Plans.ANY, Plans.ANY)),
                        Floor.JoistWeight.INCLUDED_IN_DEAD),
                List.of(),
                new Ground.Unstated(),
                List.of(new Situation("as found", List.of(), List.of())));
    }
}
