package dev.underprop.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.api.model.PlanCheck;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.engine.check.CheckId;
import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.tree.Format;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plan with everything declared lacks nothing but the checks that are not built; each declaration taken out is missed. */
class DeclaredTest {

    private static final String PLAN = Demos.text("adequate.yaml");

    private static PlanCheck check(String plan) {
        Answer<PlanCheck> answer =
                new PlanDoor().check(plan.getBytes(StandardCharsets.UTF_8), Format.YAML, AnswerOptions.USUAL);
        assertThat(answer).isInstanceOf(Answer.Judged.class);
        return ((Answer.Judged<PlanCheck>) answer).model();
    }

    private static Set<String> notChecked(PlanCheck answer) {
        return answer.getNotChecked().stream()
                .map(item -> item.getCheck())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> notBuilt() {
        return Arrays.stream(CheckId.values())
                .filter(id -> !id.built() && CheckId.required(false).contains(id))
                .map(CheckId::id)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void withEverythingDeclaredOnlyWhatIsNotBuiltIsMissing() {
        PlanCheck answer = check(PLAN);

        assertThat(notChecked(answer)).isEqualTo(notBuilt());
        assertThat(answer.getVerdict()).isEqualTo(notBuilt().isEmpty() ? PlanVerdict.ADEQUATE : PlanVerdict.INCOMPLETE);
        assertThat(answer.getChecks()).noneMatch(c -> c.getVerdict().name().equals("FAIL"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "treatment: none, |timber-treatment",
                "moisture: dry, |timber-service",
                "heads: { along: { by: \"diagonal braces at both ends\" }, across: { by: \"blocked between the joists\" } }|sideways-restraint",
                "restraint: { along: { by: \"deck nailed to the side walls\" }, across: { by: \"deck nailed to both walls\" } }|sideways-restraint",
                "- { question: chimney, answer: \"no\" }|intake",
                "- { question: slab, answer: \"no\" }|intake",
                ", load: shelves|intake",
                ", thickness: 1/2 in, yieldStress: 36000 psi, round: 3 in|post-plates",
                ", sideways: 400 lb|post-sideways",
                ", strength: 3000 psi|base-plate-bearing",
                "make: cast, |pad-strength",
                ", strength: 3000 psi|pad-strength",
                ", centring: 1/2 in|pad-strength",
                ", centring: 1/2 in|pad-eccentricity",
                "limits: { settlement: 1/4 in, settlementSlope: 0.002, settlementCriterion: \"plaster must not crack, agreed on site\" }|pad-settlement",
                "ground: { table: ibc-1806.2, class: silty sand, foundingDepth: 12 in, condition: undisturbed, subgrade: { soft: 150 pci, stiff: 300 pci, source: plate test on site } }|pad-soil-bearing",
                "ground: { table: ibc-1806.2, class: silty sand, foundingDepth: 12 in, condition: undisturbed, subgrade: { soft: 150 pci, stiff: 300 pci, source: plate test on site } }|pad-eccentricity",
                "ground: { table: ibc-1806.2, class: silty sand, foundingDepth: 12 in, condition: undisturbed, subgrade: { soft: 150 pci, stiff: 300 pci, source: plate test on site } }|pad-settlement",
                "roll: { by: \"blocked at every post\" }|beam-roll-restraint",
                "nails: { diameter: 0.131 in, length: 3 in, rows: 2, spacing: 12 in, staggered: true, bothFaces: true, everyPly: true, atEnds: 3 }|beam-ply-fastening",
                "whole: true|beam-ply-fastening",
                ", pressure: 405 psi|seat-strength",
                ", seat: { surface: wood, pressure: 405 psi, by: \"sill looked at, hem-fir by its stamp\" }|seat-strength",
                ", seat: { surface: wood, pressure: 405 psi, by: \"sill looked at, hem-fir by its stamp\" }|seat-length",
                ", seat: { by: \"pocket of the ledger, listed\", load: 900 lb }|seat-strength",
                "- { question: decay or notches, answer: \"no\" }|joist-notch",
                "- { question: long duration, answer: \"no\" }|beam-deflection-long-term",
                ", condition: undisturbed|pad-soil-bearing",
                ", condition: undisturbed|pad-eccentricity"
            })
    void eachDeclarationTakenOutIsMissed(String declaration, String check) {
        assertThat(PLAN).contains(declaration);
        PlanCheck answer = check(PLAN.replace(declaration, ""));
        List<String> missing = List.copyOf(notChecked(answer));

        assertThat(missing).contains(check);
        assertThat(notBuilt()).doesNotContain(check);
        assertThat(answer.getVerdict()).isNotEqualTo(PlanVerdict.ADEQUATE);
    }

    /** Whoever gave a pressure gave it for some ground: that this is it, as it is found, is a declaration too. */
    @Test
    void aGivenPressureWantsTheConditionOfItsGround() {
        String given = PLAN.replace(
                "table: ibc-1806.2, class: silty sand, foundingDepth: 12 in,",
                "allowable: 2000 psf, source: letter on file,");
        assertThat(given).isNotEqualTo(PLAN);
        PlanCheck silent = check(given.replace(", condition: undisturbed", ""));

        assertThat(check(given).getVerdict()).isEqualTo(PlanVerdict.ADEQUATE);
        assertThat(silent.getVerdict()).isEqualTo(PlanVerdict.INCOMPLETE);
        assertThat(notChecked(silent)).containsExactly("pad-eccentricity", "pad-settlement", "pad-soil-bearing");
    }

    private static double demand(PlanCheck answer, String check) {
        return answer.getChecks().stream()
                .filter(c -> c.getCheck().equals(check) && c.getPlace().equals("M2"))
                .flatMap(c -> Stream.ofNullable(c.getDemand()))
                .mapToDouble(demand -> demand.getValue())
                .max()
                .orElseThrow();
    }

    /**
     * Types of posts with a rating alone: 25 mm off the middle of the foot, and said, unless the type states it. The pad of 22 in
     * weighs 125 psf; the rest of its pressure is the post's, and 6 times the root of 2 over 22 in of it come on at a corner for
     * each inch that the load is off.
     */
    @Test
    void theLoadOfARatedPostActsOffItsFootUnlessItsTypeStatesHowFar() {
        PlanCheck silent = check(PLAN);
        PlanCheck middle = check(PLAN.replace("stiffness: 90 kip/in", "stiffness: 90 kip/in\n    eccentricity: 0 in"));
        PlanCheck far = check(PLAN.replace("stiffness: 90 kip/in", "stiffness: 90 kip/in\n    eccentricity: 2 in"));
        double post = demand(silent, "pad-soil-bearing") - 125;
        double inch = 6 * Math.sqrt(2) / 22 * post;

        assertThat(demand(silent, "pad-eccentricity") - demand(middle, "pad-eccentricity"))
                .isCloseTo(inch * 25 / 25.4, within(0.01));
        assertThat(demand(far, "pad-eccentricity") - demand(middle, "pad-eccentricity"))
                .isCloseTo(inch * 2, within(0.01));
        assertThat(silent.getAssumptions()).anyMatch(taken -> taken.contains("25 mm off the middle of its foot"));
        assertThat(middle.getAssumptions()).noneMatch(taken -> taken.contains("25 mm off"));
    }
}
