package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.clause.nds2018.Section3_10;
import dev.underprop.engine.clause.nds2018.Section3_4;
import dev.underprop.engine.clause.nds2018.Section3_5;
import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.material.Moisture;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.statics.UnitLoad;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Inputs;
import java.util.ArrayList;
import java.util.List;

/** Joists and floors through the whole assessment. */
final class FloorFigures {

    private static final double INCH = Plans.INCH;
    private static final double FOOT = Plans.FOOT;
    private static final double PSI = Plans.PSI;
    private static final double PSF = Plans.PSF;

    private FloorFigures() {}

    static double joistLimits(Case published, Expected wanted) {
        return switch (wanted.name()) {
            case "Fb_adjusted" ->
                new TimberCapacity(
                                limited(published.inputs()), published.inputs().number("Cr"))
                        .bending(LoadDuration.TEN_YEARS, 0);
            case "spanBending" -> spanAtLimit(published.inputs(), CheckId.JOIST_BENDING, 2, Simple.MIDDLE);
            case "spanShear" -> spanAtLimit(published.inputs(), CheckId.JOIST_SHEAR, 1, Simple.MIDDLE);
            case "spanBearing" -> spanAtLimit(published.inputs(), CheckId.JOIST_BEARING, 1, Simple.MIDDLE + " on near");
            case "spanDeflection" -> spanAtLimit(published.inputs(), CheckId.JOIST_DEFLECTION_LIVE, 3, Simple.MIDDLE);
            default -> throw new IllegalArgumentException(wanted.name());
        };
    }

    private static Member limited(Inputs in) {
        return Simple.member(
                Simple.section(in.text("size")),
                Simple.grade(
                        in.number("Fb_psi") * PSI,
                        in.number("Fv_psi") * PSI,
                        in.number("Fc_perp_psi") * PSI,
                        in.number("E_psi") * PSI),
                0);
    }

    /** Span (m) at which a ratio that grows with a power of the span is 1. */
    private static double spanAtLimit(Inputs in, CheckId id, double power, String place) {
        double ratio = Simple.check(limitedFloor(in, 4), id, place).ratio();
        double span = 4 * Math.pow(ratio, -1 / power);
        assertThat(Simple.check(limitedFloor(in, span), id, place).ratio()).isCloseTo(1, within(1e-9));
        return span;
    }

    private static JobPlan limitedFloor(Inputs in, double span) {
        Intensity load = new Intensity(in.number("dead_psf") * PSF, in.number("live_psf") * PSF, 0, 0);
        double seat = in.number("bearingLength_in") * INCH;
        return Simple.floor(limited(in), in.number("spacing_in") * INCH, span, seat, load);
    }

    /** A rafter under the loads normal to it. */
    static double rafter(Case published, Expected wanted) {
        Inputs in = published.inputs();
        double normal = PSF * Math.cos(Math.toRadians(in.number("slope_deg")));
        Intensity load = new Intensity(in.number("dead_psf") * normal, 0, 0, in.number("snow_psf") * normal);
        Member member = Simple.member(
                Simple.section(in.text("size")),
                Simple.grade(in.number("Fb_psi") * PSI, 180 * PSI, 625 * PSI, in.number("E_psi") * PSI),
                0);
        JobPlan plan =
                Simple.floor(member, in.number("spacing_in") * INCH, in.number("span_ft") * FOOT, 2 * INCH, load);
        return switch (wanted.name()) {
            case "bendingRatio" ->
                Simple.check(plan, CheckId.JOIST_BENDING, Simple.MIDDLE).ratio();
            case "deflection" -> Simple.demand(plan, CheckId.JOIST_DEFLECTION_TOTAL, Simple.MIDDLE);
            default -> throw new IllegalArgumentException(wanted.name());
        };
    }

    static double joistSection(Case published, Expected wanted) {
        Inputs in = published.inputs();
        return in.has("load_kPa") ? metricJoist(in, wanted) : customaryJoist(in, wanted);
    }

    private static double customaryJoist(Inputs in, Expected wanted) {
        double allowed = in.number("bendingAllowable_psi") * PSI;
        RectangularSection section = Simple.section("2x10");
        Member member = Simple.member(section, Simple.grade(allowed, allowed, allowed, 1e10), 0);
        Intensity load = new Intensity(in.number("load_psf") * PSF, 0, 0, 0);
        JobPlan plan =
                Simple.floor(member, in.number("spacing_in") * INCH, in.number("span_ft") * FOOT, 2 * INCH, load);
        return switch (wanted.name()) {
            case "lineLoad" -> ((UnitLoad.Uniform) onMiddle(plan).get(0)).intensity();
            case "moment" -> Simple.sagging(plan, Simple.MIDDLE);
            case "sectionModulusRequired" ->
                Simple.demand(plan, CheckId.JOIST_BENDING, Simple.MIDDLE) / allowed * section.sectionModulus();
            default -> throw new IllegalArgumentException(wanted.name());
        };
    }

    private static List<UnitLoad.Piece> onMiddle(JobPlan plan) {
        LoadModel model = LoadModel.of(plan);
        return model.units().get(model.dead()).pieces().stream()
                .filter(p -> p.member() == 1)
                .toList();
    }

