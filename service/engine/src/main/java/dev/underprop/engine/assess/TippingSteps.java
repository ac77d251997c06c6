package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.statics.UnitLoad;
import java.util.ArrayList;
import java.util.List;

/**
 * Tells moments about a pivot, one line for each that is not zero: what holds first, then, after {@link #holds}, what tips.
 * Every method hands back the moment (N·m) as it came.
 */
final class TippingSteps {

    private static final Citation PRACTICE =
            Citation.remembered("common practice, no source", "", "factor of safety against tipping");

    private final Working working;
    private final boolean wanted;
    private final List<String> moments = new ArrayList<>();
    private String side = "h";

    TippingSteps(boolean wanted) {
        this.wanted = wanted;
        this.working = Working.when(wanted);
        working.onSite();
    }

    /**
     * A factor of a load.
     *
     * @param kind of load in words
     * @param value of the factor
     * @param citation where it stands
     */
    record Factor(String kind, double value, Citation citation) {}

    /** A load on one side of the pivot. @param towards 1 for greater coordinates, -1 the other way */
    double load(Factor factor, UnitLoad.Piece piece, double pivot, int towards, double moment) {
        if (!wanted || moment == 0) {
            return moment;
        }
        String n = next();
        String kind = factor.kind;
        working.rule("f" + n, "factor of the " + kind + " load", Dimension.NUMBER, factor.value, factor.citation, "");
        if (piece instanceof UnitLoad.Point point) {
            working.plan("P" + n, kind + " load", Dimension.FORCE, point.force());
            working.plan("a" + n, "its arm", Dimension.LENGTH, towards * (point.at() - pivot));
            return told(n, moment, "f# × P# × a#");
        }
        UnitLoad.Uniform uniform = (UnitLoad.Uniform) piece;
        double one = Math.max(0, towards * (uniform.from() - pivot));
        double other = Math.max(0, towards * (uniform.to() - pivot));
        working.plan("w" + n, kind + " load by length", Dimension.LINE_LOAD, uniform.intensity());
        working.plan("a" + n, "from this far", Dimension.LENGTH, Math.min(one, other));
        working.plan("b" + n, "to this far", Dimension.LENGTH, Math.max(one, other));
        return told(n, moment, "f# × w# × ( b#^2 - a#^2 ) / 2");
    }

    /** A fastening. */
    double tied(String place, double strength, double arm, double moment) {
        if (!wanted || moment == 0) {
            return moment;
        }
        String n = next();
        working.plan("T" + n, "what holds down the " + place, Dimension.FORCE, strength);
        working.plan("a" + n, "its arm", Dimension.LENGTH, arm);
        return told(n, moment, "T# × a#");
    }

    /** A joist on a beam: what it keeps down, or leans on it by. */
    double joist(String name, String does, double force, double arm, double moment) {
        if (!wanted || moment == 0) {
            return moment;
        }
        String n = next();
        working.analysis("K" + n, name + " " + does + ", by moments on it", Dimension.FORCE, force);
        working.plan("a" + n, "its arm", Dimension.LENGTH, arm);
        return told(n, moment, "K# × a#");
    }

    private String next() {
        return side + (moments.size() + 1);
    }

    private double told(String n, double moment, String formula) {
        moments.add("m" + n);
        return working.step("m" + n, "moment", Dimension.MOMENT, moment, formula.replace("#", n));
    }

    /** Ends what holds. */
    double holds(double moment) {
        working.step("Mh", "holds", Dimension.MOMENT, moment, sum());
        moments.clear();
        side = "t";
        return moment;
    }

    private String sum() {
        return moments.isEmpty() ? "0 × 0" : String.join(" + ", moments);
    }

    /** Ends what tips, and tells the comparison. */
    Working tips(double moment, double holding, double least) {
        working.step("Mt", "tips", Dimension.MOMENT, moment, sum());
        working.rule("s", "least factor of safety", Dimension.NUMBER, least, PRACTICE, "");
        working.step("Mw", "what should hold", Dimension.MOMENT, least * moment, "s × Mt");
        working.compared("Mw", "Mh", new CheckResult.Judged(Measure.MOMENT, least * moment, holding));
        return working;
    }
}
