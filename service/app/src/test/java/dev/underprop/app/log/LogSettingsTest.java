package dev.underprop.app.log;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.spi.Configurator.ExecutionStatus;
import ch.qos.logback.classic.spi.LoggingEvent;
import ch.qos.logback.core.ConsoleAppender;
import ch.qos.logback.core.encoder.Encoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import org.slf4j.event.KeyValuePair;

class LogSettingsTest {
    private final LoggerContext context = new LoggerContext();

    @AfterEach
    void takeBack() {
        System.clearProperty("logback.configurationFile");
        context.stop();
    }

    /** A request at the beginning of 1970, as it is written. */
    private String line() {
        LoggingEvent event = new LoggingEvent();
        event.setLoggerContext(context);
        event.setLoggerName("dev.underprop.requests");
        event.setLevel(Level.INFO);
        event.setMessage("answered");
        event.setInstant(Instant.EPOCH);
        event.addKeyValuePair(new KeyValuePair("status", 200));
        ConsoleAppender<?> appender =
                (ConsoleAppender<?>) context.getLogger("ROOT").getAppender("stderr");
        assertThat(appender.getTarget()).isEqualTo("System.err");
        @SuppressWarnings("unchecked")
        Encoder<Object> encoder = (Encoder<Object>) appender.getEncoder();
        return new String(encoder.encode(event), StandardCharsets.UTF_8);
    }

    @Test
    void aPlainLine() {
        assertThat(new LogSettings().configure(context)).isEqualTo(ExecutionStatus.DO_NOT_INVOKE_NEXT_IF_ANY);
        assertThat(line())
                .isEqualTo("1970-01-01T00:00:00.000Z INFO  requests answered status=200" + System.lineSeparator());
    }

    @Test
    void anObjectALine() {
        new LogSettings().configure(context);
        LogSettings.json(context);

        assertThat(line())
                .startsWith("{\"timestamp\":0,\"level\":\"INFO\",\"loggerName\":\"dev.underprop.requests\"")
                .contains("\"formattedMessage\":\"answered\"", "\"kvpList\": [{\"status\":\"200\"}]")
                .doesNotContain("threadName", "mdc", "nanoseconds", "context");
    }

    @Test
    void thoseWithoutNewsAreSilent() {
        new LogSettings().configure(context);

        assertThat(context.getLogger("org.hibernate.validator").getEffectiveLevel())
                .isEqualTo(Level.ERROR);
        assertThat(context.getLogger("org.eclipse.jetty").getEffectiveLevel()).isEqualTo(Level.WARN);
        assertThat(context.getLogger("io.javalin").getEffectiveLevel()).isEqualTo(Level.WARN);
        assertThat(context.getLogger("requests").getEffectiveLevel()).isEqualTo(Level.INFO);
    }

    @Test
    void aFileOfOnesOwnIsReadInPlaceOfIt() {
        System.setProperty("logback.configurationFile", "own.xml");

        assertThat(new LogSettings().configure(context)).isEqualTo(ExecutionStatus.INVOKE_NEXT_IF_ANY);
        LogSettings.json(context);
        assertThat(context.getLogger("ROOT").iteratorForAppenders().hasNext()).isFalse();
    }

    /** What runs here was set up by it: else debug lines would drown the tests. */
    @Test
    void logbackFindsIt() {
        LoggerContext running = (LoggerContext) LoggerFactory.getILoggerFactory();

        assertThat(running.getLogger("org.hibernate.validator").getLevel()).isEqualTo(Level.ERROR);
        assertThat(running.getLogger("ROOT").getAppender("stderr")).isNotNull();
    }
}
