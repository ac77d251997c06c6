package dev.underprop.engine.assess;

import dev.underprop.engine.clause.aisc360_16.SectionE3;
import dev.underprop.engine.clause.aisc360_16.SectionF11;
import dev.underprop.engine.clause.aisc360_16.SectionF8;
import dev.underprop.engine.clause.aisc360_16.SectionH1;
import dev.underprop.engine.clause.aisc360_16.SectionJ4;
import dev.underprop.engine.plan.Telescope;
import dev.underprop.engine.section.RoundTube;
import dev.underprop.engine.standard.Outcome;
import java.util.List;

/**
 * One part of a telescopic post, tube or screw.
 *
 * @param name in words
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
        double length,
        double area,
        double inertia,
        double yield,
        Outcome moment,
        Outcome wall,
        double netArea,
        double netMoment) {

    /** E of steel, 29000 ksi (Pa). */
    private static final double MODULUS = 29e6 * 4.4482216152605 / (0.0254 * 0.0254);

    private static final double OMEGA = 1.67;

    /** A tube with holes for a pin through both walls, taken where they weaken bending most. */
    static ShaftPart tube(String name, Telescope.Part part, double length, double hole) {
        RoundTube tube = part.tube();
        double cut = hole * tube.wall();
        double netModulus = tube.plasticModulus() - cut * (tube.diameter() - tube.wall());
        return new ShaftPart(
                name,
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

    private static double value(Outcome outcome) {
        return ((Outcome.Value) outcome).cited().value();
    }
}
