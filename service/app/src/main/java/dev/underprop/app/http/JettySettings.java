package dev.underprop.app.http;

import io.javalin.config.JettyConfig;
import java.time.Duration;
import java.util.concurrent.LinkedBlockingQueue;
import org.eclipse.jetty.http.UriCompliance;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.RequestLog;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** How the HTTP server underneath is set: bounded, silent about itself, and never with a page of its own. */
final class JettySettings {
    private static final int FEWEST_THREADS = 8;
    private static final Duration THREAD_IDLE = Duration.ofSeconds(30);

    /** How long browsers keep to TLS once they have met it here. */
    private static final Duration A_YEAR = Duration.ofDays(365);

    private JettySettings() {}

    static void apply(JettyConfig jetty, Settings settings, RequestLog lines) {
        jetty.addConnector((server, http) -> connector(server, http, settings, lines));
        jetty.threadPool = threads(settings);
        jetty.modifyHttpConfiguration(http -> http(http, settings));
        jetty.modifyServer(server -> server(server, settings));
        jetty.modifyServletContextHandler(context -> context.setErrorHandler(new ErrorPages()));
    }

    /** With a plain queue: the server's own starts the whole of JMX to be laid out well, a twentieth of a second of a start. */
    private static QueuedThreadPool threads(Settings settings) {
        QueuedThreadPool threads = new QueuedThreadPool(
                settings.bounds().requestThreads(),
                FEWEST_THREADS,
                (int) THREAD_IDLE.toMillis(),
                new LinkedBlockingQueue<>());
        threads.setName("http");
        return threads;
    }

    private static ServerConnector connector(
            Server server, HttpConfiguration http, Settings settings, RequestLog lines) {
        HttpConnectionFactory factory = new HttpConnectionFactory(http);
        ServerConnector connector = settings.entrance()
                .tls()
                .map(tls -> new ServerConnector(server, Certificate.of(tls, server), factory))
                .orElseGet(() -> new ServerConnector(server, factory));
        Heads heads = new Heads(connector.getScheduler(), settings.bounds().bodyTime());
        connector.addBean(heads);
        http.addCustomizer((request, headers) -> {
            heads.arrived(request.getConnectionMetaData().getConnection());
            return request;
        });
        server.setRequestLog(new RequestLog.Collection(
                lines,
                (request, response) ->
                        heads.answered(request.getConnectionMetaData().getConnection())));
        connector.setHost(settings.host());
        connector.setPort(settings.port());
        connector.setIdleTimeout(settings.bounds().idleTime().toMillis());
        connector.setShutdownIdleTimeout(pauseWhileStopping(settings));
        return connector;
    }

    /** How long a connection may be silent while stopping (ms): idle ones must be gone well before the time is up. */
    private static long pauseWhileStopping(Settings settings) {
        return settings.bounds().stopTime().toMillis() / 5;
    }

    private static void http(HttpConfiguration http, Settings settings) {
        http.setSendServerVersion(false);
        http.setSendDateHeader(false);
        http.setIdleTimeout(settings.bounds().idleTime().toMillis());
        http.setUriCompliance(UriCompliance.DEFAULT);
        http.addCustomizer((request, headers) -> {
            Replies.SAFETY.forEach(headers::put);
            headers.put(RequestId.HEADER, RequestId.name(request));
            Visit.begin(request);
            return request;
        });
        if (settings.entrance().tls().isPresent()) {
            // One certificate for whatever name clients know the machine by; they are those who check it.
            http.addCustomizer(new SecureRequestCustomizer(false, false, A_YEAR.toSeconds(), false));
        }
    }

    private static void server(Server server, Settings settings) {
        server.setErrorHandler(new ErrorPages());
        server.addBean(new NetworkConnectionLimit(settings.bounds().connections(), server));
        server.setStopTimeout(settings.bounds().stopTime().toMillis());
        server.setStopAtShutdown(false);
        GracefulHandler handler = new GracefulHandler();
        handler.setShutdownIdleTimeout(pauseWhileStopping(settings));
        server.setHandler(handler);
    }
}
