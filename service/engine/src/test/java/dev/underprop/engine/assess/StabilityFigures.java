package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.clause.nds2018.BeamLoading;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.clause.nds2018.Section3_3;
import dev.underprop.engine.clause.nds2018.Section4_4;
import dev.underprop.engine.clause.nds2018.Section4_4.LateralSupport;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Inputs;
import java.util.List;

/** Beam stability: lengths, slenderness and a whole example with a load at midspan. */
final class StabilityFigures {

    private static final double INCH = Plans.INCH;
    private static final double PSI = Plans.PSI;
    private static final String BEAM = "beam of A";

    private StabilityFigures() {}

    /** Coefficients of le = a·lu + b·d, read off two lengths inside the row's range. */
    static double effectiveLength(Case published, Expected wanted) {
        BeamLoading loading = loading(wanted.given().text("load"));
        double[] lengths = switch (wanted.given().text("luOverDepth")) {
            case "below 7" -> new double[] {2, 6.9};
            case "7 and above" -> new double[] {7, 20};
            case "7 to 14.3" -> new double[] {7, 14.3};
            case "above 14.3" -> new double[] {14.4, 30};
            case "any" -> new double[] {2, 30};
            default -> throw new IllegalArgumentException(wanted.toString());
        };
        double first = Section3_3.effectiveLength(loading, lengths[0], 1).value();
        double second = Section3_3.effectiveLength(loading, lengths[1], 1).value();
        double slope = (second - first) / (lengths[1] - lengths[0]);
        return wanted.quantity().equals("luCoefficient") ? slope : first - slope * lengths[0];
    }

    private static BeamLoading loading(String text) {
        return switch (text) {
            case "uniform, single span", "uniform" -> BeamLoading.UNIFORM;
            case "point at centre, unbraced there, single span" -> BeamLoading.CENTRE_LOAD;
            case "point at centre, braced there, single span" -> BeamLoading.CENTRE_LOAD_BRACED;
            case "not listed" -> BeamLoading.NOT_LISTED;
            case "two equal points at third points, braced there" -> BeamLoading.TWO_LOADS_BRACED;
            case "three equal points at quarter points, braced there" -> BeamLoading.THREE_LOADS_BRACED;
            case "four equal points at fifth points, braced there" -> BeamLoading.FOUR_LOADS_BRACED;
            case "five equal points at sixth points, braced there" -> BeamLoading.FIVE_LOADS_BRACED;
            case "six equal points at seventh points, braced there" -> BeamLoading.SIX_LOADS_BRACED;
            case "seven or more equal points, braced there" -> BeamLoading.SEVEN_OR_MORE_LOADS_BRACED;
            case "equal end moments" -> BeamLoading.END_MOMENTS;
            case "uniform, cantilever" -> BeamLoading.CANTILEVER_UNIFORM;
            case "point at end, cantilever" -> BeamLoading.CANTILEVER_END_LOAD;
            default -> throw new IllegalArgumentException(text);
        };
    }

    /** RB of a refused member is not told; that of one twice as broad is half of it. */
    static double limit(Case published, Expected wanted) {
        Inputs in = published.inputs();
        double depth = in.number("depth_in") * INCH;
        double le = Section3_3.effectiveLength(
                        loading(in.text("load")), in.number("unbracedLength_ft") * Plans.FOOT, depth)
                .value();
        return switch (wanted.name()) {
            case "effectiveLength" -> le;
            case "RB" -> 2 * FactorFigures.value(Section3_3.slenderness(le, 2 * in.number("breadth_in") * INCH, depth));
            case "RBLimit" -> Section3_3.SLENDERNESS_LIMIT;
            default -> throw new IllegalArgumentException(wanted.name());
        };
    }

