package dev.underprop.engine.lift;

import dev.underprop.engine.assess.StudiedFloor.Gravity;
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

    private List<Gravity> relieving(Shape shape) {
        return floor.study().relieving(shape.dead(0), shape.full(0));
    }

    private List<Gravity> lifting(Shape shape) {
        return floor.study().lifting(shape.dead(0), shape.full(0));
    }

    /** What a turn has brought, once these cases are looked at too. */
    Course turned(Course course) {
        if (!course.stands()) {
            return course;
        }
        Shape lifted = floor.under(course.shape(), lifting(course.shape()));
        if (!lifted.stands()) {
            return course.moving(lifted.moves());
        }
        Course held = onJack(course.worse(gauges.limits(), gauges.pulls(lifted)));
        List<Gravity> relieving = relieving(course.shape());
        if (relieving.isEmpty() || !held.stands()) {
            return held;
        }
        Shape relieved = floor.under(course.shape(), relieving);
        return relieved.stands()
                ? held.worse(gauges.limits(), gauges.contacts(relieved, course.raised(), down))
                : held.moving(relieved.moves());
    }

    /** The same while a jack held the floor for it. */
    private Course onJack(Course course) {
        Course watched = course;
        for (Jacked held : course.jacked()) {
            watched = watched.stands() ? onJack(watched, held) : watched;
        }
        return watched;
    }

    private Course onJack(Course course, Jacked held) {
        Jacked lifted = floor.onJack(held, lifting(held.shape()));
        if (!lifted.shape().stands()) {
            return course.moving(lifted.shape().moves());
        }
        Course watched = course.worse(gauges.limits(), gauges.pulls(lifted.shape()));
        List<Gravity> relieving = relieving(held.shape());
        if (relieving.isEmpty()) {
            return watched;
        }
        Jacked relieved = floor.onJack(held, relieving);
        return relieved.shape().stands()
                ? watched.worse(gauges.limits(), gauges.contacts(relieved, down))
                : watched.moving(relieved.shape().moves());
    }

    /** How things stand once a stage is done: every limit under every pattern of live load. */
    Course held(Course course) {
        if (!course.stands()) {
            return course;
        }
        Shape shape = course.shape();
        List<Gravity> patterned = new ArrayList<>(relieving(shape));
        patterned.addAll(floor.study().patterned(shape.dead(0), shape.full(0)));
        if (patterned.isEmpty()) {
            return course;
        }
        Shape held = floor.under(shape, patterned);
        return held.stands()
                ? course.worse(gauges.limits(), gauges.strengths(held, course.raised(), down))
                : course.moving(held.moves());
    }
}
