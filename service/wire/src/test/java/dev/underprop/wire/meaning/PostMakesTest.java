package dev.underprop.wire.meaning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.PropClass;
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
}
