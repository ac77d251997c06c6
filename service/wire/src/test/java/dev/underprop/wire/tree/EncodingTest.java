package dev.underprop.wire.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.underprop.wire.fault.Fault;
import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class EncodingTest {
    private static final HexFormat HEX = HexFormat.of();

    @ParameterizedTest
    @EnumSource(Format.class)
    void theMarkOfUtf8IsPassedOver(Format format) {
        assertThat(Documents.tree("\uFEFF{\"a\": \"\u00e9\"}", format))
                .isEqualTo(Documents.tree("{\"a\": \"\u00e9\"}", format));
        assertThat(Documents.faults("\uFEFF{\"a\": \"x}", format).get(0).line()).isPositive();
    }

    static List<Arguments> wide() {
        List<Arguments> cases = new ArrayList<>();
        for (String name : List.of("UTF-16", "UTF-16BE", "UTF-16LE", "UTF-32", "UTF-32BE", "UTF-32LE")) {
            for (Format format : Format.values()) {
                cases.add(Arguments.of(name, "", format));
                cases.add(Arguments.of(name, "\uFEFF", format));
            }
        }
        return cases;
    }

    @ParameterizedTest
    @MethodSource("wide")
    void otherEncodingsAreRefused(String name, String mark, Format format) {
        byte[] bytes = (mark + "{\"a\": 1}").getBytes(Charset.forName(name));
        assertThat(Documents.faults(bytes, format, Limits.USUAL))
                .extracting(Fault::code, Fault::line, Fault::column)
                .containsExactly(tuple("encoding-not-utf8", 1, 1));
    }

    /** Short bodies that a guess at UTF-32 cannot finish, and others that no guess should be made at. */
    @ParameterizedTest
    @CsvSource({
        "0000feff0000",
        "fffe00007b00",
        "0000007b0000",
        "7b0000007d00",
        "000000",
        "0000",
        "feff",
        "fffe",
        "7b00",
        "007b",
        "0000fffe7b7d",
        "feff0000007b"
    })
    void shortBodiesOfWideLookAreRefused(String hex) {
        for (Format format : Format.values()) {
            assertThat(Documents.faults(HEX.parseHex(hex), format, Limits.USUAL))
                    .extracting(Fault::code)
                    .containsExactly("encoding-not-utf8");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "ff, 0xFF",
        "c0af, overlong 0xC0",
        "eda080, surrogate 0xED",
        "f4908080, beyond 0xF4",
        "e282, cut short 0xE2",
        "80, alone 0x80",
        "e9, Latin-1 0xE9"
    })
    void malformedBytesAreRefusedWithTheirPlace(String hex, String octet) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes("{\"a\":\n \"\u00e9".getBytes(StandardCharsets.UTF_8));
        bytes.writeBytes(HEX.parseHex(hex));
        bytes.writeBytes("\"}".getBytes(StandardCharsets.UTF_8));
        for (Format format : Format.values()) {
            Fault fault =
                    Documents.faults(bytes.toByteArray(), format, Limits.USUAL).get(0);
            assertThat(Documents.brief(fault)).isEqualTo("encoding-not-utf8  2:4");
            assertThat(fault.detail()).endsWith(": byte 10 is " + octet.substring(octet.length() - 4) + ".");
        }
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void aDocumentCutInsideACharacterIsRefused(Format format) {
        byte[] bytes = HEX.parseHex("2261e2");
        assertThat(Documents.faults(bytes, format, Limits.USUAL))
                .extracting(Documents::brief)
                .containsExactly("encoding-not-utf8  1:3");
    }
}
