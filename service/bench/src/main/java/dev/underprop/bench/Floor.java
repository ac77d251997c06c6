package dev.underprop.bench;

import com.fasterxml.jackson.databind.JsonNode;
import dev.underprop.api.model.JobPlan;
import dev.underprop.api.model.PlanCheckRecord;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.lines.LineReader;
import dev.underprop.wire.meaning.ModelReader;
import dev.underprop.wire.shape.ShapeCheck;
import dev.underprop.wire.tree.Format;
import dev.underprop.wire.tree.Limits;
import dev.underprop.wire.tree.TreeReader;
import dev.underprop.wire.tree.TreeReading;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** What is left of a run without the engine: lines read, parsed and validated, and an empty record written for each. */
final class Floor {
    private static final int WINDOW = 64;

    private final TreeReader trees = new TreeReader(Limits.USUAL);
    private final ModelReader models = new ModelReader();
    private final ShapeCheck shapes = new ShapeCheck(models.mapper(), JobPlan.class, Limits.USUAL.faults());

    void run(Path lines, int workers) throws IOException, InterruptedException {
        ExecutorService threads = Executors.newFixedThreadPool(workers);
        Deque<Future<byte[]>> begun = new ArrayDeque<>();
        try (LineReader reader = new LineReader(Files.newInputStream(lines));
                OutputStream out =
                        new BufferedOutputStream(Files.newOutputStream(lines.resolveSibling("floor.ndjson")))) {
            for (Optional<byte[]> line = reader.next(); line.isPresent(); line = reader.next()) {
                byte[] text = line.get();
                begun.add(threads.submit(() -> record(text)));
                if (begun.size() >= WINDOW) {
                    out.write(begun.remove().get());
                }
            }
            while (!begun.isEmpty()) {
                out.write(begun.remove().get());
            }
        } catch (ExecutionException e) {
            throw new IllegalStateException(e);
        } finally {
            threads.shutdownNow();
        }
    }

    private byte[] record(byte[] text) {
        String id = "";
        if (trees.read(text, Format.JSON) instanceof TreeReading.Tree read) {
            JsonNode tree = read.root();
            if (shapes.check(tree).isEmpty() && models.faults(models.bind(tree)).isEmpty()) {
                id = tree.path("id").asText();
            }
        }
        return Documents.json(new PlanCheckRecord().id(id), false);
    }
}
