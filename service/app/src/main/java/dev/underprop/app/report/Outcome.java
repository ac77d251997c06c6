package dev.underprop.app.report;

import dev.underprop.api.model.PadSizing;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.api.model.Problem;
import dev.underprop.wire.fault.Fault;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What became of one file. */
public sealed interface Outcome {

    /** The path as given. */
    String path();

    /** The record of a report. */
    Map<String, Object> toRecord();

    /**
     * The plan was judged, whatever the verdict.
     *
     * @param path the path as given
     * @param result the answer
     */
    record Judged(String path, PlanCheck result) implements Outcome {

        /** The id of the plan, or its path when it has none. */
        public String key() {
            String id = result.getId();
            return id == null ? path : id;
        }

        /** True when nothing fails and everything required was checked. */
        public boolean adequate() {
            return result.getVerdict() == PlanVerdict.ADEQUATE;
        }

        @Override
        public Map<String, Object> toRecord() {
            return fields(path, key(), "result", result);
        }
    }

    /**
     * There is no verdict.
     *
     * @param path the path as given
     * @param problem why
     */
    record Refused(String path, Problem problem) implements Outcome {
        @Override
        public Map<String, Object> toRecord() {
            return fields(path, path, "problem", problem);
        }
    }

    /**
     * Pads were looked for, whatever was found.
     *
     * @param path the path as given
     * @param result the answer
     */
    record Sized(String path, PadSizing result) implements Outcome {
        @Override
        public Map<String, Object> toRecord() {
            return fields(path, path, "result", result);
        }
    }

    /** Refused for the faults of a subject such as {@code plan}. */
    static Outcome refused(String path, ProblemKind kind, String subject, List<Fault> faults) {
        return new Refused(path, kind.problemOf(subject, faults));
    }

    private static Map<String, Object> fields(String path, String key, String name, Object value) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("path", path);
        fields.put("id", key);
        fields.put(name, value);
        return fields;
    }
}
