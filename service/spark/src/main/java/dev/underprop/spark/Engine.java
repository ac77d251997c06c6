package dev.underprop.spark;

import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.Outcome;
import dev.underprop.wire.record.Outcomes;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The engine of a JVM: built when the first plan comes, once however many tasks go by. */
final class Engine {
    private Engine() {}

    /** Loaded, and with it the engine, at its first use. */
    private static final class Held {
        /** Held here, since the level of a logger that nobody holds is forgotten. */
        private static final Logger VALIDATION = Logger.getLogger("org.hibernate.validator");

        private static final PlanDoor DOOR = quietDoor();

        private static PlanDoor quietDoor() {
            System.setProperty("org.jboss.logging.provider", "jdk");
            VALIDATION.setLevel(Level.SEVERE);
            return new PlanDoor();
        }
    }

    /** The door of this JVM. */
    static PlanDoor door() {
        return Held.DOOR;
    }

    /** What becomes of an entry. A defect of ours is an outcome too, with the same id however often the task is run. */
    static Outcome judge(Entry entry, AnswerOptions options) {
        try {
            return new Outcomes(door(), options).of(entry);
        } catch (RuntimeException | StackOverflowError e) {
            String id = "urn:uuid:" + UUID.nameUUIDFromBytes(entry.name().key().getBytes(StandardCharsets.UTF_8));
            System.err.println(
                    "underprop: a defect of the program, id " + id + ". Please report it with what follows.");
            e.printStackTrace();
            return Outcomes.failed(entry.name(), id);
        }
    }
}
