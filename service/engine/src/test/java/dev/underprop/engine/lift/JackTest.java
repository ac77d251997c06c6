package dev.underprop.engine.lift;

import static dev.underprop.engine.lift.Lifts.ACME;
import static dev.underprop.engine.lift.Lifts.FOOT;
import static dev.underprop.engine.lift.Lifts.INCH;
import static dev.underprop.engine.lift.Lifts.POUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.Halt;
import dev.underprop.engine.assess.Assessor;
import dev.underprop.engine.assess.ContactPlace;
import dev.underprop.engine.assess.SituationResult;
import dev.underprop.engine.assess.StudiedFloor;
import dev.underprop.engine.check.MemberLimits;
import dev.underprop.engine.clause.asce7_16.Combination;
import dev.underprop.engine.clause.asce7_16.LoadKind;
import dev.underprop.engine.clause.asce7_16.Section2_4;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.statics.ContactSolver;
import dev.underprop.engine.statics.Diagram;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Posts lifted free by jacks beside them, whose screws then follow without load. */
class JackTest {

    private static final LiftLimits EIGHTH = Lifts.limits(INCH / 8, 1.0 / 40);
    private static final double STROKE = 5 * INCH;

    /** Posts 4 ft apart, strong enough, near one wall that is taken out. */
    private final JobPlan two = Lifts.fastened(Lifts.row(2, new Post.Rigid(), 20000 * POUND, 2 * FOOT));

    private final JobPlan four = Lifts.fastened(Lifts.row(4, new Post.Rigid(), 9000 * POUND, 2 * FOOT));

    private static Post stand(String name, double x, double capacity) {
        return new Post(
                name,
                x,
                6 * FOOT,
                new Post.Rigid(),
                0,
                0,
                Lifts.type(capacity),
                new Pad("small", Pad.Kind.CONCRETE, 18 * INCH, 18 * INCH, 10 * INCH, new Pad.Known(0, true)));
    }

    private static LiftRequest.Jack jack(int post, double x) {
        return new LiftRequest.Jack(post, stand("jack " + post, x, 20000 * POUND), STROKE);
    }

    private static LiftRequest by(LiftRequest asked, List<LiftRequest.Jack> jacks) {
        return new LiftRequest(
                asked.during(),
                asked.survey(),
                asked.target(),
                asked.limits(),
                asked.screws(),
                asked.order(),
                asked.crept(),
                asked.progress(),
                asked.after(),
                jacks);
    }

    /** A jack beside every post, so far to its right; the last one's to its left. */
    private static List<LiftRequest.Jack> beside(JobPlan plan, double off) {
        List<LiftRequest.Jack> jacks = new ArrayList<>();
        List<Post> posts = plan.shores().get(0).posts();
        for (int p = 0; p < posts.size(); p++) {
            jacks.add(jack(p, posts.get(p).x() + (p + 1 < posts.size() ? off : -off)));
        }
        return jacks;
    }

    /** One wall is out, so joists rest on two places each and the beam on two posts: the lever rule tells every force. */
    @Test
    void carriesWhatTheLeverRuleGivesIt() {
        double span = 4 * FOOT;
        // Not in the very middle: there beam and floor would balance on the jack alone, and rounding decide whether
        // they stand.
        for (double off : new double[] {18 * INCH, 23.9 * INCH, -5 * INCH}) {
            LiftRequest asked = by(
                    Lifts.request(two, EIGHTH, ACME, INCH / 8, 0),
                    List.of(new LiftRequest.Jack(0, without(stand("jack", off, 20000 * POUND)), STROKE)));
            LiftPlan plan = Lifter.plan(two, asked);

            assertThat(plan.obstacle()).isInstanceOf(LiftPlan.NoObstacle.class);
            LiftPlan.Turn turn = plan.stages().get(0).turns().get(0);
            assertThat(turn.jack().name()).isEqualTo("jack");
            double expected = turn.before().least() * span / (span - off);
            assertThat(turn.jack().load().least()).isCloseTo(expected, within(1e-3));
            assertThat(turn.jack().load().greatest()).isCloseTo(expected, within(1e-3));
            assertThat(turn.torque().known()).isFalse();
        }
    }

