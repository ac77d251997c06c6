package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.plan.Member;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Fixtures;
import dev.underprop.fixtures.Inputs;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every printed number that the engine can work out, worked out by the engine. A kind nobody works out breaks the build. */
class PublishedFiguresTest {

    private static final Map<String, Figure> HERE = Map.ofEntries(
            Map.entry("size-factor", FactorFigures::size),
            Map.entry("wet-service", FactorFigures::wetService),
            Map.entry("flat-use", FactorFigures::flatUse),
            Map.entry("repetitive-member", FactorFigures::repetitive),
            Map.entry("load-duration", FactorFigures::loadDuration),
            Map.entry("bearing-area", FactorFigures::bearingArea),
            Map.entry("temperature", FactorFigures::temperature),
            Map.entry("effective-length", StabilityFigures::effectiveLength),
            Map.entry("beam-stability", StabilityFigures::midspanLoad),
            Map.entry("beam-stability-limit", StabilityFigures::limit),
            Map.entry("lateral-support-rules", StabilityFigures::lateralSupport),
            Map.entry("section-properties", CapacityFigures::section),
            Map.entry("adjusted-values", CapacityFigures::adjusted),
            Map.entry("built-up-beam", CapacityFigures::builtUp),
            Map.entry("girder-span-table", CapacityFigures::girderSpan),
            Map.entry("notched-shear", CapacityFigures::notchedShear),
            Map.entry("bearing", CapacityFigures::bearing),
            Map.entry("built-up-nailing", CapacityFigures::nailing),
            Map.entry("minimum-bearing", CapacityFigures::leastBearing),
            Map.entry("presumptive-bearing", CapacityFigures::presumptive),
            Map.entry("pad-area-table", CapacityFigures::padArea),
            Map.entry("deflection-limits", CapacityFigures::deflectionDivisor),
            Map.entry("lag-withdrawal", PostFigures::withdrawal),
            Map.entry("lag-lateral", PostFigures::lateral),
            Map.entry("base-plate-thickness", PostFigures::plate),
            Map.entry("concrete-bearing", PostFigures::concrete),
            Map.entry("pipe-column", PostFigures::column),
            Map.entry("tube-stress", PostFigures::tube),
            Map.entry("prop-class", ColumnFigures::prop),
            Map.entry("stepped-column", SteppedFigures::critical),
            Map.entry("pin-joint", SteppedFigures::pin),
            Map.entry("column-stability", ColumnFigures::timber),
            Map.entry("column-slenderness-limit", ColumnFigures::limit),
            Map.entry("column-sizing", SizingFigures::column),
            Map.entry("column-euler", SlenderFigures::euler),
            Map.entry("eccentric-column", SlenderFigures::eccentric),
            Map.entry("built-up-column", SizingFigures::builtUp),
            Map.entry("angular-distortion", SizingFigures::distortion),
            Map.entry("beam-load", LoadFigures::beam),
            Map.entry("bearing-rules", ColumnFigures::endGrain),
            Map.entry("plain-concrete-pad", PadFigures::plainConcrete),
            Map.entry("slab-on-ground", PadFigures::slab),
            Map.entry("crib", PadFigures::crib),
            Map.entry("subgrade-modulus", PadFigures::subgrade),
            Map.entry("subgrade-range", PadFigures::range),
            Map.entry("bearing-factors", SoilFigures::factors),
            Map.entry("bearing-capacity", SoilFigures::capacity),
            Map.entry("bearing-inclination", SoilFigures::inclination),
            Map.entry("bearing-size", SoilFigures::size),
            Map.entry("bearing-rigid-base", SoilFigures::rigidBase),
            Map.entry("bearing-plate", SoilFigures::plateBearing),
            Map.entry("stress-centre", SoilFigures::stressCentre),
            Map.entry("stress-corner", SoilFigures::stressCorner),
            Map.entry("stress-point", SoilFigures::stressPoint),
            Map.entry("stress-spread", SoilFigures::stressSpread),
            Map.entry("settlement-layer", SoilFigures::layer),
            Map.entry("settlement-shape", SoilFigures::shape),
            Map.entry("settlement-stiffness", SoilFigures::stiffness),
            Map.entry("settlement-plate", SoilFigures::plateSettlement),
            Map.entry("settlement-distortion", SoilFigures::distortion),
            Map.entry("power-screw", LiftFigures::screw),
            Map.entry("distortion-limits", LiftFigures::distortion),
            Map.entry("tensile-strain", LiftFigures::strain),
            Map.entry("joist-limits", FloorFigures::joistLimits),
            Map.entry("joist-section", FloorFigures::joistSection),
            Map.entry("long-term-deflection", FloorFigures::longTerm),
            Map.entry("tributary-load", FloorFigures::tributary));

