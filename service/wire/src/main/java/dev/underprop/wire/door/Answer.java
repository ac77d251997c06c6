package dev.underprop.wire.door;

import dev.underprop.wire.fault.Fault;
import java.util.List;

/**
 * What became of one plan.
 *
 * @param <T> the contract's model of the answer
 */
public sealed interface Answer<T> {

    /**
     * The plan was judged, whatever the verdict.
     *
     * @param model the answer
     */
    record Judged<T>(T model) implements Answer<T> {}

    /**
     * The text could not be read: encoding, syntax, duplicate keys.
     *
     * @param faults all that were found, with line and column
     */
    record Unreadable<T>(List<Fault> faults) implements Answer<T> {
        public Unreadable {
            faults = List.copyOf(faults);
        }
    }

    /**
     * The text could be read, but is not a plan that makes sense.
     *
     * @param id id of the plan where it has one that can be read, else the empty text
     * @param faults all that were found in the step that stopped, with line and column
     */
    record Faulty<T>(String id, List<Fault> faults) implements Answer<T> {
        public Faulty {
            faults = List.copyOf(faults);
        }

        /** Faults of something without an id. */
        public Faulty(List<Fault> faults) {
            this("", faults);
        }
    }

    /**
     * The same refusal for another question.
     *
     * @throws IllegalStateException when the plan was judged
     */
    default <U> Answer<U> unanswered() {
        if (this instanceof Unreadable<T> unreadable) {
            return new Unreadable<>(unreadable.faults());
        }
        if (this instanceof Faulty<T> faulty) {
            return new Faulty<>(faulty.id(), faulty.faults());
        }
        throw new IllegalStateException("an answer is no refusal");
    }
}
