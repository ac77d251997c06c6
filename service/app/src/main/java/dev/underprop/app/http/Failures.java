package dev.underprop.app.http;

import dev.underprop.api.model.Problem;
import dev.underprop.app.report.ProblemKind;
import dev.underprop.wire.door.Documents;
import io.javalin.http.Context;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Map;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Answers our own defects: an id to report outside, the stack in the log only. */
final class Failures {
    private static final Logger LOG = LoggerFactory.getLogger(Failures.class);

    private Failures() {}

    static void answer(Context context, Throwable failure) {
        Object request = context.req().getAttribute(RequestId.ATTRIBUTE);
        Replies.problem(context, logged(failure, String.valueOf(request)), Map.of());
    }

    /** For what Javalin does not hand to exception handlers: the errors of the virtual machine. */
    static void answer(HttpServletResponse response, Throwable failure) {
        Problem problem = logged(failure, String.valueOf(response.getHeader(RequestId.HEADER)));
        try {
            response.resetBuffer();
            response.setStatus(problem.getStatus());
            response.setContentType(Replies.PROBLEM);
            response.getOutputStream().write(Documents.json(problem, false));
        } catch (IOException | IllegalStateException e) {
            LOG.error("The answer to a failure could not be sent", e);
        }
    }

    /** A problem with an id, under which the failure stands in the log. */
    static Problem logged(Throwable failure, String request) {
        String id = "urn:uuid:" + UUID.randomUUID();
        LOG.error("Failure {} of request {}", id, request, failure);
        return ProblemKind.INTERNAL_ERROR
                .problem("Nothing can be said about the plan. Please report the id of this problem.")
                .instance(id);
    }
}