    private static Post without(Post stand) {
        return new Post(
                stand.name(), stand.x(), stand.height(), stand.stiffness(), 0, 0, stand.type(), new Post.NoPad());
    }

    /**
     * The jack's lift by another way: the plan with the jack in the freed post's place, raised by what was told, has the beam
     * over the post where a rigid post raised by turn and clearance would have it. Unloaded beams stay straight: on two
     * supports a raise of the jack by z moves the beam over the post by z times their distances' ratio.
     */
    @Test
    void liftsAsFarAsTheBeamBendsAndThePostIsToBeClear() {
        double span = 4 * FOOT;
        double off = 22 * INCH;
        List<LiftRequest.Jack> jacks = List.of(jack(0, off));
        LiftPlan small = Lifter.plan(two, by(Lifts.request(two, EIGHTH, ACME, INCH / 32, 0), jacks));
        LiftPlan large = Lifter.plan(two, by(Lifts.request(two, EIGHTH, ACME, INCH / 8, 0), jacks));
        LiftPlan.JackUse one = small.stages().get(0).turns().get(0).jack();
        LiftPlan.JackUse other = large.stages().get(0).turns().get(0).jack();

        double more = (3.0 / 32) * INCH * (span - off) / span;
        assertThat(other.lift().least() - one.lift().least()).isCloseTo(more, within(1e-8));
        assertThat(one.lift().least()).isGreaterThan(2.0 / 32 * INCH * (span - off) / span);
        assertThat(one.lift().greatest()).isLessThan(STROKE);
    }

    @Test
    void leavesTheFloorWhereScrewsUnderLoadWouldLeaveIt() {
        LiftRequest asked = Lifts.request(four, EIGHTH, ACME, 0.25 * INCH);
        LiftPlan turned = Lifter.plan(four, asked);
        LiftPlan jacked = Lifter.plan(four, by(asked, beside(four, 22 * INCH)));

        assertThat(turned.outcome()).isEqualTo(LiftPlan.Outcome.PLANNED);
        assertThat(jacked.outcome()).as(jacked.open().toString()).isEqualTo(LiftPlan.Outcome.PLANNED);
        assertThat(jacked.points()).hasSameSizeAs(turned.points());
        for (int i = 0; i < jacked.points().size(); i++) {
            assertThat(jacked.points().get(i).end().least())
                    .isCloseTo(turned.points().get(i).end().least(), within(1e-9));
        }
        assertThat(jacked.stages())
                .allSatisfy(stage -> assertThat(stage.turns()).allSatisfy(turn -> {
                    assertThat(turn.jack().name()).isEqualTo("jack " + turn.post());
                    assertThat(turn.jack().load().least()).isPositive();
                    assertThat(turn.pull().known()).isFalse();
                }));
    }

    @Test
    void jackThatIsTooWeakStopsTheLift() {
        List<LiftRequest.Jack> jacks = new ArrayList<>(beside(four, 22 * INCH));
        jacks.set(1, new LiftRequest.Jack(1, stand("jack 1", 4 * FOOT + 22 * INCH, 100 * POUND), STROKE));
        LiftPlan plan = Lifter.plan(four, by(Lifts.request(four, EIGHTH, ACME, 0, INCH / 16, 0, 0), jacks));

        assertThat(plan.outcome()).isEqualTo(LiftPlan.Outcome.IMPOSSIBLE);
        LiftPlan.Stopped stopped = (LiftPlan.Stopped) plan.obstacle();
        assertThat(stopped.limit().kind()).isEqualTo(Limit.Kind.POST);
        assertThat(stopped.limit().place()).contains("jack 1");
        assertThat(stopped.value()).isGreaterThan(1);
    }

