package dev.underprop.wire.meaning;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.api.model.JobPlan;
import dev.underprop.wire.catalogue.Catalogue;
import dev.underprop.wire.shape.ShapeCheck;
import dev.underprop.wire.tree.Format;
import dev.underprop.wire.tree.Limits;
import dev.underprop.wire.tree.TreeReader;
import dev.underprop.wire.tree.TreeReading;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Plans of the tests, read up to the engine's records. */
final class Reading {

    private static final ModelReader MODELS = new ModelReader();
    private static final ShapeCheck SHAPES = new ShapeCheck(MODELS.mapper(), JobPlan.class, 100);

    private Reading() {}

    static String text(String name) {
        try (InputStream in = Reading.class.getResourceAsStream("/plans/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }

    static PlanReading.Understood file(String name) {
        return understood(text(name), name.endsWith(".json") ? Format.JSON : Format.YAML);
    }

    static PlanReading.Understood understood(String text, Format format) {
        TreeReading reading = new TreeReader(Limits.USUAL).read(text.getBytes(StandardCharsets.UTF_8), format);
        assertThat(reading).isInstanceOf(TreeReading.Tree.class);
        TreeReading.Tree tree = (TreeReading.Tree) reading;
        assertThat(SHAPES.check(tree.root())).isEmpty();
        JobPlan model = MODELS.bind(tree.root());
        assertThat(MODELS.faults(model)).isEmpty();
        PlanReading plan = new PlanReader(Catalogue.standard()).read(model);
        assertThat(plan).isInstanceOf(PlanReading.Understood.class);
        return (PlanReading.Understood) plan;
    }
}
