package dev.underprop.engine.standard;

import java.util.List;

/**
 * The editions a plan is judged by. Always an argument, never kept as a current one.
 *
 * @param name as plans write it
 * @param editions documents with their editions, at least one
 */
public record Basis(String name, List<String> editions) {

    /** Allowable stress practice of the United States; the one basis of this version. */
    public static final Basis US_ASD =
            new Basis("us-asd", List.of("NDS 2018", "AISC 360-16", "ACI 318-19", "ASCE 7-16", "IBC 2021", "IRC 2021"));

    public Basis {
        editions = List.copyOf(editions);
        if (name.isBlank() || editions.isEmpty()) {
            throw new IllegalArgumentException("a basis has a name and at least one edition");
        }
    }
}
