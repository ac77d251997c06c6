package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.plan.Circumstances;
import dev.underprop.engine.plan.Excavation;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Intake;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Lateral;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Restraint;
import dev.underprop.engine.plan.Shore;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plates and ends of posts in whole plans: a beam on two posts with 10 kN over each. */
class PostChecksTest {

    private static final Lateral WIND =
            new Lateral.Given("the engineer", List.of(new Lateral.Force("wind", Lateral.Origin.WIND, 1000, 1000)));
    private static final Restraint.Sides HELD =
            new Restraint.Sides(new Restraint.Held("walls", 9000), new Restraint.Held("walls", 9000));

    private static JobPlan plan(Post.End end, Lateral lateral, Restraint.Sides floor) {
        JobPlan bare = Simple.beam(
                Plans.twoByTen(3, 0),
                2,
                0.2,
                0.2,
                List.of(Simple.point(0, 10_000), Simple.point(2, 10_000)),
                Simple.squareMetre(),
                new Ground.Unstated());
        Shore shore = bare.shores().get(0);
        List<Post> posts = shore.posts().stream()
                .map(p -> new Post(
                        p.name(),
                        p.x(),
                        p.height(),
                        p.stiffness(),
                        0,
                        0,
                        Props.type(Props.PLATE, Props.PLATE),
                        p.footing(),
                        new Post.Ends(end, end)))
                .toList();
        Shore declared = new Shore("A", 0, shore.beam(), shore.start(), shore.length(), List.of(), posts);
        return new JobPlan(
                bare.basis(),
                bare.floor(),
                List.of(declared),
                bare.ground(),
                bare.situations(),
                new Circumstances(floor, lateral, new Excavation.Unstated(), Intake.EMPTY, Limits.DEFAULT));
    }

    private static CheckResult check(CheckId id, Post.End end, Lateral lateral, Restraint.Sides floor) {
        return Simple.check(plan(end, lateral, floor), id, "P1");
    }

    /** 10 kN on 0.2 m by 4.5 in, 80 mm out: a stress of pressure x 0.0032 / 25e-6. */
    @Test
    void platesAreJudgedUnderTheGreatestLoad() {
        CheckResult result =
                check(CheckId.POST_PLATES, new Post.Undeclared(), new Lateral.Unstated(), Restraint.Sides.UNDECLARED);

        assertThat(((CheckResult.Judged) result.finding()).demand())
                .isCloseTo(10_000 / (0.2 * 0.1143) * 0.0032 / 25e-6, within(100.0));
        assertThat(result.verdict()).isEqualTo(Verdict.PASS);
    }

    /** The default lean of 1.5 degrees rules: 10 kN x 0.026186. */
    @Test
    void endsAreJudgedWithTheDefaultLean() {
        CheckResult result = check(
                CheckId.POST_SIDEWAYS,
                new Post.Fastened("bolts", 300),
                new Lateral.Unstated(),
                Restraint.Sides.UNDECLARED);

        assertThat(((CheckResult.Judged) result.finding()).demand()).isCloseTo(261.86, within(0.01));
        assertThat(result.verdict()).isEqualTo(Verdict.PASS);
        assertThat(check(
                                CheckId.POST_SIDEWAYS,
                                new Post.Undeclared(),
                                new Lateral.Unstated(),
                                Restraint.Sides.UNDECLARED)
                        .verdict())
                .isEqualTo(Verdict.NOT_CHECKED);
    }

    @Test
    void givenSidewaysLoadsGoIntoWhatHoldsTheFloor() {
        Post.End bolts = new Post.Fastened("bolts", 300);

        assertThat(check(CheckId.POST_SIDEWAYS, bolts, WIND, HELD).verdict()).isEqualTo(Verdict.PASS);
        assertThat(check(CheckId.POST_SIDEWAYS, bolts, WIND, Restraint.Sides.UNDECLARED)
                        .verdict())
                .isEqualTo(Verdict.NOT_CHECKED);
        assertThat(check(
                                CheckId.POST_SIDEWAYS,
                                bolts,
                                WIND,
                                new Restraint.Sides(new Restraint.Held("walls", 9000), new Restraint.Free()))
                        .verdict())
                .isEqualTo(Verdict.NOT_CHECKED);
    }

    @Test
    void concreteOfUnknownStrengthIsNotChecked() {
        CheckResult result = check(
                CheckId.BASE_PLATE_BEARING, new Post.Undeclared(), new Lateral.Unstated(), Restraint.Sides.UNDECLARED);

        assertThat(Props.reason(result.finding())).contains("strength of the concrete");
    }
}
