package dev.underprop.app;

import dev.underprop.api.model.CheckPage;
import dev.underprop.app.batch.Batch;
import dev.underprop.app.report.CheckPageText;
import dev.underprop.wire.pages.CheckPages;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the page of a check. */
@Command(
        name = "explain",
        description = "Explains a check: what it compares, by which clauses, what helps when it fails.",
        mixinStandardHelpOptions = true)
final class ExplainCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "ID", description = "Id of the check, such as beam-bending.")
    private String id = "";

    @Override
    public Integer call() {
        Optional<CheckPage> page = CheckPages.page(id);
        if (page.isPresent()) {
            spec.commandLine().getOut().print(CheckPageText.of(page.get()));
            spec.commandLine().getOut().flush();
            return 0;
        }
        List<String> ids = CheckPages.list().getChecks().stream()
                .map(check -> check.getId())
                .toList();
        spec.commandLine().getErr().print(CheckPageText.unknown(id, ids));
        spec.commandLine().getErr().flush();
        return Batch.NOT_DONE;
    }
}
