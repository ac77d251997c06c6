package dev.underprop.app.http;

import dev.underprop.api.model.Problem;
import dev.underprop.app.report.ProblemKind;
import dev.underprop.wire.door.Documents;
import java.nio.ByteBuffer;
import java.util.List;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** What Jetty says by itself, before or beside the routes, as problem documents: an address it cannot read, a header too long. */
final class ErrorPages extends ErrorHandler {

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        Object failure = request.getAttribute(ERROR_EXCEPTION);
        int status = failure instanceof HttpException wrong ? wrong.getCode() : response.getStatus();
        Problem problem = status == HttpStatus.INTERNAL_SERVER_ERROR_500 && failure instanceof Throwable thrown
                ? Failures.logged(thrown, RequestId.of(request))
                : problem(status);
        response.setStatus(problem.getStatus());
        fields(response.getHeaders());
        response.getHeaders().put(RequestId.HEADER, RequestId.of(request));
        byte[] bytes = Documents.json(problem, false);
        response.getHeaders().put(HttpHeader.CONTENT_LENGTH, bytes.length);
        response.write(true, ByteBuffer.wrap(bytes), callback);
        return true;
    }

    private static void fields(HttpFields.Mutable fields) {
        Replies.SAFETY.forEach((name, value) -> fields.put(new HttpField(name, value)));
        fields.put(HttpHeader.CONTENT_TYPE, Replies.PROBLEM);
    }

    private static Problem problem(int status) {
        return switch (status) {
            case HttpStatus.BAD_REQUEST_400 ->
                ProblemKind.UNREADABLE.problem(
                        "The request is not well-formed HTTP: its address or one of its headers cannot be read.");
            case HttpStatus.NOT_FOUND_404 -> ProblemKind.NOT_FOUND.problem("There is nothing at this address.");
            case HttpStatus.SERVICE_UNAVAILABLE_503 ->
                ProblemKind.UNAVAILABLE.problem("The service is starting or stopping.");
            default -> bare(status);
        };
    }

    /** Statuses that the contract has no kind for mean what HTTP says they mean (RFC 9457, section 4.2.1). */
    private static Problem bare(int status) {
        return new Problem()
                .type("about:blank")
                .title(HttpStatus.getMessage(status))
                .status(status)
                .errors(List.of());
    }
}
