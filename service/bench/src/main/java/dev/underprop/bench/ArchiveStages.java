package dev.underprop.bench;

import com.fasterxml.jackson.databind.JsonNode;
import dev.underprop.api.model.JobPlan;
import dev.underprop.engine.assess.Assessor;
import dev.underprop.wire.catalogue.Catalogue;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.meaning.ModelReader;
import dev.underprop.wire.meaning.PlanReader;
import dev.underprop.wire.meaning.PlanReading;
import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.EntryName;
import dev.underprop.wire.record.Extent;
import dev.underprop.wire.record.Outcome;
import dev.underprop.wire.record.Outcomes;
import dev.underprop.wire.record.PlanRecords;
import dev.underprop.wire.shape.ShapeCheck;
import dev.underprop.wire.tree.Canonical;
import dev.underprop.wire.tree.Format;
import dev.underprop.wire.tree.Limits;
import dev.underprop.wire.tree.TreeReader;
import dev.underprop.wire.tree.TreeReading;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/**
 * Where the processor's time goes in the plans of an archive, stage by stage on one thread once everything is compiled: {@code java
 * -cp benchmarks.jar dev.underprop.bench.ArchiveStages [PLANS [ROUNDS]]}. What words an answer is what is left of the door without
 * the stages before it.
 */
public final class ArchiveStages {
    private static final double MICROSECONDS = 1e-3;

    private final TreeReader trees = new TreeReader(Limits.USUAL);
    private final ModelReader models = new ModelReader();
    private final ShapeCheck shapes = new ShapeCheck(models.mapper(), JobPlan.class, Limits.USUAL.faults());
    private final PlanReader plans = new PlanReader(Catalogue.standard());
    private final Outcomes outcomes = new Outcomes(new PlanDoor(), AnswerOptions.USUAL);
    private final Map<String, Long> spent = new LinkedHashMap<>();
    private long bytes;

    private ArchiveStages() {}

    /**
     * Measures.
     *
     * @param args plans a round, rounds of which the last is told
     */
    public static void main(String[] args) {
        int count = args.length > 0 ? Integer.parseInt(args[0]) : 2000;
        int rounds = args.length > 1 ? Integer.parseInt(args[1]) : 12;
        List<byte[]> texts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            texts.add(ArchivePlans.json(i).getBytes(StandardCharsets.UTF_8));
        }
        ArchiveStages stages = new ArchiveStages();
        for (int round = 0; round < rounds; round++) {
            stages.spent.clear();
            stages.round(texts);
        }
        stages.tell(count);
    }

    private void round(List<byte[]> texts) {
        List<JsonNode> read = stage("tree", texts, text -> trees.read(text, Format.JSON)).stream()
                .filter(TreeReading.Tree.class::isInstance)
                .map(tree -> ((TreeReading.Tree) tree).root())
                .toList();
        stage("digest", read, Canonical::text);
        List<List<?>> shapeless = new ArrayList<>(stage("shape", read, shapes::check));
        List<JsonNode> shaped = new ArrayList<>();
        for (int i = 0; i < read.size(); i++) {
            if (shapeless.get(i).isEmpty()) {
                shaped.add(read.get(i));
            }
        }
        List<JobPlan> bound = stage("bind", shaped, models::bind);
        stage("validate", bound, models::faults);
        List<PlanReading.Understood> understood = stage("meaning", bound, plans::read).stream()
                .filter(PlanReading.Understood.class::isInstance)
                .map(PlanReading.Understood.class::cast)
                .toList();
        stage("engine", understood, plan -> Assessor.assess(plan.plan(), false));
        List<Outcome> judged = stage(
                "door, all of it", texts, text -> outcomes.of(new Entry.Text(EntryName.file("x"), Format.JSON, text)));
        List<Object> records = new ArrayList<>(stage("record", judged, one -> PlanRecords.of(one, Extent.BRIEF)));
        stage("write", records, record -> Documents.json(record, false)).forEach(json -> bytes += json.length);
    }

    private <T, R> List<R> stage(String name, List<T> input, Function<? super T, ? extends R> work) {
        List<R> output = new ArrayList<>(input.size());
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        for (T one : input) {
            output.add(work.apply(one));
        }
        spent.put(name, ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start);
        return output;
    }

    private void tell(int count) {
        long before = 0;
        for (Map.Entry<String, Long> stage : spent.entrySet()) {
            boolean door = stage.getKey().startsWith("door");
            line(stage.getKey(), stage.getValue(), count);
            if (door) {
                line("  of it words of the answer, and faults", stage.getValue() - before, count);
            }
            before += stage.getValue();
        }
        System.out.printf(Locale.ROOT, "%d bytes written in all%n", bytes);
    }

    private static void line(String what, long nanos, int count) {
        System.out.printf(Locale.ROOT, "%-40s %8.1f us a plan%n", what, nanos * MICROSECONDS / count);
    }
}
