package dev.underprop.wire.shape;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.api.model.JobPlan;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.tree.Format;
import dev.underprop.wire.tree.Limits;
import dev.underprop.wire.tree.Locator;
import dev.underprop.wire.tree.TreeReader;
import dev.underprop.wire.tree.TreeReading;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The generated model of a job plan and the plans that the contract shows. */
class JobPlanShapeTest {
    private static final Path CONTRACT = Path.of("../../api/src/main/openapi/openapi.yaml");
    private static final ShapeCheck CHECK = new ShapeCheck(new ObjectMapper(), JobPlan.class, 50);

    /** The plan of an example, cut out of the contract as text. */
    private static String plan(String example) throws IOException {
        List<String> lines = Files.readAllLines(CONTRACT);
        String indent = " ".repeat(8);
        return lines.subList(lines.indexOf("    " + example + ":"), lines.size()).stream()
                .dropWhile(line -> !line.equals("      value:"))
                .skip(1)
                .takeWhile(line -> line.startsWith(indent))
                .map(line -> line.substring(indent.length()) + "\n")
                .collect(Collectors.joining());
    }

    private static List<Fault> faults(String yaml) {
        byte[] bytes = yaml.getBytes(StandardCharsets.UTF_8);
        TreeReading reading = new TreeReader(Limits.USUAL).read(bytes, Format.YAML);
        assertThat(reading).isInstanceOf(TreeReading.Tree.class);
        JsonNode root = ((TreeReading.Tree) reading).root();
        assertThat(root.size()).isGreaterThan(3);
        return Locator.locate(CHECK.check(root), bytes, Format.YAML);
    }

    @ParameterizedTest
    @ValueSource(strings = {"planCarriageHouse", "planTwoBays", "planSillOut", "planBroken"})
    void theShownPlansHaveTheShapeOfTheModel(String example) throws IOException {
        assertThat(faults(plan(example))).isEmpty();
    }

    @Test
    void faultsInAPlanArePointedAt() throws IOException {
        String wrong = plan("planCarriageHouse")
                .replace("count: 8", "count: 8.5")
                .replace("spacing: 24 in", "spaceing: 24 in")
                .replace("start: -6 in", "start: -6");
        assertThat(faults(wrong))
                .extracting(fault -> fault.code() + " " + fault.pointer() + " " + fault.line() + ":" + fault.column())
                .containsExactly(
                        "not-an-integer /floor/joists/count 5:63",
                        "unknown-member /floor/joists/spaceing 5:68",
                        "wrong-kind /shores/0/beam/start 15:73");
    }
}
