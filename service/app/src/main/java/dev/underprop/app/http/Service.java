package dev.underprop.app.http;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.router.EndpointNotFound;
import io.javalin.router.InternalRouter;
import io.javalin.util.JavalinException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The running service. */
public final class Service implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Service.class);

    private final Trial trial;
    private final Readiness readiness = new Readiness();
    private final WebPages web = new WebPages();
    private final Meters meters = new Meters();
    private final Access access;
    private final Duration drainTime;
    private final Duration stopTime;
    private final Workbench workbench;
    private final Plans plans;
    private final PlanLines lines;
    private final Pages pages;
    private final Javalin javalin;

    private Service(Trial trial, Settings settings, Consumer<RoutesConfig> more) {
        this.trial = trial;
        Bounds bounds = settings.bounds();
        drainTime = bounds.drainTime();
        stopTime = bounds.stopTime();
        access = new Access(settings.entrance().tokens().map(Service::tokens));
        workbench = new Workbench(bounds.places(), bounds.waiting(), bounds.analysisTime(), meters);
        meters.watch(workbench, bounds);
        plans = new Plans(trial, new Body(bounds.bodyBytes(), bounds.bodyTime()), workbench, readiness, meters);
        lines = new PlanLines(trial, workbench, readiness, meters, bounds.places());
        pages = new Pages(readiness, web, meters);
        javalin = Javalin.create(config -> {
            configure(config, settings);
            more.accept(config.routes);
        });
    }

    /**
     * Starts the service; when it returns, plans are answered.
     *
     * @throws IllegalStateException when the trial plan cannot be judged
     */
    public static Service start(Settings settings) {
        return start(Trial.begin(), settings);
    }

    /** The same with a trial that has begun. */
    public static Service start(Trial trial, Settings settings) {
        return start(trial, settings, routes -> {});
    }

    /** The same with further routes. */
    static Service start(Settings settings, Consumer<RoutesConfig> more) {
        return start(Trial.begin(), settings, more);
    }

    private static Service start(Trial trial, Settings settings, Consumer<RoutesConfig> more) {
        trial.awaitLog();
        Service service = new Service(trial, settings, more);
        service.javalin.start();
        service.awaitTrial();
        service.readiness.ready();
        return service;
    }

    /** The port that it listens on. */
    public int port() {
        return javalin.port();
    }

    /** Says that it leaves, takes in no new plans, finishes what has begun within the time set for it, and stops. */
    @Override
    public void close() {
        drain();
        readiness.stopping();
        // Whoever waits for a plan that would not be done in time is told, and not cut off.
        CompletableFuture.delayedExecutor(stopTime.toMillis() * 3 / 4, TimeUnit.MILLISECONDS)
                .execute(workbench::close);
        try {
            javalin.stop();
        } catch (JavalinException e) {
            LOG.warn("Stopped before everything that had begun was finished", e);
        }
        workbench.close();
        meters.close();
    }

    private void drain() {
        if (readiness.leaving() && !drainTime.isZero()) {
            try {
                Thread.sleep(drainTime.toMillis());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private static Tokens tokens(Path file) {
        try {
            return new Tokens(file);
        } catch (IOException e) {
            throw new UncheckedIOException("the file of tokens cannot be used: " + e.getMessage(), e);
        }
    }

    InternalRouter router() {
        return javalin.unsafe.internalRouter;
    }

    /** Requests that have begun and not ended. */
    long requests() {
        return javalin.jettyServer()
                .server()
                .getDescendant(GracefulHandler.class)
                .getCurrentRequestCount();
    }

    private void configure(JavalinConfig config, Settings settings) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.compressionStrategy = CompressionStrategy.NONE;
        config.http.prefer405over404 = false;
        config.router.ignoreTrailingSlashes = false;
        JettySettings.apply(config.jetty, settings, new RequestLines(meters));
        config.router.javaLangErrorHandler(Failures::answer);
        Routes.add(config.routes, access, new Routes.Doors(plans, lines, pages, web, new CataloguePages()));
        config.routes.exception(
                Refused.class, (refused, context) -> Replies.problem(context, refused.problem(), refused.headers()));
        config.routes.exception(EndpointNotFound.class, (missing, context) -> unrouted(context));
        config.routes.exception(Exception.class, (failure, context) -> Failures.answer(context, failure));
        config.routes.exception(HttpResponseException.class, (failure, context) -> Failures.answer(context, failure));
    }

    private void unrouted(Context context) {
        try {
            Allowed.answer(context, router());
        } catch (Refused refused) {
            Replies.problem(context, refused.problem(), refused.headers());
        }
    }

    private void awaitTrial() {
        try {
            trial.get();
        } catch (IllegalStateException e) {
            close();
            throw e;
        }
    }
}
