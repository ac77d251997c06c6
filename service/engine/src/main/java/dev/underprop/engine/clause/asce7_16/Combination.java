package dev.underprop.engine.clause.asce7_16;

import dev.underprop.engine.standard.Citation;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Loads that act together.
 *
 * @param name as the document writes it, with absent loads struck out
 * @param terms what acts, each kind once
 * @param controlling the kind whose duration decides the load duration factor of timber; one of the terms
 * @param citation the document and its item
 */
public record Combination(String name, List<Term> terms, LoadKind controlling, Citation citation) {

    /**
     * One load of a combination.
     *
     * @param kind which
     * @param factor its part; negative where the load acts the other way
     */
    public record Term(LoadKind kind, double factor) {
        public Term {
            boolean up = kind == LoadKind.SEISMIC && factor < 0;
            if (!(factor > 0) && !up || Double.isInfinite(factor)) {
                throw new IllegalArgumentException("a load factor is positive, but for earthquake that acts upwards");
            }
        }
    }

    public Combination {
        terms = List.copyOf(terms);
        Set<LoadKind> kinds = EnumSet.noneOf(LoadKind.class);
        for (Term term : terms) {
            if (!kinds.add(term.kind())) {
                throw new IllegalArgumentException("a combination has each kind of load once: " + name);
            }
        }
        if (!kinds.contains(controlling)) {
            throw new IllegalArgumentException("the controlling load is one of the combination's: " + name);
        }
    }

    /** Terms as the document writes them: {@code D + 0.75 L + 0.75 S}. */
    static String name(List<Term> terms) {
        StringBuilder text = new StringBuilder();
        for (Term term : terms) {
            String sign = term.factor() < 0 ? " - " : " + ";
            double size = Math.abs(term.factor());
            text.append(text.isEmpty() ? "" : sign)
                    .append(size == 1 ? "" : size + " ")
                    .append(term.kind().symbol());
        }
        return text.toString();
    }

    /** Factor of a kind of load; 0 when it does not act. */
    public double factor(LoadKind kind) {
        for (Term term : terms) {
            if (term.kind() == kind) {
                return term.factor();
            }
        }
        return 0;
    }
}
