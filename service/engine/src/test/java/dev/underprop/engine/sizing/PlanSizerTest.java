package dev.underprop.engine.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.Halt;
import dev.underprop.engine.assess.Assessment;
import dev.underprop.engine.assess.Assessor;
import dev.underprop.engine.assess.Floors;
import dev.underprop.engine.pad.PadChecks;
import dev.underprop.engine.plan.Excavation;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.sizing.PlanSizer.Outcome;
import dev.underprop.engine.sizing.PlanSizer.Sized;
import dev.underprop.engine.sizing.PlanSizer.Unstable;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** The rounds in which a plan is assessed with the pads that it asks for. */
class PlanSizerTest {

    private static final JobPlan PLAN = Floors.reference(true, 1);
    private static final Task WISH = new Task(
            List.of(),
            new PadChecks.Site(PLAN.ground(), new Excavation.None(), new Limits.NoSettlement()),
            stock(),
            Objective.AREA);

    private final List<JobPlan> asked = new ArrayList<>();

    private static List<Candidate> stock() {
        List<Candidate> stock = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            double side = 0.3 + 0.01 * i;
            Pad.Known weight = new Pad.Known(23_500, true);
            Pad pad = new Pad(
                    "cast " + i, Pad.Kind.CONCRETE, side, side, 0.8, weight, new Pad.Cast(20.7e6), new Pad.Within(0));
            stock.add(Candidate.of(pad, 1));
        }
        return stock;
    }

    private Outcome size(Function<JobPlan, Assessment> assessor) {
        return PlanSizer.size(
                PLAN,
                WISH,
                plan -> {
                    asked.add(plan);
                    return assessor.apply(plan);
                },
                Halt.NEVER);
    }

    private static List<Post.Footing> pads(JobPlan plan) {
        return plan.shores().get(0).posts().stream().map(Post::footing).toList();
    }

    private static List<Post.Footing> proposed(PadSizing sizing) {
        return sizing.posts().stream()
                .<Post.Footing>map(p -> p.proposals().get(0).trial().candidate().pad())
                .toList();
    }

    @Test
    void aProposalThatStaysIsTheOneThatWasAssessed() {
        Sized sized = (Sized) size(Assessor::assess);

        assertThat(sized.stays()).isTrue();
        assertThat(asked).hasSize(sized.rounds());
        assertThat(sized.fitted()).isEqualTo(asked.get(asked.size() - 1));
        assertThat(pads(sized.fitted())).isEqualTo(proposed(sized.sizing()));
    }

    /** A plan whose loads rise each time it is looked at: the verdict told at last is that of the pads that are told. */
    @Test
    void aProposalThatDoesNotStayIsAssessedToo() {
        Sized sized = (Sized) size(plan -> Assessor.assess(Floors.reference(true, 1 + 0.25 * asked.size())));

        assertThat(sized.stays()).isFalse();
        assertThat(asked).hasSize(sized.rounds());
        assertThat(sized.fitted()).isEqualTo(asked.get(asked.size() - 1));
        assertThat(pads(sized.fitted())).isEqualTo(proposed(sized.sizing()));
        assertThat(sized.assessment().situations().get(0).posts().get(1).greatest())
                .isEqualTo(Assessor.assess(Floors.reference(true, 1 + 0.25 * asked.size()))
                        .situations()
                        .get(0)
                        .posts()
                        .get(1)
                        .greatest());
    }

    @Test
    void aPlanThatTipsWithItsPadsIsUnstable() {
        Unstable unstable = (Unstable) size(plan -> Assessor.assess(Floors.reference(asked.size() < 2, 1)));

        assertThat(unstable.fitted()).isTrue();
        assertThat(unstable.rounds()).isEqualTo(2);
        assertThat(unstable.situation()).isEqualTo("sill out");
        assertThat(unstable.reason()).contains("turns over");
        assertThat(asked).hasSize(2);
    }

    @Test
    void aPlanThatTipsAsItIsGivenHasNoLoads() {
        Unstable unstable = (Unstable) size(plan -> Assessor.assess(Floors.reference(false, 1)));

        assertThat(unstable.fitted()).isFalse();
        assertThat(asked).containsExactly(PLAN);
    }
}
