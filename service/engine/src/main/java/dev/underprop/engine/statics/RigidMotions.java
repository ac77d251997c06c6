package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which members can move without bending anything while a given set of contacts stays closed. Each member has two rigid
 * motions (down, and rotation times its length); each closed contact forbids one combination. Stiffness plays no part, so
 * rounding of stiff and soft members cannot hide a mechanism.
 *
 * <p>Joists are eliminated one by one with plane rotations; what is left concerns the carriers alone and is ranked by
 * its singular values, found by one-sided rotations of columns (G. H. Golub, C. F. Van Loan, Matrix Computations, section
 * 8.6.3, from memory).
 */
final class RigidMotions {

    /** A rigid motion resisted by less than this part of the strongest is not resisted; rounding leaves about 1e-15. */
    private static final double SLACK = 1e-9;

    private static final int SWEEPS = 30;

    /** Sets of closed contacts of a joist that are remembered: all there are of up to six. */
    private static final int MOST_SETS = 64;

    private final Frame frame;
    private final List<List<Integer>> contactsOfJoist = new ArrayList<>();
    private final List<Map<BitSet, Held>> known = new ArrayList<>();
    private final int width;

    /**
     * A joist with a given set of its contacts closed.
     *
     * @param firm whether it cannot move while the carriers stand still
     * @param demands rows of what it demands of the carriers
     */
    private record Held(boolean firm, List<double[]> demands) {}

    RigidMotions(Frame frame) {
        this.frame = frame;
        this.width = 2 * frame.carriers().size();
        frame.joists().forEach(joist -> {
            contactsOfJoist.add(new ArrayList<>());
            known.add(new HashMap<>());
        });
        for (int c = 0; c < frame.contacts().size(); c++) {
            Contact contact = frame.contacts().get(c);
            if (contact instanceof Contact.OnGround seat) {
                contactsOfJoist.get(seat.joist()).add(c);
            } else if (contact instanceof Contact.OnCarrier seat) {
                contactsOfJoist.get(seat.joist()).add(c);
            }
        }
    }

    /** Members (numbered as in {@link Frame}) that some motion moves; empty when all are held. */
    BitSet loose(BitSet closed) {
        BitSet loose = new BitSet();
        List<double[]> rows = new ArrayList<>();
        for (int c = closed.nextSetBit(0); c >= 0; c = closed.nextSetBit(c + 1)) {
            if (frame.contacts().get(c) instanceof Contact.OnProp prop) {
                double[] row = new double[width];
                putCarrier(row, 0, prop.carrier(), prop.x(), 1);
                rows.add(row);
            }
        }
        for (int j = 0; j < contactsOfJoist.size(); j++) {
            Held held = held(j, closed);
            rows.addAll(held.demands());
            loose.set(j, !held.firm());
        }
        markCarriers(rows, loose);
        return loose;
    }

    private void putCarrier(double[] row, int offset, int carrier, double x, double sign) {
        Frame.Carrier member = frame.carriers().get(carrier);
        row[offset + 2 * carrier] = sign;
        row[offset + 2 * carrier + 1] = sign * (x - member.start()) / (member.end() - member.start());
    }

    private Held held(int j, BitSet closed) {
        List<Integer> contacts = contactsOfJoist.get(j);
        BitSet own = new BitSet(contacts.size());
        for (int i = 0; i < contacts.size(); i++) {
            own.set(i, closed.get(contacts.get(i)));
        }
        Map<BitSet, Held> sets = known.get(j);
        Held held = sets.get(own);
        if (held == null) {
            held = eliminate(j, own);
            if (sets.size() < MOST_SETS) {
                sets.put(own, held);
            }
        }
        return held;
    }

