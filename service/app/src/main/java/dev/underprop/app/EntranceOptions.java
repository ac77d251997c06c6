package dev.underprop.app;

import dev.underprop.app.http.Entrance;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Who may ask, and whether what is sent can be read on the way. */
final class EntranceOptions {
    private static final String PASSWORD = "UNDERPROP_TLS_PASSWORD";

    /** No file. */
    private static final Path NONE = Path.of("");

    @Option(
            names = "--tokens",
            paramLabel = "FILE",
            description = "Those who may ask, a line each as the command token makes them; read again when it changes.")
    private Path tokens = NONE;

    @Option(
            names = "--let-anyone-in-without-token",
            description = "Listen on an address that others reach, and answer whoever asks.")
    private boolean anyone;

    @Option(
            names = "--tls-keystore",
            paramLabel = "FILE",
            description = "Certificate and key, PKCS #12; answers by HTTPS alone, TLS 1.2 and 1.3.")
    private Path keystore = NONE;

    @Option(
            names = "--tls-password-file",
            paramLabel = "FILE",
            description =
                    "File whose first line is the password of the keystore; else the environment's " + PASSWORD + ".")
    private Path passwordFile = NONE;

    /**
     * What was chosen.
     *
     * @param loopback whether nobody but this machine reaches the address
     * @throws ParameterException when anybody could ask and it was not said that anybody may
     */
    Entrance entrance(CommandLine line, boolean loopback) {
        if (!loopback && tokens.equals(NONE) && !anyone) {
            throw new ParameterException(
                    line,
                    "Others reach this address. Give --tokens FILE with those who may ask, or, where it is meant,"
                            + " --let-anyone-in-without-token.");
        }
        if (anyone && !tokens.equals(NONE)) {
            throw new ParameterException(line, "Either --tokens or --let-anyone-in-without-token.");
        }
        if (keystore.equals(NONE) && !passwordFile.equals(NONE)) {
            throw new ParameterException(line, "A password without --tls-keystore opens nothing.");
        }
        return new Entrance(
                tokens.equals(NONE) ? Optional.empty() : Optional.of(tokens),
                keystore.equals(NONE)
                        ? Optional.empty()
                        : Optional.of(new Entrance.Tls(readable(line, keystore), password(line))));
    }

    private String password(CommandLine line) {
        if (!passwordFile.equals(NONE)) {
            try {
                return Files.readString(readable(line, passwordFile))
                        .lines()
                        .findFirst()
                        .orElse("");
            } catch (IOException e) {
                throw new ParameterException(line, "The file of the password cannot be read: " + e.getMessage(), e);
            }
        }
        String given = System.getenv(PASSWORD);
        if (given == null) {
            throw new ParameterException(
                    line,
                    "The keystore wants a password: --tls-password-file, or " + PASSWORD + " in the environment.");
        }
        return given;
    }

    private static Path readable(CommandLine line, Path file) {
        if (!Files.isReadable(file)) {
            throw new ParameterException(line, "The file " + file + " cannot be read.");
        }
        return file;
    }

    /** Says what may not have been meant. */
    void warn(PrintWriter err, boolean loopback) {
        if (!loopback && anyone) {
            err.println(
                    "underprop serve: whoever reaches this address may ask, since --let-anyone-in-without-token says so");
        }
        if (!loopback && keystore.equals(NONE)) {
            err.println("underprop serve: plans" + (tokens.equals(NONE) ? "" : " and tokens")
                    + " can be read on the way; give --tls-keystore, or have a proxy before it that speaks TLS");
        }
    }
}
