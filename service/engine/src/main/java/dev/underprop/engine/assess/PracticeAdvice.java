package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Assessment.Advisory;
import dev.underprop.engine.plan.Intake;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.Shore;
import java.util.ArrayList;
import java.util.List;

/** Which rules of good practice a plan calls for: each unless the plan itself tells that it is not due. */
final class PracticeAdvice {

    /** Half of what is taken for a head plate where none is described (m): 3 in, common practice, no source. */
    private static final double HALF_PLATE = 3 * 0.0254;

    private PracticeAdvice() {}

    static List<Advisory> of(JobPlan plan) {
        List<Advisory> list = new ArrayList<>();
        if (!plan.shores().isEmpty()) {
            list.add(Practice.JACK_ALONE.advice());
        }
        list.add(Practice.PERMIT_AND_ENGINEER.advice());
        addIntake(plan, list);
        list.add(Practice.LEAD.advice());
        list.add(Practice.ASBESTOS.advice());
        if (!plan.shores().isEmpty()) {
            addShores(plan, list);
        }
        return list;
    }

    private static void addIntake(JobPlan plan, List<Advisory> list) {
        Intake.Answer services = plan.circumstances().intake().to(Intake.Question.SERVICES);
        if (services.reply() != Intake.Reply.NO) {
            list.add(Practice.SERVICES.noted(services.note()));
        }
    }

    private static void addShores(JobPlan plan, List<Advisory> list) {
        Intake.Answer duration = plan.circumstances().intake().to(Intake.Question.LONG_DURATION);
        if (duration.reply() != Intake.Reply.NO) {
            list.add(Practice.TEMPORARY.advice());
        }
        plan.shores().stream()
                .filter(shore -> reachesOut(plan, shore))
                .forEach(shore -> list.add(Practice.END_POSTS.at(shore.name())));
        list.add(Practice.PLUMB.advice());
        list.add(Practice.CROWN_UP.advice());
        list.add(Practice.LEVEL_BASE.advice());
        if (plan.shores().stream().flatMap(s -> s.posts().stream()).anyMatch(p -> p.footing() instanceof Pad)) {
            list.add(Practice.PAD_CENTRE.advice());
        }
    }

    /** Whether a joist lies on the beam beyond the head plate of the first or the last post. */
    private static boolean reachesOut(JobPlan plan, Shore shore) {
        Post first = shore.posts().get(0);
        Post last = shore.posts().get(shore.posts().size() - 1);
        double from = first.x() - halfPlate(first);
        double to = last.x() + halfPlate(last);
        return plan.floor().joists().stream()
                .filter(shore::under)
                .mapToDouble(Joist::x)
                .anyMatch(x -> x < from || x > to);
    }

    private static double halfPlate(Post post) {
        return post.type() instanceof PostType type ? type.head().along() / 2 : HALF_PLATE;
    }
}
