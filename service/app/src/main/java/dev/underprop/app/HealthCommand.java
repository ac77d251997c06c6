package dev.underprop.app;

import java.io.IOException;
import java.net.HttpURLConnection;
import java.net.URI;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Asks a running service whether it answers plans. */
@Command(
        name = "health",
        description = "Asks a running service whether it answers plans; exit status 0 when it does, else 1.",
        mixinStandardHelpOptions = true)
final class HealthCommand implements Callable<Integer> {
    private static final int PATIENCE_MILLIS = 3000;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--url",
            defaultValue = "http://127.0.0.1:8080",
            paramLabel = "URL",
            description = "Address of the service, ${DEFAULT-VALUE} unless given.")
    private URI url = URI.create("http://127.0.0.1:8080");

    @Override
    public Integer call() {
        if (url.getHost() == null || !("http".equals(url.getScheme()) || "https".equals(url.getScheme()))) {
            throw new ParameterException(
                    spec.commandLine(), "The address of a service starts with http:// or https://.");
        }
        URI ready = url.resolve("/health/ready");
        try {
            int status = status(ready);
            spec.commandLine().getErr().println(ready + " answers " + status + ".");
            return status == HttpURLConnection.HTTP_OK ? 0 : 1;
        } catch (IOException e) {
            spec.commandLine().getErr().println(ready + " does not answer: " + e.getMessage());
            return 1;
        }
    }

    private static int status(URI ready) throws IOException {
        HttpURLConnection connection = (HttpURLConnection) ready.toURL().openConnection();
        connection.setConnectTimeout(PATIENCE_MILLIS);
        connection.setReadTimeout(PATIENCE_MILLIS);
        try {
            return connection.getResponseCode();
        } finally {
            connection.disconnect();
        }
    }
}
