package dev.underprop.app;

import dev.underprop.app.batch.Batch;
import dev.underprop.app.batch.BatchSettings;
import dev.underprop.app.batch.FailOn;
import dev.underprop.app.report.ReportChoice;
import dev.underprop.app.report.ReportOptions;
import dev.underprop.app.report.TextReport;
import dev.underprop.app.source.Selection;
import dev.underprop.app.source.StandardInput;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.record.Extent;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks the plans in files, folders and archives. */
@Command(
        name = "check",
        description = "Checks job plans: files, folders with all that is below them, archives, lines.",
        sortOptions = false,
        footer = {
            "",
            "Plans end in .yaml, .yml or .json; many plans in .ndjson, .jsonl (one a line; also .gz), .zip, .tar, .tar.gz or .tgz.",
            "Exit status: 0 all adequate; 1 some plan is not; 2 the job could not be done, which wins over 1."
        },
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    private static final int MOST_WORKERS = 256;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "1..*",
            paramLabel = "PATH",
            description = "Files, folders and archives with plans; - is the standard input.")
    private List<String> paths = List.of();

    @Mixin
    private AnswerFlags flags = new AnswerFlags();

    @Option(
            names = "--detail",
            defaultValue = "compact",
            paramLabel = "brief|compact|full",
            converter = Choices.RecordDetails.class,
            description = "How much the records of json and ndjson tell, ${DEFAULT-VALUE} unless given.")
    private Choices.RecordDetail detail = Choices.RecordDetail.COMPACT;

    @Option(
            names = "--text",
            paramLabel = "full|lines|sum",
            converter = Choices.Levels.class,
            description = "How much the text says of each plan: full, or lines when it goes to the error output.")
    private List<TextReport.Level> level = List.of();

    @Option(
            names = "--include",
            paramLabel = "GLOB",
            description =
                    "Takes only files of folders and archives that match, such as 'jobs/**/*.yaml'; may be repeated.")
    private List<String> includes = List.of();

    @Option(
            names = "--working",
            description = "Tells how each check is worked out, line by line, for a reviewer to follow.")
    private boolean working;

    @Option(
            names = "--exclude",
            paramLabel = "GLOB",
            description = "Leaves out files and folders that match, such as old/ or '*.draft.yaml'; may be repeated.")
    private List<String> excludes = List.of();

    @Option(
            names = "--ignore-file",
            defaultValue = Selection.IGNORE_FILE,
            paramLabel = "NAME",
            description = "Name of the file in a folder that lists globs to leave out, ${DEFAULT-VALUE} unless given.")
    private String ignoreFile = Selection.IGNORE_FILE;

    @Option(
            names = "--stdin-as",
            defaultValue = "auto",
            paramLabel = "KIND",
            description = "What the standard input holds: auto, yaml, json, ndjson, ndjson.gz, zip, tar or tar.gz.")
    private String standardInput = "auto";

    @Option(
            names = "--allow-empty",
            description = "It is as it should be when nothing is found; otherwise that is status 2.")
    private boolean allowEmpty;

    @Option(
            names = "--fail-on",
            defaultValue = "incomplete",
            paramLabel = "VERDICT",
            converter = Choices.Failing.class,
            description = "Mildest verdict that gives status 1: unstable, inadequate or incomplete (unless given).")
    private FailOn failOn = FailOn.INCOMPLETE;

    @Option(
            names = "--baseline",
            defaultValue = "",
            paramLabel = "FILE",
            description = {
                "Findings on this list are accepted and do not count for the status, unless they are worse than there; write"
                        + " the list with --report baseline:FILE. Faults and unstable plans are never accepted."
            })
    private String baseline = "";

    @Option(
            names = "--against",
            defaultValue = "",
            paramLabel = "FILE",
            description =
                    "Tells what has changed since earlier results, written with --report ndjson:FILE, and because of what.")
    private String against = "";

    @Option(
            names = "--resume",
            defaultValue = "",
            paramLabel = "JOURNAL",
            description = {
                "Notes in this file what was judged; the same command with the same file goes on where a run was stopped or"
                        + " broken off, as long as the plans are what they were."
            })
    private String journal = "";

    @Option(
            names = "--workers",
            defaultValue = "0",
            paramLabel = "N",
            description = "Plans judged at the same time; as many as there are processors unless given.")
    private int workers;

    @Option(
            names = "--sarif-most",
            defaultValue = "5000",
            paramLabel = "N",
            description = "How many findings SARIF lists, ${DEFAULT-VALUE} unless given; the rest is counted.")
    private int most;

    @Override
    public Integer call() {
        return Batch.run(settings(), paths);
    }

    private BatchSettings settings() {
        try {
            List<ReportChoice> choices =
                    flags.reports().stream().map(ReportChoice::of).toList();
            Selection selection = new Selection(includes, excludes, ignoreFile);
            selection.check();
            refuse(
                    choices.stream().filter(ReportChoice::standard).count() > 1,
                    "One report can have the standard output.");
            refuse(
                    !StandardInput.KINDS.contains(standardInput),
                    "--stdin-as is one of " + String.join(", ", StandardInput.KINDS) + ".");
            refuse(workers < 0 || workers > MOST_WORKERS, "--workers is a number from 1 to " + MOST_WORKERS + ".");
            refuse(most < 1, "--sarif-most is at least 1.");
            refuse(ignoreFile.isBlank() || ignoreFile.contains("/"), "--ignore-file is a name without a folder.");
            boolean machine = choices.stream().anyMatch(ReportChoice::standard);
            TextReport.Level usual = machine ? TextReport.Level.LINES : TextReport.Level.FULL;
            return new BatchSettings(
                    new AnswerOptions(flags.units(), detail.answer(), working),
                    choices,
                    new ReportOptions(
                            detail == Choices.RecordDetail.BRIEF ? Extent.BRIEF : Extent.WHOLE,
                            level.isEmpty() ? usual : level.get(level.size() - 1),
                            most),
                    selection,
                    allowEmpty,
                    standardInput,
                    failOn,
                    baseline,
                    against,
                    journal,
                    workers == 0 ? Runtime.getRuntime().availableProcessors() : workers);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), String.valueOf(e.getMessage()), e);
        }
    }

    private static void refuse(boolean wrong, String why) {
        if (wrong) {
            throw new IllegalArgumentException(why);
        }
    }
}
