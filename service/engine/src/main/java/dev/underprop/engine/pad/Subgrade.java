package dev.underprop.engine.pad;

import dev.underprop.engine.clause.bowles5.Section9_6;
import dev.underprop.engine.clause.bowles5.Table9_1;
import dev.underprop.engine.clause.bowles5.Table9_1.Row;
import dev.underprop.engine.clause.ibc2021.Section1806;
import dev.underprop.engine.clause.ibc2021.Section1806.SoilClass;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.standard.Citation;

/**
 * Range of the modulus of subgrade reaction.
 *
 * @param soft least (N/m³)
 * @param stiff greatest (N/m³), infinite where no end is known
 * @param name the range in words
 * @param citation where it stands
 * @param known whether it was given or belongs to the class of ground; otherwise it is the widest there is
 */
record Subgrade(double soft, double stiff, String name, Citation citation, boolean known) {

    /** Factor of safety taken to be in a presumptive value: common practice, no source. */
    private static final double SAFETY = 3;

    static Subgrade of(Ground ground) {
        if (ground.givesAs() instanceof Ground.Modulus given) {
            Citation source = Citation.remembered(given.source(), "", "subgrade modulus given in the plan");
            return new Subgrade(given.soft(), given.stiff(), "subgrade modulus that the plan gives", source, true);
        }
        return ground.top() instanceof Ground.Presumptive presumptive
                        && ground.givesAs() instanceof Ground.NoSubgrade
                        && presumptive.condition() == Ground.Condition.UNDISTURBED
                ? Section1806.classNamed(presumptive.soil())
                        .map(soil -> of(soil, presumptive.pressure()))
                        .orElseGet(Subgrade::widest)
                : widest();
    }

    /**
     * Which rows stand for which class is judgement, common practice without a source: the classes do not tell how dense
     * or stiff the ground is. Sand that deserves its presumptive value is at least medium dense; gravel is taken as sand;
     * rock as the stiffest row, without an end.
     */
    private static Subgrade of(SoilClass soil, double pressure) {
        return switch (soil) {
            case CRYSTALLINE_BEDROCK, SEDIMENTARY_ROCK -> between(Row.STIFF_CLAY, Row.STIFF_CLAY, soil, pressure);
            case GRAVEL, SAND -> between(Row.MEDIUM_DENSE_SAND, Row.DENSE_SAND, soil, pressure);
            case CLAY -> between(Row.SOFT_CLAY, Row.CLAY, soil, pressure);
        };
    }

    /** The soft end is also held to the modulus that goes with the presumptive value itself. */
    private static Subgrade between(Row from, Row to, SoilClass soil, double pressure) {
        double soft = Math.min(from.from(), Section9_6.modulus(pressure, SAFETY).value());
        String name = "range for " + soil.title() + ", from Bowles Table 9-1 and 40 SF qa with SF = 3; which rows stand"
                + " for this class is common practice, no source";
        return new Subgrade(soft, to.to(), name, Table9_1.citation(), true);
    }

    private static Subgrade widest() {
        return new Subgrade(
                Row.LOOSE_SAND.from(),
                Row.DENSE_SAND.to(),
                "widest range of Bowles Table 9-1, 4.8 to 128 MN/m3, since the ground is not known",
                Table9_1.citation(),
                false);
    }
}
