package dev.underprop.app.log;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.encoder.JsonEncoder;
import ch.qos.logback.classic.encoder.PatternLayoutEncoder;
import ch.qos.logback.classic.spi.Configurator;
import ch.qos.logback.classic.spi.ConfiguratorRank;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.ConsoleAppender;
import ch.qos.logback.core.encoder.Encoder;
import ch.qos.logback.core.spi.ContextAwareBase;
import java.nio.charset.StandardCharsets;
import org.slf4j.LoggerFactory;

/**
 * Sets the log up. In code and not in XML: a service starts a twentieth of a second sooner. A file that the property
 * {@code logback.configurationFile} names is read in place of it.
 */
@ConfiguratorRank(ConfiguratorRank.CUSTOM_HIGH_PRIORITY)
public final class LogSettings extends ContextAwareBase implements Configurator {

    private static final String OUTPUT = "stderr";
    private static final String LINE = "%d{yyyy-MM-dd'T'HH:mm:ss.SSSXXX, UTC} %-5level %logger{0} %msg %kvp{NONE}%n";

    /** Asked for by logback. */
    public LogSettings() {}

    @Override
    public ExecutionStatus configure(LoggerContext context) {
        if (System.getProperty("logback.configurationFile") != null) {
            return ExecutionStatus.INVOKE_NEXT_IF_ANY;
        }
        level(context, "io.javalin", Level.WARN);
        level(context, "org.eclipse.jetty", Level.WARN);
        // Warns once for every list of the generated models.
        level(context, "org.hibernate.validator", Level.ERROR);
        Logger root = level(context, org.slf4j.Logger.ROOT_LOGGER_NAME, Level.INFO);
        root.addAppender(errorOutput(context, plain()));
        return ExecutionStatus.DO_NOT_INVOKE_NEXT_IF_ANY;
    }

    /** From now on an object a line, unless a file has set the log up. */
    public static void json() {
        json((LoggerContext) LoggerFactory.getILoggerFactory());
    }

    static void json(LoggerContext context) {
        Logger root = context.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
        if (root.detachAppender(OUTPUT)) {
            root.addAppender(errorOutput(context, objects()));
        }
    }

    private static Logger level(LoggerContext context, String name, Level level) {
        Logger logger = context.getLogger(name);
        logger.setLevel(level);
        return logger;
    }

    /** People read the error output; the standard output belongs to the answers. */
    private static ConsoleAppender<ILoggingEvent> errorOutput(LoggerContext context, Encoder<ILoggingEvent> encoder) {
        encoder.setContext(context);
        encoder.start();
        ConsoleAppender<ILoggingEvent> appender = new ConsoleAppender<>();
        appender.setContext(context);
        appender.setName(OUTPUT);
        appender.setTarget("System.err");
        appender.setEncoder(encoder);
        appender.start();
        return appender;
    }

    private static Encoder<ILoggingEvent> plain() {
        PatternLayoutEncoder encoder = new PatternLayoutEncoder();
        encoder.setCharset(StandardCharsets.UTF_8);
        encoder.setPattern(LINE);
        return encoder;
    }

    /** A JSON object a line; what is told of a request stands in kvpList. */
    private static Encoder<ILoggingEvent> objects() {
        JsonEncoder encoder = new JsonEncoder();
        encoder.setWithNanoseconds(false);
        encoder.setWithSequenceNumber(false);
        encoder.setWithThreadName(false);
        encoder.setWithContext(false);
        encoder.setWithMDC(false);
        encoder.setWithMarkers(false);
        encoder.setWithArguments(false);
        encoder.setWithMessage(false);
        encoder.setWithFormattedMessage(true);
        return encoder;
    }
}
