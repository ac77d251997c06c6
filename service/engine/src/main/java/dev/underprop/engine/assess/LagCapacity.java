package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.nds2018.Grain;
import dev.underprop.engine.clause.nds2018.LagSize;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.clause.nds2018.Section11_3;
import dev.underprop.engine.clause.nds2018.Section12_1;
import dev.underprop.engine.clause.nds2018.Section12_5;
import dev.underprop.engine.clause.nds2018.Section2_3;
import dev.underprop.engine.material.Moisture;
import dev.underprop.engine.plan.LagScrews;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Dimension;
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

    private static final Citation TABLE = Citation.remembered("NDS", "2018", "Table 11.3.1");

    private final Member beam;
    private final Plate plate;
    private final LagScrews screws;

    LagCapacity(Member beam, Plate plate, LagScrews screws) {
        this.beam = beam;
        this.plate = plate;
        this.screws = screws;
    }

    /** As {@link #judge(double, Working)}, without a record. */
    Finding judge(double force) {
        return judge(force, Working.OFF);
    }

    /** @param force sideways (N), not negative; F in the record */
    Finding judge(double force, Working working) {
        Optional<LagSize> size = LagSize.of(screws.diameter());
        if (Double.isNaN(plate.thickness())) {
            return new CheckResult.NotChecked(
                    "the thickness of the head plate under the lag screws is not stated (declare: thickness)");
        }
        if (screws.edge() > beam.ply().breadth() / 2 || screws.penetration() > beam.depth()) {
            return new CheckResult.NotChecked("the lag screws as described do not fit the beam");
        }
        if (size.isEmpty()) {
            return working.compared(
                    "F",
                    "",
                    new CheckResult.Refused(
                            Measure.FORCE, force, "the table of lag screws, 1/4 in to 1 in, holds no such diameter"));
        }
        Working along = working.branch();
        Working across = working.branch();
        Finding parallel = judge(size.get(), Grain.PARALLEL, force, along);
        Finding worst = Worse.of(parallel, judge(size.get(), Grain.PERPENDICULAR, force, across));
        working.adopt(worst == parallel ? along : across);
        return worst;
    }

    private Finding judge(LagSize size, Grain grain, double force, Working working) {
        double d = size.diameter();
        double between = screws.count() == 1 ? 0 : Math.max(0, beam.ply().breadth() - 2 * screws.edge());
        Outcome reach = Section12_1.penetration(d, screws.penetration());
        Outcome end = Section12_5.end(grain, d, screws.end());
        Outcome edge = Section12_5.edge(grain, d, screws.penetration(), screws.edge(), between);
        Outcome spacing = screws.count() == 1 ? edge : Section12_5.spacing(d, screws.spacing());
        for (Outcome condition : new Outcome[] {reach, end, edge, spacing}) {
            if (condition instanceof Outcome.Refused refused) {
                return working.compared("F", "", new CheckResult.Refused(Measure.FORCE, force, refused.reason()));
            }
        }
        LagSteps told = new LagSteps(size, grain, working);
        double one = told.one(beam.grade(), screws.penetration(), plate.thickness());
        double all = screws.count()
                * one
                * working.rule(
                        Section2_3.loadDuration(LoadDuration.PERMANENT),
                        "load duration factor, permanent load",
                        Dimension.NUMBER,
                        "")
                * working.rule(Section11_3.wetService(moisture()), "wet service factor", Dimension.NUMBER, "")
                * told.end(((Outcome.Value) end).cited(), screws.end())
                * group(grain, d, told);
        working.rule("Z'", "all screws, adjusted", Dimension.FORCE, all, TABLE, "n × Z × CD × CM × CΔ × Cg");
        return working.compared("F", "Z'", new CheckResult.Judged(Measure.FORCE, force, all));
    }

    private Moisture moisture() {
        return beam.moisture() == Member.Moisture.WET ? Moisture.WET : Moisture.DRY;
    }

    /** Across the grain the timber counts over the least distance of two screws only. */
    private double group(Grain grain, double diameter, LagSteps told) {
        if (screws.count() == 1) {
            return told.single();
        }
        boolean along = grain == Grain.PARALLEL;
        double timber = along ? beam.ply().area() : beam.depth() * screws.spacing();
        double steel = plate.thickness() * (along ? plate.across() : plate.along());
        double row = along ? plate.along() : plate.across();
        double modulus = beam.grade().modulus();
        double apart = row / (screws.count() - 1);
        Cited factor = Section11_3.groupAction(screws.count(), diameter, apart, modulus * timber, STEEL * steel);
        return told.group(factor, screws.count(), apart, modulus * timber, STEEL * steel);
    }
}
