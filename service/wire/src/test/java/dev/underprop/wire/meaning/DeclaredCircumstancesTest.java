package dev.underprop.wire.meaning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.plan.Circumstances;
import dev.underprop.engine.plan.Excavation;
import dev.underprop.engine.plan.Intake;
import dev.underprop.engine.plan.Lateral;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Restraint;
import dev.underprop.wire.tree.Format;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a plan declares of its circumstances comes to the engine in SI, from either system of units. */
class DeclaredCircumstancesTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final double POUND = 4.4482216152605;

    private static Circumstances of(String file) {
        return Reading.file(file).plan().circumstances();
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void theFloorIsHeldSideways(String file) {
        Restraint.Sides floor = of(file).floorRestraint();
        Restraint.Held along = (Restraint.Held) floor.along();
        assertThat(along.by()).isEqualTo("plywood deck nailed to the walls, by the engineer");
        assertThat(along.capacity()).isCloseTo(3000 * POUND, EXACT);
        assertThat(floor.across()).isEqualTo(new Restraint.Held("the same deck", Double.NaN));
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void sidewaysForcesAreGiven(String file) {
        Lateral.Given given = (Lateral.Given) of(file).lateral();
        assertThat(given.by()).isEqualTo("engineer of the job, sheet 4");
        assertThat(given.forces()).hasSize(2);
        Lateral.Force wind = given.forces().get(0);
        assertThat(wind.name()).isEqualTo("west wind");
        assertThat(wind.origin()).isEqualTo(Lateral.Origin.WIND);
        assertThat(wind.along()).isCloseTo(800 * POUND, EXACT);
        assertThat(wind.across()).isCloseTo(1500 * POUND, EXACT);
        Lateral.Force shaking = given.forces().get(1);
        assertThat(shaking.origin()).isEqualTo(Lateral.Origin.SEISMIC);
        assertThat(shaking.along()).isCloseTo(600 * POUND, EXACT);
        assertThat(shaking.across()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void cutsHaveNoEndWhereNoneIsGiven(String file) {
        Excavation.Cuts cuts = (Excavation.Cuts) of(file).excavation();
        Excavation.Cut drain = cuts.cuts().get(0);
        assertThat(drain.name()).isEqualTo("drain");
        assertThat(drain.fromX()).isCloseTo(6.096, EXACT);
        assertThat(drain.toX()).isCloseTo(6.7056, EXACT);
        assertThat(drain.fromY()).isCloseTo(-0.9144, EXACT);
        assertThat(drain.toY()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(drain.depth()).isCloseTo(0.6096, EXACT);
        Excavation.Cut cellar = cuts.cuts().get(1);
        assertThat(cellar.fromX()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(cellar.toX()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(cellar.toY()).isCloseTo(-3.048, EXACT);
        assertThat(cellar.depth()).isCloseTo(1.6764, EXACT);
    }

    /** The YAML document writes yes and no without quotes. */
    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void everyQuestionIsAnswered(String file) {
        Intake intake = of(file).intake();
        assertThat(intake.answers()).extracting(Intake.Answer::question).containsExactly(Intake.Question.values());
        assertThat(intake.to(Intake.Question.CHIMNEY))
                .isEqualTo(new Intake.Answer(
                        Intake.Question.CHIMNEY, Intake.Reply.YES, "chimney", "brick, stands on the joists"));
        assertThat(intake.to(Intake.Question.BEARING_PARTITION).load()).isEqualTo("roof post");
        assertThat(intake.to(Intake.Question.HEAVY_FIXTURE).reply()).isEqualTo(Intake.Reply.NO);
        assertThat(intake.to(Intake.Question.STAIR).reply()).isEqualTo(Intake.Reply.UNKNOWN);
        assertThat(intake.to(Intake.Question.SERVICES).note()).isEqualTo("one drain pipe");
        assertThat(intake.to(Intake.Question.LONG_DURATION).reply()).isEqualTo(Intake.Reply.NO);
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void limitsAreStated(String file) {
        Limits limits = of(file).limits();
        assertThat(limits.fitUp().tolerance()).isCloseTo(0.003175, EXACT);
        assertThat(limits.fitUp().stated()).isTrue();
        assertThat(limits.plumb().lean()).isCloseTo(Math.PI / 180, EXACT);
        assertThat(limits.plumb().stated()).isTrue();
        assertThat(limits.transfer())
                .isEqualTo(new Limits.Transfer(0.003, "plaster that may be mended, by the engineer", true));
        Limits.Settles settles = (Limits.Settles) limits.settlement();
        assertThat(settles.total()).isCloseTo(0.0127, EXACT);
        assertThat(settles.slope()).isEqualTo(0.002);
        assertThat(settles.name()).isEqualTo("no new cracks, by the engineer");
    }

    @Test
    void eachLimitHasItsOwnDefault() {
        String text = Reading.text("declared.json");
        String fitUp = text.replaceFirst(", \"transferSlope\".*\\}\n\\}", " }\n}");
        Limits stated =
                Reading.understood(fitUp, Format.JSON).plan().circumstances().limits();
        assertThat(stated.fitUp().stated()).isTrue();
        assertThat(stated.transfer()).isEqualTo(Limits.DEFAULT.transfer());
        String unplumbed = text.replace("\"plumb\": \"1 deg\", ", "");
        assertThat(Reading.understood(unplumbed, Format.JSON)
                        .plan()
                        .circumstances()
                        .limits()
                        .plumb())
                .isEqualTo(new Limits.Plumb(Math.PI / 120, false));
        String slope = text.replace("\"fitUp\": \"1/8 in\", ", "");
        assertThat(Reading.understood(slope, Format.JSON)
                        .plan()
                        .circumstances()
                        .limits()
                        .fitUp())
                .isEqualTo(Limits.DEFAULT.fitUp());
    }

    @Test
    void noneIsAStatement() {
        String text = Reading.text("declared.json")
                .replaceFirst("(?s)\"forces\": \\[.*?\\]", "\"none\": true")
                .replaceFirst("(?s)\"cuts\": \\[.*?\\]", "\"none\": true");
        Circumstances circumstances =
                Reading.understood(text, Format.JSON).plan().circumstances();
        assertThat(circumstances.lateral()).isEqualTo(new Lateral.None("engineer of the job, sheet 4"));
        assertThat(circumstances.excavation()).isEqualTo(new Excavation.None());
    }

    @Test
    void aPlanThatSaysNothingDeclaresNothing() {
        assertThat(of("old-house.json")).isEqualTo(Circumstances.UNSTATED);
    }
}
