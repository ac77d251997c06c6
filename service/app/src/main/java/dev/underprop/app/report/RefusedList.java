package dev.underprop.app.report;

import dev.underprop.api.model.ProblemError;
import dev.underprop.wire.record.Outcome;
import java.util.ArrayList;
import java.util.List;

/** The first plans that were not judged; the others are counted. */
final class RefusedList {
    /** Faults told of one plan. */
    private static final int MOST_FAULTS = 20;

    /**
     * A plan that was not judged.
     *
     * @param path where it stands
     * @param faults why, in words
     */
    record Row(String path, List<String> faults) {}

    private final int most;
    private final List<Row> rows = new ArrayList<>();
    private int left;

    RefusedList(int most) {
        this.most = most;
    }

    static Row row(Outcome.Refused refused) {
        List<String> faults = new ArrayList<>();
        for (ProblemError error : refused.problem().getErrors()) {
            if (faults.size() == MOST_FAULTS) {
                faults.add("and " + (refused.problem().getErrors().size() - MOST_FAULTS) + " more");
                break;
            }
            Integer line = error.getLine();
            String at = line == null ? "" : "Line " + line + ": ";
            faults.add(at + ProblemText.words(error));
        }
        if (faults.isEmpty()) {
            faults.add(String.valueOf(refused.problem().getDetail()));
        }
        return new Row(refused.name().key(), List.copyOf(faults));
    }

    void add(Row row) {
        if (rows.size() < most) {
            rows.add(row);
        } else {
            left++;
        }
    }

    List<Row> rows() {
        return List.copyOf(rows);
    }

    /** Plans that are not listed. */
    int left() {
        return left;
    }
}
