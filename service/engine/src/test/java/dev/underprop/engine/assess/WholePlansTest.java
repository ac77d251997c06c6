package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.clause.asce7_16.LoadKind;
import dev.underprop.engine.clause.asce7_16.Section2_4;
import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.statics.ContactSolver;
import dev.underprop.engine.statics.Deflections;
import dev.underprop.engine.statics.Diagram;
import dev.underprop.engine.statics.LoadCase;
import dev.underprop.engine.statics.Solution;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Every case of random plans solved once more and looked at by slower means than the run takes. */
class WholePlansTest {

    private static final int PLANS = 60;

    /** One situation: the run, and a solver of its own. */
    private static final class Twice {
        private final JobPlan plan;
        private final LoadModel model;
        private final SituationRun run;
        private final ContactSolver solver;

        Twice(JobPlan plan, Situation situation) {
            this.plan = plan;
            this.model = LoadModel.of(plan);
            Set<LoadKind> kinds = EnumSet.of(LoadKind.DEAD);
            if (!model.cells().isEmpty()) {
                kinds.add(LoadKind.LIVE);
            }
            if (model.snow() != LoadModel.ABSENT) {
                kinds.add(LoadKind.SNOW);
            }
            this.run = new SituationRun(plan, situation, model, Section2_4.gravity(kinds));
            run.run();
            this.solver = new ContactSolver(run.frame().frame(), model.units());
        }

        private int members() {
            return run.members().size();
        }

        private LoadCase units(Cases.Case one) {
            return run.expand(one.load());
        }

        private double[] row(Solution solution) {
            double[] row = new double[solver.rowSize()];
            solution.writeRow(row);
            return row;
        }
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
        for (Cases.Case one : twice.run.cases().cases()) {
            LoadCase units = twice.units(one);
            double load = 0;
            for (int i = 0; i < units.size(); i++) {
                load += units.factor(i)
                        * twice.model.units().get(units.unit(i)).pieces().stream()
                                .mapToDouble(p -> p.total())
                                .sum();
            }
            Solution solution = twice.solver.solve(units);
            double carried = 0;
            for (int c = 0; c < twice.run.frame().places().size(); c++) {
                boolean within = twice.run.frame().places().get(c) instanceof ContactPlace.OnShore;
                carried += within ? 0 : solution.force(c);
            }
            assertThat(carried).isCloseTo(load, within(1e-8 * load));
        }
        assertThat(twice.run.quality().residual()).isLessThan(1e-5);
        assertThat(twice.run.quality().penetration()).isLessThan(1e-9);
    }

    /** The samples that let a case be passed over never hide a deflection greater than the one reported. */
    @Test
    void noDeflectionIsPassedOver() {
        int looked = overStanding(200, WholePlansTest::assertNoneGreater);

        System.out.println(looked + " situations of random plans: no greater deflection in any case by full search");
        assertThat(looked).isGreaterThanOrEqualTo(200);
    }

    private static void assertNoneGreater(Twice twice) {
        double[] total = new double[twice.members()];
        double[] live = new double[twice.members()];
        double[] dead = {};
        for (Cases.Case one : twice.run.cases().cases()) {
            Solution solution = twice.solver.solve(twice.units(one));
            double[] row = twice.row(solution);
            dead = dead.length == 0 ? row : dead;
            double[] added = new double[row.length];
            for (int i = 0; i < row.length; i++) {
                added[i] = row[i] - dead[i];
            }
            for (int m = 0; m < twice.members(); m++) {
                total[m] = Math.max(total[m], search(twice, m, row, solution));
                live[m] = Math.max(live[m], dead == row ? 0 : search(twice, m, added, solution));
            }
        }
        for (int m = 0; m < twice.members(); m++) {
            MemberRun member = twice.run.members().get(m);
            assertReported(
                    member, MemberRun.TOTAL_CHECK, total[m] * member.limits().totalDivisor());
            assertReported(
                    member, MemberRun.LIVE_CHECK, live[m] * member.limits().liveDivisor());
        }
    }

    private static double search(Twice twice, int member, double[] row, Solution solution) {
        Diagram diagram = twice.solver.diagram(member);
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
        int looked = overStanding(12, WholePlansTest::assertByHand);

        assertThat(looked).isGreaterThanOrEqualTo(12);
    }

    private static void assertByHand(Twice twice) {
        double[][] found = new double[twice.members()][4];
        for (Cases.Case one : twice.run.cases().cases()) {
            LoadCase units = twice.units(one);
            Solution solution = twice.solver.solve(units);
            for (int m = 0; m < twice.members(); m++) {
                ByHand hand = new ByHand(twice.plan, twice.run.frame(), twice.model.units(), units, solution, m);
                found[m][0] = Math.max(found[m][0], hand.sagging());
                found[m][1] = Math.max(found[m][1], hand.hogging());
                found[m][2] = Math.max(found[m][2], hand.shear());
                found[m][3] = Math.max(found[m][3], hand.deflectionOverSpan());
            }
        }
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
