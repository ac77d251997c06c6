package dev.underprop.engine.standard;

import java.util.List;

/**
 * The standards a plan is judged by.
 *
 * @param name as plans write it
 * @param editions documents with their editions
 */
public record Basis(String name, List<String> editions) {

    /** Allowable stress practice of the United States; the one basis of this version. */
    public static final Basis US_ASD =
            new Basis("us-asd", List.of("NDS 2018", "AISC 360-16", "ACI 318-19", "ASCE 7-16", "IBC 2021", "IRC 2021"));

    public Basis {
        editions = List.copyOf(editions);
    }
}
