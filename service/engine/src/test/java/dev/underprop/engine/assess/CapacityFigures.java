package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.clause.ibc2021.Section1806;
import dev.underprop.engine.clause.irc2021.GirderNail;
import dev.underprop.engine.clause.irc2021.SectionR301_7;
import dev.underprop.engine.clause.irc2021.SectionR502_6;
import dev.underprop.engine.clause.nds2018.DesignValue;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.clause.nds2018.Section2_3;
import dev.underprop.engine.clause.nds2018.Section3_10;
import dev.underprop.engine.clause.nds2018.Section3_4;
import dev.underprop.engine.clause.nds2018.Section4_3;
import dev.underprop.engine.clause.nds2018.Supplement4;
import dev.underprop.engine.material.Moisture;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Outcome;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Inputs;
import java.util.List;

/** What members, seats and the ground can bear. */
final class CapacityFigures {

    private static final double INCH = Plans.INCH;
    private static final double PSI = Plans.PSI;

    private CapacityFigures() {}

    static double section(Case published, Expected wanted) {
        RectangularSection section = Simple.section(wanted.given().text("size"));
        return switch (wanted.name()) {
            case "area" -> section.area();
            case "sectionModulus" -> section.sectionModulus();
            case "secondMoment" -> section.inertia();
            default -> throw new IllegalArgumentException(wanted.name());
        };
    }

    /** Wet and with snow: by the clauses, and by what the checks use. */
    static double adjusted(Case published, Expected wanted) {
        if (published.id().startsWith("hud")) {
            return FloorFigures.rafter(published, wanted);
        }
        Inputs in = published.inputs();
        Member dry = Lumber.member(in.text("species"), in.text("grade"), in.text("size"), 1);
        Member wet = new Member("wet", dry.ply(), 1, dry.grade(), true, Member.Moisture.WET, 0);
        TimberCapacity used = new TimberCapacity(wet, 1);
        return switch (wanted.name()) {
            case "Fb_adjusted" -> same(byClauses(DesignValue.BENDING, wet), used.bending(LoadDuration.TWO_MONTHS, 0));
            case "Ft_adjusted" -> byClauses(DesignValue.TENSION, wet);
            case "Fv_adjusted" -> same(byClauses(DesignValue.SHEAR, wet), used.shear(LoadDuration.TWO_MONTHS));
            default -> throw new IllegalArgumentException(wanted.name());
        };
    }

    private static double same(double one, double other) {
        assertThat(other).isCloseTo(one, within(1e-9 * one));
        return one;
    }

    private static double byClauses(DesignValue value, Member wet) {
        List<Cited> factors = value.factors().stream()
                .map(symbol -> factor(symbol, value, wet))
                .toList();
        return Section4_3.adjusted(value, wet.grade(), factors).value();
    }

    private static Cited factor(String symbol, DesignValue value, Member wet) {
        return switch (symbol) {
            case "CD" -> Section2_3.loadDuration(LoadDuration.TWO_MONTHS);
            case "CM" ->
                value.factors().contains("CF")
                        ? Supplement4.wetService(value, wet.grade(), factor("CF", value, wet), Moisture.WET)
                        : Supplement4.wetService(value, wet.grade(), Moisture.WET);
            case "CF" -> ((Outcome.Value) Supplement4.size(value, wet.grade(), wet.ply())).cited();
            default -> new Cited(1, symbol, Citation.read("example", "", "does not apply there"));
        };
    }

    static double builtUp(Case published, Expected wanted) {
        Inputs row = wanted.given();
        int plies = (int) row.number("plies");
        Member member = Lumber.member(row.text("species"), published.inputs().text("grade"), row.text("size"), plies);
        double thickness = member.ply().breadth();
        TimberCapacity capacity = new TimberCapacity(
                member, Section4_3.repetitive(plies, thickness, true, thickness).value());
        return switch (wanted.name()) {
            case "momentAllowable" ->
                capacity.bending(LoadDuration.TEN_YEARS, 0) * member.ply().sectionModulus() * plies;
            case "shearAllowable" ->
                shearForce(capacity.shear(LoadDuration.TEN_YEARS), member.ply().area() * plies);
            case "EI" -> TimberCapacity.rigidity(member);
            default -> throw new IllegalArgumentException(wanted.name());
        };
    }

    /** The shear that makes the stress of the clause equal to the value. */
    private static double shearForce(double value, double area) {
        return value / Section3_4.shearStress(1, area).value();
    }

