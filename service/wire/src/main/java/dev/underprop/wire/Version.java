package dev.underprop.wire;

import dev.underprop.engine.Engine;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version that results name, written by the build. */
public final class Version {
    private static final String NUMBER = read();

    private Version() {}

    /** Returns name and version, such as {@code underprop 1.2.3}. */
    public static String text() {
        return Engine.NAME + " " + number();
    }

    /** Returns the version alone, such as {@code 1.2.3}. */
    public static String number() {
        return NUMBER;
    }

    private static String read() {
        Properties properties = new Properties();
        try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
            if (in == null) {
                throw new IllegalStateException("version.properties is missing from the jar");
            }
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException("version.properties", e);
        }
        return properties.getProperty("version", "");
    }
}
