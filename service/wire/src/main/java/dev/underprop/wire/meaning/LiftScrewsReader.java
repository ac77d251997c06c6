package dev.underprop.wire.meaning;

import dev.underprop.engine.lift.LiftScrew;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads the screws of the posts: each post has one, by name or by the entry that holds for all others. */
final class LiftScrewsReader {

    private final Spot at;
    private final NameTable<Integer> posts;
    private final List<String> postNames;

    LiftScrewsReader(Spot at, NameTable<Integer> posts, List<String> postNames) {
        this.at = at;
        this.posts = posts;
        this.postNames = postNames;
    }

    /** By post, counted over all shores; not complete where something was faulty. */
    List<LiftScrew> read(List<dev.underprop.api.model.LiftScrew> screws) {
        List<Optional<LiftScrew>> read = new ArrayList<>();
        int[] of = new int[postNames.size()];
        java.util.Arrays.fill(of, -1);
        int others = -1;
        for (int i = 0; i < screws.size(); i++) {
            Spot spot = at.element(i);
            read.add(screw(screws.get(i), spot));
            List<String> names = screws.get(i).getPosts();
            if (names == null) {
                if (others >= 0) {
                    spot.report(Messages.SCREW_TWICE, "", "that no other names");
                }
                others = i;
            } else {
                name(names, i, of, spot.member("posts"));
            }
        }
        return assigned(read, of, others);
    }

    private void name(List<String> names, int screw, int[] of, Spot spot) {
        for (int n = 0; n < names.size(); n++) {
            String name = names.get(n);
            Spot here = spot.element(n);
            posts.find(name, here).ifPresent(post -> {
                if (of[post] >= 0) {
                    here.report(Messages.SCREW_TWICE, name, Fault.shown(name));
                }
                of[post] = screw;
            });
        }
    }

    private List<LiftScrew> assigned(List<Optional<LiftScrew>> read, int[] of, int others) {
        List<LiftScrew> assigned = new ArrayList<>();
        for (int p = 0; p < of.length; p++) {
            int screw = of[p] >= 0 ? of[p] : others;
            if (screw < 0) {
                at.report(Messages.SCREW_UNSTATED, postNames.get(p), Fault.shown(postNames.get(p)));
            } else {
                read.get(screw).ifPresent(assigned::add);
            }
        }
        return assigned;
    }

    private static Optional<LiftScrew> screw(dev.underprop.api.model.LiftScrew screw, Spot spot) {
        double pitch = spot.text("pitch", screw.getPitch()).quantity(Range.THREAD);
        LiftScrew.Rubbing rubbing = rubbing(screw, spot);
        double wrench = spot.text("wrench", screw.getWrench()).quantityOr(Range.WRENCH, Double.NaN);
        double pull = spot.text("greatestPull", screw.getGreatestPull()).quantityOr(Range.PULL, Double.NaN);
        double travel = spot.text("travel", screw.getTravel()).quantityOr(Range.TRAVEL, Double.NaN);
        double down = spot.text("travelDown", screw.getTravelDown()).quantityOr(Range.TRAVEL, Double.NaN);
        return pitch > 0
                ? Optional.of(new LiftScrew(
                        pitch * screw.getStarts(), screw.getSmallestTurn(), rubbing, wrench, pull, travel, down))
                : Optional.empty();
    }

    private static LiftScrew.Rubbing rubbing(dev.underprop.api.model.LiftScrew screw, Spot spot) {
        double mean = spot.text("meanDiameter", screw.getMeanDiameter()).quantityOr(Range.THREAD, Double.NaN);
        double angle = spot.text("threadAngle", screw.getThreadAngle()).quantityOr(Range.THREAD_ANGLE, Double.NaN);
        double least = or(screw.getFrictionLeast());
        double most = or(screw.getFrictionMost());
        if (Double.isNaN(least) != Double.isNaN(most)) {
            String missing = Double.isNaN(least) ? "frictionLeast" : "frictionMost";
            spot.member(missing).report(Messages.FRICTION_INCOMPLETE, "", missing);
        }
        if (most < least) {
            spot.member("frictionMost").report(Messages.FRICTION_TURNED, Double.toString(most));
        }
        double collar = or(screw.getCollarFriction());
        Text diameter = spot.text("collarDiameter", screw.getCollarDiameter());
        if (collar > 0 && !diameter.given()) {
            diameter.spot().report(Messages.COLLAR_INCOMPLETE, "");
        }
        double radius = diameter.quantityOr(Range.THREAD, Double.NaN) / 2;
        return new LiftScrew.Rubbing(mean, angle / 2, least, most, collar, radius);
    }

    private static double or(@Nullable Double value) {
        return value == null ? Double.NaN : value;
    }
}
