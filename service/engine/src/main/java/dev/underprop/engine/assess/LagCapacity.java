package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.clause.nds2018.Grain;
import dev.underprop.engine.clause.nds2018.LagSize;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.clause.nds2018.Section11_3;
import dev.underprop.engine.clause.nds2018.Section12_1;
import dev.underprop.engine.clause.nds2018.Section12_3;
import dev.underprop.engine.clause.nds2018.Section12_5;
import dev.underprop.engine.clause.nds2018.Section2_3;
import dev.underprop.engine.material.Moisture;
import dev.underprop.engine.plan.LagScrews;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.standard.Outcome;
import java.util.Optional;

/**
 * What lag screws up through a head plate into the underside of a beam hold sideways, along and across the beam; the lesser
 * counts. NDS 2018 chapters 11 and 12, with the load duration of permanent load whatever the force comes from, and all
 * screws counted as one row over the plate, which is the least that their group can do.
 */
final class LagCapacity {

    /** Modulus of the steel plate (Pa), 29000 ksi: AISC 360-16, from memory. */
    private static final double STEEL = 29e6 * 4.4482216152605 / (0.0254 * 0.0254);

    private final Member beam;
    private final Plate plate;
    private final LagScrews screws;

    LagCapacity(Member beam, Plate plate, LagScrews screws) {
        this.beam = beam;
        this.plate = plate;
        this.screws = screws;
    }

    /** @param force sideways (N), not negative */
    Finding judge(double force) {
        Optional<LagSize> size = LagSize.of(screws.diameter());
        if (Double.isNaN(plate.thickness())) {
            return new CheckResult.NotChecked("the thickness of the head plate under the lag screws is not stated");
        }
        if (screws.edge() > beam.ply().breadth() / 2 || screws.penetration() > beam.depth()) {
            return new CheckResult.NotChecked("the lag screws as described do not fit the beam");
        }
        if (size.isEmpty()) {
            return new CheckResult.Refused(
                    Measure.FORCE, force, "the table of lag screws, 1/4 in to 1 in, holds no such diameter");
        }
        return Worse.of(judge(size.get(), Grain.PARALLEL, force), judge(size.get(), Grain.PERPENDICULAR, force));
    }

    private Finding judge(LagSize size, Grain grain, double force) {
        double d = size.diameter();
        double between = screws.count() == 1 ? 0 : Math.max(0, beam.ply().breadth() - 2 * screws.edge());
        Outcome reach = Section12_1.penetration(d, screws.penetration());
        Outcome end = Section12_5.end(grain, d, screws.end());
        Outcome edge = Section12_5.edge(grain, d, screws.penetration(), screws.edge(), between);
        Outcome spacing = screws.count() == 1 ? edge : Section12_5.spacing(d, screws.spacing());
        for (Outcome condition : new Outcome[] {reach, end, edge, spacing}) {
            if (condition instanceof Outcome.Refused refused) {
                return new CheckResult.Refused(Measure.FORCE, force, refused.reason());
            }
        }
        double one = Section12_3.lateral(size, grain, beam.grade().gravity(), screws.penetration(), plate.thickness())
                .value();
        double all = screws.count()
                * one
                * Section2_3.loadDuration(LoadDuration.PERMANENT).value()
                * Section11_3.wetService(moisture()).value()
                * ((Outcome.Value) end).cited().value()
                * group(grain, d);
        return new CheckResult.Judged(Measure.FORCE, force, all);
    }

    private Moisture moisture() {
        return beam.moisture() == Member.Moisture.WET ? Moisture.WET : Moisture.DRY;
    }

    /** Across the grain the timber counts over the least distance of two screws only. */
    private double group(Grain grain, double diameter) {
        if (screws.count() == 1) {
            return 1;
        }
        boolean along = grain == Grain.PARALLEL;
        double timber = along ? beam.ply().area() : beam.depth() * screws.spacing();
        double steel = plate.thickness() * (along ? plate.across() : plate.along());
        double row = along ? plate.along() : plate.across();
        double modulus = beam.grade().modulus();
        return Section11_3.groupAction(
                        screws.count(), diameter, row / (screws.count() - 1), modulus * timber, STEEL * steel)
                .value();
    }
}
