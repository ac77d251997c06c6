package dev.underprop.app;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** What the engine's classes may and may not do. */
final class EngineHabits {
    /** The methods of Math that are exact by their own definition, and so the same everywhere. */
    private static final Set<String> EXACT = Set.of("abs", "ceil", "floor", "max", "min", "rint", "sqrt");

    /** System's methods that touch neither clock, environment nor streams. */
    private static final Set<String> HARMLESS = Set.of("arraycopy", "identityHashCode");

    private static final Set<String> MACHINE =
            Set.of("java.lang.Runtime", "java.lang.ProcessBuilder", "java.time.Clock");

    static final ArchCondition<JavaClass> USE_STRICT_MATH = avoid(
            "use StrictMath for what java.lang.Math may round differently",
            access -> owner(access).equals("java.lang.Math") && !EXACT.contains(access.getName()));

    static final ArchCondition<JavaClass> NOT_ASK_THE_MACHINE =
            avoid("not ask for time, environment, chance or default locale", EngineHabits::asksTheMachine);

    static final ArchCondition<JavaField> NEVER_CHANGE = new ArchCondition<>("never change") {
        @Override
        public void check(JavaField field, ConditionEvents events) {
            if (!field.getModifiers().contains(JavaModifier.SYNTHETIC) && canChange(field)) {
                events.add(SimpleConditionEvent.violated(field, field.getDescription() + " can change"));
            }
        }
    };

    private EngineHabits() {}

    private static ArchCondition<JavaClass> avoid(String sentence, Predicate<JavaAccess<?>> bad) {
        return new ArchCondition<>(sentence) {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                item.getAccessesFromSelf().stream()
                        .filter(bad)
                        .forEach(access -> events.add(SimpleConditionEvent.violated(item, access.getDescription())));
            }
        };
    }

    private static boolean asksTheMachine(JavaAccess<?> access) {
        String owner = owner(access);
        return switch (owner) {
            case "java.lang.System" -> !HARMLESS.contains(access.getName());
            case "java.util.Locale" -> access.getName().equals("getDefault");
            default -> MACHINE.contains(owner) || isChance(owner) || isNow(access);
        };
    }

    private static boolean isChance(String owner) {
        return (owner.endsWith("Random") && owner.startsWith("java.")) || owner.equals("java.util.UUID");
    }

    private static boolean isNow(JavaAccess<?> access) {
        return owner(access).startsWith("java.time.") && access.getName().equals("now");
    }

    /** A final array can still be written to, so it must at least be private. */
    private static boolean canChange(JavaField field) {
        Set<JavaModifier> modifiers = field.getModifiers();
        JavaClass type = field.getRawType();
        boolean sharedArray = type.isArray() && !modifiers.contains(JavaModifier.PRIVATE);
        return !modifiers.contains(JavaModifier.FINAL) || sharedArray || isContainer(type);
    }

    /** A field declared as one of the JDK's own growing types, rather than as List, Map or Set made once by {@code of}. */
    private static boolean isContainer(JavaClass type) {
        boolean collection = type.isAssignableTo(Collection.class) || type.isAssignableTo(Map.class);
        return type.getPackageName().startsWith("java.util.concurrent")
                || type.isEquivalentTo(StringBuilder.class)
                || type.isEquivalentTo(ThreadLocal.class)
                || (collection && !type.isInterface());
    }

    private static String owner(JavaAccess<?> access) {
        return access.getTargetOwner().getName();
    }
}
