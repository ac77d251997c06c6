package dev.underprop.wire.shape;

import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** The shape that a value must have. */
sealed interface Shape {
    /** The shape in words, with its article. */
    String phrase();

    /** Text: also dates and quantities, which later steps read. */
    record Text() implements Shape {
        @Override
        public String phrase() {
            return "a text";
        }
    }

    /** True or false. */
    record Truth() implements Shape {
        @Override
        public String phrase() {
            return "true or false";
        }
    }

    /**
     * A whole number.
     *
     * @param least least value
     * @param greatest greatest value
     */
    record Whole(long least, long greatest) implements Shape {
        @Override
        public String phrase() {
            return "a whole number";
        }
    }

    /** A number. */
    record Decimal() implements Shape {
        @Override
        public String phrase() {
            return "a number";
        }
    }

    /**
     * A list.
     *
     * @param element shape of each element
     * @param unique whether an element may stand once only
     */
    record Many(Shape element, boolean unique) implements Shape {
        @Override
        public String phrase() {
            return "a list";
        }
    }

    /**
     * An object with names of the writer's choice.
     *
     * @param value shape of each value
     */
    record Named(Shape value) implements Shape {
        @Override
        public String phrase() {
            return "an object";
        }
    }

    /** An object with known members, which are found when they are first asked for: most plans have few kinds of objects. */
    final class Members implements Shape {
        private final Supplier<Map<String, Shape>> finder;
        private volatile @Nullable Map<String, Shape> found;

        /**
         * An object.
         *
         * @param finder finds the members, the same ones however often it is asked
         */
        Members(Supplier<Map<String, Shape>> finder) {
            this.finder = finder;
        }

        /** Shape by name, sorted by name. */
        Map<String, Shape> members() {
            Map<String, Shape> members = found;
            if (members == null) {
                members = finder.get();
                found = members;
            }
            return members;
        }

        @Override
        public String phrase() {
            return "an object";
        }
    }

    /** Anything. */
    record Any() implements Shape {
        @Override
        public String phrase() {
            return "a value";
        }
    }
}