    @Test
    void strokeThatIsTooShortStopsTheLift() {
        List<LiftRequest.Jack> jacks = beside(four, 22 * INCH).stream()
                .map(j -> new LiftRequest.Jack(j.post(), j.stand(), INCH / 100))
                .toList();
        LiftPlan plan = Lifter.plan(four, by(Lifts.request(four, EIGHTH, ACME, 0.25 * INCH), jacks));

        LiftPlan.Stopped stopped = (LiftPlan.Stopped) plan.obstacle();
        assertThat(stopped.limit().kind()).isEqualTo(Limit.Kind.TRAVEL);
        assertThat(stopped.limit().place()).contains("stroke");
        assertThat(stopped.value()).isGreaterThan(INCH / 100);
    }

    /** From beyond the next post, a jack presses the beam down over the one that is to be freed. */
    @Test
    void jackThatCannotFreeItsPostStopsTheLift() {
        LiftPlan plan = Lifter.plan(
                two,
                by(
                        Lifts.request(two, EIGHTH, ACME, INCH / 8, 0),
                        List.of(new LiftRequest.Jack(0, without(stand("jack", 4.4 * FOOT, 20000 * POUND)), STROKE))));

        assertThat(plan.outcome()).isEqualTo(LiftPlan.Outcome.IMPOSSIBLE);
        assertThat(((LiftPlan.Stopped) plan.obstacle()).moves()).contains("jack");
    }

    @Test
    void whatAJackNeedsAndDoesNotHaveIsToldByName() {
        List<LiftRequest.Jack> jacks = new ArrayList<>(beside(four, 22 * INCH));
        jacks.set(
                1,
                new LiftRequest.Jack(
                        1,
                        new Post(
                                "jack 1",
                                4 * FOOT + 22 * INCH,
                                6 * FOOT,
                                new Post.Rigid(),
                                0,
                                0,
                                new Post.NoType(),
                                new Post.NoPad()),
                        STROKE));
        LiftPlan plan = Lifter.plan(four, by(Lifts.request(four, EIGHTH, ACME, 0.25 * INCH), jacks));

        assertThat(plan.outcome()).isEqualTo(LiftPlan.Outcome.INCOMPLETE);
        assertThat(plan.open()).anySatisfy(words -> assertThat(words).contains("pad of jack 1"));
    }

    @Test
    void jacksThatDoNotFitThePlanAreMisfits() {
        LiftRequest asked = Lifts.request(four, EIGHTH, ACME, 0.25 * INCH);
        List<LiftRequest.Jack> jacks = beside(four, 22 * INCH);

        assertThat(Lifter.misfits(four, by(asked, jacks.subList(0, 3)))).containsExactly(new Misfit.NoJack(3, "A4"));
        assertThat(Lifter.misfits(four, by(asked, with(jacks, jack(0, -3 * FOOT)))))
                .containsExactly(new Misfit.JackOffBeam(0, "jack 0"));
        assertThat(Lifter.misfits(four, by(asked, with(jacks, jack(0, 12 * INCH)))))
                .containsExactly(new Misfit.JackInTheWay(0, "jack 0", "A1"));
        assertThat(Lifter.misfits(
                        four, by(asked, with(jacks, jack(0, jacks.get(1).stand().x())))))
                .containsExactly(new Misfit.JackInTheWay(1, "jack 1", "jack 0"));
    }

    private static List<LiftRequest.Jack> with(List<LiftRequest.Jack> jacks, LiftRequest.Jack first) {
        List<LiftRequest.Jack> others = new ArrayList<>(jacks);
        others.set(0, first);
        return others;
    }

