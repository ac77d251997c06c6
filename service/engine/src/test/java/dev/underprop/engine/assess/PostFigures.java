package dev.underprop.engine.assess;

import static dev.underprop.engine.assess.Plans.FOOT;
import static dev.underprop.engine.assess.Plans.INCH;
import static dev.underprop.engine.assess.Plans.POUND;
import static dev.underprop.engine.assess.Plans.PSI;

import dev.underprop.engine.clause.aci318_19.Section14_5_6;
import dev.underprop.engine.clause.aisc360_16.SectionE3;
import dev.underprop.engine.clause.aisc360_16.SectionF11;
import dev.underprop.engine.clause.aisc_dg1_2006.Section3_1;
import dev.underprop.engine.clause.nds2018.Grain;
import dev.underprop.engine.clause.nds2018.LagSize;
import dev.underprop.engine.clause.nds2018.Section12_1;
import dev.underprop.engine.clause.nds2018.Section12_2;
import dev.underprop.engine.clause.nds2018.Section12_3;
import dev.underprop.engine.section.RoundTube;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Inputs;

/** Steel, screws and plates of posts. */
final class PostFigures {

    private PostFigures() {}

    static double withdrawal(Case published, Expected wanted) {
        Inputs row = wanted.given();
        return Section12_2.lagWithdrawal(row.number("gravity"), row.number("diameter_in") * INCH)
                .value();
    }

    static double lateral(Case published, Expected wanted) {
        Inputs row = wanted.given();
        LagSize size = LagSize.of(row.number("diameter_in") * INCH).orElseThrow();
        Grain grain = row.text("grain").equals("parallel") ? Grain.PARALLEL : Grain.PERPENDICULAR;
        double length =
                FactorFigures.value(Section12_1.penetration(size.diameter(), row.number("penetration_in") * INCH));
        double plate = published.inputs().number("plate_in") * INCH;
        return Section12_3.lateral(size, grain, row.number("gravity"), length, plate)
                .value();
    }

    /** The thickness at which the moment is all that is allowed; what is allowed grows with its square. */
    static double plate(Case published, Expected wanted) {
        Inputs in = published.inputs();
        double along = in.number("along_in") * INCH;
        double out =
                Section3_1.besideRound(along, in.number("diameter_in") * INCH).value();
        double pressure = in.number("load_lbf") * POUND / (along * in.number("across_in") * INCH);
        double unit = SectionF11.plate(in.number("yield_psi") * PSI, 1).value();
        return wanted.name().equals("cantilever") ? out : Math.sqrt(pressure * out * out / 2 / unit);
    }

    static double concrete(Case published, Expected wanted) {
        Inputs in = published.inputs();
        double plate = in.number("plate_in") * INCH;
        double pad = in.number("pad_in") * INCH;
        double support = Section14_5_6.support(plate, plate, pad, pad, in.number("thickness_in") * INCH)
                .value();
        return wanted.name().equals("supportArea")
                ? support
                : FactorFigures.value(Section14_5_6.bearing(in.number("strength_psi") * PSI, plate * plate, support));
    }

    static double column(Case published, Expected wanted) {
        Inputs in = published.inputs();
        Inputs row = in.has("area_in2") ? in : wanted.given();
        double slenderness = row.number("length_ft") * FOOT / (row.number("radius_in") * INCH);
        double stress = FactorFigures.value(SectionE3.stress(in.number("yield_psi") * PSI, slenderness));
        return wanted.name().equals("slenderness") ? slenderness : stress * row.number("area_in2") * INCH * INCH;
    }

    static double tube(Case published, Expected wanted) {
        Inputs in = published.inputs();
        double outside = in.number("outside_in") * INCH;
        RoundTube tube = new RoundTube(outside, (outside - in.number("inside_in") * INCH) / 2);
        return in.number("load_lbf") * POUND / tube.area();
    }
}
