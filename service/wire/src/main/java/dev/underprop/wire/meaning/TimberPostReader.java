package dev.underprop.wire.meaning;

import dev.underprop.api.model.PostPlyJoint;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.TimberPost;
import dev.underprop.wire.fault.Messages;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Reads a post of timber. The supplier is to be asked only when the plan has no fault. */
final class TimberPostReader {

    private final TimberReader timber;

    TimberPostReader(TimberReader timber) {
        this.timber = timber;
    }

    Supplier<TimberPost> read(dev.underprop.api.model.TimberPost post, Spot at) {
        int plies = post.getPlies() == null ? 1 : post.getPlies();
        Optional<Member> member = timber.read(TimberText.of(post, at), plies);
        double off = at.text("eccentricity", post.getEccentricity()).quantity(Range.ECCENTRICITY);
        Supplier<TimberPost.Joined> joined = joined(post.getJoint(), plies, at.member("joint"));
        boolean construction = Boolean.TRUE.equals(post.getDuringConstruction());
        return () -> new TimberPost(member.orElseThrow(), off, construction, joined.get());
    }

    private static Supplier<TimberPost.Joined> joined(@Nullable PostPlyJoint joint, int plies, Spot at) {
        if (joint == null) {
            return TimberPost.Unjoined::new;
        }
        if (plies == 1) {
            at.report(Messages.JOINT_OF_ONE_PLY, "");
        }
        boolean bolts = at.text("by", joint.getBy())
                .choice(List.of("nails", "bolts"))
                .orElse("")
                .equals("bolts");
        double diameter = at.text("diameter", joint.getDiameter()).quantity(Range.SCREW);
        Text nail = at.text("length", joint.getLength());
        double length = bolts ? nail.quantityOr(Range.SCREW, Double.NaN) : nail.quantity(Range.SCREW);
        double end = at.text("end", joint.getEnd()).quantity(Range.SCREW);
        double spacing = at.text("spacing", joint.getSpacing()).quantity(Range.SCREW);
        Text apart = at.text("between", joint.getBetween());
        double between = joint.getRows() > 1 ? apart.quantity(Range.SCREW) : apart.quantityOr(Range.SCREW, Double.NaN);
        double edge = at.text("edge", joint.getEdge()).quantity(Range.SCREW);
        boolean detailed = Boolean.TRUE.equals(joint.getDetailed());
        return () -> new TimberPost.Fasteners(
                bolts, diameter, length, end, spacing, joint.getRows(), between, edge, detailed);
    }
}
