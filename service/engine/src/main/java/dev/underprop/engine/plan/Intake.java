package dev.underprop.engine.plan;

import java.util.List;

/**
 * Questions asked on site that catch the classic accidents.
 *
 * @param answers at most one to a question; a question without an answer is unknown
 */
public record Intake(List<Answer> answers) {

    /** Nothing was answered. */
    public static final Intake EMPTY = new Intake(List.of());

    public Intake {
        answers = List.copyOf(answers);
    }

    /** What is asked. Common practice, no source. */
    public enum Question {
        /** A chimney or hearth that stands on the floor or hangs on it. */
        CHIMNEY("chimney", Kind.LOAD),
        /** Bearing partitions or roof posts that land on the floor. */
        BEARING_PARTITION("bearing partition", Kind.LOAD),
        /** A tub, tank, safe or piano. */
        HEAVY_FIXTURE("heavy fixture", Kind.LOAD),
        /** A stair that hangs on the floor or stands on it. */
        STAIR("stair", Kind.LOAD),
        /** Brick veneer or plaster that cracks when the floor moves. */
        BRICK_VENEER("brick veneer", Kind.FINDING),
        /** Pipes, ducts or wires fastened to the joists that are in the way or break. */
        SERVICES("attached services", Kind.FINDING),
        /** Decay, insects, notches or holes in joists, girder or sill. */
        DECAY("decay or notches", Kind.SECTION),
        /** Digging near the pads. */
        EXCAVATION("excavation", Kind.EXCAVATION),
        /** Pads that stand on a slab. */
        SLAB("slab", Kind.SLAB),
        /** The shores stand through a winter or for more than a year. */
        LONG_DURATION("long duration", Kind.FINDING);

        private final String words;
        private final Kind kind;

        Question(String words, Kind kind) {
            this.words = words;
            this.kind = kind;
        }

        /** As plans and answers write it. */
        public String words() {
            return words;
        }

        /** What a yes asks for. */
        public Kind kind() {
            return kind;
        }
    }

    /** What a yes asks for. */
    public enum Kind {
        /** The name of its load among the loads of the floor. */
        LOAD,
        /** Nothing in numbers: it becomes an advisory. */
        FINDING,
        /** Members with a net section. */
        SECTION,
        /** The cuts. */
        EXCAVATION,
        /** Pads that are slabs of measured thickness. */
        SLAB
    }

    /** What was answered. */
    public enum Reply {
        YES,
        NO,
        UNKNOWN
    }

    /**
     * One answer.
     *
     * @param question what was asked
     * @param reply what was answered
     * @param load name of its load, empty when none is named
     * @param note what was seen, empty when nothing is noted
     */
    public record Answer(Question question, Reply reply, String load, String note) {}

    /** The answer to a question; unknown where there is none. */
    public Answer to(Question question) {
        return answers.stream()
                .filter(a -> a.question() == question)
                .findFirst()
                .orElse(new Answer(question, Reply.UNKNOWN, "", ""));
    }
}
