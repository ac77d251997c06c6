package dev.underprop.app.batch;

import dev.underprop.app.report.ReportChoice;
import dev.underprop.app.report.ReportOptions;
import dev.underprop.app.report.TextReport;
import dev.underprop.app.source.Selection;
import dev.underprop.wire.Version;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.record.Extent;
import java.util.List;
import java.util.stream.Stream;

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
 * @param baseline file of accepted findings, or the empty text
 * @param against file of earlier results, or the empty text
 * @param journal file that a run goes on from, or the empty text
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
        String baseline,
        String against,
        String journal,
        int workers) {

    public BatchSettings {
        reports = List.copyOf(reports);
    }

    /**
     * How answers are written so that every report of this run has what it tells. A journal keeps whole answers, for whatever reports
     * the run that goes on may have.
     */
    AnswerOptions answers() {
        boolean brief = reporting.extent() == Extent.BRIEF
                && reporting.text() == TextReport.Level.SUM
                && journal.isEmpty()
                && reports.stream().allMatch(ReportChoice::brief);
        return brief ? new AnswerOptions(options.units(), AnswerOptions.Detail.BRIEF) : options;
    }

    /**
     * What outcomes depend on besides the plans.
     *
     * @param catalogue digest of the tables
     */
    String maker(String catalogue) {
        return "underprop check journal 1; " + Version.text() + "; tables " + catalogue + "; units " + options.units()
                + "; detail " + options.detail() + "; working "
                + options.working();
    }

    /** True when a report points at lines of plans. */
    boolean wantsLines() {
        return reports.stream().anyMatch(ReportChoice::wantsLines);
    }

    /** Files that the run itself writes or reads. */
    List<String> own() {
        return Stream.concat(reports.stream().map(ReportChoice::file), Stream.of(baseline, against, journal))
                .filter(file -> !file.isEmpty())
                .toList();
    }

    /** True when a program reads the standard output. */
    boolean machine() {
        return reports.stream().anyMatch(ReportChoice::standard);
    }
}
