package dev.underprop.app.report;

import dev.underprop.api.model.Problem;
import dev.underprop.api.model.ProblemError;
import dev.underprop.wire.record.Outcome;

/** A plan that was not judged, in words: every fault with its place, what was found, and what to do. */
final class ProblemText {
    private final Paint paint;

    ProblemText(Paint paint) {
        this.paint = paint;
    }

    String of(Outcome.Refused refused) {
        String path = Lines.visible(refused.name().key());
        Problem problem = refused.problem();
        StringBuilder out = new StringBuilder(paint.strong(path)).append('\n');
        String detail = problem.getDetail();
        out.append(paint.danger("NOT JUDGED"))
                .append(": ")
                .append(detail == null ? problem.getTitle() : detail)
                .append('\n');
        problem.getErrors().forEach(error -> out.append(fault(path, error)));
        String instance = problem.getInstance();
        if (instance != null) {
            out.append("  Id: ").append(instance).append('\n');
        }
        return out.toString();
    }

    static String fault(String path, ProblemError error) {
        StringBuilder out = new StringBuilder("  ").append(path);
        Integer line = error.getLine();
        Integer column = error.getColumn();
        if (line != null && column != null && path.endsWith("#" + line)) {
            out.append(" column ").append(column);
        } else if (line != null && column != null) {
            out.append(':').append(line).append(':').append(column);
        }
        if (!error.getPointer().isEmpty()) {
            out.append("  ").append(error.getPointer());
        }
        out.append("  (").append(error.getCode()).append(")\n");
        out.append(Lines.wrapped("    ", 4, words(error)));
        return out.toString();
    }

    static String words(ProblemError error) {
        StringBuilder words = new StringBuilder(error.getDetail());
        String got = error.getGot();
        if (got != null) {
            words.append(" Got: ").append(got).append('.');
        }
        String limit = error.getLimit();
        if (limit != null) {
            words.append(" Limit: ").append(limit).append('.');
        }
        String remedy = error.getRemedy();
        if (remedy != null) {
            words.append(' ').append(remedy);
        }
        return words.toString();
    }
}
