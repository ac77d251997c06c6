package dev.underprop.app.batch;

import dev.underprop.app.report.ReportChoice;
import dev.underprop.app.report.ReportOptions;
import dev.underprop.app.source.Selection;
import dev.underprop.wire.door.AnswerOptions;
import java.util.List;

/**
 * How a batch is run.
 *
 * @param options how answers are written
 * @param reports reports that were asked for
 * @param reporting what reports have in common
 * @param selection what is taken of folders and archives
 * @param allowEmpty whether it is as it should be when nothing is found
 * @param standardInput what the standard input holds
 * @param failOn the mildest verdict that is a failure
 * @param workers plans judged at the same time
 */
public record BatchSettings(
        AnswerOptions options,
        List<ReportChoice> reports,
        ReportOptions reporting,
        Selection selection,
        boolean allowEmpty,
        String standardInput,
        FailOn failOn,
        int workers) {

    public BatchSettings {
        reports = List.copyOf(reports);
    }

    /** True when a report points at lines of plans. */
    boolean wantsLines() {
        return reports.stream().anyMatch(ReportChoice::wantsLines);
    }

    /** True when a program reads the standard output. */
    boolean machine() {
        return reports.stream().anyMatch(ReportChoice::standard);
    }
}
