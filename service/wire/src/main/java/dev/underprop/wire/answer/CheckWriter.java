package dev.underprop.wire.answer;

import dev.underprop.api.model.CheckVerdict;
import dev.underprop.api.model.Citation;
import dev.underprop.api.model.NotCheckedItem;
import dev.underprop.engine.assess.Assessment;
import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Verdict;
import dev.underprop.wire.quantity.Kind;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Writes checks and what was not checked. */
final class CheckWriter {

    private static final String NO_SOURCE = "common practice, no source";

    /** The engine's word for a result that concerns no single place. */
    static final String WHOLE_PLAN = "plan";

    private final Figures figures;
    private final Wording wording;
    private final WorkingWriter working;
    private final boolean full;
    private final boolean told;

    /**
     * @param full every place of each check
     * @param told with its working
     */
    CheckWriter(Figures figures, boolean full, boolean told) {
        this.figures = figures;
        this.working = new WorkingWriter(figures);
        this.told = told;
        this.wording = new Wording(figures);
        this.full = full;
    }

    /** Every place of every check, or the worst place of each, in table order. */
    List<dev.underprop.api.model.CheckResult> checks(Assessment assessment) {
        List<CheckResult> results = full ? assessment.checks() : worstOfEach(assessment.checks());
        return results.stream().map(this::check).toList();
    }

    /** The worst place of each check, in table order, without words. */
    List<dev.underprop.api.model.CheckResult> numbers(Assessment assessment) {
        List<dev.underprop.api.model.CheckResult> models = new ArrayList<>();
        for (CheckResult result : worstOfEach(assessment.checks())) {
            dev.underprop.api.model.CheckResult model = named(result);
            setNumbers(model, result);
            models.add(model);
        }
        return models;
    }

    private static dev.underprop.api.model.CheckResult named(CheckResult result) {
        return new dev.underprop.api.model.CheckResult()
                .check(result.id().id())
                .title(result.id().title())
                .verdict(CheckVerdict.fromValue(result.verdict().name()))
                .place(result.place());
    }

    private static List<CheckResult> worstOfEach(List<CheckResult> all) {
        Map<CheckId, CheckResult> worst = new LinkedHashMap<>();
        for (CheckResult result : all) {
            worst.merge(
                    result.id(), result, (one, other) -> CheckResult.BEST_FIRST.compare(other, one) > 0 ? other : one);
        }
        return List.copyOf(worst.values());
    }

    dev.underprop.api.model.CheckResult check(CheckResult result) {
        dev.underprop.api.model.CheckResult model =
                named(result).citation(citation(result.citation())).message(wording.message(result));
        setNumbers(model, result);
        if (told) {
            model.working(working.working(model, result));
        }
        if (result.where() instanceof CheckResult.InCase in) {
            model.situation(in.situation())
                    .combination(in.combination())
                    .pattern(in.pattern())
                    .bound(Figures.bound(in.bound()));
            if (!Double.isNaN(in.at())) {
                model.at(figures.quantity(Kind.POSITION, in.at()));
            }
        }
        return model;
    }

    private void setNumbers(dev.underprop.api.model.CheckResult model, CheckResult result) {
        if (result.finding() instanceof CheckResult.Judged judged && !Double.isNaN(result.ratio())) {
            Kind kind = Wording.kind(judged.measure());
            model.demand(figures.quantity(kind, judged.demand()));
            if (Double.isInfinite(result.ratio())) {
                model.capacityNone(true);
            } else {
                model.capacity(figures.quantity(kind, judged.capacity())).ratio(result.ratio());
            }
        } else if (result.finding() instanceof CheckResult.Refused refused) {
            model.demand(figures.quantity(Wording.kind(refused.measure()), refused.demand()))
                    .capacityNone(true);
        }
    }

    static Citation citation(dev.underprop.engine.standard.Citation citation) {
        boolean custom = citation.document().equals(NO_SOURCE);
        String edition = citation.edition().isEmpty() ? "none" : citation.edition();
        return new Citation()
                .document(custom ? "common practice" : citation.document())
                .edition(edition)
                .locator(citation.locator())
                .standing(custom ? NO_SOURCE : standing(citation.standing()));
    }

    private static String standing(dev.underprop.engine.standard.Citation.Standing standing) {
        return switch (standing) {
            case READ -> "read";
            case FROM_MEMORY -> "from memory";
        };
    }

    private record Open(CheckId id, String reason) {}

    /** Every check that was not made in some situation: once for each reason, or once for each place. */
    List<NotCheckedItem> notChecked(Assessment assessment) {
        Map<CheckId, List<CheckResult>> open = new EnumMap<>(CheckId.class);
        assessment.situations().forEach(situation -> collect(situation.checks(), open));
        return notChecked(open);
    }

    /** Those of some checks that were not made. */
    List<NotCheckedItem> notChecked(List<CheckResult> checks) {
        Map<CheckId, List<CheckResult>> open = new EnumMap<>(CheckId.class);
        collect(checks, open);
        return notChecked(open);
    }

    private static void collect(List<CheckResult> checks, Map<CheckId, List<CheckResult>> open) {
        for (CheckResult check : checks) {
            if (check.verdict() == Verdict.NOT_CHECKED) {
                open.computeIfAbsent(check.id(), id -> new ArrayList<>()).add(check);
            }
        }
    }

    /** In the order of the table of checks, which is that of the map. */
    private List<NotCheckedItem> notChecked(Map<CheckId, List<CheckResult>> checks) {
        Map<String, String> sentences = new HashMap<>();
        List<NotCheckedItem> items = new ArrayList<>();
        checks.forEach((id, open) -> {
            Map<String, Set<String>> places = new LinkedHashMap<>();
            for (CheckResult check : open) {
                String reason = sentences.computeIfAbsent(reason(check), CheckWriter::sentence);
                places.computeIfAbsent(reason, first -> new LinkedHashSet<>()).add(check.place());
            }
            places.forEach((reason, where) -> addItems(new Open(id, reason), List.copyOf(where), items));
        });
        return items;
    }

    private static String reason(CheckResult check) {
        return check.finding() instanceof CheckResult.NotChecked open
                ? open.reason()
                : "there is neither a demand nor a capacity";
    }

    private static String sentence(String reason) {
        return Character.toUpperCase(reason.charAt(0)) + reason.substring(1) + '.';
    }

    private void addItems(Open open, List<String> places, List<NotCheckedItem> items) {
        if (full || places.size() == 1) {
            places.forEach(place -> items.add(item(open, place)));
        } else {
            String more = places.size() == 2 ? places.get(1) : (places.size() - 1) + " more places";
            items.add(item(open, places.get(0) + " and " + more));
        }
    }

    private static NotCheckedItem item(Open open, String place) {
        NotCheckedItem item = new NotCheckedItem()
                .check(open.id().id())
                .title(open.id().title())
                .reason(open.reason());
        return place.equals(WHOLE_PLAN) ? item : item.place(place);
    }
}
