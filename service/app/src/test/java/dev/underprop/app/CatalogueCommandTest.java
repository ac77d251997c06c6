package dev.underprop.app;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.wire.catalogue.Parts;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

class CatalogueCommandTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return new CommandLine(new CatalogueCommand())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(args);
    }

    @Test
    void partsAreListed() {
        assertThat(run()).isZero();
        for (String part : Parts.standard().names()) {
            assertThat(out.toString()).contains(part + "  ");
        }
        assertThat(out.toString()).contains("soils  Allowable pressures of soils (71 entries)");
    }

    @Test
    void everyEntryIsShown() {
        assertThat(run("tubes")).isZero();
        assertThat(out.toString().lines().filter(line -> line.contains("; table ")))
                .hasSize(52);
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void valueStandsBesideItsSource() {
        assertThat(run("acme-screws", "--filter", "1-1/2-4")).isZero();
        assertThat(out.toString())
                .startsWith("Acme 1-1/2-4 (acme-1-1-2-4; table asme-b1.5)\n")
                .contains("  - pitch: p = 1/4 in [ASME B1.5, 1997, general-purpose Acme series, from memory]\n");
    }

    @Test
    void tablesAreKeptApart() {
        assertThat(run("soils", "--table", "ibc-1806.2", "--filter", "sand")).isZero();
        assertThat(out.toString()).contains("2000 psf").doesNotContain("irc-");
    }

    @ParameterizedTest
    @CsvSource({
        "soil, '', '', Did you mean soils?",
        "beams, '', '', There are: lumber-sizes",
        "soils, ibc-1806.1, '', Did you mean ibc-1806.2?",
        "soils, '', granite, No entry of soils holds these words.",
        "'', '', granite, --filter and --table want a PART."
    })
    void whatIsNotThereIsSaid(String part, String table, String filter, String said) {
        assertThat(run(part, "--table", table, "--filter", filter)).isEqualTo(2);
        assertThat(err.toString()).contains(said);
        assertThat(out.toString()).isEmpty();
    }
}
