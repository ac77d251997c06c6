package dev.underprop.app.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Handler;

/** Which address asks what: the operations of the contract, and nothing else. */
final class Routes {
    private Routes() {}

    static void add(
            RoutesConfig routes, Plans plans, PlanLines lines, Pages pages, WebPages web, CataloguePages catalogue) {
        routes.post("/v1/layout-analyses", plans::analyse);
        routes.post("/v1/plan-checks", plans::check);
        routes.post("/v1/plan-check-batches", lines::check);
        routes.post("/v1/pad-sizings", plans::sizePads);
        routes.post("/v1/lift-plans", plans::lift);
        get(routes, "/v1/checks", pages::checks);
        get(routes, "/v1/checks/{id}", pages::check);
        get(routes, "/v1/catalogue", catalogue::index);
        get(routes, "/v1/catalogue/{part}", catalogue::part);
        get(routes, "/problems/{name}", pages::problem);
        get(routes, "/openapi.yaml", pages::contract);
        get(routes, "/health/live", pages::live);
        get(routes, "/health/ready", pages::ready);
        get(routes, "/", pages::front);
        get(routes, "/docs", web::docs);
        get(routes, "/pages/{file}", web::file);
    }

    /** HEAD goes the way of GET, so that it gets the same headers; the server leaves the body out. */
    private static void get(RoutesConfig routes, String path, Handler handler) {
        routes.get(path, handler);
        routes.head(path, handler);
    }
}
