package dev.underprop.engine.lift;

import dev.underprop.engine.assess.StudiedFloor;
import dev.underprop.engine.check.MemberLimits;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.statics.ContactSolver;
import dev.underprop.engine.statics.Diagram;
import java.util.ArrayList;
import java.util.List;

/** Bending and shear of every member over what it may bear, the greater of both, over all bounds and cases. */
final class Members {

    private final StudiedFloor floor;
    private final List<MemberLimits> limits = new ArrayList<>();
    private final List<Diagram> diagrams = new ArrayList<>();
    private final List<MemberLimits> freed = new ArrayList<>();
    private final double[] row;

    Members(LiftFloor lift, Situation during) {
        this.floor = lift.study();
        ContactSolver solver = floor.bounds().get(0).solver();
        this.row = new double[solver.rowSize()];
        for (int m = 0; m < floor.frame().members(); m++) {
            limits.add(floor.limits(during, m));
            diagrams.add(solver.diagram(m));
        }
        for (LiftFloor.Jack jack : lift.jacks()) {
            freed.add(floor.limitsWithout(lift.heads().get(jack.post()).place()));
        }
    }

    void limits(LiftLimits.Ratios ratios, List<Limit> into) {
        int joists = floor.frame().joists().size();
        for (int m = 0; m < limits.size(); m++) {
            Limit.Kind kind = m < joists ? Limit.Kind.JOIST : Limit.Kind.BEAM;
            into.add(new Limit(kind, floor.member(m), m < joists ? ratios.joist() : ratios.beam()));
        }
    }

    /** What cannot be checked and why. */
    List<String> open() {
        List<String> open = new ArrayList<>();
        for (int m = 0; m < limits.size(); m++) {
            if (!limits.get(m).bendingKnown()) {
                open.add("the tables of dimension lumber give no size factor for the section of " + floor.member(m));
            }
        }
        return open;
    }

    int count() {
        return limits.size();
    }

    void read(Shape shape, double[] values, int from) {
        for (int m = 0; m < limits.size(); m++) {
            values[from + m] = limits.get(m).bendingKnown() ? worst(shape, m, limits.get(m)) : Double.NaN;
        }
    }

    /** The same while a jack holds: a post that is free of its beam does not hold it sideways either. */
    void read(Jacked jacked, double[] values, int from) {
        read(jacked.shape(), values, from);
        int beam = floor.frame().carrierMember(jacked.jack().place().shore());
        if (limits.get(beam).bendingKnown()) {
            values[from + beam] =
                    worst(jacked.shape(), beam, freed.get(jacked.jack().index()));
        }
    }

    private double worst(Shape shape, int m, MemberLimits limit) {
        double worst = 0;
        for (int b = 0; b < shape.bounds(); b++) {
            for (int i = 0; i < shape.cases(); i++) {
                shape.of(b, i).writeForces(m, row);
                diagrams.get(m).view(row);
                diagrams.get(m).scan();
                worst = Math.max(worst, ratio(m, limit, shape.combination(i)));
            }
        }
        return worst;
    }

    private double ratio(int m, MemberLimits limit, int combination) {
        Diagram diagram = diagrams.get(m);
        double sag = of(limit.bendingStress(diagram.sagging()), limit.sagging(combination));
        double hog = of(limit.bendingStress(diagram.hogging()), limit.hogging(combination));
        double cut = of(limit.shearStress(diagram.shear()), limit.shear(combination));
        return Math.max(sag, Math.max(hog, cut));
    }

    /** A member that is refused by a slenderness limit has no capacity at all. */
    private static double of(double stress, double allowed) {
        return stress <= 0 ? 0 : stress / allowed;
    }
}
