package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.aisc360_16.Appendix8;
import dev.underprop.engine.clause.aisc360_16.SectionE3;
import dev.underprop.engine.clause.aisc360_16.SectionF8;
import dev.underprop.engine.clause.aisc360_16.SectionH1;
import dev.underprop.engine.plan.PostType.Pipe;
import dev.underprop.engine.section.RoundTube;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.standard.Outcome;

/**
 * A post of one round tube, pinned at both ends, its load off the middle by the same distance at both: AISC 360-16 E3 and F8
 * joined by H1, the moment amplified by Appendix 8. The load it bears is searched for from below, so that what is found is
 * never more than what the rule gives.
 */
final class PipeJudge {

    /** E of steel, 29000 ksi (Pa). */
    private static final double MODULUS = 29e6 * 4.4482216152605 / (0.0254 * 0.0254);

    /** Halvings of the range of the load; what is left of it is rounding. */
    private static final int HALVINGS = 60;

    private PipeJudge() {}

    /** As {@link #judge(Pipe, double, double, Working)}, without a record. */
    static Finding judge(Pipe pipe, double height, double load) {
        return judge(pipe, height, load, Working.OFF);
    }

    /**
     * @param height between the pins (m), positive
     * @param load (N), not negative
     */
    static Finding judge(Pipe pipe, double height, double load, Working working) {
        RoundTube tube = pipe.section();
        Outcome wall = SectionE3.wall(tube.diameter(), tube.wall(), pipe.yield());
        Outcome stress = SectionE3.stress(pipe.yield(), height / tube.radius());
        Outcome moment = SectionF8.moment(tube.diameter(), tube.wall(), pipe.yield());
        for (Outcome condition : new Outcome[] {wall, stress, moment}) {
            if (condition instanceof Outcome.Refused refused) {
                working.analysis("P", "greatest load of the post", Dimension.FORCE, load);
                return working.compared("P", "", new CheckResult.Refused(Measure.FORCE, load, refused.reason()));
            }
        }
        TubeSteps told = new TubeSteps(tube, pipe.yield(), working);
        double axial = told.axial(height, ((Outcome.Value) stress).cited());
        double bends = told.moment((Outcome.Value) moment);
        double euler = working.rule(
                "Pe",
                "critical load between the pins",
                Dimension.FORCE,
                Math.PI * Math.PI * MODULUS * tube.area() * tube.radius() * tube.radius() / (height * height),
                Appendix8.limit(1).citation(),
                "π^2 × E × A × r^2 / h^2");
        double capacity = greatest(axial, bends, euler, pipe.eccentricity());
        told.used(capacity, axial, bends, euler, pipe.eccentricity());
        working.analysis("P", "greatest load of the post", Dimension.FORCE, load);
        return working.compared("P", "Pa", new CheckResult.Judged(Measure.FORCE, load, capacity));
    }

    private static double greatest(double axial, double moment, double euler, double eccentricity) {
        double holds = 0;
        double fails = Math.min(axial, Appendix8.limit(euler).value());
        for (int i = 0; i < HALVINGS; i++) {
            double load = (holds + fails) / 2;
            double amplified = Appendix8.amplifier(load, euler).value() * load * eccentricity;
            if (SectionH1.interaction(load / axial, amplified / moment).value() <= 1) {
                holds = load;
            } else {
                fails = load;
            }
        }
        return holds;
    }
}
