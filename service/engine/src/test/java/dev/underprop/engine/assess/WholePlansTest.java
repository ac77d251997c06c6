package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.statics.Deflections;
import dev.underprop.engine.statics.Diagram;
import dev.underprop.engine.statics.LoadCase;
import dev.underprop.engine.statics.Solution;
import dev.underprop.engine.statics.UnitLoad;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every case of random plans solved once more and looked at by slower means than the run takes. */
class WholePlansTest {

    /** Each has about fifty settings. */
    private static final int PLANS = 10;

    /** One situation: the run, and solvers of its own. */
    private static final class Twice {
        private final JobPlan plan;
        private final LoadModel model;
        private final SituationRun run;
        private final Structure structure;
        private final Seats seats;

        Twice(JobPlan plan, Situation situation) {
            this.plan = plan;
            Structure ofRun = new Structure(plan);
            this.model = ofRun.model();
            this.run = new SituationRun(
                    ofRun, situation, Combinations.of(model), Seats.first(ofRun, situation), Integer.MAX_VALUE);
            run.run();
            this.structure = new Structure(plan);
            this.seats = Seats.first(structure, situation);
        }

        private int members() {
            return run.members().size();
        }

        private double[] row(Solution solution) {
            double[] row = new double[structure.solver(Setting.Give.RIGID).rowSize()];
            solution.writeRow(row);
            return row;
        }

        /** Every case in every setting, solved anew; the same case with dead load alone, all fastened, stands beside it. */
        private void each(Cases.Level level, Found found) {
            for (Setting.Give give : structure.gives()) {
                for (Setting.History history : seats.histories()) {
                    for (Setting.Fit fit : structure.fits()) {
                        each(level, new Setting(history, give, fit, Setting.Ties.HOLD), found);
                    }
                }
            }
        }

        private void each(Cases.Level level, Setting setting, Found found) {
            Solution dead = solve(run.cases().get(0), setting, Setting.Ties.HOLD);
            for (Cases.Case one : run.cases()) {
                if (one.level() == level) {
                    Solution held = solve(one, setting, Setting.Ties.HOLD);
                    found.at(held, dead, setting.fit().isTrue());
                    Solution released = solve(one, setting, Setting.Ties.RELEASED);
                    if (pulls(held) && released.outcome() == Solution.Outcome.SETTLED) {
                        found.at(released, dead, setting.fit().isTrue());
                    }
                }
            }
        }

        private boolean pulls(Solution solution) {
            BitSet fastened = run.frame().fastened(Setting.Ties.HOLD);
            double most = fastened.stream()
                    .mapToDouble(c -> Math.abs(solution.force(c)))
                    .max()
                    .orElse(0);
            return fastened.stream().anyMatch(c -> solution.force(c) < -1e-7 * most);
        }

        private Solution solve(Cases.Case one, Setting setting, Setting.Ties ties) {
            LoadCase load = seats.placed(run.expand(one.load()), setting.history(), setting.give());
            LoadCase all = setting.fit().isTrue()
                    ? load
                    : load.with(setting.fit().unit(), setting.fit().factor());
            return structure.solver(setting.give()).solve(all, seats.rules(ties));
        }
    }

    private interface Found {
        void at(Solution solution, Solution dead, boolean inLine);
    }

    private interface Look {
        void at(Twice twice);
    }

    /** How many situations of the random plans stand and were looked at. */
    private static int overStanding(int plans, Look look) {
        int looked = 0;
        for (long seed = 1; seed <= plans; seed++) {
            JobPlan plan = RandomPlans.of(seed);
            for (Situation situation : plan.situations()) {
                Twice twice = new Twice(plan, situation);
                if (twice.run.stands()) {
                    look.at(twice);
                    looked++;
                }
            }
        }
        return looked;
    }

    /** Posts and bearings carry what lies on the floor, in every case, and nothing is left over at any member's end. */
    @Test
    void everyCaseIsInEquilibrium() {
        int looked = overStanding(PLANS, WholePlansTest::assertEquilibrium);

        System.out.println(looked + " situations of random plans are in equilibrium in every case");
        assertThat(looked).isGreaterThanOrEqualTo(PLANS);
    }