    @Test
    void letsDownByJacksToo() {
        JobPlan light = Lifts.loaded(four, 8, 10, 60);
        LiftRequest asked = Lifts.with(
                Lifts.request(light, EIGHTH, ACME, 0.25 * INCH),
                Lifts.NEAR_OUT,
                LiftRequest.Progress.NONE,
                new LiftRequest.After(List.of(0)));
        LiftPlan plan = Lifter.plan(light, by(asked, beside(light, 22 * INCH)));

        assertThat(plan.release()).isInstanceOf(LiftPlan.LetDown.class);
        LiftPlan.LetDown down = (LiftPlan.LetDown) plan.release();
        assertThat(down.stages()).isNotEmpty();
        assertThat(down.stages().get(0).turns().get(0).jack().load().greatest()).isPositive();
    }

    /** A post that stands free of a deep, narrow beam does not hold it against rolling over, and neither does the jack. */
    @Test
    void beamIsHeldSidewaysOnlyWhereItRests() {
        JobPlan plan = narrow(Lifts.fastened(Lifts.row(3, new Post.Rigid(), 20000 * POUND, 2 * FOOT)));
        LiftRequest asked =
                by(Lifts.request(plan, EIGHTH, ACME, 0, INCH / 8, 0), List.of(jack(1, 4 * FOOT + 22 * INCH)));
        StudiedFloor study = StudiedFloor.of(
                plan, List.of(new StudiedFloor.Jack(0, asked.jacks().get(0).stand())), Halt.NEVER);
        LiftFloor floor =
                new LiftFloor(study, asked.during(), new Sag(study, asked.survey()), asked.crept(), asked.jacks());
        LiftFloor.Jack jack = floor.jacks().get(0);
        double[] raised = new double[3];
        Jacked held = floor.onJack(jack, raised, new double[1], floor.touching(jack, floor.at(raised)));
        Members members = new Members(floor, asked.during());
        int beam = study.frame().carrierMember(0);
        double[] usual = new double[members.count()];
        double[] freed = new double[members.count()];
        members.read(held.shape(), usual, 0);
        members.read(held, freed, 0);

        Shore shore = plan.shores().get(0);
        List<Post> ends = List.of(shore.posts().get(0), shore.posts().get(2));
        List<Combination> combinations = Section2_4.gravity(EnumSet.of(LoadKind.DEAD, LoadKind.LIVE));
        MemberLimits far = MemberLimits.ofBeam(shore, ends, combinations);
        MemberLimits near = MemberLimits.ofBeam(shore, shore.posts(), combinations);
        assertThat(far.sagging(1)).isLessThan(0.95 * near.sagging(1));
        assertThat(usual[beam]).isCloseTo(used(held, study, beam, near), within(1e-9));
        assertThat(freed[beam]).isCloseTo(used(held, study, beam, far), within(1e-9));
        assertThat(freed[beam]).isGreaterThan(1.1 * usual[beam]);
        for (int m = 0; m < beam; m++) {
            assertThat(freed[m]).isEqualTo(usual[m]);
        }
    }

    /** Bending or shear over what the beam may bear, the greatest of all cases. */
    private static double used(Jacked held, StudiedFloor study, int beam, MemberLimits limits) {
        double used = 0;
        for (int b = 0; b < held.shape().bounds(); b++) {
            ContactSolver solver = study.bounds().get(b).solver();
            double[] row = new double[solver.rowSize()];
            Diagram diagram = solver.diagram(beam);
            for (int i = 0; i < held.shape().cases(); i++) {
                held.shape().of(b, i).writeForces(beam, row);
                diagram.view(row);
                diagram.scan();
                used = Math.max(used, limits.bendingStress(diagram.sagging()) / limits.sagging(i));
                used = Math.max(used, limits.bendingStress(diagram.hogging()) / limits.hogging(i));
                used = Math.max(used, limits.shearStress(diagram.shear()) / limits.shear(i));
            }
        }
        return used;
    }

