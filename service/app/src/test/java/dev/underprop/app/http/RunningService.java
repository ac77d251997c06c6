package dev.underprop.app.http;

import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;

/** One service on a free port for all tests of a run, stopped at its end. */
public final class RunningService implements BeforeAllCallback {
    private static volatile int port;

    /** The port that it listens on. */
    public static int port() {
        return port;
    }

    /** Its address. */
    public static String address() {
        return "http://127.0.0.1:" + port;
    }

    @Override
    public void beforeAll(ExtensionContext context) {
        Held held = context.getRoot()
                .getStore(Namespace.GLOBAL)
                .getOrComputeIfAbsent(RunningService.class, key -> new Held(), Held.class);
        port = held.service.port();
    }

    private static final class Held implements AutoCloseable {
        private final Service service = Service.start(Settings.at("127.0.0.1", 0));

        @Override
        public void close() {
            service.close();
        }
    }
}
