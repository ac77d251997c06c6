package dev.underprop.wire.meaning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.EndNotch;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Seat;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.wire.tree.Format;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a plan declares of timber, bearings, loads and situations comes to the engine in SI, from either system of units. */
class DeclaredFloorTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final double POUND = 4.4482216152605;

    private static Member joist(JobPlan plan, String name) {
        return plan.floor().joists().stream()
                .filter(joist -> joist.name().equals(name))
                .map(Joist::member)
                .findFirst()
                .orElseThrow();
    }

    private static void assertSection(RectangularSection section, double breadth, double depth) {
        assertThat(section.breadth()).isCloseTo(breadth, EXACT);
        assertThat(section.depth()).isCloseTo(depth, EXACT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void whoAssumedAGradeIsKeptAndAnOwnGradeIsAStampedOne(String file) {
        JobPlan plan = Reading.file(file).plan();
        assertThat(joist(plan, "J1").details().origin()).isEqualTo(new Member.Assumed("surveyor, from the look of it"));
        assertThat(joist(plan, "notched").details().origin())
                .isEqualTo(new Member.Assumed("surveyor, from the look of it"));
        assertThat(joist(plan, "sistered").details().origin()).isEqualTo(new Member.Stamped());
        assertThat(girder(plan).member().details().origin()).isEqualTo(new Member.Assumed("surveyor"));
        assertThat(plan.shores().get(0).beam().details().origin()).isEqualTo(new Member.Stamped());
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void aReducedSectionIsTheSectionAndTheWholeOneWeighs(String file) {
        JobPlan plan = Reading.file(file).plan();
        Member whole = joist(plan, "J1");
        assertThat(whole.details().section()).isEqualTo(new Member.Whole());
        assertThat(whole.nominal()).isTrue();
        Member notched = joist(plan, "notched");
        assertSection(notched.ply(), 0.0381, 0.1524);
        Member.Reduced reduced = (Member.Reduced) notched.details().section();
        assertSection(reduced.gross(), 0.0381, 0.18415);
        assertThat(reduced.by()).isEqualTo("surveyor, at the notch over the pipe");
        assertThat(notched.nominal()).isFalse();
        assertThat(notched.weight()).isEqualTo(whole.weight());
        assertThat(notched.label()).contains("2x8, net ").contains(" x ");
        Member old = joist(plan, "old");
        assertSection(old.ply(), 0.04445, 0.1778);
        assertSection(((Member.Reduced) old.details().section()).gross(), 0.0508, 0.19685);
        assertThat(old.weight()).isCloseTo(whole.weight() * 0.0508 * 0.19685 / (0.0381 * 0.18415), EXACT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void treatmentAndIncisingAreToldApart(String file) {
        JobPlan plan = Reading.file(file).plan();
        assertThat(joist(plan, "J1").details().treatment()).isEqualTo(Member.Treated.UNTREATED);
        assertThat(joist(plan, "sistered").details().treatment()).isEqualTo(Member.Treated.INCISED);
        assertThat(joist(plan, "old").details().treatment()).isEqualTo(Member.Treated.INCISING_UNSTATED);
        assertThat(joist(plan, "doubtful").details().treatment()).isEqualTo(Member.Treated.FIRE_RETARDANT);
        assertThat(girder(plan).member().details().treatment()).isEqualTo(Member.Treated.NOT_INCISED);
        assertThat(plan.shores().get(0).beam().details().treatment()).isEqualTo(Member.Treated.UNTREATED);
        assertThat(plan.shores().get(1).beam().details().treatment()).isEqualTo(Member.Treated.UNSTATED);
    }

    @Test
    void whatIsLeftOfTheSetsSectionIsNotLeftOfAnother() {
        String text = Reading.text("declared.json")
                .replace(
                        "\"size\": \"2x8\", \"species\"",
                        "\"size\": \"2x8\", \"netBreadth\": \"1 in\", \"netDepth\": \"7 1/4 in\", \"netBy\": \"set\","
                                + " \"incised\": true, \"species\"")
                .replace("\"treatment\": \"none\", \"selfWeight\"", "\"treatment\": \"preserved\", \"selfWeight\"")
                .replace("\"at\": \"11 ft\", \"grade\"", "\"at\": \"11 ft\", \"size\": \"2x8\", \"grade\"");
        JobPlan plan = Reading.understood(text, Format.JSON).plan();
        assertSection(joist(plan, "J1").ply(), 0.0254, 0.18415);
        assertSection(joist(plan, "notched").ply(), 0.0381, 0.1524);
        assertSection(joist(plan, "doubtful").ply(), 0.0254, 0.18415);
        assertSection(joist(plan, "sistered").ply(), 0.0381, 0.18415);
        assertThat(joist(plan, "sistered").details().section()).isEqualTo(new Member.Whole());
        assertThat(joist(plan, "J1").details().treatment()).isEqualTo(Member.Treated.INCISED);
        assertThat(joist(plan, "old").details().treatment()).isEqualTo(Member.Treated.INCISING_UNSTATED);
    }

    private static Girder girder(JobPlan plan) {
        return (Girder) plan.floor().bearings().get(1).body();
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void aGirderIsABeamOnPiersInOrderOfX(String file) {
        JobPlan plan = Reading.file(file).plan();
        Bearing bearing = plan.floor().bearings().get(1);
        assertThat(bearing.stiffness()).isInfinite();
        assertThat(bearing.length()).isCloseTo(0.1143, EXACT);
        assertThat(bearing.from()).isCloseTo(-0.1524, EXACT);
        assertThat(bearing.to()).isCloseTo(4.1148, EXACT);
        assertThat(bearing.fastening()).isEqualTo(new Fastening.Undescribed("toe nails of unknown strength"));
        Girder girder = girder(plan);
        assertThat(girder.start()).isCloseTo(-0.1524, EXACT);
        assertThat(girder.length()).isCloseTo(4.2672, EXACT);
        assertThat(girder.member().plies()).isEqualTo(3);
        assertSection(girder.member().ply(), 0.03175, 0.23495);
        assertThat(girder.piers()).extracting(Girder.Pier::name).containsExactly("west pier", "jack post", "east pier");
        Girder.Pier west = girder.piers().get(0);
        assertThat(west.x()).isZero();
        assertThat(west.length()).isCloseTo(0.2032, EXACT);
        assertThat(west.stiffness()).isInfinite();
        assertThat(((Fastening.Held) west.fastening()).uplift()).isCloseTo(500 * POUND, EXACT);
        Girder.Pier jack = girder.piers().get(1);
        assertThat(jack.x()).isCloseTo(1.9812, EXACT);
        assertThat(jack.stiffness()).isCloseTo(60_000 * POUND / 0.0254, within(1e-3));
        assertThat(jack.fastening()).isEqualTo(new Fastening.Loose());
        assertThat(plan.floor().bearings().get(0).body()).isEqualTo(new Bearing.Line());
    }

    @Test
    void aJoistBeyondTheGirderDoesNotRestOnIt() {
        String text = Reading.text("declared.json")
                .replace(
                        "\"start\": \"-6 in\", \"length\": \"14 ft\" },\n        \"piers\"",
                        "\"start\": \"-6 in\"," + " \"length\": \"13 ft 5 in\" },\n        \"piers\"")
                .replace("\"at\": \"13 ft\", \"length\": \"8 in\"", "\"at\": \"12 ft 10 in\", \"length\": \"8 in\"");
        JobPlan plan = Reading.understood(text, Format.JSON).plan();
        Bearing bearing = plan.floor().bearings().get(1);
        assertThat(plan.floor().joists().stream().filter(joist -> !bearing.under(joist)))
                .extracting(Joist::name)
                .containsExactly("doubtful");
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void windMayLiftAndEarthquakeIsASize(String file) {
        List<Load> loads = Reading.file(file).plan().floor().loads();
        Intensity area = loads.get(0).intensity();
        assertThat(area.dead()).isCloseTo(12 * POUND / (0.3048 * 0.3048), EXACT);
        assertThat(area.wind()).isCloseTo(-2 * POUND / (0.3048 * 0.3048), EXACT);
        assertThat(area.seismic()).isCloseTo(POUND / (0.3048 * 0.3048), EXACT);
        Intensity line = loads.get(1).intensity();
        assertThat(line.wind()).isCloseTo(-20 * POUND / 0.3048, EXACT);
        assertThat(line.seismic()).isCloseTo(30 * POUND / 0.3048, EXACT);
        Intensity point = loads.get(2).intensity();
        assertThat(point.wind()).isCloseTo(-1200 * POUND, EXACT);
        assertThat(point.seismic()).isCloseTo(100 * POUND, EXACT);
        assertThat(loads.get(3).intensity().dead()).isZero();
        assertThat(loads.get(3).intensity().wind()).isCloseTo(250 * POUND, EXACT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void situationsTakeAwayBearingsPartsAndPiers(String file) {
        List<Situation> situations = Reading.file(file).plan().situations();
        assertThat(situations.get(0)).isEqualTo(new Situation("shored", List.of(), List.of()));
        assertThat(situations.get(1).clear()).containsExactly(1, 0);
        assertThat(situations.get(1).takesAway()).isFalse();
        assertThat(situations.get(2).removed()).isEmpty();
        assertThat(situations.get(2).piers()).containsExactly(new Situation.PierOut(1, 1));
        assertThat(situations.get(3).piers()).containsExactly(new Situation.PierOut(1, 2));
        assertThat(situations.get(3).parts()).singleElement().satisfies(part -> {
            assertThat(part.bearing()).isZero();
            assertThat(part.from()).isCloseTo(-0.0254, EXACT);
            assertThat(part.to()).isCloseTo(1.524, EXACT);
        });
        assertThat(situations.get(3).clear()).containsExactly(1);
        assertThat(situations.get(4).removed()).containsExactly(1);
        assertThat(situations.get(4).piers()).isEmpty();
    }

    @Test
    void whatWasTakenIsSaid() {
        List<String> taken = Reading.file("declared.json").assumptions();
        assertThat(taken)
                .contains("The grade of 2x8 Spruce-Pine-Fir No.2 is assumed, not read on the timber (surveyor, from the"
                        + " look of it).")
                .contains("What is left of 3-2x10, net 1 1/4 in x 9 1/4 in Douglas Fir-Larch No.2 is taken as stated,"
                        + " over the whole length (surveyor, worm holes).")
                .anyMatch(text -> text.startsWith("The weight of girders is computed"))
                .noneMatch(text -> text.startsWith("Timber measured instead of sold by size"))
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void seatsAreFlatHungOrNotSaid(String file) {
        JobPlan plan = Reading.file(file).plan();
        Seat.Flat front = (Seat.Flat) plan.floor().bearings().get(0).seat();
        assertThat(front.on()).isEqualTo(Seat.Surface.SILL_ON_MASONRY);
        assertThat(front.by()).isEqualTo("the engineer");
        assertThat(front.pressure()).isCloseTo(405 * POUND / (0.0254 * 0.0254), within(1e-3));
        assertThat(plan.floor().bearings().get(1).seat()).isEqualTo(new Seat.Undeclared());
        Seat.Hung rear = (Seat.Hung) plan.floor().bearings().get(2).seat();
        assertThat(rear.by()).isEqualTo("hangers, listed");
        assertThat(rear.load()).isCloseTo(900 * POUND, EXACT);
        List<Girder.Pier> piers = girder(plan).piers();
        assertThat(piers.get(2).name()).isEqualTo("east pier");
        assertThat(piers.get(2).seat()).isEqualTo(new Seat.Flat(Seat.Surface.MASONRY, "surveyor", Double.NaN));
        assertThat(piers.get(0).seat()).isEqualTo(new Seat.Undeclared());
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void endNotchesAreTheOwnOnesElseThoseOfTheSet(String file) {
        JobPlan plan = Reading.file(file).plan();
        for (Joist joist : plan.floor().joists()) {
            double depth = ((EndNotch.Cut) joist.notch()).depth();
            assertThat(depth).isCloseTo(joist.name().equals("old") ? 0 : 0.0254, EXACT);
        }
        assertThat(Reading.file("two-bays.json").plan().floor().joists())
                .allMatch(joist -> joist.notch() instanceof EndNotch.Unstated);
    }

    @Test
    void weightsGivenInPlaceOfTheCatalogueAreSaid() {
        String given = " as the plan gives it, in place of the weight computed from size and species.";
        String text = Reading.text("declared.yaml");
        List<String> taken = Reading.understood(text, Format.YAML).assumptions();
        assertThat(taken).contains("The joist at 3.9624 m weighs 0.043781708811619 kN/m" + given);
        assertThat(taken.stream().filter(one -> one.endsWith(given))).hasSize(1);

        String girder = text.replace("beam: {size: 2x10, plies: 3,", "beam: {size: 2x10, plies: 3, weight: 9 plf,");
        assertThat(Reading.understood(girder, Format.YAML).assumptions())
                .contains("The beam of girder girder weighs 9 plf" + given);

        String joists = text.replace("    selfWeight: added\n", "    selfWeight: added\n    weight: 3 plf\n");
        assertThat(Reading.understood(joists, Format.YAML).assumptions())
                .contains("Joists for which nothing else is said weigh 3 plf" + given);

        String included = text.replace("selfWeight: added", "selfWeight: included");
        assertThat(Reading.understood(included, Format.YAML).assumptions()).noneMatch(one -> one.endsWith(given));
    }

    @Test
    void weightOfAShoreBeamGivenInPlaceOfTheCatalogueIsSaid() {
        String text = Reading.text("carriage-house.json");
        assertThat(Reading.understood(text, Format.JSON).assumptions()).noneMatch(one -> one.contains("weighs"));

        String given = text.replaceFirst("\"plies\": *3", "\"plies\": 3, \"weight\": \"12 plf\"");
        assertThat(Reading.understood(given, Format.JSON).assumptions())
                .contains(
                        "The beam of shore A weighs 12 plf as the plan gives it, in place of the weight computed from size"
                                + " and species.");
    }
}
