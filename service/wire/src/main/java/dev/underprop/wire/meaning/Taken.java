package dev.underprop.wire.meaning;

import dev.underprop.api.model.Bearing;
import dev.underprop.api.model.JobPlan;
import dev.underprop.api.model.Load;
import dev.underprop.api.model.PostType;
import dev.underprop.engine.pad.PadLoad;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.TimberPost;
import dev.underprop.engine.standard.Citation;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What reading took because the plan does not say it, in words. */
final class Taken {

    private static final String FOOT =
            "The load of a post whose type states no eccentricity, or that is of no type, acts 25 mm off the middle of its foot, as"
                    + " of tubes (BS 5975 practice for props; from memory).";

    private Taken() {}

    static List<String> from(JobPlan model, dev.underprop.engine.plan.JobPlan plan) {
        List<String> list = new ArrayList<>();
        if (model.getShores().stream().anyMatch(shore -> shore.getBeam().getWeight() == null)) {
            list.add("The weight of shore beams is computed from the specific gravity of their species at a moisture of"
                    + " 19 percent (NDS Supplement 2018, 3.1.3; from memory).");
        }
        if (model.getFloor().getBearings().stream().anyMatch(Taken::hasBeamWithoutWeight)) {
            list.add("The weight of girders is computed from the specific gravity of their species at a moisture of 19"
                    + " percent (NDS Supplement 2018, 3.1.3; from memory).");
        }
        list.addAll(GivenWeights.of(model, plan.floor()));
        model.getShores().stream()
                .filter(shore -> Boolean.TRUE.equals(shore.getPartial()))
                .forEach(shore -> list.add("Shore " + shore.getName()
                        + " is knowingly shorter than the floor: joists beyond its beam are not held by it."));
        if (members(plan).anyMatch(member -> member.grade().citation().standing() == Citation.Standing.FROM_MEMORY)) {
            list.add("Some reference values of Southern Pine are from memory; compare them with Table 4B of the NDS"
                    + " Supplement before relying on them.");
        }
        if (members(plan).anyMatch(Taken::isMeasured)) {
            list.add("Timber measured instead of sold by size is sound and of the grade that the plan names, over its"
                    + " whole measured section.");
        }
        members(plan).flatMap(Taken::details).distinct().forEach(list::add);
        if (model.getFloor().getLoads().stream().anyMatch(Taken::hasStrengthSnow)) {
            list.add("Snow given at strength level is taken at 0.7 of its value (ASCE 7-22, 2.4.1).");
        }
        if (!model.getShores().isEmpty()
                && !plan.circumstances().limits().plumb().stated()) {
            list.add("Posts lean by 1.5 degrees at the most (BS 5975 practice for props; from memory).");
        }
        if (model.getPostTypes() != null && model.getPostTypes().stream().anyMatch(Taken::hasLoadOffByDefault)) {
            list.add(
                    "The load on a tube or a telescopic post whose eccentricity is not stated acts 25 mm off its middle at both"
                            + " ends (BS 5975 practice for props; from memory).");
        }
        if (posts(plan).anyMatch(post -> post.footing() instanceof Pad && inTheDark(post))) {
            list.add(FOOT);
        }
        if (plan.ground().top() instanceof Ground.Given given) {
            list.add("The allowable bearing pressure holds for the ground and the founding depth as they are on site ("
                    + given.source() + ").");
        }
        return list;
    }

    /** Where pads are proposed for posts that have none yet. @param said what is said of the plan already */
    static List<String> ofFeet(dev.underprop.engine.plan.JobPlan plan, List<String> said) {
        return !said.contains(FOOT) && posts(plan).anyMatch(Taken::inTheDark) ? List.of(FOOT) : List.of();
    }

    /** Whether nobody says where on its foot the load of a post acts. */
    private static boolean inTheDark(Post post) {
        return !PadLoad.Foot.of(post.type()).stated();
    }

    private static Stream<Post> posts(dev.underprop.engine.plan.JobPlan plan) {
        return plan.shores().stream().flatMap(shore -> shore.posts().stream());
    }

    private static boolean hasStrengthSnow(Load load) {
        return load.getSnowLevel() != null
                && load.getSnowLevel().strip().toLowerCase(Locale.ROOT).equals("strength");
    }

    private static boolean hasBeamWithoutWeight(Bearing bearing) {
        return bearing.getBeam() != null && bearing.getBeam().getWeight() == null;
    }

    private static boolean hasLoadOffByDefault(PostType type) {
        return type.getTube() != null && type.getTube().getEccentricity() == null
                || type.getTelescope() != null && type.getTelescope().getEccentricity() == null;
    }

    private static boolean isMeasured(Member member) {
        return !member.nominal() && member.details().section() instanceof Member.Whole;
    }

    private static Stream<String> details(Member member) {
        Stream<String> grade = member.details().origin() instanceof Member.Assumed assumed
                ? Stream.of("The grade of " + member.label() + " is assumed, not read on the timber (" + assumed.by()
                        + ").")
                : Stream.empty();
        Stream<String> section = member.details().section() instanceof Member.Reduced reduced
                ? Stream.of("What is left of " + member.label() + " is taken as stated, over the whole length ("
                        + reduced.by() + ").")
                : Stream.empty();
        return Stream.concat(grade, section);
    }

    private static Stream<Member> timberPost(Post post) {
        return post.type() instanceof dev.underprop.engine.plan.PostType type
                        && type.shaft() instanceof TimberPost timber
                ? Stream.of(timber.member())
                : Stream.empty();
    }

    private static Stream<Member> members(dev.underprop.engine.plan.JobPlan plan) {
        return Stream.of(
                        plan.floor().joists().stream().map(dev.underprop.engine.plan.Joist::member),
                        plan.floor().bearings().stream()
                                .map(dev.underprop.engine.plan.Bearing::body)
                                .filter(Girder.class::isInstance)
                                .map(body -> ((Girder) body).member()),
                        plan.shores().stream().map(dev.underprop.engine.plan.Shore::beam),
                        posts(plan).flatMap(Taken::timberPost),
                        posts(plan)
                                .filter(post -> post.footing() instanceof Pad pad && pad.make() instanceof Pad.Mat)
                                .map(post -> ((Pad.Mat) ((Pad) post.footing()).make()).timber()))
                .flatMap(stream -> stream);
    }
}
