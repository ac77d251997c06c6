package dev.underprop.wire.meaning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.PropClass;
import dev.underprop.engine.plan.Telescope;
import dev.underprop.engine.plan.TimberPost;
import dev.underprop.wire.tree.Format;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What a plan declares of the make of a post comes to the engine in SI. */
class PostMakesTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private static PostType type(String members) {
        String text = Reading.text("declared.json").replace("\"name\": \"stout\",", "\"name\": \"stout\", " + members);
        return (PostType) Reading.understood(text, Format.JSON)
                .plan()
                .shores()
                .get(1)
                .posts()
                .get(1)
                .type();
    }

    private static TimberPost timber(String members) {
        return (TimberPost) type("\"timber\": {" + members + "},").shaft();
    }

    @Test
    void aClassIsReadAsMarked() {
        assertThat(type("\"propClass\": \"b 35\",").named()).isEqualTo(new PropClass(PropClass.Letter.B, 3.5));
        assertThat(type("").named()).isEqualTo(new PostType.NoClass());
        assertThat(type("").shaft()).isEqualTo(new PostType.NoShaft());
    }

    @Test
    void aPostOfOneStick() {
        TimberPost post =
                timber("\"size\": \"4x4\", \"species\": \"hem-fir\", \"grade\": \"No.2\", \"moisture\": \"dry\","
                        + " \"treatment\": \"none\", \"eccentricity\": \"1/2 in\", \"duringConstruction\": true");

        assertThat(post.eccentricity()).isCloseTo(0.0127, EXACT);
        assertThat(post.construction()).isTrue();
        assertThat(post.joined()).isEqualTo(new TimberPost.Unjoined());
        assertThat(post.member().plies()).isEqualTo(1);
        assertThat(post.member().breadth()).isCloseTo(0.0889, EXACT);
        assertThat(post.member().moisture()).isEqualTo(Member.Moisture.DRY);
        assertThat(post.member().details().treatment()).isEqualTo(Member.Treated.UNTREATED);
        assertThat(post.member().grade().compression()).isCloseTo(1300 * 6894.757293168361, within(1e-3));
    }

    @Test
    void boardsWithTheirJoint() {
        TimberPost post = timber("\"size\": \"2x6\", \"plies\": 3, \"species\": \"hem-fir\", \"grade\": \"No.2\","
                + " \"eccentricity\": \"0 in\", \"joint\": {\"by\": \"nails\", \"diameter\": \"0.2 in\","
                + " \"length\": \"4 1/4 in\", \"end\": \"3 in\", \"spacing\": \"5 in\", \"rows\": 2,"
                + " \"between\": \"2 in\", \"edge\": \"1 1/2 in\", \"detailed\": true}");
        TimberPost.Fasteners nails = (TimberPost.Fasteners) post.joined();

        assertThat(post.construction()).isFalse();
        assertThat(post.member().plies()).isEqualTo(3);
        assertThat(nails.bolts()).isFalse();
        assertThat(nails.diameter()).isCloseTo(0.00508, EXACT);
        assertThat(nails.length()).isCloseTo(0.10795, EXACT);
        assertThat(nails.end()).isCloseTo(0.0762, EXACT);
        assertThat(nails.spacing()).isCloseTo(0.127, EXACT);
        assertThat(nails.rows()).isEqualTo(2);
        assertThat(nails.between()).isCloseTo(0.0508, EXACT);
        assertThat(nails.edge()).isCloseTo(0.0381, EXACT);
        assertThat(nails.detailed()).isTrue();
    }

    private static Telescope telescope(String members) {
        return (Telescope) type("\"telescope\": {\"outer\": {\"diameter\": \"60.3 mm\", \"wall\": \"4 mm\","
                        + " \"yieldStress\": \"235 MPa\"}, \"inner\": {\"diameter\": \"48.3 mm\", \"wall\": \"3 mm\"},"
                        + " \"outerLength\": \"1.2 m\", \"overlap\": \"300 mm\"" + members + "},")
                .shaft();
    }

    @Test
    void aTelescopicPost() {
        Telescope post =
                telescope(", \"eccentricity\": \"10 mm\", \"pin\": {\"diameter\": \"16 mm\", \"hole\": \"18 mm\","
                        + " \"yieldStress\": \"250 MPa\", \"tensileStrength\": \"400 MPa\"}, \"screw\": {\"at\": \"foot\","
                        + " \"root\": \"30 mm\", \"yieldStress\": \"260 MPa\", \"nutYieldStress\": \"210 MPa\","
                        + " \"exposed\": \"200 mm\", \"engaged\": \"50 mm\", \"play\": \"0.5 mm\"}");
        Telescope.Pin pin = (Telescope.Pin) post.pin();
        Telescope.Screw screw = (Telescope.Screw) post.thread();

        assertThat(post.outer().tube().diameter()).isCloseTo(0.0603, EXACT);
        assertThat(post.outer().yield()).isCloseTo(235e6, within(1e-3));
        assertThat(post.inner().tube().wall()).isCloseTo(0.003, EXACT);
        assertThat(post.inner().yield()).isNaN();
        assertThat(post.outerLength()).isCloseTo(1.2, EXACT);
        assertThat(post.overlap()).isCloseTo(0.3, EXACT);
        assertThat(post.eccentricity()).isCloseTo(0.01, EXACT);
        assertThat(pin.diameter()).isCloseTo(0.016, EXACT);
        assertThat(pin.hole()).isCloseTo(0.018, EXACT);
        assertThat(pin.yield()).isCloseTo(250e6, within(1e-3));
        assertThat(pin.strength()).isCloseTo(400e6, within(1e-3));
        assertThat(screw.foot()).isTrue();
        assertThat(screw.root()).isCloseTo(0.03, EXACT);
        assertThat(screw.yield()).isCloseTo(260e6, within(1e-3));
        assertThat(screw.nutYield()).isCloseTo(210e6, within(1e-3));
        assertThat(screw.exposed()).isCloseTo(0.2, EXACT);
        assertThat(screw.engaged()).isCloseTo(0.05, EXACT);
        assertThat(screw.play()).isCloseTo(0.0005, EXACT);
    }

    @Test
    void whatIsNotSaidOfATelescopicPostStaysUnsaid() {
        Telescope post = telescope("");

        assertThat(post.pin()).isEqualTo(new Telescope.NoPin());
        assertThat(post.thread()).isEqualTo(new Telescope.UnstatedScrew());
        assertThat(post.eccentricity()).isCloseTo(0.025, EXACT);
        assertThat(telescope(", \"noScrew\": true").thread()).isEqualTo(new Telescope.NoScrew());
    }
}
