package dev.underprop.engine.assess;

import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import java.util.ArrayList;
import java.util.List;

/** What was taken as given because the plan does not say, in words. */
final class Assumptions {

    private Assumptions() {}

    static List<String> of(JobPlan plan) {
        List<String> list = new ArrayList<>();
        list.add("Each situation is solved as if the shores had been in place and snug before any load came on.");
        list.add("The floor deck is fastened along the top edge of every joist and holds it sideways; bottom edges are"
                + " held only where a joist rests on something.");
        list.add("Shore beams are taken as held against rolling over at each post, and their plies as not fastened to"
                + " each other.");
        list.add("Timber is untreated or not incised, stands on edge, and stays below 100 degrees Fahrenheit.");
        if (plan.floor().joistWeight() == Floor.JoistWeight.INCLUDED_IN_DEAD) {
            list.add("The dead loads given include the joists themselves.");
        }
        if (plan.shores().stream()
                .flatMap(s -> s.posts().stream())
                .anyMatch(p -> !p.stiffness().stated())) {
            list.add("Posts without a stated stiffness are taken as rigid.");
        }
        if (plan.floor().loads().stream().anyMatch(Assumptions::hasOpenEdge)) {
            list.add("Area loads without stated limits end at the first and the last joist.");
        }
        if (plan.shores().stream()
                .flatMap(s -> s.posts().stream())
                .map(Post::footing)
                .anyMatch(f -> f instanceof Pad pad && pad.weight() instanceof Pad.Known known && !known.stated())) {
            list.add("Concrete pads weigh 150 pounds a cubic foot.");
        }
        return list;
    }

    private static boolean hasOpenEdge(Load load) {
        return load instanceof Load.Area area && (Double.isInfinite(area.fromX()) || Double.isInfinite(area.toX()));
    }
}
