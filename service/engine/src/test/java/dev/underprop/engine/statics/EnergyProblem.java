package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.List;

/**
 * One case as a convex quadratic programme in the contact forces alone (complementary energy): minimise bending energy
 * + Σ p²/2k + Σ gap·p, every member in equilibrium, p >= 0 where not fastened. Shares nothing with the engine but the
 * records of the frame and its loads: no stiffness matrix, no shape functions.
 */
final class EnergyProblem {

    final int contacts;
    final boolean[] fastened;
    final double[] gap;
    final double[] softness;
    final List<MemberEnergy> members = new ArrayList<>();
    final double total;

    EnergyProblem(Layout layout, LoadCase loadCase) {
        Frame frame = layout.frame();
        this.contacts = frame.contacts().size();
        this.fastened = new boolean[contacts];
        this.gap = new double[contacts];
        this.softness = new double[contacts];
        this.total = layout.total(loadCase);
        for (int c = 0; c < contacts; c++) {
            Contact contact = frame.contacts().get(c);
            fastened[c] = contact.fastened();
            gap[c] = contact.gap();
            softness[c] = Double.isInfinite(contact.stiffness()) ? 0 : 1 / contact.stiffness();
        }
        for (int j = 0; j < frame.joists().size(); j++) {
            Frame.Joist joist = frame.joists().get(j);
            members.add(new MemberEnergy(
                    armsOfJoist(frame, j),
                    joist.end() - joist.start(),
                    joist.rigidity(),
                    loads(layout, loadCase, j, joist.start())));
        }
        for (int k = 0; k < frame.carriers().size(); k++) {
            Frame.Carrier carrier = frame.carriers().get(k);
            members.add(new MemberEnergy(
                    armsOfCarrier(frame, k),
                    carrier.end() - carrier.start(),
                    carrier.rigidity(),
                    loads(layout, loadCase, frame.carrierMember(k), carrier.start())));
        }
    }

    private static List<MemberEnergy.Arm> armsOfJoist(Frame frame, int joist) {
        List<MemberEnergy.Arm> arms = new ArrayList<>();
        double start = frame.joists().get(joist).start();
        for (int c = 0; c < frame.contacts().size(); c++) {
            Contact contact = frame.contacts().get(c);
            if (contact instanceof Contact.OnGround seat && seat.joist() == joist) {
                arms.add(new MemberEnergy.Arm(c, 1, seat.y() - start));
            } else if (contact instanceof Contact.OnCarrier seat && seat.joist() == joist) {
                arms.add(new MemberEnergy.Arm(
                        c, 1, frame.carriers().get(seat.carrier()).y() - start));
            }
        }
        return arms;
    }

    private static List<MemberEnergy.Arm> armsOfCarrier(Frame frame, int carrier) {
        List<MemberEnergy.Arm> arms = new ArrayList<>();
        double start = frame.carriers().get(carrier).start();
        for (int c = 0; c < frame.contacts().size(); c++) {
            Contact contact = frame.contacts().get(c);
            if (contact instanceof Contact.OnProp prop && prop.carrier() == carrier) {
                arms.add(new MemberEnergy.Arm(c, 1, prop.x() - start));
            } else if (contact instanceof Contact.OnCarrier seat && seat.carrier() == carrier) {
                arms.add(new MemberEnergy.Arm(
                        c, -1, frame.joists().get(seat.joist()).x() - start));
            }
        }
        return arms;
    }

    private static List<UnitLoad.Piece> loads(Layout layout, LoadCase loadCase, int member, double start) {
        List<UnitLoad.Piece> pieces = new ArrayList<>();
        for (int i = 0; i < loadCase.size(); i++) {
            double factor = loadCase.factor(i);
            for (UnitLoad.Piece piece : layout.units().get(loadCase.unit(i)).pieces()) {
                if (piece.member() == member) {
                    pieces.add(local(piece, factor, start));
                }
            }
        }
        return pieces;
    }

    private static UnitLoad.Piece local(UnitLoad.Piece piece, double factor, double start) {
        if (piece instanceof UnitLoad.Uniform u) {
            return new UnitLoad.Uniform(u.member(), u.from() - start, u.to() - start, factor * u.intensity());
        }
        UnitLoad.Point point = (UnitLoad.Point) piece;
        return new UnitLoad.Point(point.member(), point.at() - start, factor * point.force());
    }

    int equations() {
        return 2 * members.size();
    }

    /** Equilibrium: row 2m is the force balance of member m, row 2m + 1 its moment balance divided by its length. */
    double[][] equilibrium() {
        double[][] rows = new double[equations()][contacts];
        for (int m = 0; m < members.size(); m++) {
            MemberEnergy member = members.get(m);
            for (MemberEnergy.Arm arm : member.arms) {
                rows[2 * m][arm.contact()] += arm.sign();
                rows[2 * m + 1][arm.contact()] += arm.sign() * arm.at() / member.length;
            }
        }
        return rows;
    }

    /** Right-hand sides of {@link #equilibrium} (N). */
    double[] loads() {
        double[] loads = new double[equations()];
        for (int m = 0; m < members.size(); m++) {
            loads[2 * m] = members.get(m).force;
            loads[2 * m + 1] = members.get(m).moment / members.get(m).length;
        }
        return loads;
    }

    /** Second derivatives of the energy (m/N). */
    double[][] hessian() {
        double[][] h = new double[contacts][contacts];
        for (int c = 0; c < contacts; c++) {
            h[c][c] = softness[c];
        }
        for (MemberEnergy member : members) {
            for (int i = 0; i < member.arms.size(); i++) {
                for (int j = 0; j < member.arms.size(); j++) {
                    h[member.arms.get(i).contact()][member.arms.get(j).contact()] += member.flexibility(i, j);
                }
            }
        }
        return h;
    }

    /** Slope of the energy at zero contact force (m). */
    double[] slope() {
        double[] slope = gap.clone();
        for (MemberEnergy member : members) {
            for (int i = 0; i < member.arms.size(); i++) {
                slope[member.arms.get(i).contact()] += member.start(i);
            }
        }
        return slope;
    }

    /** Complementary energy (N·m) of contact forces that balance the loads, less what the loads alone give. */
    double energy(double[] p) {
        double[][] hessian = hessian();
        double[] slope = slope();
        double energy = 0;
        for (int i = 0; i < contacts; i++) {
            energy += slope[i] * p[i];
            for (int j = 0; j < contacts; j++) {
                energy += hessian[i][j] * p[i] * p[j] / 2;
            }
        }
        return energy;
    }

    /** Largest force or moment/length out of balance on any member (N). */
    double unbalanced(double[] p) {
        double[][] rows = equilibrium();
        double[] loads = loads();
        double worst = 0;
        for (int r = 0; r < rows.length; r++) {
            double sum = -loads[r];
            for (int c = 0; c < contacts; c++) {
                sum += rows[r][c] * p[c];
            }
            worst = Math.max(worst, Math.abs(sum));
        }
        return worst;
    }
}
