package dev.underprop.spark;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import dev.underprop.wire.door.PlanDoor;
import org.junit.jupiter.api.Test;

/** The job looks at wire alone. */
class ArrowsTest {
    private static ArchRule from(String rooms) {
        return noClasses()
                .that()
                .resideInAPackage(rooms)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "dev.underprop.api..",
                        "dev.underprop.engine..",
                        "dev.underprop.app..",
                        "dev.underprop.client..",
                        "dev.underprop.fixtures..");
    }

    @Test
    void jobLooksAtWireAlone() {
        from("dev.underprop.spark..")
                .check(new ClassFileImporter()
                        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                        .importPackages("dev.underprop.spark"));
    }

    /** A rule that cannot fail holds nothing: wire looks at the engine. */
    @Test
    void ruleCatchesWhatLooksElsewhere() {
        assertThat(from("dev.underprop.wire..")
                        .evaluate(new ClassFileImporter().importClasses(PlanDoor.class))
                        .hasViolation())
                .isTrue();
    }
}