    /** Kinds that have a test of their own. */
    private static final Map<String, String> ELSEWHERE = Map.of(
            "continuous-beam", "dev.underprop.engine.statics.PublishedBeamsTest",
            "joist-span-table", "dev.underprop.engine.assess.PublishedSpansTest");

    /** Kinds of which the engine holds nothing; the tables go through the catalogue's door in its own tests. */
    private static final Map<String, String> NOT_HELD = Map.of(
            "lumber-values", "reference values stand in the catalogue; the engine takes them as given",
            "dead-loads", "loads are given by the plan; the catalogue holds tables of them",
            "live-loads", "loads are given by the plan; the catalogue holds tables of them",
            "soil-table", "pressures of these tables stand in the catalogue; a plan gives them with their source",
            "live-load-reduction", "live load is never reduced");

    /** Numbers of exercised kinds that the engine does not hold. */
    private static final Map<String, String> LEFT = Map.ofEntries(
            Map.entry("section-properties/breadth", "dressed sizes stand in the catalogue, outside the engine"),
            Map.entry("section-properties/depth", "dressed sizes stand in the catalogue, outside the engine"),
            Map.entry("bearing-rules/Fc_perp002Factor", "the reduced deformation limit is not in the engine"),
            Map.entry("girder-span-table/jackStuds", "studs beside an opening are no part of a shore"),
            Map.entry("notched-shear/depthAtNotch", "a difference of two inputs"),
            Map.entry("presumptive-bearing/lateralBearing", "no lateral load on the ground is judged yet"),
            Map.entry("presumptive-bearing/slidingFriction", "no lateral load on the ground is judged yet"),
            Map.entry("presumptive-bearing/slidingCohesion", "no lateral load on the ground is judged yet"),
            Map.entry("lateral-support-rules/bridgingSpacingMax", "stands in the words of the rule, not as a number"),
            Map.entry(
                    "settlement-layer/settlement", "printed with (2 - nu)/(1 - nu) where Steinbrenner has (1 - 2 nu)"),
            Map.entry("settlement-shape/squareRigid", "printed with 0.99 where other references have 0.82 to 0.88"),
            Map.entry("joist-section/deflectionLimit", "a limit of another country's practice"),
            Map.entry("deflection-limits/plastered ceilings", "no ceilings are judged"),
            Map.entry("deflection-limits/other ceilings", "no ceilings are judged"),
            Map.entry("deflection-limits/rafters steeper than 3:12 without finished ceiling", "no rafters are judged"),
            Map.entry("deflection-limits/interior walls and partitions", "no walls are judged"));

    private static String key(Case published, Expected wanted) {
        boolean byMember = published.kind().equals("deflection-limits");
        return published.kind() + "/" + (byMember ? wanted.given().text("member") : wanted.quantity());
    }

    @TestFactory
    Stream<DynamicTest> everyNumberIsReproduced() {
        return Fixtures.all().stream()
                .filter(c -> HERE.containsKey(c.kind()))
                .flatMap(c -> c.expected().stream()
                        .filter(e -> !LEFT.containsKey(key(c, e)))
                        .map(e -> DynamicTest.dynamicTest(c + " " + e, () -> check(c, e))));
    }

