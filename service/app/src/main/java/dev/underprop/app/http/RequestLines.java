package dev.underprop.app.http;

import java.util.Set;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.RequestLog;
import org.eclipse.jetty.server.Response;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Tells of every request when it is answered, whether it came to a route or not: a line in the log, a count in the metrics. Neither
 * holds anything that was sent but a request id that can be written anywhere: no address, no header, no plan.
 */
final class RequestLines implements RequestLog {
    private static final Logger LOG = LoggerFactory.getLogger("requests");
    private static final Set<String> METHODS =
            Set.of("GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS", "TRACE");
    private static final double NANOS_A_MILLI = 1e6;

    private final Meters meters;

    RequestLines(Meters meters) {
        this.meters = meters;
    }

    @Override
    public void log(Request request, Response response) {
        Visit visit = Visit.of(request);
        long nanos = System.nanoTime() - request.getHeadersNanoTime();
        String method = METHODS.contains(request.getMethod()) ? request.getMethod() : "other";
        int status = response.getStatus();
        meters.answered(visit.route(), method, status, nanos);
        meters.stages(visit.timing());
        LOG.atInfo()
                .addKeyValue("request", RequestId.of(request))
                .addKeyValue("method", method)
                .addKeyValue("route", visit.route())
                .addKeyValue("status", status)
                .addKeyValue("ms", Math.round(nanos / NANOS_A_MILLI * 10) / 10.0)
                .addKeyValue("bytes", Response.getContentBytesWritten(response))
                .addKeyValue("who", visit.who())
                .log("answered");
    }
}