    /** Joist j with so many of its contacts closed. */
    private Held eliminate(int j, BitSet closed) {
        List<double[]> own = new ArrayList<>();
        for (int i = closed.nextSetBit(0); i >= 0; i = closed.nextSetBit(i + 1)) {
            int contact = contactsOfJoist.get(j).get(i);
            own.add(row(frame.joists().get(j), frame.contacts().get(contact)));
        }
        for (int column = 0; column < 2; column++) {
            for (int r = column + 1; r < own.size(); r++) {
                rotate(own.get(column), own.get(r), column);
            }
        }
        List<double[]> demands = new ArrayList<>();
        for (int r = 2; r < own.size(); r++) {
            demands.add(Arrays.copyOfRange(own.get(r), 2, 2 + width));
        }
        return new Held(own.size() >= 2 && Math.abs(own.get(1)[1]) > SLACK, demands);
    }

    private double[] row(Frame.Joist joist, Contact contact) {
        double[] row = new double[2 + width];
        double y = 0;
        if (contact instanceof Contact.OnGround seat) {
            y = seat.y();
        } else if (contact instanceof Contact.OnCarrier seat) {
            y = frame.carriers().get(seat.carrier()).y();
            putCarrier(row, 2, seat.carrier(), joist.x(), -1);
        }
        row[0] = 1;
        row[1] = (y - joist.start()) / (joist.end() - joist.start());
        return row;
    }

    /** Turns two rows so that the second has a zero in the column. */
    private static void rotate(double[] first, double[] second, int column) {
        double length = Math.sqrt(first[column] * first[column] + second[column] * second[column]);
        if (length == 0) {
            return;
        }
        double cos = first[column] / length;
        double sin = second[column] / length;
        for (int i = 0; i < first.length; i++) {
            double a = first[i];
            double b = second[i];
            first[i] = cos * a + sin * b;
            second[i] = cos * b - sin * a;
        }
    }

    private void markCarriers(List<double[]> rows, BitSet loose) {
        double[][] columns = new double[width][rows.size()];
        double[][] motions = new double[width][width];
        for (int i = 0; i < width; i++) {
            motions[i][i] = 1;
            for (int r = 0; r < rows.size(); r++) {
                columns[i][r] = rows.get(r)[i];
            }
        }
        boolean turned = true;
        for (int sweep = 0; turned && sweep < SWEEPS; sweep++) {
            turned = sweep(columns, motions);
        }
        double strongest = 0;
        for (double[] column : columns) {
            strongest = Math.max(strongest, dot(column, column));
        }
        for (int i = 0; i < width; i++) {
            if (!(dot(columns[i], columns[i]) > SLACK * SLACK * strongest)) {
                markMoved(motions[i], loose);
            }
        }
    }

    private static boolean sweep(double[][] columns, double[][] motions) {
        boolean turned = false;
        for (int p = 0; p < columns.length; p++) {
            for (int q = p + 1; q < columns.length; q++) {
                double a = dot(columns[p], columns[p]);
                double b = dot(columns[q], columns[q]);
                double c = dot(columns[p], columns[q]);
                if (Math.abs(c) > 1e-15 * Math.sqrt(a * b) && c != 0) {
                    double zeta = (b - a) / (2 * c);
                    double t = (zeta < 0 ? -1 : 1) / (Math.abs(zeta) + Math.sqrt(1 + zeta * zeta));
                    double cos = 1 / Math.sqrt(1 + t * t);
                    turn(columns[p], columns[q], cos, cos * t);
                    turn(motions[p], motions[q], cos, cos * t);
                    turned = true;
                }
            }
        }
        return turned;
    }

    private static void turn(double[] p, double[] q, double cos, double sin) {
        for (int i = 0; i < p.length; i++) {
            double x = p[i];
            double y = q[i];
            p[i] = cos * x - sin * y;
            q[i] = sin * x + cos * y;
        }
    }

    private static double dot(double[] x, double[] y) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += x[i] * y[i];
        }
        return sum;
    }

    private void markMoved(double[] motion, BitSet loose) {
        for (int i = 0; i < width; i++) {
            if (Math.abs(motion[i]) > SLACK) {
                loose.set(frame.carrierMember(i / 2));
            }
        }
    }
}