    private static void assertEquilibrium(Twice twice) {
        twice.each(Cases.Level.ALLOWABLE, (solution, dead, inLine) -> {
            double load = 0;
            for (int i = 0; i < solution.loadCase().size(); i++) {
                int unit = solution.loadCase().unit(i);
                List<UnitLoad> units = twice.model.units();
                load += unit >= units.size()
                        ? 0
                        : solution.loadCase().factor(i)
                                * units.get(unit).pieces().stream()
                                        .mapToDouble(UnitLoad.Piece::total)
                                        .sum();
            }
            double carried = 0;
            for (int c = 0; c < twice.run.frame().places().size(); c++) {
                boolean within = twice.run.frame().places().get(c) instanceof ContactPlace.OnShore;
                carried += within ? 0 : solution.force(c);
            }
            assertThat(carried).isCloseTo(load, within(1e-8 * load));
        });
        assertThat(twice.run.quality().residual()).isLessThan(1e-5);
        assertThat(twice.run.quality().penetration()).isLessThan(1e-9);
    }

    /** The samples that let a case be passed over never hide a deflection, posts in line, greater than the one reported. */
    @Test
    void noDeflectionIsPassedOver() {
        int looked = overStanding(20, WholePlansTest::assertNoneGreater);

        System.out.println(looked + " situations of random plans: no greater deflection in any case by full search");
        assertThat(looked).isGreaterThanOrEqualTo(20);
    }

    private static void assertNoneGreater(Twice twice) {
        double[] total = new double[twice.members()];
        double[] live = new double[twice.members()];
        twice.each(Cases.Level.ALLOWABLE, (solution, dead, inLine) -> {
            double[] row = twice.row(solution);
            double[] deadRow = twice.row(dead);
            double[] added = new double[row.length];
            for (int i = 0; i < row.length; i++) {
                added[i] = row[i] - deadRow[i];
            }
            boolean more = solution.loadCase().size() > dead.loadCase().size();
            for (int m = 0; inLine && m < twice.members(); m++) {
                total[m] = Math.max(total[m], search(twice, m, row, solution));
                live[m] = Math.max(live[m], more ? search(twice, m, added, solution) : 0);
            }
        });
        for (int m = 0; m < twice.members(); m++) {
            MemberRun member = twice.run.members().get(m);
            assertReported(
                    member, MemberRun.TOTAL_CHECK, total[m] * member.limits().totalDivisor());
            assertReported(
                    member, MemberRun.LIVE_CHECK, live[m] * member.limits().liveDivisor());
        }
    }

    private static double search(Twice twice, int member, double[] row, Solution solution) {
        Diagram diagram = twice.structure.solver(Setting.Give.RIGID).diagram(member);
        diagram.view(row);
        return new Deflections(diagram).search(solution.supports(member), 0);
    }

    private static void assertReported(MemberRun member, int check, double ratio) {
        if (ratio > 1e-6) {
            assertThat(member.checks().value(check)).isCloseTo(ratio, within(1e-6 * ratio));
        }
    }

    /** Moments, shears and deflections summed from contact forces and loads alone. */
    @Test
    void diagramsAgreeWithSumsFromTheLeft() {
        int looked = overStanding(2, WholePlansTest::assertByHand);

        assertThat(looked).isGreaterThanOrEqualTo(2);
    }

    private static void assertByHand(Twice twice) {
        double[][] found = new double[twice.members()][4];
        twice.each(Cases.Level.ALLOWABLE, (solution, dead, inLine) -> {
            for (int m = 0; m < twice.members(); m++) {
                ByHand hand = new ByHand(
                        twice.plan, twice.run.frame(), twice.model.units(), solution.loadCase(), solution, m);
                found[m][0] = Math.max(found[m][0], hand.sagging());
                found[m][1] = Math.max(found[m][1], hand.hogging());
                found[m][2] = Math.max(found[m][2], hand.shear());
                found[m][3] = inLine ? Math.max(found[m][3], hand.deflectionOverSpan()) : found[m][3];
            }
        });
        for (int m = 0; m < twice.members(); m++) {
            MemberRun member = twice.run.members().get(m);
            Peaks extremes = member.extremes();
            assertThat(extremes.value(MemberRun.SAGGING)).isCloseTo(found[m][0], within(0.01 + 1e-4 * found[m][0]));
            assertThat(extremes.value(MemberRun.HOGGING)).isCloseTo(found[m][1], within(0.01 + 1e-4 * found[m][1]));
            assertThat(extremes.value(MemberRun.SHEAR)).isCloseTo(found[m][2], within(1e-3 + 1e-6 * found[m][2]));
            double ratio = found[m][3] * member.limits().totalDivisor();
            assertThat(member.checks().value(MemberRun.TOTAL_CHECK)).isCloseTo(ratio, within(1e-3 * ratio));
        }
    }
}
