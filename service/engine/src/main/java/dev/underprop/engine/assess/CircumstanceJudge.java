package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.pad.CutBeside;
import dev.underprop.engine.plan.Excavation;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.Intake;
import dev.underprop.engine.plan.Intake.Answer;
import dev.underprop.engine.plan.Intake.Question;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Lateral;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.TimberPost;
import dev.underprop.engine.standard.Citation;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Judges what the plan says of its circumstances: questions asked on site, and sideways loads. */
final class CircumstanceJudge {

    private static final Citation PRACTICE =
            Citation.remembered("common practice, no source", "", "questions asked on site");
    private static final Citation LATERAL = Citation.remembered("ASCE", "7-16", "2.4.1 and 2.4.5");

    private CircumstanceJudge() {}

    static List<CheckResult> intake(JobPlan plan) {
        List<CheckResult> results = new ArrayList<>();
        for (Question question : Question.values()) {
            Finding finding = answer(plan, plan.circumstances().intake().to(question));
            results.add(new CheckResult(CheckId.INTAKE, question.words(), finding, new CheckResult.NoCase(), PRACTICE));
        }
        return results;
    }

    private static Finding answer(JobPlan plan, Answer answer) {
        return switch (answer.reply()) {
            case UNKNOWN ->
                new CheckResult.NotChecked(
                        "not known: " + answer.question().words() + "; look, and say yes or no (declare: intake)");
            case NO -> no(plan, answer);
            case YES -> yes(plan, answer);
        };
    }

    private static Finding no(JobPlan plan, Answer answer) {
        boolean cuts = plan.circumstances().excavation() instanceof Excavation.Cuts;
        return answer.question().kind() == Intake.Kind.EXCAVATION && cuts
                ? new CheckResult.Condition(false, Measure.FORCE, 0, "the intake says no, but the plan gives cuts")
                : new CheckResult.NotApplicable("the intake says no");
    }

    private static Finding yes(JobPlan plan, Answer answer) {
        return switch (answer.question().kind()) {
            case LOAD -> given(!answer.load().isEmpty(), "its load is " + answer.load(), "its load is not named");
            case FINDING -> new CheckResult.NotApplicable("yes; it is told among the advisories");
            case SECTION ->
                given(
                        floor(plan).anyMatch(CircumstanceJudge::reduced),
                        "net sections are given",
                        "no net section is given");
            case EXCAVATION ->
                given(
                        plan.circumstances().excavation() instanceof Excavation.Cuts,
                        "the cuts are given",
                        "no cut is given");
            case SLAB ->
                given(
                        pads(plan).anyMatch(pad -> pad.kind() == Pad.Kind.SLAB),
                        "the slab is a pad of the plan",
                        "no pad of the plan is a slab");
        };
    }

    private static Finding given(boolean given, String what, String missing) {
        return given
                ? new CheckResult.Condition(true, Measure.FORCE, 0, "yes, and " + what)
                : new CheckResult.NotChecked("yes, but " + missing);
    }

    private static boolean reduced(Member member) {
        return member.details().section() instanceof Member.Reduced;
    }

    private static Stream<Pad> pads(JobPlan plan) {
        return plan.shores().stream()
                .flatMap(s -> s.posts().stream())
                .filter(p -> p.footing() instanceof Pad)
                .map(p -> (Pad) p.footing());
    }

    /** Every piece of timber of a plan. */
    static Stream<Member> members(JobPlan plan) {
        Stream<Member> posts = plan.shores().stream()
                .flatMap(s -> s.posts().stream())
                .map(Post::type)
                .filter(PostType.class::isInstance)
                .map(type -> ((PostType) type).shaft())
                .filter(TimberPost.class::isInstance)
                .map(shaft -> ((TimberPost) shaft).member());
        return Stream.concat(floor(plan), posts);
    }

    /** All of it but the posts: the intake asks for decay and notches in what they carry, and a post settles none of that. */
    private static Stream<Member> floor(JobPlan plan) {
        return Stream.of(
                        plan.floor().joists().stream().map(Joist::member),
                        plan.shores().stream().map(Shore::beam),
                        plan.girders().stream().map(Girder::member),
                        pads(plan)
                                .map(Pad::make)
                                .filter(Pad.Mat.class::isInstance)
                                .map(mat -> ((Pad.Mat) mat).timber()))
                .flatMap(s -> s);
    }

    static CheckResult lateral(JobPlan plan) {
        Lateral lateral = plan.circumstances().lateral();
        Finding finding = lateral instanceof Lateral.Unstated
                ? new CheckResult.NotChecked(
                        "whether wind or earthquake act while a bearing is out is not stated (declare: lateral)")
                : new CheckResult.NotApplicable(
                        lateral instanceof Lateral.None none
                                ? "stated to be none (" + none.by() + ")"
                                : "given by " + ((Lateral.Given) lateral).by()
                                        + "; they act in the combinations and on what holds the floor sideways");
        return new CheckResult(CheckId.LATERAL_LOADS, "plan", finding, new CheckResult.NoCase(), LATERAL);
    }

    /** Cuts beside pads: post by post where there are any, else once. */
    static List<CheckResult> excavation(JobPlan plan) {
        List<CheckResult> results = new ArrayList<>();
        Excavation excavation = plan.circumstances().excavation();
        for (Shore shore : plan.shores()) {
            for (Post post : shore.posts()) {
                boolean once = !(excavation instanceof Excavation.Cuts);
                if (!once || results.isEmpty()) {
                    results.add(new CheckResult(
                            CheckId.EXCAVATION,
                            once ? "plan" : post.name(),
                            CutBeside.judge(excavation, post, shore.y(), plan.ground()),
                            new CheckResult.NoCase(),
                            CutBeside.citation()));
                }
            }
        }
        return results;
    }
}
