package dev.underprop.bench;

import com.fasterxml.jackson.databind.JsonNode;
import dev.underprop.api.model.JobPlan;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.engine.assess.Assessment;
import dev.underprop.engine.assess.Assessor;
import dev.underprop.wire.catalogue.Catalogue;
import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.meaning.ModelReader;
import dev.underprop.wire.meaning.PlanReader;
import dev.underprop.wire.meaning.PlanReading;
import dev.underprop.wire.shape.ShapeCheck;
import dev.underprop.wire.tree.Format;
import dev.underprop.wire.tree.Limits;
import dev.underprop.wire.tree.TreeReader;
import dev.underprop.wire.tree.TreeReading;
import java.util.List;
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

/**
 * What each step costs on the way of the reference plan from text to text, one thread: parse, shape, bind, validate, meaning, assess
 * (all solves and all checks), write; {@code judged} is all of them but writing, with the wording of the answer. The solve alone is in {@code ContactBenchmark}.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
@State(Scope.Benchmark)
public class StepsBenchmark {
    private final byte[] yaml = DemoPlans.demo("reference.yaml");
    private final TreeReader trees = new TreeReader(Limits.USUAL);
    private final ModelReader models = new ModelReader();
    private final ShapeCheck shapes = new ShapeCheck(models.mapper(), JobPlan.class, Limits.USUAL.faults());
    private final PlanReader plans = new PlanReader(Catalogue.standard());
    private final PlanDoor door = new PlanDoor();

    private final JsonNode tree = tree(yaml, Format.YAML);
    private final JobPlan model = models.bind(tree);
    private final byte[] json = Documents.json(model, false);
    private final dev.underprop.engine.plan.JobPlan plan = DemoPlans.engine(yaml);
    private final PlanCheck answer = judged();

    /** YAML to a tree. */
    @Benchmark
    public JsonNode parseYaml() {
        return tree(yaml, Format.YAML);
    }

    /** The same plan as JSON. */
    @Benchmark
    public JsonNode parseJson() {
        return tree(json, Format.JSON);
    }

    /** The tree against the shape of the contract. */
    @Benchmark
    public List<Fault> shape() {
        return shapes.check(tree);
    }

    /** The tree to the contract's model. */
    @Benchmark
    public JobPlan bind() {
        return models.bind(tree);
    }

    /** The model against the contract's limits. */
    @Benchmark
    public List<Fault> validate() {
        return models.faults(model);
    }

    /** The model to the engine's plan. */
    @Benchmark
    public PlanReading meaning() {
        return plans.read(model);
    }

    /** Every solve and every check. */
    @Benchmark
    public Assessment assess() {
        return Assessor.assess(plan);
    }

    /** The answer's model to text. */
    @Benchmark
    public byte[] write() {
        return Documents.json(answer, false);
    }

    /** Text to the answer's model: all but writing. */
    @Benchmark
    public PlanCheck judged() {
        if (door.check(yaml, Format.YAML, AnswerOptions.USUAL) instanceof Answer.Judged<PlanCheck> judged) {
            return judged.model();
        }
        throw new IllegalStateException("the reference plan was not judged");
    }

    private JsonNode tree(byte[] text, Format format) {
        if (trees.read(text, format) instanceof TreeReading.Tree read) {
            return read.root();
        }
        throw new IllegalStateException("the reference plan was not read");
    }
}
