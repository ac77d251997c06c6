package dev.underprop.wire.sample;

import dev.underprop.app.Main;

/** Looks up at the app, so that the rule is seen to bite. */
public final class AgainstTheArrow {
    private AgainstTheArrow() {}

    static void look() {
        Main.main(new String[0]);
    }
}
