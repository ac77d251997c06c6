package dev.underprop.app.http;

import dev.underprop.api.model.Problem;
import dev.underprop.app.report.ProblemKind;
import dev.underprop.wire.fault.Fault;
import java.util.List;
import java.util.Map;

/** A request that is answered with a problem document. */
final class Refused extends RuntimeException {
    private final transient Problem problem;
    private final transient Map<String, String> headers;

    private Refused(Problem problem, Map<String, String> headers) {
        super(problem.getDetail(), null, false, false);
        this.problem = problem;
        this.headers = Map.copyOf(headers);
    }

    static Refused because(ProblemKind kind, String detail) {
        return new Refused(kind.problem(detail), Map.of());
    }

    static Refused because(ProblemKind kind, String detail, Map<String, String> headers) {
        return new Refused(kind.problem(detail), headers);
    }

    /** Refused for faults of a subject such as {@code plan}. */
    static Refused because(ProblemKind kind, String subject, List<Fault> faults) {
        return new Refused(kind.problemOf(subject, faults), Map.of());
    }

    Problem problem() {
        return problem;
    }

    Map<String, String> headers() {
        return headers;
    }
}
