package dev.underprop.wire.answer;

import dev.underprop.api.model.PadQuantities;
import dev.underprop.api.model.PadQuantity;
import dev.underprop.engine.sizing.Candidate;
import dev.underprop.engine.sizing.PadSizing;
import dev.underprop.engine.sizing.PostSizing;
import dev.underprop.wire.quantity.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes what proposed pads come to: how many of which, what they weigh and cost. */
final class QuantityWriter {

    private final Figures figures;

    QuantityWriter(Figures figures) {
        this.figures = figures;
    }

    PadQuantities of(PadSizing sizing) {
        Map<Candidate, List<String>> pads = new LinkedHashMap<>();
        for (PostSizing post : sizing.posts()) {
            post.proposals().stream()
                    .limit(1)
                    .forEach(p -> pads.computeIfAbsent(p.trial().candidate(), c -> new ArrayList<>())
                            .add(post.post().post().name()));
        }
        PadQuantities model = new PadQuantities()
                .pads(pads.values().stream().mapToInt(List::size).sum())
                .items(pads.entrySet().stream()
                        .map(e -> item(e.getKey(), e.getValue()))
                        .toList());
        double weight = sum(pads, true);
        double price = sum(pads, false);
        if (!pads.isEmpty() && !Double.isNaN(weight)) {
            model.weight(figures.quantity(Kind.FORCE, weight));
            pads.keySet().stream()
                    .filter(c -> c.pieces() > 0)
                    .mapToDouble(c -> c.weight() / c.pieces())
                    .max()
                    .ifPresent(piece -> model.heaviestPiece(figures.quantity(Kind.FORCE, piece)));
        }
        return pads.isEmpty() || Double.isNaN(price) ? model : model.price(price);
    }

    private static double sum(Map<Candidate, List<String>> pads, boolean weight) {
        double sum = 0;
        for (Map.Entry<Candidate, List<String>> entry : pads.entrySet()) {
            double one = weight ? entry.getKey().weight() : entry.getKey().price();
            sum += one * entry.getValue().size();
        }
        return sum;
    }

    private PadQuantity item(Candidate candidate, List<String> posts) {
        PadQuantity model = new PadQuantity()
                .pad(candidate.pad().name())
                .count(posts.size())
                .posts(posts);
        if (!Double.isNaN(candidate.weight())) {
            model.weight(figures.quantity(Kind.FORCE, candidate.weight() * posts.size()));
        }
        return Double.isNaN(candidate.price()) ? model : model.price(candidate.price() * posts.size());
    }
}
