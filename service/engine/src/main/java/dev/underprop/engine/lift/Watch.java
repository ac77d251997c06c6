package dev.underprop.engine.lift;

import dev.underprop.engine.assess.StudiedFloor.Gravity;
import dev.underprop.engine.statics.Solution;
import java.util.ArrayList;
import java.util.List;

/**
 * What is looked at besides dead load and live load everywhere. After every turn: all of dead load with whatever relieves a
 * bearing, post or pier, for contacts, posts and fastenings; and 0.6 of dead load against the same, for fastenings and for standing at all. After
 * every stage, when people may come back onto the floor: every limit under every pattern of live load.
 */
final class Watch {

    private final LiftFloor floor;
    private final Gauges gauges;
    private final boolean down;

    Watch(LiftFloor floor, Gauges gauges, boolean down) {
        this.floor = floor;
        this.gauges = gauges;
        this.down = down;
    }

    /** What a turn has brought, once these cases are looked at too. */
    Course turned(Course course) {
        if (!course.stands()) {
            return course;
        }
        Solution dead = course.shape().dead(0);
        Solution full = course.shape().full(0);
        Shape lifted = floor.at(course.raised(), floor.study().lifting(dead, full));
        if (!lifted.stands()) {
            return course.moving(lifted.moves());
        }
        Course held = course.worse(gauges.pulls(lifted));
        List<Gravity> relieving = floor.study().relieving(dead, full);
        if (relieving.isEmpty()) {
            return held;
        }
        Shape relieved = floor.at(course.raised(), relieving);
        return relieved.stands()
                ? held.worse(gauges.contacts(relieved, course.raised(), down))
                : held.moving(relieved.moves());
    }

    /** How things stand once a stage is done: every limit under every pattern of live load. */
    Course held(Course course) {
        if (!course.stands()) {
            return course;
        }
        Shape shape = course.shape();
        List<Gravity> patterned = new ArrayList<>(floor.study().relieving(shape.dead(0), shape.full(0)));
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
