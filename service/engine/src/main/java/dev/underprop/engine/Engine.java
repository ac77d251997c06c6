package dev.underprop.engine;

/** Names the engine in results. */
public final class Engine {
    /** The engine's name. */
    public static final String NAME = "underprop";

    private Engine() {}
}
