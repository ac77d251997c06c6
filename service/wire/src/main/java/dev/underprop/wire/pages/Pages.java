package dev.underprop.wire.pages;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Opens the pages. */
final class Pages {

    private Pages() {}

    static byte[] bytes(String name) {
        try (InputStream in = Pages.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the jar holds no page " + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }
}
