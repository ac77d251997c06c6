package dev.underprop.app;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.check.CheckId;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import picocli.CommandLine;

/** Every check of the table is explained on the command line. */
class ExplainTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int explain(String id) {
        return new CommandLine(new ExplainCommand())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(id);
    }

    @ParameterizedTest
    @EnumSource
    void everyCheckIsExplained(CheckId id) {
        assertThat(explain(id.id())).isZero();
        assertThat(out.toString()).contains(id.id(), id.title());
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void whatIsNoCheckIsNot() {
        assertThat(explain("beam-bendin")).isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString()).contains("beam-bending");
    }
}
