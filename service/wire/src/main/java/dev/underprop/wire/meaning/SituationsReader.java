package dev.underprop.wire.meaning;

import dev.underprop.api.model.PostLift;
import dev.underprop.api.model.Situation;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Reads the states of the job. */
final class SituationsReader {

    /**
     * Where a post is in the plan.
     *
     * @param shore index of its shore
     * @param post index in the shore, in order of x
     * @param gap clear space over its head (m)
     */
    record Place(int shore, int post, double gap) {}

    private final RemovalReader removals;
    private final NameTable<Place> posts;

    SituationsReader(RemovalReader removals, NameTable<Place> posts) {
        this.removals = removals;
        this.posts = posts;
    }

    List<dev.underprop.engine.plan.Situation> read(List<Situation> situations, Spot spot) {
        NameTable<Situation> names = new NameTable<>("situation");
        List<dev.underprop.engine.plan.Situation> read = new ArrayList<>();
        for (int i = 0; i < situations.size(); i++) {
            Situation situation = situations.get(i);
            Spot at = spot.element(i);
            names.add(situation.getName(), situation, at.member("name"));
            read.add(read(situation, at));
        }
        return read;
    }

    private dev.underprop.engine.plan.Situation read(Situation situation, Spot at) {
        List<Removable> removed = removals.removed(situation.getRemoved(), at.member("removed"));
        return new dev.underprop.engine.plan.Situation(
                situation.getName(),
                removed.stream()
                        .flatMap(thing ->
                                thing instanceof Removable.Whole whole ? Stream.of(whole.bearing()) : Stream.empty())
                        .toList(),
                lifts(situation, at.member("lifts")),
                removals.parts(situation.getRemovedParts(), removed, at.member("removedParts")),
                removed.stream()
                        .flatMap(thing -> thing instanceof Removable.Pier pier
                                ? Stream.of(
                                        new dev.underprop.engine.plan.Situation.PierOut(pier.bearing(), pier.pier()))
                                : Stream.empty())
                        .toList(),
                removals.clear(situation.getClear(), removed, at.member("clear")));
    }

    private List<dev.underprop.engine.plan.Situation.PostLift> lifts(Situation situation, Spot spot) {
        List<dev.underprop.engine.plan.Situation.PostLift> read = new ArrayList<>();
        List<Place> seen = new ArrayList<>();
        List<PostLift> lifts = situation.getLifts();
        for (int i = 0; lifts != null && i < lifts.size(); i++) {
            String name = lifts.get(i).getPost();
            Spot at = spot.element(i);
            double lift = at.text("lift", lifts.get(i).getLift()).quantity(Range.CLEARANCE);
            posts.find(name, at.member("post")).ifPresent(place -> {
                if (seen.contains(place)) {
                    at.member("post").report(Messages.LIFTED_TWICE, name, Fault.shown(name));
                }
                seen.add(place);
                if (place.gap() > 0 && lift > 0) {
                    at.member("lift").report(Messages.LIFT_WITH_GAP, "", Fault.shown(name));
                }
                if (!Double.isNaN(lift)) {
                    read.add(new dev.underprop.engine.plan.Situation.PostLift(place.shore(), place.post(), lift));
                }
            });
        }
        return read;
    }
}
