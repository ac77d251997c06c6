package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Citation;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Inputs;
import java.util.ArrayList;
import java.util.List;

/** Simple beams of the textbooks as shore beams on two posts, through the whole assessment. */
final class LoadFigures {

    private static final String BEAM = "beam of A";

    private LoadFigures() {}

    static double beam(Case published, Expected wanted) {
        Inputs in = published.inputs();
        return switch (wanted.quantity()) {
            case "reaction" -> reaction(plan(in, section(in, 1), loads(in)), (int) wanted.place());
            case "moment" -> Simple.sagging(plan(in, section(in, 1), loads(in)), BEAM);
            case "shear" -> Simple.shear(plan(in, section(in, 1), loads(in)), BEAM);
            case "stress" -> stress(in, section(in, 1), loads(in));
            case "loadMax" -> allowed(in) / stress(in, section(in, 1), ones(in));
            case "sideRequired" -> side(in);
            case "sectionModulusRequired" -> section(in, side(in)).sectionModulus();
            case "shearStress" -> Simple.demand(plan(in, section(in, side(in)), loads(in)), CheckId.BEAM_SHEAR, BEAM);
            default -> throw new IllegalArgumentException(wanted.name());
        };
    }

    /** The section stated; a square one of the side where none is. */
    private static RectangularSection section(Inputs in, double side) {
        return in.has("breadth_in") || in.has("breadth_mm")
                ? new RectangularSection(InUnits.length(in, "breadth"), InUnits.length(in, "depth"))
                : new RectangularSection(side, side);
    }

    /** Of a square section; the stress falls with the cube of the side. */
    private static double side(Inputs in) {
        double side = 0.1;
        return side * Math.cbrt(stress(in, section(in, side), loads(in)) / allowed(in));
    }

    private static double allowed(Inputs in) {
        return InUnits.stress(in, "bendingAllowable");
    }

    private static double stress(Inputs in, RectangularSection section, List<Load> loads) {
        return Simple.demand(plan(in, section, loads), CheckId.BEAM_BENDING, BEAM);
    }

    private static double reaction(JobPlan plan, int post) {
        SituationResult result = Assessor.assess(plan).situations().get(0);
        return result.plainCases().get(0).forces().get(post);
    }

    private static List<Load> loads(Inputs in) {
        List<Load> loads = new ArrayList<>();
        if (in.has("lineLoad_plf") || in.has("lineLoad_kNPerM")) {
            loads.add(Simple.uniform(InUnits.line(in, "lineLoad"), 0));
        }
        if (in.has("pointLoad_lbf")) {
            loads.add(Simple.point(InUnits.length(in, "at"), InUnits.force(in, "pointLoad")));
        }
        return loads;
    }

    /** One newton in the middle, or one as far from each end as stated. */
    private static List<Load> ones(Inputs in) {
        double span = InUnits.length(in, "span");
        if (!in.has("fromEnds_m")) {
            return List.of(Simple.point(span / 2, 1));
        }
        double from = InUnits.length(in, "fromEnds");
        return List.of(Simple.point(from, 1), Simple.point(span - from, 1));
    }

    private static JobPlan plan(Inputs in, RectangularSection section, List<Load> loads) {
        Member member = Simple.member(section, grade(section), 0);
        return Simple.beam(member, InUnits.length(in, "span"), 0, 0.1, loads);
    }

    /** Strong enough for everything; timbers and boards are judged by different tables. */
    static WoodGrade grade(RectangularSection section) {
        double strong = 1e9;
        WoodGrade.Sizes sizes =
                section.breadth() < 4.5 * Plans.INCH ? WoodGrade.Sizes.WESTERN_DIMENSION : WoodGrade.Sizes.TIMBER_4D;
        Citation stated = Citation.read("example", "", "as the example states");
        return new WoodGrade("any", "any", strong, strong, strong, strong, strong, 1e10, 5e9, 0.5, sizes, stated);
    }
}
