package dev.underprop.wire.door;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.api.model.LiftOutcome;
import dev.underprop.api.model.LiftPlan;
import dev.underprop.api.model.LiftTurn;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.quantity.UnitSystem;
import dev.underprop.wire.tree.Format;
import java.nio.charset.StandardCharsets;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;

class LiftDoorTest {
    private static final PlanDoor DOOR = new PlanDoor();

    private static LiftPlan lift(String text, UnitSystem units) {
        Answer<LiftPlan> answer = DOOR.lift(
                text.getBytes(StandardCharsets.UTF_8),
                Format.JSON,
                new AnswerOptions(units, AnswerOptions.Detail.COMPACT));
        assertThat(answer).isInstanceOf(Answer.Judged.class);
        return ((Answer.Judged<LiftPlan>) answer).model();
    }

    @Test
    void everyDeclaredPartOfALiftIsRead() {
        LiftPlan plan = lift(Plans.text("raised.json"), UnitSystem.US);

        assertThat(plan.getOutcome()).as("%s", plan.getNotChecked()).isEqualTo(LiftOutcome.PLANNED);
        assertThat(plan.getNotChecked()).hasSize(1);
        assertThat(plan.getStages()).hasSize(3);
        assertThat(plan.getStages().get(2).getStart().getValue()).isEqualTo(48);
        LiftTurn turn = plan.getStages().get(0).getPasses().get(0).getTurns().get(0);
        assertThat(turn.getWords()).endsWith("turn up");
        assertThat(turn.getTorque()).isNotNull();
        assertThat(turn.getPull()).isNotNull();
        assertThat(plan.getPosts().get(0).getTravelLeft().getValue()).isCloseTo(4.5, Assertions.within(1e-9));
        assertThat(plan.getPosts().get(1).getTravelLeft().getValue()).isCloseTo(5.5, Assertions.within(1e-9));
        assertThat(plan.getRelease().getPossible()).isTrue();
        assertThat(plan.getRaised().getLifts())
                .extracting(l -> l.getPost() + " " + l.getLift())
                .containsExactly("A1 0.5 in", "A2 0.5 in", "A3 0.5 in", "A4 0.5 in");
        assertThat(plan.getRaised().getRemoved()).containsExactly("sill");
    }

    /** What is pasted back takes away what the lift took away: parts of a sill too. */
    @Test
    void theRaisedSituationHoldsPartsAndWhatIsToComeClear() {
        String text = Plans.text("raised.json")
                .replaceAll(
                        "\"name\": \"sill out\",\\s*\"removed\": \\[\\s*\"sill\"\\s*\\]",
                        "\"name\": \"sill out\", \"clear\": [\"sill\"], \"removedParts\": [{ \"bearing\": \"sill\", \"from\": \"-1 ft\","
                                + " \"to\": \"5 ft\" }]")
                .replaceAll("\"turned\": \\[[^\\]]*\\],\\s*\"readings\": \\[[^\\]]*\\]", "\"order\": \"most to go\"")
                .replaceAll("\"order\": \"middle outward\",", "");
        LiftPlan plan = lift(text, UnitSystem.US);

        assertThat(plan.getRaised()).as(plan.getHeadline()).isNotNull();
        assertThat(plan.getRaised().getRemoved()).isNull();
        assertThat(plan.getRaised().getClear()).containsExactly("sill");
        assertThat(plan.getRaised().getRemovedParts())
                .extracting(p -> p.getBearing() + " " + p.getFrom() + " " + p.getTo())
                .containsExactly("sill -1 ft 5 ft");
    }

    @Test
    void unitsChangeNothingButTheNumbersShown() {
        LiftPlan us = lift(Plans.text("raised.json"), UnitSystem.US);
        LiftPlan si = lift(Plans.text("raised.json"), UnitSystem.SI);

        assertThat(si.getPlanDigest()).isEqualTo(us.getPlanDigest());
        assertThat(si.getPosts().get(0).getPlanned().getValue())
                .isCloseTo(us.getPosts().get(0).getPlanned().getValue() * 25.4, Assertions.within(1e-6));
        assertThat(si.getStages()).hasSameSizeAs(us.getStages());
    }

    @Test
    void twoAskingsGiveTheSameBytes() {
        byte[] one = Documents.json(lift(Plans.text("raised.json"), UnitSystem.US), true);
        byte[] other = Documents.json(lift(Plans.text("raised.json"), UnitSystem.US), true);

        assertThat(other).isEqualTo(one);
    }

    /** Nothing that changes safety is taken for granted: each is named when it is taken out. */
    @Test
    void whatIsTakenOutIsNotChecked() {
        assertOpen("\"travel\": \"6 in\"", "\"starts\": 1", "screw travel");
        assertOpen("\"frictionLeast\": 0.1,", "", "torque");
        assertOpen("\"wrench\": \"24 in\",", "", "wrench pull");
        assertOpen("\"total\": \"1 in\",", "", "total raise");
    }

    private static void assertOpen(String member, String other, String open) {
        String text = Plans.text("raised.json");
        assertThat(text).contains(member);
        String without = member.contains("travel")
                ? text.replaceAll(",\\s*\"travel\": \"6 in\"", "")
                : member.contains("friction")
                        ? text.replaceAll("\"friction(Least|Most)\": [0-9.]+,\\s*", "")
                        : text.replace(member, other);
        LiftPlan plan = lift(without, UnitSystem.US);
        assertThat(plan.getOutcome()).as(open).isEqualTo(LiftOutcome.INCOMPLETE);
        assertThat(plan.getNotChecked()).anyMatch(line -> line.startsWith(open));
    }

    @Test
    void aNamedDamageLimitStandsForItsSlope() {
        String text = Plans.text("raised.json")
                .replaceAll("\"slope\": 0.01,\\s*\"slopeCriterion\": \"[^\"]*\"", "\"damage\": \"bjerrum-walls\"");
        LiftPlan plan = lift(text, UnitSystem.US);

        assertThat(plan.getAssumptions()).anyMatch(line -> line.contains("1/500") && line.contains("Bjerrum 1963"));
    }

    @Test
    void aPlanWithoutALiftIsFaulty() {
        Answer<LiftPlan> answer = DOOR.lift(Plans.bytes("two-bays.json"), Format.JSON, AnswerOptions.USUAL);

        assertThat(answer).isInstanceOf(Answer.Faulty.class);
        assertThat(((Answer.Faulty<LiftPlan>) answer).faults())
                .extracting(Fault::pointer, Fault::code)
                .containsExactly(Assertions.tuple("/lift", "member-missing"));
    }
}
