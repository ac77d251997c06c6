package dev.underprop.app.report;

import dev.underprop.api.model.PlanChange;

/** How answers differ from earlier ones, in words. */
final class Changes {
    private Changes() {}

    static String words(PlanChange change) {
        String because = change.getBecause().isEmpty()
                ? "neither plan nor engine, editions and catalogue are others than they were"
                : "other than it was: " + String.join(", ", change.getBecause());
        if ("not judged".equals(change.getBefore())) {
            return "it was not judged.";
        }
        return switch (change.getWhat()) {
            case "new" -> "not among the earlier results.";
            case "verdict" -> "the verdict was " + change.getBefore() + "; " + because + ".";
            default -> "the verdict is the same, numbers are not; " + because + ".";
        };
    }

    static String sum(String what, int count) {
        String plans = count == 1 ? "1 plan" : count + " plans";
        return switch (what) {
            case "new" -> plans + " not among the earlier results.";
            case "verdict" -> plans + " with another verdict than before.";
            default -> plans + " with other numbers than before.";
        };
    }
}
