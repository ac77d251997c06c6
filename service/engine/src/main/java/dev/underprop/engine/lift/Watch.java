package dev.underprop.engine.lift;

import dev.underprop.engine.assess.StudiedFloor.Gravity;
import dev.underprop.engine.statics.Solution;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is looked at besides dead load and live load everywhere. After every turn: all of dead load with whatever relieves a
 * bearing, post or pier, for contacts, posts and fastenings; and 0.6 of dead load against the same, for fastenings and for standing at all. After
 * every stage, when people may come back onto the floor: every limit under every pattern of live load.
 */
final class Watch {

    private final LiftFloor floor;
    private final Gauges gauges;
    private final boolean down;
    private Optional<Known> known = Optional.empty();

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

    private Known known(Shape shape) {
        if (known.isEmpty() || !known.get().holds(shape)) {
            Solution dead = shape.dead(0);
            Solution full = shape.full(0);
            known = Optional.of(new Known(
                    dead,
                    full,
                    floor.study().relieving(dead, full),
                    floor.study().lifting(dead, full)));
        }
        return known.orElseThrow();
    }

    /** What a turn has brought, once these cases are looked at too. */
    Course turned(Course course) {
        if (!course.stands()) {
            return course;
        }
        Known cases = known(course.shape());
        Shape lifted = floor.at(course.raised(), cases.lifting());
        if (!lifted.stands()) {
            return course.moving(lifted.moves());
        }
        Course held = course.worse(gauges.pulls(lifted));
        if (cases.relieving().isEmpty()) {
            return held;
        }
        Shape relieved = floor.at(course.raised(), cases.relieving());
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
        List<Gravity> patterned = new ArrayList<>(known(shape).relieving());
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