    /** Span (m) of a simple beam at which its moment is all that the stated basis allows. */
    static double girderSpan(Case published, Expected wanted) {
        Inputs in = published.inputs();
        Inputs row = wanted.given();
        int plies = (int) row.number("plies");
        Member member = Lumber.member(in.text("species"), in.text("grade"), row.text("size"), plies);
        TimberCapacity capacity = new TimberCapacity(member, row.number("systemFactor"));
        double allowed =
                capacity.bending(LoadDuration.TEN_YEARS, 0) * member.ply().sectionModulus() * plies;
        double load = in.number("lineLoad_plf") * Plans.PLF;
        double overOneMetre =
                Simple.sagging(Simple.beam(member, 1, 0, 0.1, List.of(Simple.uniform(load, 0))), "beam of A");
        return Math.sqrt(allowed / overOneMetre);
    }

    static double notchedShear(Case published, Expected wanted) {
        Inputs in = published.inputs();
        double depth = in.number("depth_in") * INCH;
        double remaining = depth - in.number("notchDepth_in") * INCH;
        return switch (wanted.name()) {
            case "shearAllowable" ->
                FactorFigures.value(Section3_4.notchedShear(
                        in.number("Fv_psi") * PSI, in.number("breadth_in") * INCH, depth, remaining));
            case "notchDepthLimit" -> deepestNotch(depth);
            default -> throw new IllegalArgumentException(wanted.name());
        };
    }

    private static double deepestNotch(double depth) {
        double low = 0;
        double high = depth * 0.99;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            boolean allowed = Section3_4.notchedShear(1, 1, depth, depth - middle) instanceof Outcome.Value;
            low = allowed ? middle : low;
            high = allowed ? high : middle;
        }
        return low;
    }

    static double bearing(Case published, Expected wanted) {
        Inputs in = published.inputs();
        double length = in.number("bearingLength_in") * INCH;
        double continues = Section3_10.areaFactor(length, 3 * INCH).value();
        if (wanted.name().equals("Cb")) {
            return continues;
        }
        double factor = wanted.given().number("Cb") == 1 ? 1 : continues;
        double width = in.number("bearingWidth_in") * INCH;
        double value = in.number("Fc_perp_psi") * PSI;
        WoodGrade grade = Simple.grade(value, value, value, 1e10);
        double allowed = new TimberCapacity(Simple.member(Simple.section("2x6"), grade, 0), 1).bearing() * factor;
        return allowed / Section3_10.bearingStress(1, length, width).value();
    }

    static double nailing(Case published, Expected wanted) {
        Inputs row = wanted.given();
        GirderNail nail = GirderNail.of(row.number("diameter_in") * INCH, row.number("length_in") * INCH)
                .orElseThrow();
        return wanted.name().equals("spacingMax")
                ? nail.spacing().value()
                : nail.atEnds().value();
    }

    static double leastBearing(Case published, Expected wanted) {
        SectionR502_6.Seat seat = wanted.given().text("on").equals("wood or metal")
                ? SectionR502_6.Seat.WOOD_OR_METAL
                : SectionR502_6.Seat.MASONRY_OR_CONCRETE;
        return SectionR502_6.leastBearing(seat).value();
    }

    /** By the name of the first soil; the group symbols of the row must give the same. */
    static double presumptive(Case published, Expected wanted) {
        String material = wanted.given().text("material");
        int symbols = material.indexOf('(');
        String soils = symbols < 0 ? material : material.substring(0, symbols);
        double value = FactorFigures.value(Section1806.pressure(soils.split(",", -1)[0]));
        if (symbols >= 0) {
            for (String symbol :
                    material.substring(symbols + 1, material.length() - 1).split(",", -1)) {
                same(value, FactorFigures.value(Section1806.pressure(symbol)));
            }
        }
        return value;
    }

    /** Area at which the pressure under a weightless pad is all that is allowed; the table has a least area of its own. */
    static double padArea(Case published, Expected wanted) {
        double load = wanted.given().number("load_lbf") * Plans.POUND;
        Ground soil = new Ground.Given(
                wanted.given().number("soil_psf") * Plans.PSF, "as the row states", Ground.Condition.UNDISTURBED);
        Member member = Lumber.member("HF", "No.2", "2x10", 3);
        JobPlan plan = Simple.beam(
                member, 2, 0.1, 0.1, List.of(Simple.point(0, load), Simple.point(2, load)), Simple.squareMetre(), soil);
        double ratio = Simple.check(plan, CheckId.PAD_SOIL_BEARING, "P1").ratio();
        return Math.max(ratio, published.inputs().number("areaMin_in2") * INCH * INCH);
    }

    static double deflectionDivisor(Case published, Expected wanted) {
        return switch (wanted.given().text("member")) {
            case "floors" -> SectionR301_7.floors().value();
            case "all other members" -> SectionR301_7.otherMembers().value();
            default -> throw new IllegalArgumentException(wanted.toString());
        };
    }
}
