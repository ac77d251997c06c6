package dev.underprop.app.report;

import dev.underprop.api.model.Problem;
import dev.underprop.api.model.ProblemError;
import dev.underprop.wire.fault.Fault;
import java.util.List;

/** The kinds of problem of the contract: status, the last part of the type, and title. */
public enum ProblemKind {
    UNREADABLE(400, "unreadable", "The body cannot be read"),
    UNAUTHORIZED(401, "unauthorized", "A token is needed"),
    NOT_FOUND(404, "not-found", "There is no such resource"),
    METHOD_NOT_ALLOWED(405, "method-not-allowed", "The resource does not answer to this method"),
    NOT_ACCEPTABLE(406, "not-acceptable", "No acceptable media type can be produced"),
    TOO_LARGE(413, "too-large", "The body is too large"),
    UNSUPPORTED_MEDIA_TYPE(415, "unsupported-media-type", "The media type of the body is not read here"),
    FAULTY(422, "faulty", "The request is readable but faulty"),
    TOO_COSTLY(422, "too-costly", "The answer would cost too much"),
    INTERNAL_ERROR(500, "internal-error", "The service has failed"),
    UNAVAILABLE(503, "unavailable", "The service cannot answer now");

    private final int status;
    private final String path;
    private final String title;

    ProblemKind(int status, String path, String title) {
        this.status = status;
        this.path = path;
        this.title = title;
    }

    /** The HTTP status. */
    public int status() {
        return status;
    }

    /** The last part of the type, the name of its page. */
    public String path() {
        return path;
    }

    /** The same few words for every problem of the kind. */
    public String title() {
        return title;
    }

    /** A problem that no part of the request's content causes. */
    public Problem problem(String detail) {
        return problem(detail, List.of());
    }

    /** A problem with the faults that cause it. */
    public Problem problem(String detail, List<Fault> faults) {
        return new Problem()
                .type("/problems/" + path)
                .title(title)
                .status(status)
                .detail(detail)
                .errors(faults.stream().map(ProblemKind::error).toList());
    }

    /** A problem with the faults of a subject such as {@code plan}, counted in its detail. */
    public Problem problemOf(String subject, List<Fault> faults) {
        String count = faults.size() == 1 ? "1 fault" : faults.size() + " faults";
        return problem("The " + subject + " has " + count + ".", faults);
    }

    private static ProblemError error(Fault fault) {
        ProblemError error =
                new ProblemError().pointer(fault.pointer()).code(fault.code()).detail(fault.detail());
        if (!fault.got().isEmpty()) {
            error.got(fault.got());
        }
        if (!fault.limit().isEmpty()) {
            error.limit(fault.limit());
        }
        if (!fault.remedy().isEmpty()) {
            error.remedy(fault.remedy());
        }
        if (fault.placed()) {
            error.line(fault.line()).column(fault.column());
        }
        return error;
    }
}
