package dev.underprop.bench;

import dev.underprop.api.model.JobPlan;
import dev.underprop.wire.catalogue.Catalogue;
import dev.underprop.wire.meaning.ModelReader;
import dev.underprop.wire.meaning.PlanReader;
import dev.underprop.wire.meaning.PlanReading;
import dev.underprop.wire.tree.Format;
import dev.underprop.wire.tree.Limits;
import dev.underprop.wire.tree.TreeReader;
import dev.underprop.wire.tree.TreeReading;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Plans that are measured: a demo of the service, and long floors made here. */
final class DemoPlans {

    private DemoPlans() {}

    /** Bytes of a demo plan on the class path. */
    static byte[] demo(String name) {
        try (InputStream in = DemoPlans.class.getResourceAsStream("/demo/" + name)) {
            if (in == null) {
                throw new IllegalArgumentException("no demo plan named " + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The engine's form of a plan. */
    static dev.underprop.engine.plan.JobPlan engine(byte[] yaml) {
        TreeReading tree = new TreeReader(Limits.USUAL).read(yaml, Format.YAML);
        if (!(tree instanceof TreeReading.Tree read)) {
            throw new IllegalStateException("not readable: " + tree);
        }
        JobPlan model = new ModelReader().bind(read.root());
        PlanReading reading = new PlanReader(Catalogue.standard()).read(model);
        if (reading instanceof PlanReading.Understood understood) {
            return understood.plan();
        }
        throw new IllegalStateException("not understood: " + reading);
    }

    /**
     * A long floor: joists 16 in apart and 15 ft long over a sill, a girder and some shores, every post under a joist.
     *
     * @param joists number of joists
     * @param shores number of shores
     * @param posts posts of each shore
     */
    static dev.underprop.engine.plan.JobPlan floor(int joists, int shores, int posts) {
        double run = (joists - 1) * 16.0;
        StringBuilder yaml = new StringBuilder();
        yaml.append(
                        "basis: us-asd\nfloor:\n  joists: { size: 2x10, species: hem-fir, grade: No.2, moisture: dry, count: ")
                .append(joists)
                .append(", spacing: 16 in, start: 0 ft, length: 15 ft }\n  bearings:\n")
                .append("    - { name: sill, at: 1.75 in, length: 3.5 in, kind: rigid }\n")
                .append("    - { name: girder, at: 14 ft 6 in, length: 3.5 in, kind: rigid,")
                .append(" fastened: { uplift: 300 lb, by: ties } }\n  loads:\n")
                .append("    - { name: floor, kind: area, dead: 12 psf, live: 40 psf }\n")
                .append("    - { name: wall, kind: line, along: x, at: 1.75 in, dead: 310 plf, snow: 180 plf,")
                .append(" snowLevel: allowable }\nshores:\n");
        for (int s = 0; s < shores; s++) {
            yaml.append("  - name: S")
                    .append(s)
                    .append("\n    at: ")
                    .append(42 + 60 * s)
                    .append(" in\n");
            yaml.append("    beam: { size: 2x10, plies: 3, species: hem-fir, grade: No.2, moisture: dry, start: -6 in,")
                    .append(" length: ")
                    .append(run + 12)
                    .append(" in }\n    posts:\n");
            for (int p = 0; p < posts; p++) {
                yaml.append("      - { name: S").append(s).append('P').append(p).append(", at: ");
                yaml.append(16 * Math.rint(run * p / (posts - 1) / 16))
                        .append(" in, height: 6 ft, stiffness: 100 kip/in }\n");
            }
        }
        yaml.append("situations:\n  - { name: shored }\n  - { name: sill out, removed: [sill] }\n");
        return engine(yaml.toString().getBytes(StandardCharsets.UTF_8));
    }
}
