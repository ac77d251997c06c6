package dev.underprop.app;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import dev.underprop.engine.sample.Offender;
import dev.underprop.wire.sample.AgainstTheArrow;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Which way the code may look: between modules, and out of the engine. */
class ArrowsTest {
    private static final String ENGINE = "dev.underprop.engine..";
    private static final String API = "dev.underprop.api..";
    private static final String WIRE = "dev.underprop.wire..";
    private static final String APP = "dev.underprop.app..";
    private static final String CLIENT = "dev.underprop.client..";
    private static final String FIXTURES = "dev.underprop.fixtures..";

    private static final JavaClasses SHIPPED = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("dev.underprop");

    @Test
    void apiLooksAtNoOtherModule() {
        noClasses()
                .that()
                .resideInAPackage(API)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(ENGINE, WIRE, APP, CLIENT, FIXTURES)
                .check(SHIPPED);
    }

    @Test
    void wireLooksAtEngineAndApiOnly() {
        wireStaysBelowTheMouths().check(SHIPPED);
    }

    @Test
    void appReachesTheEngineThroughWireOnly() {
        noClasses()
                .that()
                .resideInAPackage(APP)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(ENGINE, CLIENT, FIXTURES)
                .because("wire owns the door; what it hands out is its own or the contract's")
                .check(SHIPPED);
    }

    @Test
    void clientLooksAtApiOnly() {
        noClasses()
                .that()
                .resideInAPackage(CLIENT)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(ENGINE, WIRE, APP, FIXTURES)
                .check(SHIPPED);
    }

    @Test
    void engineLooksAtTheJdkOnly() {
        engineKeepsToTheJdk().check(SHIPPED);
    }

    @Test
    void engineDoesNoInputOrOutput() {
        engineKeepsFromTheOutside().check(SHIPPED);
    }

    @Test
    void engineKnowsNeitherTimeNorMachine() {
        classes()
                .that()
                .resideInAPackage(ENGINE)
                .should(EngineHabits.NOT_ASK_THE_MACHINE)
                .check(SHIPPED);
    }

    @Test
    void engineComputesTheSameOnEveryJdk() {
        classes()
                .that()
                .resideInAPackage(ENGINE)
                .should(EngineHabits.USE_STRICT_MATH)
                .check(SHIPPED);
    }

    @Test
    void engineKeepsNoStateBetweenCalls() {
        engineStaticsStayAsTheyAre().check(SHIPPED);
    }

    /** A rule that cannot fail holds nothing: each must catch the sample that breaks it. */
    @ParameterizedTest
    @MethodSource("rulesTheSamplesBreak")
    void ruleCatchesASampleThatBreaksIt(ArchRule rule) {
        JavaClasses samples = new ClassFileImporter().importClasses(Offender.class, AgainstTheArrow.class);

        assertThat(rule.evaluate(samples).hasViolation()).isTrue();
    }

    static Stream<ArchRule> rulesTheSamplesBreak() {
        return Stream.of(
                wireStaysBelowTheMouths(),
                engineKeepsToTheJdk(),
                engineKeepsFromTheOutside(),
                engineStaticsStayAsTheyAre(),
                classes().that().resideInAPackage(ENGINE).should(EngineHabits.NOT_ASK_THE_MACHINE),
                classes().that().resideInAPackage(ENGINE).should(EngineHabits.USE_STRICT_MATH));
    }

    private static ArchRule wireStaysBelowTheMouths() {
        return noClasses()
                .that()
                .resideInAPackage(WIRE)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(APP, CLIENT, FIXTURES);
    }

    private static ArchRule engineKeepsToTheJdk() {
        return classes()
                .that()
                .resideInAPackage(ENGINE)
                .should()
                .onlyDependOnClassesThat(
                        resideInAPackage(ENGINE).or(resideInAPackage("java..")).or(resideInAPackage("org.jspecify..")));
    }

    private static ArchRule engineKeepsFromTheOutside() {
        return noClasses()
                .that()
                .resideInAPackage(ENGINE)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.io..", "java.nio..", "java.net..", "java.util.logging..");
    }

    private static ArchRule engineStaticsStayAsTheyAre() {
        return fields().that()
                .areDeclaredInClassesThat()
                .resideInAPackage(ENGINE)
                .and()
                .areStatic()
                .should(EngineHabits.NEVER_CHANGE);
    }
}
