package dev.underprop.app.http;

import dev.underprop.app.report.ProblemKind;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;

/** Whether plans are taken in: not before the first trial has succeeded, and not once stopping has begun. */
final class Readiness {
    private enum State {
        STARTING,
        READY,
        LEAVING,
        STOPPING
    }

    private final AtomicReference<State> state = new AtomicReference<>(State.STARTING);

    void ready() {
        state.set(State.READY);
    }

    /** Plans are still taken in, but nobody is to send new ones; true when that is news. */
    boolean leaving() {
        return state.compareAndSet(State.READY, State.LEAVING);
    }

    void stopping() {
        state.set(State.STOPPING);
    }

    /** Refuses when plans are not taken in. */
    void check() {
        State now = state.get();
        if (now != State.READY && now != State.LEAVING) {
            throw refusal(now == State.STARTING);
        }
    }

    /** Refuses when nobody is to send plans any more. */
    void announce() {
        State now = state.get();
        if (now != State.READY) {
            throw refusal(now == State.STARTING);
        }
    }

    private static Refused refusal(boolean starting) {
        String detail = starting ? "The service is starting." : "The service is stopping.";
        return Refused.because(ProblemKind.UNAVAILABLE, detail, Map.of("Retry-After", "2"));
    }
}
