package dev.underprop.app.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.app.Demos;
import dev.underprop.engine.check.CheckId;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * The two plans that show a check at work: one it is content with, one it is not.
 *
 * @param check which check
 * @param because why it never passes or never fails; empty where it does both
 * @param good the plan it is content with
 * @param bad the plan it is not content with
 */
public record CheckCases(CheckId check, String because, Case good, Case bad) {

    /**
     * One plan.
     *
     * @param verdict the verdict that the check is to have there
     * @param plan a demo with some of its words changed
     */
    public record Case(String verdict, String plan) {}

    /** Whether there are plans for the check: a file of its name among the test resources. */
    static boolean given(CheckId id) {
        return CheckCases.class.getResource(path(id)) != null;
    }

    private static String path(CheckId id) {
        return "/checks/" + id.id() + ".yaml";
    }

    static CheckCases of(CheckId id) {
        try (InputStream file = CheckCases.class.getResourceAsStream(path(id))) {
            if (file == null) {
                throw new AssertionError("no plans show " + id.id() + " at work: write test resource " + path(id));
            }
            Object tree = new Yaml(new SafeConstructor(new LoaderOptions())).load(file);
            JsonNode node = new ObjectMapper().valueToTree(tree);
            return new CheckCases(id, node.path("because").asText(), read(node.get("good")), read(node.get("bad")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Case read(JsonNode node) {
        String plan = Demos.text(node.get("demo").asText());
        for (JsonNode change : node.path("change")) {
            String from = change.get("from").asText();
            if (!plan.contains(from)) {
                throw new AssertionError(node.get("demo").asText() + " does not say: " + from);
            }
            plan = plan.replace(from, change.get("to").asText());
        }
        return new Case(node.get("verdict").asText(), plan);
    }

    List<String> verdicts() {
        return List.of(good.verdict(), bad.verdict());
    }

    /** The plans of every check that has some. */
    public static List<String> plans() {
        List<String> plans = new ArrayList<>();
        for (CheckId id : CheckId.values()) {
            if (given(id)) {
                CheckCases cases = of(id);
                plans.add(cases.good().plan());
                plans.add(cases.bad().plan());
            }
        }
        return plans.stream().distinct().toList();
    }
}