    private static double metricJoist(Inputs in, Expected wanted) {
        RectangularSection section =
                new RectangularSection(in.number("breadth_mm") / 1000, in.number("depth_mm") / 1000);
        double allowed = in.number("bendingAllowable_MPa") * 1e6;
        WoodGrade grade = in.has("E_MPa")
                ? Simple.grade(allowed, allowed, allowed, in.number("E_MPa") * 1e6)
                : LoadFigures.grade(section);
        Member member = Simple.member(section, grade, 0);
        double spacing = in.has("spacing_m") ? in.number("spacing_m") : 1;
        JobPlan plan = Simple.floor(
                member, spacing, in.number("span_m"), 0.05, new Intensity(in.number("load_kPa") * 1000, 0, 0, 0));
        double shear = Simple.shear(plan, Simple.MIDDLE);
        return switch (wanted.name()) {
            case "totalLoad" ->
                onMiddle(plan).stream().mapToDouble(UnitLoad.Piece::total).sum();
            case "depthRequired" ->
                section.depth() * Math.sqrt(Simple.demand(plan, CheckId.JOIST_BENDING, Simple.MIDDLE) / allowed);
            case "spacingMax" -> spacing * allowed / Simple.demand(plan, CheckId.JOIST_BENDING, Simple.MIDDLE);
            case "secondMoment" -> section.inertia();
            case "deflection" -> Simple.demand(plan, CheckId.JOIST_DEFLECTION_TOTAL, Simple.MIDDLE);
            case "bearingLengthRequired" ->
                Section3_10.bearingStress(shear, 1, section.breadth()).value() / (in.number("Fc_perp_MPa") * 1e6);
            case "areaRequired" -> Section3_4.shearStress(shear, 1).value() / (in.number("Fv_MPa") * 1e6);
            default -> throw new IllegalArgumentException(wanted.name());
        };
    }

    static double longTerm(Case published, Expected wanted) {
        Inputs in = published.inputs();
        Member member = Lumber.member(in.text("species"), in.text("grade"), in.text("size"), (int) in.number("plies"));
        double dead = in.number("dead_plf") * Plans.PLF;
        double live = in.number("live_plf") * Plans.PLF;
        double span = in.number("span_ft") * FOOT;
        JobPlan lasting = Simple.beam(member, span, 0, 0.1, List.of(Simple.uniform(dead, 0)));
        JobPlan both = Simple.beam(member, span, 0, 0.1, List.of(Simple.uniform(dead, live)));
        double longTerm = Simple.demand(lasting, CheckId.BEAM_DEFLECTION_TOTAL, "beam of A");
        double shortTerm = Simple.demand(both, CheckId.BEAM_DEFLECTION_LIVE, "beam of A");
        return switch (wanted.name()) {
            case "deflectionLongTermLoad" -> longTerm;
            case "deflectionShortTermLoad" -> shortTerm;
            case "deflectionTotal" -> {
                Moisture moisture = wanted.given().number("Kcr") > 1.5 ? Moisture.WET : Moisture.DRY;
                double creep = Section3_5.creep(moisture, true).value();
                yield Section3_5.totalDeflection(creep, longTerm, shortTerm).value();
            }
            default -> throw new IllegalArgumentException(wanted.name());
        };
    }

    /** Load (N/m) on a line under the middle joist of five; the figure by hand never knows continuity. */
    static double tributary(Case published, Expected wanted) {
        boolean continuous = wanted.given().text("joists").equals("continuous");
        double spacing = 16 * INCH;
        SituationResult floor = Assessor.assess(twoSpans(published.inputs(), spacing, continuous))
                .situations()
                .get(0);
        String line = wanted.name().equals("girderLoad") ? "girder" : "wall";
        String seat = "M on " + line;
        double byHand = floor.handChecks().stream()
                .filter(h -> h.place().equals(seat))
                .mapToDouble(SituationResult.HandCheck::load)
                .sum();
        double solved = 0;
        for (int c = 0; c < floor.contacts().size(); c++) {
            if (floor.contacts().get(c).name().equals(seat)) {
                solved += floor.plainCases().get(1).forces().get(c);
            }
        }
        double simple = line.equals("girder") ? 600 * Plans.PLF : 300 * Plans.PLF;
        assertThat(byHand / spacing).isCloseTo(simple, within(1e-6));
        return solved / spacing;
    }

    private static JobPlan twoSpans(Inputs in, double spacing, boolean continuous) {
        double first = in.numbers("joistSpans_ft").get(0) * FOOT;
        double second = in.numbers("joistSpans_ft").get(1) * FOOT;
        Member member = Lumber.member("HF", "No.2", "2x12", 1);
        List<Joist> joists = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            String name = i == 2 ? "M" : "J" + i;
            if (continuous) {
                joists.add(new Joist(name, i * spacing, 0, first + second, member));
            } else {
                joists.add(new Joist(name, i * spacing, 0, first, member));
                joists.add(new Joist(name, i * spacing, first, second, member));
            }
        }
        Floor floor = new Floor(
                joists,
                List.of(
                        Plans.bearing("wall", 0, new Fastening.Loose()),
                        Plans.bearing("girder", first, new Fastening.Loose()),
                        Plans.bearing("far wall", first + second, new Fastening.Loose())),
                List.of(Plans.area(in.number("dead_psf"), in.number("live_psf"))),
                Floor.JoistWeight.INCLUDED_IN_DEAD);
        return Simple.plan(floor, List.of(), new Ground.Unstated());
    }
}
