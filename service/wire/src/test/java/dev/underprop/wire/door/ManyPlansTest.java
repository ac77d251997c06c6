package dev.underprop.wire.door;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.wire.tree.Format;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/**
 * Very many plans by chance: each is answered with finite numbers or called unstable, and the answers are the same to the last byte
 * whichever thread gives them, and whichever JDK (the digest is written where .ci/run compares it). {@code -Dunderprop.plans=N} judges
 * more, {@code -Dunderprop.plans.seed=N} others.
 */
class ManyPlansTest {
    private static final int PLANS = Integer.getInteger("underprop.plans", 400);
    private static final long SEED = Long.getLong("underprop.plans.seed", 1);
    private static final int AT_ONCE = 100;
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final PlanDoor DOOR = new PlanDoor();

    @Test
    void everyPlanIsFiniteOrUnstableWhateverTheThread() throws IOException, InterruptedException, ExecutionException {
        List<Told> one = told(1, Math.min(PLANS, 2000));
        List<Told> eight = told(8, PLANS);

        assertThat(eight.stream().map(Told::defect).filter(defect -> !defect.isEmpty()))
                .isEmpty();
        assertThat(eight.subList(0, one.size())).as("one thread and eight").isEqualTo(one);
        Map<String, Integer> verdicts = new TreeMap<>();
        eight.forEach(told -> verdicts.merge(told.verdict(), 1, Integer::sum));
        String digest = HexFormat.of().formatHex(digest(eight));
        String line = "%d plans by chance, seed %d: %s, digest %s%n".formatted(PLANS, SEED, verdicts, digest);
        Files.writeString(Path.of("target", "many-plans.txt"), line);
        System.out.print(line);
        assertThat(verdicts.getOrDefault("refused", 0)).isLessThan(PLANS / 4);
        assertThat(verdicts).containsKeys("UNSTABLE", "INADEQUATE");
    }

    /** What became of a plan: its verdict, the digest of its answer, and what should not have happened. */
    private record Told(String verdict, String digest, String defect) {}

    private static List<Told> told(int threads, int plans) throws InterruptedException, ExecutionException {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<List<Told>>> parts = new ArrayList<>();
            for (int from = 0; from < plans; from += AT_ONCE) {
                int first = from;
                parts.add(pool.submit(() -> part(first, Math.min(first + AT_ONCE, plans))));
            }
            List<Told> all = new ArrayList<>();
            for (Future<List<Told>> part : parts) {
                all.addAll(part.get());
            }
            return all;
        } finally {
            pool.shutdownNow();
        }
    }

    private static List<Told> part(int from, int to) {
        List<Told> told = new ArrayList<>();
        for (int i = from; i < to; i++) {
            told.add(told(i));
        }
        return told;
    }

    private static Told told(int number) {
        JsonNode plan = ChancePlan.of(new Random(SEED * 1_000_003 + number));
        try {
            return answered(JSON.writeValueAsBytes(plan));
        } catch (IOException | RuntimeException | StackOverflowError e) {
            return new Told("broken", "", "plan " + number + ": " + e + " at " + e.getStackTrace()[0] + "\n" + plan);
        }
    }

    /** Numbers that are not finite cannot be written, so that an answer that was written has none. */
    private static Told answered(byte[] text) {
        Answer<PlanCheck> answer = DOOR.check(text, Format.JSON, AnswerOptions.USUAL);
        if (answer instanceof Answer.Judged<PlanCheck> judged) {
            byte[] written = Documents.json(judged.model(), false);
            boolean finite = !new String(written, StandardCharsets.UTF_8).matches("(?s).*[:\\[,](NaN|-?Infinity).*");
            return new Told(
                    judged.model().getVerdict().getValue(),
                    HexFormat.of().formatHex(sha256().digest(written)),
                    finite ? "" : "not finite: " + new String(text, StandardCharsets.UTF_8));
        }
        assertThat(answer).isInstanceOf(Answer.Faulty.class);
        return new Told("refused", "", "");
    }

    private static byte[] digest(Collection<Told> all) {
        MessageDigest digest = sha256();
        all.forEach(told -> digest.update((told.verdict() + told.digest()).getBytes(StandardCharsets.UTF_8)));
        return digest.digest();
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
