package dev.underprop.bench;

import dev.underprop.engine.assess.Assessment;
import dev.underprop.engine.assess.Assessor;
import dev.underprop.engine.plan.JobPlan;
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

/** Whole assessments of plans already read, one thread. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@State(Scope.Benchmark)
public class AssessBenchmark {

    /** Which plan: the reference plan, or a floor of joists x shores x posts. */
    @Param({"reference", "5x1x4", "10x1x4", "20x1x4", "40x1x4", "80x1x4", "60x2x20"})
    public String plan = "reference";

    private JobPlan read = DemoPlans.engine(DemoPlans.demo("reference.yaml"));

    /** Reads the plan once and prints what one assessment of it computes. */
    @Setup
    public void readPlan() {
        if (!plan.equals("reference")) {
            String[] parts = plan.split("x");
            read = DemoPlans.floor(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]), Integer.parseInt(parts[2]));
        }
        System.out.println(plan + ": " + Assessor.assess(read).counts());
    }

    /** One assessment. */
    @Benchmark
    public Assessment assess() {
        return Assessor.assess(read);
    }
}
