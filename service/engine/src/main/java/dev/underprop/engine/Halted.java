package dev.underprop.engine;

/** An answer was given up before it was made, because a {@link Halt} said so; nothing is known about the plan. */
public final class Halted extends RuntimeException {

    /** Carries neither stack nor cause: nothing is wrong. */
    public Halted() {
        super("The answer was given up before it was made.", null, false, false);
    }
}
