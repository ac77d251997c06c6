package dev.underprop.wire.tree;

import dev.underprop.wire.fault.Fault;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** What the YAML parser complains of, on one line and without its advice to programmers. */
final class YamlComplaint {
    private YamlComplaint() {}

    static String of(MarkedYAMLException complaint) {
        String problem = complaint.getProblem() == null ? "unexpected text" : complaint.getProblem();
        if (problem.contains("\\t")) {
            return "a tab stands where YAML wants blanks";
        }
        String plain = problem.replaceAll("\\(Do not use.*\\)|[<>]", "")
                .replaceAll("\\s+", " ")
                .trim();
        String context = complaint.getContext() == null ? "" : Fault.shown(complaint.getContext()) + ", ";
        return context + Fault.shown(plain);
    }
}
