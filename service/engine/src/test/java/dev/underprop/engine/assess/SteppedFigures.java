package dev.underprop.engine.assess;

import static dev.underprop.engine.assess.Plans.INCH;
import static dev.underprop.engine.assess.Plans.POUND;
import static dev.underprop.engine.assess.Plans.PSI;

import dev.underprop.engine.assess.SteppedColumn.Piece;
import dev.underprop.engine.clause.aisc360_16.SectionJ3;
import dev.underprop.engine.clause.aisc360_16.SectionJ7;
import dev.underprop.engine.section.RoundTube;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Inputs;
import java.util.ArrayList;
import java.util.List;

/** Telescopic posts: critical loads, and pins. */
final class SteppedFigures {

    private SteppedFigures() {}

    static double critical(Case published, Expected wanted) {
        Inputs in = published.inputs();
        if (wanted.name().equals("inertia[0]") || wanted.name().equals("inertia[1]")) {
            return tube(in, wanted.name().equals("inertia[0]") ? 0 : 1).inertia();
        }
        return new SteppedColumn(wanted.given().has("middlePart") ? middle(wanted.given()) : pieces(in)).critical();
    }

    /** Of length 1, E I2 of 1. */
    private static List<Piece> middle(Inputs row) {
        double middle = Double.parseDouble(row.text("middlePart"));
        Piece end = new Piece((1 - middle) / 2, Double.parseDouble(row.text("ratioOfInertia")));
        return List.of(end, new Piece(middle, 1), end);
    }

    private static List<Piece> pieces(Inputs in) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < in.numbers("lengths_m").size(); i++) {
            double rigidity = in.has("rigidities")
                    ? Double.parseDouble(in.texts("rigidities").get(i))
                    : in.number("modulus_MPa") * 1e6 * tube(in, i).inertia();
            pieces.add(new Piece(in.numbers("lengths_m").get(i), rigidity));
        }
        return pieces;
    }

    private static RoundTube tube(Inputs in, int i) {
        return new RoundTube(
                in.numbers("diameters_mm").get(i) * 1e-3, in.numbers("walls_mm").get(i) * 1e-3);
    }

    /** A stress is the load over what the clause gives for a unit of stress, its factor taken out. */
    static double pin(Case published, Expected wanted) {
        Inputs in = published.inputs();
        double pin = in.number("pin_in") * INCH;
        double walls = 2 * in.number("wall_in") * INCH;
        return switch (wanted.name()) {
            case "shearStress" ->
                in.number("load_lbf") * POUND / SectionJ3.shear(2, pin, 2).value();
            case "bearingStress" ->
                in.number("load_lbf")
                        * POUND
                        / SectionJ7.bearing(2 / 1.8, pin, walls).value();
            case "shear" ->
                SectionJ3.shear(in.number("shear_psi") * PSI, pin, 2).value();
            default ->
                SectionJ7.bearing(in.number("yield_psi") * PSI, pin, walls).value();
        };
    }
}
