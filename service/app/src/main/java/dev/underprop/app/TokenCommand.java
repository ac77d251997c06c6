package dev.underprop.app;

import dev.underprop.app.http.TokenLine;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a token and the line by which a service knows it. */
@Command(
        name = "token",
        description = {
            "Makes a token for somebody. Its line goes to the standard output, to be added to the file that serve --tokens reads;"
                    + " the token itself, which is kept nowhere, to the error output.",
            "",
            "  underprop token office >> tokens"
        },
        mixinStandardHelpOptions = true)
final class TokenCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "NAME",
            description = "Whose it is, as the log will say: letters, digits, points, underscores, hyphens.")
    private String name = "";

    @Override
    public Integer call() {
        if (!TokenLine.isName(name)) {
            throw new ParameterException(
                    spec.commandLine(), "A name is 1 to 64 letters, digits, points, underscores and hyphens.");
        }
        String token = TokenLine.newToken();
        spec.commandLine().getOut().println(TokenLine.of(name, token).text());
        spec.commandLine().getErr().println(token);
        return 0;
    }
}
