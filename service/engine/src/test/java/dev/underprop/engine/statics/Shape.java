package dev.underprop.engine.statics;

import java.util.function.IntToDoubleFunction;

/** The bent shape of a member by plain double integration and a fine search: slow, and its own method. */
final class Shape {

    private static final int GRID = 4000;

    private final Diagram diagram;
    private final double slope;
    private final double drop;

    /** @param movement deflection at a support station (m) */
    Shape(Diagram diagram, int[] supports, IntToDoubleFunction movement) {
        this.diagram = diagram;
        double a = diagram.at(supports[0]);
        double b = diagram.at(supports[supports.length - 1]);
        double bentA = bent(a);
        double bentB = bent(b);
        double moveA = movement.applyAsDouble(supports[0]);
        double moveB = movement.applyAsDouble(supports[supports.length - 1]);
        this.slope = (moveB - bentB - moveA + bentA) / (b - a);
        this.drop = moveA - bentA - slope * a;
    }

    double at(double place) {
        return bent(place) + slope * place + drop;
    }

    /** Greatest value of sign times deflection: {deflection, place}. */
    double[] extreme(int sign) {
        double start = diagram.at(0);
        double step = (diagram.at(diagram.stations() - 1) - start) / GRID;
        double best = start;
        for (int i = 1; i <= GRID; i++) {
            double place = start + i * step;
            best = sign * at(place) > sign * at(best) ? place : best;
        }
        double low = Math.max(start, best - step);
        double high = Math.min(start + GRID * step, best + step);
        for (int k = 0; k < 100; k++) {
            double left = low + (high - low) / 3;
            double right = high - (high - low) / 3;
            if (sign * at(left) < sign * at(right)) {
                low = left;
            } else {
                high = right;
            }
        }
        return new double[] {at((low + high) / 2), (low + high) / 2};
    }

    /** Minus the double integral of M/EI from the member's start. */
    private double bent(double place) {
        double angle = 0;
        double sink = 0;
        for (int i = 0; i < diagram.stations() - 1 && diagram.at(i) < place; i++) {
            double s = Math.min(place, diagram.at(i + 1)) - diagram.at(i);
            double m = diagram.moment(i);
            double v = diagram.shear(i);
            double w = diagram.uniform(i);
            sink += angle * s - (m * s * s / 2 + v * s * s * s / 6 - w * s * s * s * s / 24) / diagram.rigidity();
            angle -= (m * s + v * s * s / 2 - w * s * s * s / 6) / diagram.rigidity();
        }
        return sink;
    }
}
