package dev.underprop.engine.assess;

import static dev.underprop.engine.assess.Plans.FOOT;
import static dev.underprop.engine.assess.Plans.INCH;
import static dev.underprop.engine.assess.Plans.PLF;
import static dev.underprop.engine.assess.Plans.POUND;
import static dev.underprop.engine.assess.Plans.PSI;

import dev.underprop.fixtures.Inputs;
import java.util.Map;

/** Inputs of cases in SI, whatever unit the source states them in; the unit is the end of the name. */
final class InUnits {

    private static final Map<String, Double> LENGTHS = Map.of("_in", INCH, "_ft", FOOT, "_mm", 1e-3, "_m", 1.0);
    private static final Map<String, Double> AREAS = Map.of("_in2", INCH * INCH);
    private static final Map<String, Double> INERTIAS = Map.of("_in4", INCH * INCH * INCH * INCH, "_mm4", 1e-12);
    private static final Map<String, Double> STRESSES = Map.of("_psi", PSI, "_MPa", 1e6);
    private static final Map<String, Double> FORCES = Map.of("_lbf", POUND, "_N", 1.0);
    private static final Map<String, Double> LINES = Map.of("_plf", PLF, "_kNPerM", 1e3);

    private InUnits() {}

    static double length(Inputs in, String name) {
        return of(in, name, LENGTHS);
    }

    static double area(Inputs in, String name) {
        return of(in, name, AREAS);
    }

    static double inertia(Inputs in, String name) {
        return of(in, name, INERTIAS);
    }

    static double stress(Inputs in, String name) {
        return of(in, name, STRESSES);
    }

    static double force(Inputs in, String name) {
        return of(in, name, FORCES);
    }

    static double line(Inputs in, String name) {
        return of(in, name, LINES);
    }

    private static double of(Inputs in, String name, Map<String, Double> units) {
        return units.entrySet().stream()
                .filter(unit -> in.has(name + unit.getKey()))
                .mapToDouble(unit -> in.number(name + unit.getKey()) * unit.getValue())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no " + name + " in " + in));
    }
}
