package dev.underprop.engine.lift;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How things stand between two turns.
 *
 * @param raised of the screw of every post beyond touching (m); negative where its head stands clear
 * @param shape the floor
 * @param values of every limit; where a jack was used for the last turn, the worse of then and now
 * @param moves what moves in a case besides those of the shape, in words; empty where nothing does, or none was looked at
 * @param jacked the floor as a jack held it for the last turn: at its highest first, then where the post just comes free;
 *     empty where none did
 */
record Course(double[] raised, Shape shape, double[] values, String moves, List<Jacked> jacked) {

    Course turned(LiftFloor floor, Gauges gauges, int post, double by) {
        double[] after = raised.clone();
        after[post] += by;
        // On its way down a floor comes to lie on what was built up snug to it: there each turn is looked at afresh.
        Shape there = by < 0 ? floor.at(after) : floor.turned(shape, post, by);
        Course turned = of(there, gauges, after, by < 0);
        Optional<LiftFloor.Jack> jack = floor.jack(post);
        return jack.isPresent() && turned.stands() ? turned.onJack(floor, gauges, this, jack.orElseThrow()) : turned;
    }

    /**
     * The turn is made while a jack holds the beam clear of the post: by its smallest turn above the higher of where its screw
     * was and where it comes to, as nobody on site can tell less. On its way there and back a post may carry more than at either
     * end, where the post comes free or a neighbour comes clear: all of the way is looked at, with the screw as it was and as it
     * is then.
     */
    private Course onJack(LiftFloor floor, Gauges gauges, Course before, LiftFloor.Jack jack) {
        int post = jack.post();
        double low = Math.min(before.raised[post], raised[post]);
        double high = Math.max(before.raised[post], raised[post]);
        boolean down = raised[post] < before.raised[post];
        double[] touching = floor.touching(jack, before.shape);
        double[][] screws = {{high, low}, {low}};
        double[] beam = {high + gauges.step(post), low};
        List<Jacked> all = new ArrayList<>();
        Course worse = this;
        for (int i = 0; i < beam.length; i++) {
            double[] freed = raised.clone();
            freed[post] = beam[i];
            Jacked held = floor.onJack(jack, freed, screws[i], touching);
            if (!held.shape().stands()) {
                return moving(held.shape().moves());
            }
            all.add(held);
            worse = worse.worse(gauges.limits(), gauges.read(held, down));
        }
        Jacked highest = all.get(0);
        double[] off = floor.touching(jack, shape);
        for (int b = 0; b < off.length; b++) {
            off[b] = Math.min(off[b], touching[b]);
        }
        for (double screw : new double[] {before.raised[post], raised[post]}) {
            for (Shape met : floor.onTheWay(highest, off, screw)) {
                if (!met.stands()) {
                    return moving(met.moves());
                }
                worse = worse.worse(gauges.limits(), gauges.read(highest.with(met, highest.lifts()), down));
            }
        }
        return new Course(raised, shape, worse.values, moves, List.copyOf(all));
    }

    static Course of(LiftFloor floor, Gauges gauges, double[] raised, boolean down) {
        return of(floor.at(raised), gauges, raised, down);
    }

    private static Course of(Shape shape, Gauges gauges, double[] raised, boolean down) {
        double[] values = shape.stands() ? gauges.read(shape, raised, down) : new double[0];
        return new Course(raised, shape, values, "", List.of());
    }

    /** Whether nothing moves in any case that was looked at. */
    boolean stands() {
        return shape.stands() && moves.isEmpty();
    }

    /** What moves, in words. */
    String words() {
        return shape.stands() ? moves : shape.moves();
    }

    /** The same with whatever values were greater in more cases. */
    Course worse(List<Limit> limits, double[] more) {
        double[] worst = values.clone();
        for (int i = 0; i < worst.length; i++) {
            worst[i] = limits.get(i).worse(worst[i], more[i]);
        }
        return new Course(raised, shape, worst, moves, jacked);
    }

    Course moving(String words) {
        return new Course(raised, shape, values, words, jacked);
    }
}
