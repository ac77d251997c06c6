package dev.underprop.wire.door;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The invented plans of these tests. */
final class Plans {

    private Plans() {}

    static byte[] bytes(String name) {
        try (InputStream in = Plans.class.getResourceAsStream("/plans/" + name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }

    static String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }
}
