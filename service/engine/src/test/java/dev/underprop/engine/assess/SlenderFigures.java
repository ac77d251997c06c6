package dev.underprop.engine.assess;

import dev.underprop.engine.section.RoundTube;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Inputs;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Columns of one piece that buckle, or bend under a load off their middle. */
final class SlenderFigures {

    private SlenderFigures() {}

    static double euler(Case published, Expected wanted) {
        Inputs in = published.inputs();
        Inputs row = wanted.given().has("length_ft") ? wanted.given() : in;
        double modulus = InUnits.stress(in, "modulus");
        double safety = in.has("safety") ? in.number("safety") : 1;
        return switch (wanted.name()) {
            case "inertia" -> inertia(row);
            case "load" -> critical(modulus * inertia(row), InUnits.length(row, "length")) / safety;
            case "loadFixedFree" -> critical(modulus * inertia(row), 2 * InUnits.length(row, "length"));
            case "inertiaRequired" ->
                InUnits.force(in, "load") * safety / critical(modulus, InUnits.length(in, "length"));
            case "lengthCritical" ->
                Math.sqrt(
                        critical(modulus * inertia(in), 1) / (InUnits.area(in, "area") * InUnits.stress(in, "stress")));
            case "stress" -> critical(modulus * inertia(in), InUnits.length(in, "length")) / rod(in).area();
            default -> throw new IllegalArgumentException(wanted.name());
        };
    }

    private static double critical(double rigidity, double length) {
        return new SteppedColumn(List.of(new SteppedColumn.Piece(length, rigidity))).critical();
    }

    static double eccentric(Case published, Expected wanted) {
        Inputs in = published.inputs();
        double off = InUnits.length(in, "eccentricity");
        double load = InUnits.force(in, "load");
        return switch (wanted.name()) {
            case "inertia" -> inertia(in);
            case "deflection" -> bent(in, InUnits.length(in, "length"), load) - off;
            case "magnification" -> bent(in, InUnits.length(in, "length"), load) / off;
            case "stress" -> stress(in, load);
            case "loadAtYield" -> solve(p -> stress(in, p), InUnits.stress(in, "yield"), load, 4 * load);
            case "lengthMaxFixedFree" ->
                solve(l -> bent(in, 2 * l, load), off + InUnits.length(in, "deflection"), 0.1, 3);
            default -> throw new IllegalArgumentException(wanted.name());
        };
    }

    /** How far the axis comes to lie off the load in the middle (m). */
    private static double bent(Inputs in, double length, double load) {
        double rigidity = InUnits.stress(in, "modulus") * inertia(in);
        BentColumn.Piece whole = new BentColumn.Piece(0, length, rigidity, 0);
        return new BentColumn(List.of(whole), InUnits.length(in, "eccentricity")).offsets(load, 1)[0];
    }

    private static double stress(Inputs in, double load) {
        double offset = bent(in, InUnits.length(in, "length"), load);
        return load / InUnits.area(in, "area") + load * offset * InUnits.length(in, "edge") / inertia(in);
    }

    private static double solve(DoubleUnaryOperator rising, double target, double from, double to) {
        double low = from;
        double high = to;
        for (int i = 0; i < 80; i++) {
            double middle = (low + high) / 2;
            boolean below = rising.applyAsDouble(middle) < target;
            low = below ? middle : low;
            high = below ? high : middle;
        }
        return low;
    }

    private static double inertia(Inputs in) {
        if (in.has("inertia_in4") || in.has("inertia_mm4")) {
            return InUnits.inertia(in, "inertia");
        }
        if (in.has("diameter_in")) {
            return rod(in).inertia();
        }
        if (in.has("breadth_in")) {
            double depth = InUnits.length(in, "depth");
            return InUnits.length(in, "breadth") * depth * depth * depth / 12;
        }
        double outside = InUnits.length(in, "outside");
        return new RoundTube(outside, (outside - InUnits.length(in, "inside")) / 2).inertia();
    }

    private static RoundTube rod(Inputs in) {
        double diameter = InUnits.length(in, "diameter");
        return new RoundTube(diameter, diameter / 2);
    }
}
