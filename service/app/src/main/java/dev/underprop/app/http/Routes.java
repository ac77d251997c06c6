package dev.underprop.app.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Handler;

/** Which address asks what: the operations of the contract, and nothing else. */
final class Routes {
    private Routes() {}

    /** What the routes lead to. */
    record Doors(Plans plans, PlanLines lines, Pages pages, WebPages web, CataloguePages catalogue) {}

    /** Adds them all. What answers plans, and tells of how it goes, is for those who may; the rest is for everybody. */
    static void add(RoutesConfig routes, Access access, Doors doors) {
        post(routes, access, "/v1/layout-analyses", doors.plans()::analyse);
        post(routes, access, "/v1/plan-checks", doors.plans()::check);
        post(routes, access, "/v1/plan-check-batches", doors.lines()::check);
        post(routes, access, "/v1/pad-sizings", doors.plans()::sizePads);
        post(routes, access, "/v1/lift-plans", doors.plans()::lift);
        guarded(routes, access, "/v1/checks", doors.pages()::checks);
        guarded(routes, access, "/v1/checks/{id}", doors.pages()::check);
        guarded(routes, access, "/v1/catalogue", doors.catalogue()::index);
        guarded(routes, access, "/v1/catalogue/{part}", doors.catalogue()::part);
        guarded(routes, access, "/metrics", doors.pages()::metrics);
        open(routes, "/problems/{name}", doors.pages()::problem);
        open(routes, "/openapi.yaml", doors.pages()::contract);
        open(routes, "/health/live", doors.pages()::live);
        open(routes, "/health/ready", doors.pages()::ready);
        open(routes, "/", doors.pages()::front);
        open(routes, "/docs", doors.web()::docs);
        open(routes, "/pages/{file}", doors.web()::file);
    }

    private static void post(RoutesConfig routes, Access access, String path, Handler handler) {
        routes.post(path, noted(path, access.guarded(handler)));
    }

    private static void guarded(RoutesConfig routes, Access access, String path, Handler handler) {
        open(routes, path, access.guarded(handler));
    }

    /** HEAD goes the way of GET, so that it gets the same headers; the server leaves the body out. */
    private static void open(RoutesConfig routes, String path, Handler handler) {
        routes.get(path, noted(path, handler));
        routes.head(path, noted(path, handler));
    }

    private static Handler noted(String path, Handler handler) {
        return context -> {
            Visit.of(context).route(path);
            handler.handle(context);
        };
    }
}
