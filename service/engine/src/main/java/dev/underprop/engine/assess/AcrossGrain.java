package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.nds2018.Section3_10;
import dev.underprop.engine.clause.nds2018.Section4_3;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Dimension;

/**
 * Timber pressed across the grain: NDS 2018, 3.10.2.
 *
 * @param load pressing (N), not negative
 * @param length that is pressed (m), positive; for the bearing area factor along the grain
 * @param width that is pressed (m), positive
 */
record AcrossGrain(double load, double length, double width) {

    static final Citation RULE = Citation.read("NDS", "2018", "3.10.2");

    /** Against what one member bears. */
    Finding on(Member member, Working working) {
        double stress = stress(working);
        double allowed = new TimberCapacity(member, 1).bearing(working);
        return working.compared("fc⊥", "F'c⊥", new Judged(Measure.STRESS, stress, allowed));
    }

    /** Against what the weaker of two members bears. */
    Finding between(Member one, Member other, Working working) {
        double first = new TimberCapacity(one, 1).bearing();
        double second = new TimberCapacity(other, 1).bearing();
        boolean swapped = second < first;
        Finding finding = on(swapped ? other : one, working);
        Member stronger = swapped ? one : other;
        working.rule(
                "F'c⊥2",
                "not less: that of " + stronger.label(),
                Dimension.STRESS,
                swapped ? first : second,
                Section4_3.TABLE_4_3_1,
                "");
        return finding;
    }

    /**
     * Against what one member bears, with the bearing area factor.
     *
     * @param toEnd from the nearer edge of what presses to the member's end (m)
     */
    Finding within(Member member, double toEnd, Working working) {
        double stress = stress(working);
        double plain = new TimberCapacity(member, 1).bearing(working);
        double factor = areaFactor(toEnd, working);
        double allowed = working.rule(
                "F'c⊥b",
                "the same with the bearing area factor",
                Dimension.STRESS,
                plain * factor,
                Section4_3.TABLE_4_3_1,
                "F'c⊥ × Cb");
        return working.compared("fc⊥", "F'c⊥b", new Judged(Measure.STRESS, stress, allowed));
    }

    /** A surface against the pressure (Pa) that it is said to take. */
    Finding against(double stated, Working working) {
        double stress = stress(working);
        double allowed = working.plan("p", "pressure that the seat is said to take", Dimension.STRESS, stated);
        return working.compared("fc⊥", "p", new Judged(Measure.STRESS, stress, allowed));
    }

    private double areaFactor(double toEnd, Working working) {
        Cited factor = Section3_10.areaFactor(length, toEnd);
        working.plan("z", "from what presses to the member's end", Dimension.LENGTH, toEnd);
        if (factor.value() == 1) {
            return working.rule(factor, "bearing area factor: 6 in long, or near the end", Dimension.NUMBER, "");
        }
        working.rule("a", "length that helps, 3/8 in", Dimension.LENGTH, 0.375 * 0.0254, factor.citation(), "");
        return working.rule(factor, "bearing area factor", Dimension.NUMBER, "( lb + a ) / lb");
    }

    private double stress(Working working) {
        working.analysis("P", "greatest load there", Dimension.FORCE, load);
        working.plan("lb", "length pressed", Dimension.LENGTH, length);
        working.plan("bb", "width pressed", Dimension.LENGTH, width);
        double area = working.step("Ab", "area pressed", Dimension.AREA, length * width, "lb × bb");
        return working.rule("fc⊥", "stress across the grain", Dimension.STRESS, load / area, RULE, "P / Ab");
    }
}
