package dev.underprop.app;

import dev.underprop.app.batch.Batch;
import dev.underprop.app.http.Service;
import dev.underprop.app.http.Settings;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Serves the contract by HTTP until the process is told to stop. */
@Command(name = "serve", description = "Answers plans by HTTP.", mixinStandardHelpOptions = true)
final class ServeCommand implements Callable<Integer> {
    private static final int HIGHEST_PORT = 65_535;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--host",
            defaultValue = "127.0.0.1",
            paramLabel = "ADDRESS",
            description = "Address to listen on, ${DEFAULT-VALUE} unless given.")
    private String host = "";

    @Option(
            names = "--port",
            defaultValue = "8080",
            paramLabel = "PORT",
            description = "Port to listen on, ${DEFAULT-VALUE} unless given; 0 takes any free one.")
    private int port;

    @Override
    public Integer call() throws InterruptedException {
        if (port < 0 || port > HIGHEST_PORT) {
            throw new ParameterException(spec.commandLine(), "A port is a number from 0 to " + HIGHEST_PORT + ".");
        }
        Service service;
        try {
            service = Service.start(Settings.at(host, port));
        } catch (RuntimeException e) {
            spec.commandLine().getErr().println("underprop serve: not started: " + e.getMessage());
            return Batch.NOT_DONE;
        }
        spec.commandLine()
                .getErr()
                .println("underprop serve: listening on http://" + host + ":" + service.port() + "/");
        untilToldToStop(service);
        return 0;
    }

    private static void untilToldToStop(Service service) throws InterruptedException {
        CountDownLatch stopped = new CountDownLatch(1);
        Runtime.getRuntime().addShutdownHook(new Thread(service::close, "stop"));
        stopped.await();
    }
}
