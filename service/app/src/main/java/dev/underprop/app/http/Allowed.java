package dev.underprop.app.http;

import dev.underprop.app.report.ProblemKind;
import dev.underprop.wire.fault.Fault;
import io.javalin.http.Context;
import io.javalin.router.InternalRouter;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Answers requests that no route takes: by the methods that the resource does answer to, or by saying that there is none. */
final class Allowed {
    private static final String OPTIONS = "OPTIONS";

    private Allowed() {}

    static void answer(Context context, InternalRouter router) {
        List<String> methods = methods(context.path(), router);
        String method = context.req().getMethod();
        if (methods.isEmpty()) {
            throw Refused.because(ProblemKind.NOT_FOUND, "There is nothing at " + Fault.shown(context.path()) + ".");
        }
        String allow = String.join(", ", methods);
        if (method.equals(OPTIONS)) {
            context.header("Allow", allow).status(204).result(new byte[0]);
            context.removeHeader("Content-Type");
        } else {
            String answered = String.join(
                    " and ", methods.stream().filter(m -> !m.equals(OPTIONS)).toList());
            throw Refused.because(
                    ProblemKind.METHOD_NOT_ALLOWED,
                    "The resource answers to " + answered + ", not to " + Fault.shown(method) + ".",
                    Map.of("Allow", allow));
        }
    }

    private static List<String> methods(String path, InternalRouter router) {
        TreeSet<String> methods = new TreeSet<>();
        router.allHttpHandlers().stream()
                .filter(entry -> entry.endpoint.method.isHttpMethod() && entry.matches(path))
                .forEach(entry -> methods.add(entry.endpoint.method.name()));
        if (!methods.isEmpty()) {
            methods.add(OPTIONS);
        }
        return List.copyOf(methods);
    }
}
