package dev.underprop.wire.tree;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LocatorTest {
    private static final String JSON = """
            {
              "a/b": [10, {"x": true}],
              "\u00e9\ud83d\ude00": "v", "last": {"y": [[1, 2]]}
            }
            """;

    private static final String YAML = """
            # note
            a/b:
              - 10
              - x: true
            "\u00e9\ud83d\ude00": v
            last: {y: [[1, 2]]}
            """;

    private static String place(String document, Format format, Fault fault) {
        List<Fault> placed = Locator.locate(List.of(fault), Documents.utf8(document), format);
        assertThat(placed).hasSize(1);
        return placed.get(0).line() + ":" + placed.get(0).column();
    }

    @ParameterizedTest
    @CsvSource({
        "'', 1:1, 2:1",
        "/a~1b, 2:10, 3:3",
        "/a~1b/0, 2:11, 3:5",
        "/a~1b/1, 2:15, 4:5",
        "/a~1b/1/x, 2:21, 4:8",
        "/\u00e9\ud83d\ude00, 3:9, 5:7",
        "/last, 3:22, 6:7",
        "/last/y/0/1, 3:33, 6:16",
        "/last/missing, 3:22, 6:7",
        "/last/y/0/7, 3:29, 6:12",
        "/nowhere/at/all, 1:1, 2:1"
    })
    void valuesAreFoundAndMissingOnesInWhatShouldHoldThem(String pointer, String json, String yaml) {
        Fault fault = Messages.NULL_VALUE.fault("").withPointer(pointer);
        assertThat(place(JSON, Format.JSON, fault)).isEqualTo(json);
        assertThat(place(YAML, Format.YAML, fault)).isEqualTo(yaml);
    }

    @ParameterizedTest
    @CsvSource({"/a~1b, 2:3, 2:1", "/a~1b/1/x, 2:16, 4:5", "/last, 3:14, 6:1", "/last/y, 3:23, 6:8"})
    void unknownMembersAreFoundByName(String pointer, String json, String yaml) {
        Fault fault = Messages.UNKNOWN_MEMBER.fault("", "x", "y").withPointer(pointer);
        assertThat(place(JSON, Format.JSON, fault)).isEqualTo(json);
        assertThat(place(YAML, Format.YAML, fault)).isEqualTo(yaml);
        Fault near = Messages.UNKNOWN_MEMBER_NEAR.fault("", "x", "y").withPointer(pointer);
        assertThat(place(JSON, Format.JSON, near)).isEqualTo(json);
    }

    @Test
    void severalAreFoundInOnePassAndPlacedOnesStay() {
        Fault first = Messages.NULL_VALUE.fault("").withPointer("/last");
        Fault second = Messages.NULL_VALUE.fault("").withPointer("/a~1b/0");
        Fault placed = Messages.NULL_VALUE.fault("").withPointer("/a~1b/0").at(77, 7);
        assertThat(Locator.locate(List.of(first, second, placed), Documents.utf8(JSON), Format.JSON))
                .containsExactly(first.at(3, 22), second.at(2, 11), placed);
    }

    @Test
    void theFirstOfDuplicatesIsMeant() {
        Fault fault = Messages.NULL_VALUE.fault("").withPointer("/a");
        assertThat(place("{\"a\": 1, \"a\": 2}", Format.JSON, fault)).isEqualTo("1:7");
    }

    @Test
    void aMarkAndOtherLineEndsDoNotShiftPlaces() {
        Fault fault = Messages.NULL_VALUE.fault("").withPointer("/b");
        assertThat(place("\uFEFF{\"b\": 1}", Format.JSON, fault)).isEqualTo("1:7");
        assertThat(place("{\r\n\"a\": 1,\r\n\"b\": 1}", Format.JSON, fault)).isEqualTo("3:6");
        assertThat(place("{\r\"a\": 1,\r\"b\": 1}", Format.JSON, fault)).isEqualTo("3:6");
        assertThat(place("\uFEFFa: 1\r\nb: 1\r\n", Format.YAML, fault)).isEqualTo("2:4");
    }

    @Test
    void aDocumentThatCannotBeReadStillGivesWhatCameBefore() {
        Fault fault = Messages.NULL_VALUE.fault("").withPointer("/a");
        assertThat(place("{\"a\": 1, x", Format.JSON, fault)).isEqualTo("1:7");
        assertThat(Locator.locate(List.of(fault), new byte[] {(byte) 0xFF}, Format.JSON))
                .containsExactly(fault);
    }
}
