package dev.underprop.engine.sample;

import dev.underprop.app.Main;
import java.util.HashMap;

/** Breaks every habit of the engine, so that the rules are seen to bite. */
public final class Offender {
    static final HashMap<String, Double> MEMORY = new HashMap<>();

    private Offender() {}

    static double compute(double angle) {
        System.out.println(Main.class);
        double sine = Math.sin(angle);
        MEMORY.put("last", sine);
        return sine;
    }
}
