package dev.underprop.engine.assess;

import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Situation;
import java.util.ArrayList;
import java.util.List;

/** What was taken as given because the plan does not say, in words. */
final class Assumptions {

    private Assumptions() {}

    static List<String> of(JobPlan plan, PostBounds bounds) {
        List<String> list = new ArrayList<>();
        list.add("Each situation is solved twice: with the shores set snug under the floor as found, and as if they had"
                + " been there before any load; the worse counts. Creep moves no load, and no contact rubs.");
        Limits limits = plan.circumstances().limits();
        if (!limits.fitUp().stated() && !plan.shores().isEmpty()) {
            list.add(
                    "Posts are set to within 1/16 inch: every case is solved with each post in turn that much low and high"
                            + " (common practice, no source).");
        }
        if (limits.fitUp().tolerance() == 0 && !plan.shores().isEmpty()) {
            list.add("The plan takes every post as exactly in line with its neighbours; no post is ever.");
        }
        if (!limits.transfer().stated() && plan.situations().stream().anyMatch(Situation::takesAway)) {
            list.add("The damage limit for the change of slope when a bearing goes is "
                    + limits.transfer().name() + ".");
        }
        list.addAll(bounds.said());
        list.add("The floor deck is fastened along the top edge of every joist and holds it sideways; bottom edges are"
                + " held only where a joist is fastened down.");
        list.add("Shore beams are taken as held against rolling over at each post, and their plies as sharing the load"
                + " equally, which are checks of their own; they hold each other sideways in nothing.");
        list.add(
                "Pads are centred under their posts but for the centring that the plan states; the weight of the posts is left"
                        + " out.");
        list.add("Deflection is measured between the places that hold a member, not counting how far those go down.");
        list.add(
                "Timber of which the plan does not say otherwise is untreated or not incised; all stands on edge and stays below 100 degrees Fahrenheit.");
        if (plan.floor().joistWeight() == Floor.JoistWeight.INCLUDED_IN_DEAD && !hasDeadLoad(plan)) {
            list.add("No dead load is given and none is added for the joists: they are taken as without weight.");
        } else if (plan.floor().joistWeight() == Floor.JoistWeight.INCLUDED_IN_DEAD) {
            list.add("The dead loads given include the joists themselves.");
        }
        if (plan.floor().loads().stream().anyMatch(Assumptions::hasOpenEdge)) {
            list.add("Loads across the joists without stated limits end at the first and the last joist.");
        }
        if (plan.shores().stream()
                .flatMap(s -> s.posts().stream())
                .map(Post::footing)
                .anyMatch(f -> f instanceof Pad pad && pad.weight() instanceof Pad.Known known && !known.stated())) {
            list.add("Concrete pads weigh 150 pounds a cubic foot (common practice, no source).");
        }
        return list;
    }

    private static boolean hasOpenEdge(Load load) {
        if (load instanceof Load.Area area) {
            return Double.isInfinite(area.fromX()) || Double.isInfinite(area.toX());
        }
        return load instanceof Load.Across line && (Double.isInfinite(line.from()) || Double.isInfinite(line.to()));
    }

    private static boolean hasDeadLoad(JobPlan plan) {
        return plan.floor().loads().stream().anyMatch(load -> load.intensity().dead() > 0);
    }
}
