package dev.underprop.wire.record;

import dev.underprop.api.model.Problem;
import dev.underprop.api.model.ProblemError;
import dev.underprop.wire.fault.Fault;
import java.util.List;

/**
 * A kind of problem of the contract, as its documents name it; here those that a plan can have.
 *
 * @param status the HTTP status
 * @param path the last part of the type, the name of its page
 * @param title the same few words for every problem of the kind
 */
public record ProblemForm(int status, String path, String title) {
    /** The text cannot be read. */
    public static final ProblemForm UNREADABLE = new ProblemForm(400, "unreadable", "The body cannot be read");

    /** The text can be read, but is no plan that makes sense. */
    public static final ProblemForm FAULTY = new ProblemForm(422, "faulty", "The request is readable but faulty");

    /** A defect of the program. */
    public static final ProblemForm INTERNAL_ERROR = new ProblemForm(500, "internal-error", "The service has failed");

    /** A problem with the faults that cause it; there are none where no part of the text does. */
    public Problem problem(String detail, List<Fault> faults) {
        return new Problem()
                .type("/problems/" + path)
                .title(title)
                .status(status)
                .detail(detail)
                .errors(faults.stream().map(ProblemForm::error).toList());
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
