package dev.underprop.app;

import dev.underprop.wire.Version;

/** Starts the program. */
public final class Main {
    private Main() {}

    /**
     * Prints the version.
     *
     * @param args not read yet
     */
    public static void main(String[] args) {
        System.out.println(Version.text());
    }
}
