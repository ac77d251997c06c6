package dev.underprop.wire.meaning;

import dev.underprop.api.model.PlyJoint;
import dev.underprop.api.model.PlyNails;
import dev.underprop.engine.plan.Assembly;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads how a beam is put together from its plies. After a fault was reported, that part is not declared. */
final class AssemblyReader {

    private static final double ROUNDING = 1e-9;

    /**
     * The beam that is put together.
     *
     * @param plies how many
     * @param start x of its left end (m), NaN where not known
     * @param end x of its right end (m), NaN where not known
     */
    record Beam(int plies, double start, double end) {}

    private AssemblyReader() {}

    static Assembly read(dev.underprop.api.model.@Nullable Assembly assembly, Beam beam, Spot at) {
        if (assembly == null) {
            return Assembly.UNDECLARED;
        }
        Assembly.Nailing nailing = nails(assembly.getNails(), at.member("nails"));
        boolean whole = Boolean.TRUE.equals(assembly.getWhole());
        List<PlyJoint> joints = assembly.getJoints();
        if (whole && joints != null) {
            at.report(Messages.PLIES_TWO_WAYS, "");
        } else if (whole) {
            return new Assembly(nailing, new Assembly.JointsAt(List.of()));
        } else if (joints != null) {
            return new Assembly(nailing, joints(joints, beam, at.member("joints")));
        }
        return new Assembly(nailing, new Assembly.JointsUndeclared());
    }

    private static Assembly.Nailing nails(@Nullable PlyNails nails, Spot at) {
        if (nails == null) {
            return new Assembly.NoNailing();
        }
        double diameter = at.text("diameter", nails.getDiameter()).quantity(Range.SCREW);
        double length = at.text("length", nails.getLength()).quantity(Range.SCREW);
        double spacing = at.text("spacing", nails.getSpacing()).quantity(Range.SCREW);
        return Double.isNaN(diameter + length + spacing)
                ? new Assembly.NoNailing()
                : new Assembly.Nails(
                        diameter,
                        length,
                        nails.getRows(),
                        spacing,
                        nails.getStaggered(),
                        nails.getBothFaces(),
                        nails.getEveryPly(),
                        nails.getAtEnds());
    }

    private static Assembly.Joints joints(List<PlyJoint> joints, Beam beam, Spot at) {
        List<Assembly.Joint> read = new ArrayList<>();
        for (int i = 0; i < joints.size(); i++) {
            PlyJoint joint = joints.get(i);
            Text place = at.element(i).text("at", joint.getAt());
            double x = place.quantity(Range.POSITION);
            if (joint.getPly() > beam.plies()) {
                String ply = Integer.toString(joint.getPly());
                at.element(i).member("ply").report(Messages.PLY_UNKNOWN, ply, ply, Integer.toString(beam.plies()));
            } else if (x <= beam.start() + ROUNDING || x >= beam.end() - ROUNDING) {
                place.spot().report(Messages.JOINT_OFF_BEAM, place.value());
            } else if (!Double.isNaN(x)) {
                read.add(new Assembly.Joint(joint.getPly(), x));
            }
        }
        return read.size() == joints.size() ? new Assembly.JointsAt(read) : new Assembly.JointsUndeclared();
    }
}
