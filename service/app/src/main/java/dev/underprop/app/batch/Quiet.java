package dev.underprop.app.batch;

import java.util.logging.Level;
import java.util.logging.Logger;

/** Keeps libraries from logging where people and programs read. */
final class Quiet {
    /** Held here, since the level of a logger that nobody holds is forgotten. */
    private static final Logger VALIDATION = Logger.getLogger("org.hibernate.validator");

    private Quiet() {}

    /** The logger of the service would take a quarter of a second to start, so the one of the JDK is used. */
    static void logging() {
        System.setProperty("org.jboss.logging.provider", "jdk");
        VALIDATION.setLevel(Level.SEVERE);
    }
}
