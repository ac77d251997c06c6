package dev.underprop.wire.meaning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.plan.Assembly;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.LagScrews;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.Restraint;
import dev.underprop.engine.plan.Shore;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a plan declares of shores and posts comes to the engine in SI, from either system of units. */
class DeclaredSupportTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Offset<Double> YIELD = within(1.0);
    private static final Offset<Double> STIFFNESS = within(1e-3);
    private static final double POUND = 4.4482216152605;
    private static final double KIP_PER_INCH = 1000 * POUND / 0.0254;

    private static Map<String, Post> posts(JobPlan plan) {
        return plan.shores().stream()
                .flatMap(shore -> shore.posts().stream())
                .collect(Collectors.toMap(Post::name, post -> post));
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void aShoreIsHeldSidewaysAndUpright(String file) {
        JobPlan plan = Reading.file(file).plan();
        Shore.Bracing first = plan.shores().get(0).bracing();
        Restraint.Held braces = (Restraint.Held) first.heads().along();
        assertThat(braces.by()).isEqualTo("diagonal braces, by the engineer");
        assertThat(braces.capacity()).isCloseTo(2000 * POUND, EXACT);
        assertThat(first.heads().across()).isEqualTo(new Restraint.Free());
        assertThat(first.roll()).isEqualTo(new Restraint.Held("blocking between the joists", Double.NaN));
        Shore.Bracing second = plan.shores().get(1).bracing();
        assertThat(second.heads()).isEqualTo(Restraint.Sides.UNDECLARED);
        assertThat(second.roll()).isEqualTo(new Restraint.Free());
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void stiffnessIsTheOwnOneElseThatOfTheType(String file) {
        Map<String, Post> posts = posts(Reading.file(file).plan());
        assertBetween(posts.get("A1"), 30, 120);
        assertBetween(posts.get("A2"), 40, 80);
        assertThat(((Post.About) posts.get("A3").stiffness()).value()).isCloseTo(70 * KIP_PER_INCH, STIFFNESS);
        assertThat(posts.get("A4").stiffness()).isEqualTo(new Post.Rigid());
        assertThat(((Post.About) posts.get("B1").stiffness()).value()).isCloseTo(50 * KIP_PER_INCH, STIFFNESS);
        assertThat(posts.get("B2").stiffness()).isEqualTo(new Post.Rigid());
        assertThat(posts.get("B3").stiffness()).isEqualTo(new Post.NoStiffness());
    }

    private static void assertBetween(Post post, double soft, double stiff) {
        Post.Between range = (Post.Between) post.stiffness();
        assertThat(range.soft()).isCloseTo(soft * KIP_PER_INCH, STIFFNESS);
        assertThat(range.stiff()).isCloseTo(stiff * KIP_PER_INCH, STIFFNESS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void eachEndIsTheOwnOneElseThatOfTheType(String file) {
        Map<String, Post> posts = posts(Reading.file(file).plan());
        Post.Ends byType = posts.get("A1").ends();
        assertThat(byType.head()).isEqualTo(new Post.Fastened("four screws through the plate", Double.NaN));
        assertThat(((Post.Fastened) byType.foot()).by()).isEqualTo("two anchors");
        assertThat(((Post.Fastened) byType.foot()).sideways()).isCloseTo(450 * POUND, EXACT);
        assertThat(byType.fastened()).isTrue();
        Post.Fastened own = (Post.Fastened) posts.get("A2").ends().head();
        assertThat(own.by()).isEqualTo("two lag screws");
        assertThat(own.sideways()).isCloseTo(300 * POUND, EXACT);
        assertThat(posts.get("A2").ends().foot()).isEqualTo(byType.foot());
        assertThat(posts.get("A3").ends().head()).isEqualTo(byType.head());
        assertThat(posts.get("A3").ends().foot()).isEqualTo(new Post.Unfastened());
        assertThat(posts.get("B1").ends()).isEqualTo(Post.Ends.UNDECLARED);
        assertThat(posts.get("B2").ends()).isEqualTo(new Post.Ends(new Post.Unfastened(), new Post.Unfastened()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void lagScrewsAreRead(String file) {
        Post.Fastened own = (Post.Fastened)
                posts(Reading.file(file).plan()).get("A2").ends().head();
        LagScrews screws = (LagScrews) own.screws();
        assertThat(screws.count()).isEqualTo(2);
        assertThat(screws.diameter()).isCloseTo(0.009525, EXACT);
        assertThat(screws.penetration()).isCloseTo(0.0762, EXACT);
        assertThat(screws.edge()).isCloseTo(0.01905, EXACT);
        assertThat(screws.end()).isCloseTo(0.1524, EXACT);
        assertThat(screws.spacing()).isCloseTo(0.1016, EXACT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void platesAreReadWithWhatMeetsThem(String file) {
        Map<String, Post> posts = posts(Reading.file(file).plan());
        PostType type = (PostType) posts.get("A1").type();
        assertThat(type.head().thickness()).isCloseTo(0.0127, EXACT);
        assertThat(type.head().yield()).isCloseTo(248.211262554061e6, YIELD);
        assertThat(((PostType.Round) type.head().shank()).diameter()).isCloseTo(0.0508, EXACT);
        assertThat(type.base().thickness()).isCloseTo(0.009525, EXACT);
        assertThat(type.base().yield()).isCloseTo(344.737864658418e6, YIELD);
        assertThat(((PostType.Square) type.base().shank()).side()).isCloseTo(0.0762, EXACT);
        PostType plain = (PostType) posts.get("B1").type();
        assertThat(plain.head().thickness()).isNaN();
        assertThat(plain.base().yield()).isNaN();
        assertThat(plain.base().shank()).isEqualTo(new PostType.NoShank());
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void aTubeIsRead(String file) {
        Map<String, Post> posts = posts(Reading.file(file).plan());
        PostType.Pipe pipe = (PostType.Pipe) ((PostType) posts.get("B1").type()).tube();
        assertThat(pipe.section().diameter()).isCloseTo(0.0889, EXACT);
        assertThat(pipe.section().wall()).isCloseTo(0.00508, EXACT);
        assertThat(pipe.yield()).isCloseTo(241.316505260893e6, YIELD);
        assertThat(pipe.eccentricity()).isCloseTo(0.0127, EXACT);
        assertThat(pipe.plain()).isTrue();
        assertThat(((PostType) posts.get("A1").type()).tube()).isEqualTo(new PostType.NoTube());
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void pliesAreReadWithTheirNailsAndJoints(String file) {
        JobPlan plan = Reading.file(file).plan();
        Assembly first = plan.shores().get(0).assembly();
        Assembly.Nails nails = (Assembly.Nails) first.nailing();
        assertThat(nails.diameter()).isCloseTo(0.0033274, EXACT);
        assertThat(nails.length()).isCloseTo(0.0762, EXACT);
        assertThat(nails.rows()).isEqualTo(2);
        assertThat(nails.spacing()).isCloseTo(0.6096, EXACT);
        assertThat(nails.staggered()).isTrue();
        assertThat(nails.bothFaces()).isTrue();
        assertThat(nails.everyPly()).isTrue();
        assertThat(nails.atEnds()).isEqualTo(3);
        assertThat(first.joints()).isEqualTo(new Assembly.JointsAt(List.of()));
        Assembly second = plan.shores().get(1).assembly();
        assertThat(second.nailing()).isEqualTo(new Assembly.NoNailing());
        Assembly.Joint joint = ((Assembly.JointsAt) second.joints()).all().get(0);
        assertThat(joint.ply()).isEqualTo(2);
        assertThat(joint.x()).isCloseTo(1.8288, EXACT);
    }
}