    /** One ply of 2x12, which its depth makes slender. */
    private static JobPlan narrow(JobPlan plan) {
        return Lifts.onBeam(plan, Lifts.member(1, 11.25));
    }

    /**
     * Another way to every state in which a jack holds: jack and post both as posts of the plan, the jack raised until the post
     * carries nothing.
     */
    @Test
    void holdsTheFloorAsAPostThatIsRaisedUntilItsNeighbourIsFreeWould() {
        JobPlan light = light(Lifts.fastened(Lifts.row(3, new Post.Rigid(), 9000 * POUND, 2 * FOOT)));
        LiftRequest asked =
                by(Lifts.request(light, EIGHTH, ACME, 3 * INCH / 8, INCH / 4, 5 * INCH / 16), beside(light, 22 * INCH));
        LiftPlan plan = Lifter.plan(light, asked);
        double[] raised = new double[3];
        int looked = 0;
        for (LiftPlan.Stage stage : plan.stages()) {
            for (LiftPlan.Turn turn : stage.turns()) {
                raised[turn.post()] += turn.raise();
                double[] clear = raised.clone();
                clear[turn.post()] += ACME.step();
                Post jack = asked.jacks().get(turn.post()).stand();
                assertThat(turn.jack().load().least())
                        .as("turn %d", ++looked)
                        .isCloseTo(freeing(light, clear, turn.post(), jack), within(0.01));
            }
        }
        assertThat(looked).isGreaterThanOrEqualTo(6);
    }

    /**
     * On its way from where it touches to where it holds, a jack passes where the post just comes free with its screw as it was.
     * There it has pressed the beam up between its neighbours, and the next post but one carries most of all.
     */
    @Test
    void looksAtWhereThePostJustComesFreeBeforeItsScrewIsTurned() {
        JobPlan light = light(Lifts.loaded(four, 15, 0, 100));
        LiftRequest asked =
                by(Lifts.request(light, EIGHTH, ACME, 0, 0, INCH / 8, 0), List.of(jack(2, 8 * FOOT + 22 * INCH)));
        Post jack = asked.jacks().get(0).stand();
        double[] snug = new double[4];
        double[] clear = {0, 0, INCH / 8 + ACME.step(), 0};
        double[] passing = loads(light, snug, jack, lift(light, snug, 2, jack));
        double[] holding = loads(light, clear, jack, lift(light, clear, 2, jack));
        LiftPlan.Stage stage = Lifter.plan(light, asked).stages().get(0);
        // The floor is the same seen in a mirror, so that the second post begins with what the third does.
        double before = stage.turns().get(0).before().greatest();
        double known =
                Math.max(before, Math.max(holding[1], stage.loads().get(1).greatest()));
        assertThat(stage.turns().get(0).raise()).isEqualTo(INCH / 8);
        assertThat(passing[1]).isGreaterThan(1.2 * known);

        LiftPlan enough = Lifter.plan(rated(light, 1, 1.001 * passing[1]), asked);
        LiftPlan weak = Lifter.plan(rated(light, 1, 0.999 * passing[1]), asked);

        assertThat(enough.stages()).hasSize(1);
        assertThat(weak.outcome()).isEqualTo(LiftPlan.Outcome.IMPOSSIBLE);
        LiftPlan.Stopped stopped = (LiftPlan.Stopped) weak.obstacle();
        assertThat(stopped.limit().kind()).isEqualTo(Limit.Kind.POST);
        assertThat(stopped.limit().place()).contains("A2");
    }

    /** The same with one post rated otherwise. */
    private static JobPlan rated(JobPlan plan, int post, double capacity) {
        Shore shore = plan.shores().get(0);
        List<Post> posts = new ArrayList<>(shore.posts());
        Post old = posts.get(post);
        posts.set(
                post,
                new Post(
                        old.name(),
                        old.x(),
                        old.height(),
                        old.stiffness(),
                        0,
                        0,
                        Lifts.type(capacity),
                        old.footing(),
                        old.ends()));
        return Lifts.plan(plan.floor(), List.of(shore.with(posts)));
    }

