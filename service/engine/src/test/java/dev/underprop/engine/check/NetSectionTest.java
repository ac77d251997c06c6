package dev.underprop.engine.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Citation;
import org.junit.jupiter.api.Test;

/** What is left of a notched board is not a smaller board of the same grade: its size factor stays that of the whole one. */
class NetSectionTest {

    private static final double INCH = 0.0254;
    private static final double PSI = 6894.757293168361;

    /** NDS Supplement 2018, Table 4A, Hem-Fir No.2; size factor 1.1 for a 2x10 and 1.3 for a 2x6. */
    private static final WoodGrade HEM_FIR_2 = new WoodGrade(
            "Hem-Fir",
            "No.2",
            850 * PSI,
            525 * PSI,
            150 * PSI,
            405 * PSI,
            1300 * PSI,
            1.3e6 * PSI,
            0.47e6 * PSI,
            0.43,
            WoodGrade.Sizes.WESTERN_DIMENSION,
            Citation.read("NDS Supplement", "2018", "Table 4A"));

    private static double bending(RectangularSection ply, Member.Remaining remaining) {
        Member.Details details = new Member.Details(new Member.Stamped(), remaining, Member.Treated.UNTREATED);
        Member member = new Member("board", ply, 1, HEM_FIR_2, false, Member.Moisture.DRY, 0, details);
        return new TimberCapacity(member, 1).bending(LoadDuration.TEN_YEARS, 0) / PSI;
    }

    /** Table 4A ends at 4 in of nominal thickness. */
    @Test
    void aBoardOutsideItsTableHasNoBendingValue() {
        RectangularSection thick = new RectangularSection(5.5 * INCH, 9.25 * INCH);
        RectangularSection thin = new RectangularSection(1.5 * INCH, 9.25 * INCH);
        Member.Details plain = new Member.Details(new Member.Stamped(), new Member.Whole(), Member.Treated.UNTREATED);

        assertThat(new TimberCapacity(new Member("m", thin, 1, HEM_FIR_2, false, Member.Moisture.DRY, 0, plain), 1)
                        .hasBending())
                .isTrue();
        assertThat(new TimberCapacity(new Member("m", thick, 1, HEM_FIR_2, false, Member.Moisture.DRY, 0, plain), 1)
                        .hasBending())
                .isFalse();
    }

    @Test
    void theSizeFactorIsThatOfTheBoardThatWasGraded() {
        RectangularSection whole = new RectangularSection(1.5 * INCH, 9.25 * INCH);
        RectangularSection left = new RectangularSection(1.5 * INCH, 5.5 * INCH);

        assertThat(bending(whole, new Member.Whole())).isCloseTo(850 * 1.1, within(1e-9));
        assertThat(bending(left, new Member.Whole())).isCloseTo(850 * 1.3, within(1e-9));
        assertThat(bending(left, new Member.Reduced(whole, "surveyor"))).isCloseTo(850 * 1.1, within(1e-9));
    }
}
