package dev.underprop.app.batch;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.app.report.Tally;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class ProgressTest {

    @Test
    void lineTellsShareRateTimeLeftAndFindings() {
        assertThat(Progress.line(300, 12, 2, 0.25, 10))
                .isEqualTo("[######..................] 300 plans, 30 a second, 0:30 left, 12 findings, 2 not judged");
        assertThat(Progress.line(1, 0, 0, -1, 2)).isEqualTo("1 plan, 0.5 a second, 0 findings");
        assertThat(Progress.line(9000, 0, 0, 0.01, 90)).contains(" 2:28:30 left");
    }

    @Test
    void nothingIsToldWithoutATerminal() throws InterruptedException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Progress quiet = new Progress(new PrintStream(out, true, StandardCharsets.UTF_8), false, () -> 0.5);
        Progress shown = new Progress(new PrintStream(out, true, StandardCharsets.UTF_8), true, () -> 0.5);
        Thread.sleep(300);
        quiet.tell(new Tally());
        quiet.clear();
        assertThat(out.size()).isZero();

        shown.tell(new Tally());
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("0 plans");
    }
}
