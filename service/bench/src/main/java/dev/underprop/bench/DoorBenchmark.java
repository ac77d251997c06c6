package dev.underprop.bench;

import dev.underprop.api.model.PlanCheck;
import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.tree.Format;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** From the text of the reference plan to the text of its answer, one thread. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@State(Scope.Benchmark)
public class DoorBenchmark {

    private final PlanDoor door = new PlanDoor();
    private final byte[] yaml = DemoPlans.demo("reference.yaml");

    /** Text in, text out. */
    @Benchmark
    public byte[] check() {
        Answer<PlanCheck> answer = door.check(yaml, Format.YAML, AnswerOptions.USUAL);
        if (answer instanceof Answer.Judged<PlanCheck> judged) {
            return Documents.json(judged.model(), false);
        }
        throw new IllegalStateException("the reference plan was not judged: " + answer);
    }
}
