package dev.underprop.app;

import dev.underprop.app.batch.Batch;
import dev.underprop.app.http.Entrance;
import dev.underprop.app.http.Service;
import dev.underprop.app.http.Settings;
import dev.underprop.app.http.Trial;
import dev.underprop.app.log.LogSettings;
import java.io.PrintWriter;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Serves the contract by HTTP until the process is told to stop. */
@Command(name = "serve", description = "Answers plans by HTTP.", mixinStandardHelpOptions = true, sortOptions = false)
final class ServeCommand implements Callable<Integer> {
    private static final int HIGHEST_PORT = 65_535;

    /** Begins before the options are read, which takes as long as setting the log up. */
    private final Trial trial = Trial.begin();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--host",
            defaultValue = "127.0.0.1",
            paramLabel = "ADDRESS",
            description = "Address to listen on, ${DEFAULT-VALUE} unless given. Others than loopback want --tokens.")
    private String host = "";

    @Option(
            names = "--port",
            defaultValue = "8080",
            paramLabel = "PORT",
            description = "Port to listen on, ${DEFAULT-VALUE} unless given; 0 takes any free one.")
    private int port;

    @ArgGroup(exclusive = false, heading = "%nWho may ask:%n")
    private EntranceOptions entrance = new EntranceOptions();

    @ArgGroup(exclusive = false, heading = "%nBounds:%n")
    private BoundsOptions bounds = new BoundsOptions();

    @Option(
            names = "--log",
            defaultValue = "plain",
            paramLabel = "FORM",
            description = "Form of the log on the error output, a line a request: ${COMPLETION-CANDIDATES};"
                    + " ${DEFAULT-VALUE} unless given.")
    private LogForm log = LogForm.plain;

    /** Forms of the log, as they are written on the command line. */
    enum LogForm {
        plain,
        json
    }

    @Override
    public Integer call() throws InterruptedException {
        if (port < 0 || port > HIGHEST_PORT) {
            throw new ParameterException(spec.commandLine(), "A port is a number from 0 to " + HIGHEST_PORT + ".");
        }
        trial.awaitLog();
        if (log == LogForm.json) {
            LogSettings.json();
        }
        PrintWriter err = spec.commandLine().getErr();
        Service service;
        boolean secure;
        try {
            Entrance chosen = entrance.entrance(spec.commandLine(), isLoopback());
            secure = chosen.tls().isPresent();
            service = Service.start(trial, new Settings(host, port, bounds.bounds(spec.commandLine()), chosen));
        } catch (ParameterException e) {
            throw e;
        } catch (RuntimeException e) {
            err.println("underprop serve: not started: " + reason(e));
            return Batch.NOT_DONE;
        }
        entrance.warn(err, isLoopback());
        err.println("underprop serve: listening on " + (secure ? "https" : "http") + "://" + host + ":" + service.port()
                + "/");
        untilToldToStop(service);
        return 0;
    }

    /** What is wrong, in the words of the one who found it. */
    private static String reason(Throwable failure) {
        Throwable cause = failure;
        StringBuilder words = new StringBuilder(String.valueOf(failure.getMessage()));
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        String last = String.valueOf(cause.getMessage());
        if (words.indexOf(last) < 0) {
            words.append(": ").append(last);
        }
        return words.toString();
    }

    /** Whether nobody but this machine reaches the address. */
    private boolean isLoopback() {
        try {
            return InetAddress.getByName(host).isLoopbackAddress();
        } catch (UnknownHostException e) {
            throw new ParameterException(spec.commandLine(), "There is no address " + host + ".", e);
        }
    }

    private static void untilToldToStop(Service service) throws InterruptedException {
        CountDownLatch stopped = new CountDownLatch(1);
        Runtime.getRuntime().addShutdownHook(new Thread(service::close, "stop"));
        stopped.await();
    }
}
