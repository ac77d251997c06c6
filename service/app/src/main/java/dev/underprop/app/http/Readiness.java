package dev.underprop.app.http;

import dev.underprop.app.report.ProblemKind;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;

/** Whether plans are taken in: not before the first trial has succeeded, and not once stopping has begun. */
final class Readiness {
    private enum State {
        STARTING,
        READY,
        STOPPING
    }

    private final AtomicReference<State> state = new AtomicReference<>(State.STARTING);

    void ready() {
        state.set(State.READY);
    }

    void stopping() {
        state.set(State.STOPPING);
    }

    /** Refuses when plans are not taken in. */
    void check() {
        State now = state.get();
        if (now != State.READY) {
            String detail = now == State.STARTING ? "The service is starting." : "The service is stopping.";
            throw Refused.because(ProblemKind.UNAVAILABLE, detail, Map.of("Retry-After", "2"));
        }
    }
}