    /** A rating falls with height, and a jack that starts from a floor that was raised already stands the taller for it. */
    @Test
    void jackStandsTallerByWhatTheFloorWasRaisedAlready() {
        Post lower = stand("jack", 18 * INCH, 20000 * POUND);
        Post tall = new Post(
                lower.name(),
                lower.x(),
                8 * FOOT - 0.6 * INCH,
                lower.stiffness(),
                0,
                0,
                lower.type(),
                new Post.NoPad());
        LiftRequest asked =
                by(Lifts.request(two, EIGHTH, ACME, INCH, 0), List.of(new LiftRequest.Jack(0, tall, STROKE)));
        LiftPlan plan = Lifter.plan(two, asked);

        assertThat(plan.outcome()).isEqualTo(LiftPlan.Outcome.IMPOSSIBLE);
        LiftPlan.Stopped stopped = (LiftPlan.Stopped) plan.obstacle();
        assertThat(stopped.limit().kind()).isEqualTo(Limit.Kind.POST);
        assertThat(stopped.limit().place()).contains("jack");
        assertThat(stopped.value()).isInfinite();
        // By the lever rule, and less for what the beam bends and for the clear space over the post.
        assertThat(stopped.raised() * 30 / 48).isBetween(0.45 * INCH, 0.6 * INCH);
    }

    /** What the jack carries when it is just high enough for the post to carry nothing (N). */
    private static double freeing(JobPlan light, double[] raised, int post, Post jack) {
        return loads(light, raised, jack, lift(light, raised, post, jack))[raised.length];
    }

    /** How far the jack is raised from snug where the post just carries nothing (m). */
    private static double lift(JobPlan light, double[] raised, int post, Post jack) {
        double low = 0;
        double high = INCH;
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            boolean carries = loads(light, raised, jack, middle)[post] > 0;
            low = carries ? middle : low;
            high = carries ? high : middle;
        }
        assertThat(high).isLessThan(INCH);
        return high;
    }

    /** Its beam almost without weight, so that it lies as straight on posts alone as on posts and jack when the floor is found. */
    private static JobPlan light(JobPlan plan) {
        return Lifts.onBeam(plan, Lifts.weightless(plan.shores().get(0).beam()));
    }

    /** What posts, and last the jack, carry under dead load, all raised from snug (N). */
    private static double[] loads(JobPlan light, double[] raised, Post jack, double lift) {
        Shore shore = light.shores().get(0);
        List<Post> posts = new ArrayList<>(shore.posts());
        posts.add(jack);
        posts.sort(Comparator.comparingDouble(Post::x));
        List<Situation.PostLift> lifts = new ArrayList<>();
        for (int p = 0; p < posts.size(); p++) {
            int own = shore.posts().indexOf(posts.get(p));
            lifts.add(new Situation.PostLift(0, p, own < 0 ? lift : raised[own]));
        }
        JobPlan plan = new JobPlan(
                light.basis(),
                light.floor(),
                List.of(shore.with(posts)),
                light.ground(),
                List.of(Lifts.SHORED, new Situation("held", Lifts.NEAR_OUT.removed(), lifts)),
                light.circumstances());
        List<SituationResult> both = Assessor.assess(plan).situations();
        List<Double> dead = both.get(1).plainCases().stream()
                .filter(c -> c.bound().history().equals("as found"))
                .findFirst()
                .orElseThrow()
                .forces();
        double[] loads = new double[raised.length + 1];
        for (int c = 0; c < dead.size(); c++) {
            if (both.get(0).contacts().get(c).place() instanceof ContactPlace.OnPost head) {
                Post here = posts.get(head.post());
                loads[here.equals(jack) ? raised.length : shore.posts().indexOf(here)] = dead.get(c);
            }
        }
        return loads;
    }
}
