package dev.underprop.app.report;

import dev.underprop.api.model.Problem;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.record.ProblemForm;
import java.util.List;

/** The kinds of problem of the contract: status, the last part of the type, and title. */
public enum ProblemKind {
    UNREADABLE(ProblemForm.UNREADABLE),
    UNAUTHORIZED(401, "unauthorized", "A token is needed"),
    NOT_FOUND(404, "not-found", "There is no such resource"),
    METHOD_NOT_ALLOWED(405, "method-not-allowed", "The resource does not answer to this method"),
    NOT_ACCEPTABLE(406, "not-acceptable", "No acceptable media type can be produced"),
    TOO_LARGE(413, "too-large", "The body is too large"),
    UNSUPPORTED_MEDIA_TYPE(415, "unsupported-media-type", "The media type of the body is not read here"),
    FAULTY(ProblemForm.FAULTY),
    TOO_COSTLY(422, "too-costly", "The answer would cost too much"),
    INTERNAL_ERROR(ProblemForm.INTERNAL_ERROR),
    UNAVAILABLE(503, "unavailable", "The service cannot answer now");

    private final ProblemForm form;

    ProblemKind(int status, String path, String title) {
        this(new ProblemForm(status, path, title));
    }

    ProblemKind(ProblemForm form) {
        this.form = form;
    }

    /** The HTTP status. */
    public int status() {
        return form.status();
    }

    /** The last part of the type, the name of its page. */
    public String path() {
        return form.path();
    }

    /** The same few words for every problem of the kind. */
    public String title() {
        return form.title();
    }

    /** A problem that no part of the request's content causes. */
    public Problem problem(String detail) {
        return problem(detail, List.of());
    }

    /** A problem with the faults that cause it. */
    public Problem problem(String detail, List<Fault> faults) {
        return form.problem(detail, faults);
    }

    /** A problem with the faults of a subject such as {@code plan}, counted in its detail. */
    public Problem problemOf(String subject, List<Fault> faults) {
        return form.problemOf(subject, faults);
    }
}
