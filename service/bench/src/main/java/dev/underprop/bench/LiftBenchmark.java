package dev.underprop.bench;

import dev.underprop.engine.lift.LiftLimits;
import dev.underprop.engine.lift.LiftPlan;
import dev.underprop.engine.lift.LiftRequest;
import dev.underprop.engine.lift.LiftScrew;
import dev.underprop.engine.lift.Lifter;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Lifts of 1/8 in a stage, all posts by the same raise, one thread; the floor is read from text once. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@State(Scope.Benchmark)
public class LiftBenchmark {

    private static final double INCH = 0.0254;

    /** Posts of the one shore, 4 ft apart under joists 24 in apart. */
    @Param({"4", "8", "12", "16"})
    public int posts = 12;

    /** Stages of 1/8 in. */
    @Param({"4", "12"})
    public int stages = 12;

    private JobPlan plan = DemoPlans.engine(LiftPlans.text(12));
    private LiftRequest request = request(plan, 12);

    /** Reads the plan once and says what one lift plan of it computes. */
    @Setup
    public void read() {
        plan = DemoPlans.engine(LiftPlans.text(posts));
        request = request(plan, stages);
        LiftPlan lift = Lifter.plan(plan, request);
        System.out.println(
                posts + " posts: " + lift.outcome() + ", " + lift.stages().size() + " stages, "
                        + lift.stages().stream().mapToInt(s -> s.turns().size()).sum() + " turns, "
                        + lift.basis().solved() + " contact solves");
    }

    /** One lift plan. */
    @Benchmark
    public LiftPlan lift() {
        return Lifter.plan(plan, request);
    }

    static LiftRequest request(JobPlan plan, int stages) {
        List<LiftRequest.Point> points = new ArrayList<>();
        for (Shore shore : plan.shores()) {
            for (Post post : shore.posts()) {
                points.add(new LiftRequest.Point(post.name(), post.x(), shore.y(), -stages * INCH / 8, Double.NaN));
            }
        }
        LiftLimits limits = new LiftLimits(
                Double.NaN,
                INCH / 8,
                Double.NaN,
                Math.max(2, stages / 8.0) * INCH,
                86_400,
                new LiftLimits.Slope(0.05, "invented"),
                LiftLimits.Ratios.WHOLE,
                List.of());
        LiftScrew screw = new LiftScrew(
                INCH / 4,
                0.125,
                new LiftScrew.Rubbing(1.375 * INCH, StrictMath.toRadians(14.5), 0.1, 0.2, 0.15, 0.9 * INCH),
                24 * INCH,
                450,
                6 * INCH);
        Situation out = plan.situations().get(0);
        return new LiftRequest(
                out,
                new LiftRequest.Survey(points, INCH / 32),
                new LiftRequest.Target(new LiftRequest.Plane(0, 0, 0), false),
                limits,
                Collections.nCopies(points.size(), screw),
                LiftRequest.Order.MOST_TO_GO_FIRST,
                LiftRequest.Crept.UNKNOWN,
                LiftRequest.Progress.NONE,
                LiftRequest.After.POSTS_STAY);
    }
}
