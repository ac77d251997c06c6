package dev.underprop.app.http;

import io.javalin.config.JettyConfig;
import org.eclipse.jetty.http.UriCompliance;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** How the HTTP server underneath is set: bounded, silent about itself, and never with a page of its own. */
final class JettySettings {
    private static final int FEWEST_THREADS = 8;
    private static final int IDLE_MILLIS = 30_000;

    private JettySettings() {}

    static void apply(JettyConfig jetty, Settings settings) {
        jetty.addConnector((server, http) -> connector(server, http, settings));
        jetty.threadPool = threads(settings);
        jetty.modifyHttpConfiguration(JettySettings::http);
        jetty.modifyServer(server -> server(server, settings));
        jetty.modifyServletContextHandler(context -> context.setErrorHandler(new ErrorPages()));
    }

    private static QueuedThreadPool threads(Settings settings) {
        QueuedThreadPool threads = new QueuedThreadPool(settings.requestThreads(), FEWEST_THREADS, IDLE_MILLIS);
        threads.setName("http");
        return threads;
    }

    private static ServerConnector connector(Server server, HttpConfiguration http, Settings settings) {
        ServerConnector connector = new ServerConnector(server, new HttpConnectionFactory(http));
        connector.setHost(settings.host());
        connector.setPort(settings.port());
        connector.setIdleTimeout(IDLE_MILLIS);
        connector.setShutdownIdleTimeout(pauseWhileStopping(settings));
        return connector;
    }

    /** How long a connection may be silent while stopping (ms): idle ones must be gone well before the time is up. */
    private static long pauseWhileStopping(Settings settings) {
        return settings.stopTime().toMillis() / 5;
    }

    private static void http(HttpConfiguration http) {
        http.setSendServerVersion(false);
        http.setSendDateHeader(false);
        http.setIdleTimeout(IDLE_MILLIS);
        http.setUriCompliance(UriCompliance.DEFAULT);
        http.addCustomizer((request, headers) -> {
            Replies.SAFETY.forEach(headers::put);
            headers.put(RequestId.HEADER, RequestId.name(request));
            return request;
        });
    }

    private static void server(Server server, Settings settings) {
        server.setErrorHandler(new ErrorPages());
        server.setStopTimeout(settings.stopTime().toMillis());
        server.setStopAtShutdown(false);
        GracefulHandler handler = new GracefulHandler();
        handler.setShutdownIdleTimeout(pauseWhileStopping(settings));
        server.setHandler(handler);
    }
}