    private static void check(Case published, Expected wanted) {
        double actual = HERE.get(published.kind()).of(published, wanted) / UnitsOf.si(wanted.unit());
        assertThat(wanted.check(actual).agrees())
                .as(wanted.check(actual).message())
                .isTrue();
        if (wanted.computed().isPresent()) {
            assertThat(wanted.checkComputed(actual).agrees())
                    .as(wanted.checkComputed(actual).message())
                    .isTrue();
        }
    }

    @Test
    void everyKindIsExercisedOrNamedWithAReason() throws ClassNotFoundException {
        Set<String> kinds = Fixtures.all().stream().map(Case::kind).collect(Collectors.toCollection(TreeSet::new));
        Set<String> known = new TreeSet<>(HERE.keySet());
        known.addAll(ELSEWHERE.keySet());
        known.addAll(NOT_HELD.keySet());

        assertThat(known).isEqualTo(kinds);
        assertThat(HERE.size() + ELSEWHERE.size() + NOT_HELD.size()).isEqualTo(kinds.size());
        for (String test : ELSEWHERE.values()) {
            assertThat(Stream.of(Class.forName(test).getDeclaredMethods()))
                    .anyMatch(m -> m.isAnnotationPresent(TestFactory.class));
        }
    }

    @Test
    void whatIsLeftOutStandsInTheFixtures() {
        Set<String> keys = Fixtures.all().stream()
                .filter(c -> HERE.containsKey(c.kind()))
                .flatMap(c -> c.expected().stream().map(e -> key(c, e)))
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(keys).containsAll(LEFT.keySet());
        for (String kind : HERE.keySet()) {
            assertThat(keys).as(kind).anyMatch(k -> k.startsWith(kind + "/") && !LEFT.containsKey(k));
        }
    }

    @Test
    void counts() {
        Map<String, Integer> byKind = new TreeMap<>();
        Map<String, Set<String>> byStanding = new TreeMap<>();
        int cases = 0;
        int numbers = 0;
        for (Case published : Fixtures.all()) {
            if (!NOT_HELD.containsKey(published.kind())) {
                cases++;
                numbers += (int) published.expected().stream()
                        .filter(e -> !LEFT.containsKey(key(published, e)))
                        .count();
                byKind.merge(published.kind(), 1, Integer::sum);
                byStanding
                        .computeIfAbsent(published.standing().word(), s -> new TreeSet<>())
                        .add(published.countedAs());
            }
        }
        System.out.println("the engine reproduces " + numbers + " numbers of " + cases + " fixture cases: " + byKind
                + "; counted with rows of a table as one, by standing: "
                + byStanding.entrySet().stream()
                        .map(e -> e.getKey() + " " + e.getValue().size())
                        .collect(Collectors.joining(", ")));
        assertThat(byKind.keySet()).hasSize(HERE.size() + ELSEWHERE.size());
        assertThat(byStanding.values().stream().mapToInt(Set::size).sum()).isGreaterThanOrEqualTo(80);
    }

    /** The slender member of the fixture is refused as a shore beam; nothing is clamped. */
    @Test
    void aSlenderBeamHasNoCapacityInAWholePlan() {
        Inputs in = Fixtures.ofKind("beam-stability-limit").get(0).inputs();
        Member member = Lumber.member("DF-L", "No.2", in.text("size"), (int) in.number("plies"));
        double span = in.number("unbracedLength_ft") * Plans.FOOT;
        CheckResult result = Simple.check(
                Simple.beam(member, span, 0, 0.1, List.of(Simple.uniform(100, 0))), CheckId.BEAM_BENDING, "beam of A");

        assertThat(result.finding()).isInstanceOf(CheckResult.Refused.class);
        assertThat(result.verdict()).isEqualTo(Verdict.FAIL);
    }
}
