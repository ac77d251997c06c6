package dev.underprop.app.report;

import dev.underprop.api.model.CheckPage;
import dev.underprop.api.model.CheckSummary;
import dev.underprop.wire.Version;
import dev.underprop.wire.pages.CheckPages;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The rules of SARIF: every check of the table with its page, then the kinds of problem a plan can have. */
final class SarifRules {
    private static final List<ProblemKind> PROBLEMS =
            List.of(ProblemKind.UNREADABLE, ProblemKind.FAULTY, ProblemKind.INTERNAL_ERROR);

    private final List<CheckSummary> checks = CheckPages.list().getChecks();
    private final Map<String, Integer> indices = new LinkedHashMap<>();

    SarifRules() {
        checks.forEach(check -> indices.put(check.getId(), indices.size()));
        PROBLEMS.forEach(problem -> indices.put(problem.path(), indices.size()));
    }

    int index(String rule) {
        Integer index = indices.get(rule);
        if (index == null) {
            throw new IllegalStateException("no rule " + rule);
        }
        return index;
    }

    /** The tool, with its rules. */
    Map<String, Object> tool() {
        Map<String, Object> driver = new LinkedHashMap<>();
        driver.put("name", "underprop");
        driver.put("semanticVersion", Version.number());
        driver.put(
                "rules",
                Stream.concat(
                                checks.stream().map(SarifRules::rule),
                                PROBLEMS.stream().map(SarifRules::rule))
                        .toList());
        return Map.of("driver", driver);
    }

    private static Map<String, Object> rule(CheckSummary check) {
        CheckPage page = CheckPages.page(check.getId()).orElseThrow();
        String sources = page.getCitations().stream().map(CheckText::cited).collect(Collectors.joining(" "));
        String help = page.getWhat() + "\nDemand: " + page.getDemand() + "\nCapacity: " + page.getCapacity()
                + "\nNot checked: " + page.getWhenNotChecked() + "\nWhen it fails: " + page.getWhenFails()
                + "\nWhat helps: " + page.getRemedy() + "\n" + sources;
        return rule(check.getId(), check.getTitle(), page.getWhat(), help);
    }

    private static Map<String, Object> rule(ProblemKind problem) {
        String help = switch (problem) {
            case UNREADABLE -> "The file, archive or line cannot be read: encoding, syntax, or a place without a plan.";
            case FAULTY -> "The plan can be read but makes no sense; every fault of the step that stopped is told.";
            default -> "A defect of the program. Please report its id.";
        };
        return rule(problem.path(), problem.title(), help, help);
    }

    private static Map<String, Object> rule(String id, String title, String what, String help) {
        Map<String, Object> rule = new LinkedHashMap<>();
        rule.put("id", id);
        rule.put("shortDescription", Map.of("text", title + "."));
        rule.put("fullDescription", Map.of("text", what));
        rule.put("help", Map.of("text", help));
        rule.put("defaultConfiguration", Map.of("level", "error"));
        return rule;
    }
}
