package dev.underprop.engine.lift;

import dev.underprop.engine.assess.StudiedFloor.Gravity;
import dev.underprop.engine.statics.Solution;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is looked at besides dead load and live load everywhere. After every turn: all of dead load with whatever relieves a
 * bearing, post or pier, for contacts, posts and fastenings; and 0.6 of dead load against the same, for fastenings and for standing at all. After
 * every stage, when people may come back onto the floor: every limit under every pattern of live load.
 */
final class Watch {

    /** No jack holds the floor. */
    private static final int STANDING = -1;

    private final LiftFloor floor;
    private final Gauges gauges;
    private final boolean down;
    private final Map<Integer, Known> known = new HashMap<>();

    Watch(LiftFloor floor, Gauges gauges, boolean down) {
        this.floor = floor;
        this.gauges = gauges;
        this.down = down;
    }

    /** Cases by influence, and the state in which they were found: they are the same in every state with the same contacts. */
    private record Known(Solution dead, Solution full, List<Gravity> relieving, List<Gravity> lifting) {
        boolean holds(Shape shape) {
            return dead.sameState(shape.dead(0)) && full.sameState(shape.full(0));
        }
    }

    /** @param jack that holds the floor; {@code STANDING} where none does */
    private Known known(Shape shape, int jack) {
        Known last = known.get(jack);
        if (last == null || !last.holds(shape)) {
            Solution dead = shape.dead(0);
            Solution full = shape.full(0);
            last = new Known(
                    dead,
                    full,
                    floor.study().relieving(dead, full),
                    floor.study().lifting(dead, full));
            known.put(jack, last);
        }
        return last;
    }

    /** What a turn has brought, once these cases are looked at too. */
    Course turned(Course course) {
        if (!course.stands()) {
            return course;
        }
        Known cases = known(course.shape(), STANDING);
        Shape lifted = floor.at(course.raised(), cases.lifting());
        if (!lifted.stands()) {
            return course.moving(lifted.moves());
        }
        Course held = onJack(course.worse(gauges.pulls(lifted)));
        if (cases.relieving().isEmpty() || !held.stands()) {
            return held;
        }
        Shape relieved = floor.at(course.raised(), cases.relieving());
        return relieved.stands()
                ? held.worse(gauges.contacts(relieved, course.raised(), down))
                : held.moving(relieved.moves());
    }

    /** The same while a jack held the floor for it. */
    private Course onJack(Course course) {
        if (course.jacked().isEmpty()) {
            return course;
        }
        Jacked held = course.jacked().orElseThrow();
        Known cases = known(held.shape(), held.jack().index());
        Jacked lifted = floor.onJack(held, ready(held), cases.lifting());
        if (!lifted.shape().stands()) {
            return course.moving(lifted.shape().moves());
        }
        Course watched = course.worse(gauges.pulls(lifted.shape()));
        if (cases.relieving().isEmpty()) {
            return watched;
        }
        Jacked relieved = floor.onJack(held, ready(held), cases.relieving());
        return relieved.shape().stands()
                ? watched.worse(gauges.contacts(relieved, down))
                : watched.moving(relieved.shape().moves());
    }

    /** Screws as they are while the jack holds: that of the freed post is below the beam by its smallest turn. */
    private double[] ready(Jacked held) {
        double[] raised = held.raised().clone();
        int post = held.jack().post();
        raised[post] -= gauges.step(post);
        return raised;
    }

    /** How things stand once a stage is done: every limit under every pattern of live load. */
    Course held(Course course) {
        if (!course.stands()) {
            return course;
        }
        Shape shape = course.shape();
        List<Gravity> patterned = new ArrayList<>(known(shape, STANDING).relieving());
        patterned.addAll(floor.study().patterned(shape.dead(0), shape.full(0)));
        if (patterned.isEmpty()) {
            return course;
        }
        Shape held = floor.at(course.raised(), patterned);
        return held.stands()
                ? course.worse(gauges.strengths(held, course.raised(), down))
                : course.moving(held.moves());
    }
}