    /** The greatest depth over breadth for which a kind of support is enough, by halving. */
    static double lateralSupport(Case published, Expected wanted) {
        if (wanted.name().equals("needsBridging")) {
            return SizingFigures.needsBridging(wanted);
        }
        LateralSupport support = switch (wanted.given().text("support")) {
            case "none" -> LateralSupport.NONE;
            case "ends held against rotation" -> LateralSupport.ENDS;
            case "ends held and compression edge held along its length" -> LateralSupport.COMPRESSION_EDGE;
            case "ends held, compression edge held, bridging or blocking" -> LateralSupport.BRIDGING;
            case "ends held and both edges held along their length" -> LateralSupport.BOTH_EDGES;
            default -> throw new IllegalArgumentException(wanted.toString());
        };
        double low = 1;
        double high = 10;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            boolean enough = Section4_4.stabilityByRule(1, middle, support) instanceof Outcome.Value;
            low = enough ? middle : low;
            high = enough ? high : middle;
        }
        return low;
    }

    /** The example with a load at midspan: stability by its clauses, the rest through the whole assessment. */
    static double midspanLoad(Case published, Expected wanted) {
        Midspan example = new Midspan(published.inputs());
        return switch (wanted.name()) {
            case "effectiveLength" -> example.le();
            case "RB" -> example.rb();
            case "FbE" -> example.fbe();
            case "CL" -> example.cl();
            case "Fb_adjusted" -> example.bending();
            case "momentAllowable" -> example.moment();
            case "pointLoadAllowable" -> example.load();
            case "fv" -> example.demand(CheckId.BEAM_SHEAR, BEAM);
            case "Fv_adjusted" -> new TimberCapacity(example.member(0), 1).shear(LoadDuration.TEN_YEARS);
            case "fc_perp" -> example.demand(CheckId.BEAM_BEARING_AT_POST, "P1");
            case "Fc_perp_adjusted" -> new TimberCapacity(example.member(0), 1).bearing();
            case "deflection" -> example.deflection();
            case "spanOverDeflection" -> example.span() / example.deflection();
            default -> throw new IllegalArgumentException(wanted.name());
        };
    }

    private record Midspan(Inputs in) {

        private RectangularSection section() {
            return new RectangularSection(in.number("breadth_in") * INCH, in.number("depth_in") * INCH);
        }

        private Member member(double plf) {
            WoodGrade grade = new WoodGrade(
                    in.text("species"),
                    in.text("grade"),
                    in.number("Fb_psi") * PSI,
                    in.number("Fb_psi") * PSI,
                    in.number("Fv_psi") * PSI,
                    in.number("Fc_perp_psi") * PSI,
                    in.number("Fb_psi") * PSI,
                    in.number("E_psi") * PSI,
                    in.number("Emin_psi") * PSI,
                    0.5,
                    WoodGrade.Sizes.WESTERN_DIMENSION,
                    Citation.read("example", "", "as the example states"));
            return Simple.member(section(), grade, plf * Plans.PLF);
        }

        private double span() {
            return in.number("span_ft") * Plans.FOOT;
        }

        private double le() {
            return Section3_3.effectiveLength(
                            BeamLoading.CENTRE_LOAD,
                            in.number("unbracedLength_in") * INCH,
                            section().depth())
                    .value();
        }

        private double rb() {
            return FactorFigures.value(
                    Section3_3.slenderness(le(), section().breadth(), section().depth()));
        }

        private double fbe() {
            return Section3_3.criticalStress(in.number("Emin_psi") * PSI, rb()).value();
        }

        private double star() {
            return new TimberCapacity(member(0), 1).bending(LoadDuration.TEN_YEARS, 0);
        }

        private double cl() {
            return Section3_3.stability(fbe(), star()).value();
        }

        private double bending() {
            return star() * cl();
        }

        private double moment() {
            return bending() * section().sectionModulus();
        }

        /** What the moment of the own weight leaves over, by the moment of one newton at midspan. */
        private double load() {
            double own = Simple.sagging(plan(in.number("selfWeight_plf"), 0, 0), BEAM);
            double one = Simple.sagging(plan(0, 0, 1), BEAM);
            return (moment() - own) / one;
        }

        private JobPlan plan(double plf, double beyond, double force) {
            List<Load> loads = force > 0 ? List.of(Simple.point(span() / 2, force)) : List.of();
            return Simple.beam(member(plf), span(), beyond, in.number("bearingLength_in") * INCH, loads);
        }

        /** The example leaves the own weight out of shear and bearing. */
        private double demand(CheckId id, String place) {
            double beyond = in.number("bearingLength_in") * INCH / 2;
            return Simple.demand(plan(0, beyond, load()), id, place);
        }

        private double deflection() {
            return Simple.demand(plan(in.number("selfWeight_plf"), 0, load()), CheckId.BEAM_DEFLECTION_TOTAL, BEAM);
        }
    }
}
