package dev.underprop.engine.assess;

import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.aisc360_16.SectionE3;
import dev.underprop.engine.clause.aisc360_16.SectionF11;
import dev.underprop.engine.clause.aisc360_16.SectionF8;
import dev.underprop.engine.clause.aisc360_16.SectionH1;
import dev.underprop.engine.clause.aisc360_16.SectionJ4;
import dev.underprop.engine.plan.Telescope;
import dev.underprop.engine.section.RoundTube;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.standard.Outcome;
import java.util.List;

/**
 * One part of a telescopic post, tube or screw.
 *
 * @param name in words
 * @param diameter outside, of a screw at its root (m), positive
 * @param inside diameter (m), 0 for a screw
 * @param hole diameter of pin holes (m), 0 where there are none
 * @param length (m), positive
 * @param area (m²), positive
 * @param inertia (m⁴), positive
 * @param yield Fy (Pa), positive
 * @param moment allowable (N·m), or refused
 * @param wall whether its wall is stocky enough
 * @param netArea at pin holes (m²), the whole where there are none
 * @param netMoment allowable at pin holes (N·m)
 */
record ShaftPart(
        String name,
        double diameter,
        double inside,
        double hole,
        double length,
        double area,
        double inertia,
        double yield,
        Outcome moment,
        Outcome wall,
        double netArea,
        double netMoment) {

    /** E of steel, 29000 ksi (Pa). */
    static final double MODULUS = 29e6 * 4.4482216152605 / (0.0254 * 0.0254);

    private static final double OMEGA = 1.67;

    /** A tube with holes for a pin through both walls, taken where they weaken bending most. */
    static ShaftPart tube(String name, Telescope.Part part, double length, double hole) {
        RoundTube tube = part.tube();
        double cut = hole * tube.wall();
        double netModulus = tube.plasticModulus() - cut * (tube.diameter() - tube.wall());
        return new ShaftPart(
                name,
                tube.diameter(),
                tube.inside(),
                hole,
                length,
                tube.area(),
                tube.inertia(),
                part.yield(),
                SectionF8.moment(tube.diameter(), tube.wall(), part.yield()),
                SectionE3.wall(tube.diameter(), tube.wall(), part.yield()),
                tube.area() - 2 * cut,
                part.yield() * netModulus / OMEGA);
    }

    /** A screw over the root of its thread. */
    static ShaftPart screw(Telescope.Screw screw) {
        double d = screw.root();
        double area = Math.PI / 4 * d * d;
        Outcome moment = new Outcome.Value(SectionF11.round(screw.yield(), d));
        return new ShaftPart(
                "the root of the screw",
                d,
                0,
                0,
                screw.exposed(),
                area,
                area * d * d / 16,
                screw.yield(),
                moment,
                moment,
                area,
                ((Outcome.Value) moment).cited().value());
    }

    double rigidity() {
        return MODULUS * inertia;
    }

    /** Allowable stress where the whole post buckles at a load: E3 with the slenderness that gives this critical load. */
    private Outcome stress(double critical) {
        return SectionE3.stress(yield, Math.PI * Math.sqrt(MODULUS * area / critical));
    }

    /** What the clauses say of it; any may refuse. */
    List<Outcome> conditions(double critical) {
        return List.of(wall, moment, stress(critical));
    }

    /** Share of the strength used of the whole section (H1.1). No condition may have refused. */
    double used(double load, double offset, double critical) {
        return SectionH1.interaction(load / axial(critical), load * offset / value(moment))
                .value();
    }

    /** Share used at pin holes: a short piece in compression and bending, added up. */
    double usedAtHoles(double load, double offset) {
        return load / SectionJ4.compression(yield, netArea).value() + load * offset / netMoment;
    }

    /** Allowable axial load (N). */
    double axial(double critical) {
        return value(stress(critical)) * area;
    }

    /** Tells what the critical load takes of it. @param mark that its symbols bear */
    void tellStiffness(String mark, Working working) {
        working.plan("D" + mark, "outside diameter, " + name, Dimension.LENGTH, diameter);
        working.plan("Di" + mark, "inside diameter, " + name, Dimension.LENGTH, inside);
        working.plan("L" + mark, "length, " + name, Dimension.LENGTH, length);
        working.step(
                "I" + mark,
                "second moment of area, " + name,
                Dimension.SECOND_MOMENT,
                inertia,
                marked("π / 64 × ( D#^4 - Di#^4 )", mark));
    }

    /** Tells how much of its strength is used where it is used up. @param offset of the load from its axis (m) */
    void tellUse(String mark, double load, double offset, double critical, Working working) {
        Cited stress = ((Outcome.Value) stress(critical)).cited();
        working.plan("Fy", "yield stress, " + name, Dimension.STRESS, yield);
        working.step("A", "area", Dimension.AREA, area, marked("π / 4 × ( D#^2 - Di#^2 )", mark));
        double slender = Math.PI * Math.sqrt(MODULUS * area / critical);
        working.step("λ", "slenderness that gives Pcr", Dimension.NUMBER, slender, "π × root( E × A / Pcr )");
        double euler = Math.PI * Math.PI * MODULUS / (slender * slender);
        working.rule("Fe", "elastic buckling stress", Dimension.STRESS, euler, stress.citation(), "π^2 × E / λ^2");
        boolean stocky = yield / euler <= SectionE3.INELASTIC;
        String formula = stocky ? "0.658^( Fy / Fe ) × Fy / 1.67" : "0.877 × Fe / 1.67";
        working.rule("Fa", stress, "allowable axial stress", Dimension.STRESS, formula);
        working.step("Pc", "allowable axial load", Dimension.FORCE, axial(critical), "Fa × A");
        String bent = inside > 0
                ? "Fy × ( D#^3 - Di#^3 ) / 6 / 1.67"
                : "min( Fy × D#^3 / 6 , 1.6 × Fy × π × D#^3 / 32 ) / 1.67";
        working.rule("Mc", moment, "allowable moment", Dimension.MOMENT, marked(bent, mark));
        boolean much = load / axial(critical) >= SectionH1.MUCH;
        working.rule(
                "U",
                SectionH1.interaction(load / axial(critical), load * offset / value(moment)),
                "share used",
                Dimension.NUMBER,
                much ? "Pm / Pc + 8 / 9 × Pm × y / Mc" : "Pm / ( 2 × Pc ) + Pm × y / Mc");
    }

    /** The same at pin holes. */
    void tellUseAtHoles(String mark, double load, double offset, Working working) {
        working.plan("Fy", "yield stress, " + name, Dimension.STRESS, yield);
        working.plan("dh", "diameter of the pin holes", Dimension.LENGTH, hole);
        working.step("t", "wall", Dimension.LENGTH, (diameter - inside) / 2, marked("( D# - Di# ) / 2", mark));
        working.step(
                "An",
                "area less the holes",
                Dimension.AREA,
                netArea,
                marked("π / 4 × ( D#^2 - Di#^2 ) - 2 × dh × t", mark));
        working.step(
                "Zn",
                "plastic section modulus less the holes",
                Dimension.SECTION_MODULUS,
                netMoment * OMEGA / yield,
                marked("( D#^3 - Di#^3 ) / 6 - dh × t × ( D# - t )", mark));
        working.rule(
                "Pn", SectionJ4.compression(yield, netArea), "allowable axial load", Dimension.FORCE, "Fy × An / 1.67");
        working.step("Mn", "allowable moment", Dimension.MOMENT, netMoment, "Fy × Zn / 1.67");
        working.step("U", "share used", Dimension.NUMBER, usedAtHoles(load, offset), "Pm / Pn + Pm × y / Mn");
    }

    private static String marked(String formula, String mark) {
        return formula.replace("#", mark);
    }

    private static double value(Outcome outcome) {
        return ((Outcome.Value) outcome).cited().value();
    }
}
