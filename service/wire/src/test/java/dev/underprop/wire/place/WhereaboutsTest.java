package dev.underprop.wire.place;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.wire.tree.Format;
import dev.underprop.wire.tree.Place;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WhereaboutsTest {
    private static final String PLAN = """
            id: x
            floor:
              joists:
                count: 3
                each:
                  - { name: header }
                  - { length: 3 ft }
              bearings:
                - name: rear sill
                - name: girder
                  piers:
                    - { name: P1 }
            shores:
              - name: A
                beam: { size: 2x8 }
                posts:
                  - { name: A1 }
                  - { name: A2 }
                heads: {}
              - name: A and B
                beam: {}
            pads:
              - { name: cast }
            intake:
              - { question: bearing partition }
            """;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "A2 | 18",
                "A1 on cast | 17",
                "beam of A | 15",
                "beam of A over A2 | 15",
                "beam of A and B | 21",
                "heads of A, along the shores | 19",
                "heads of A and B, along the joists | 20",
                "header on girder | 6",
                "J2 over J2 on A | 7",
                "J3 | 4",
                "rear sill | 9",
                "P1 | 12",
                "cast | 23",
                "bearing partition | 25",
                "floor, along the joists | 3",
                "plan | 1",
                "nothing of the plan | 1",
            })
    void wordsLeadToTheLineOfTheThing(String words, int line) {
        Map<String, Place> found = Whereabouts.find(List.of(words), PLAN.getBytes(StandardCharsets.UTF_8), Format.YAML);

        assertThat(found).containsOnlyKeys(words);
        assertThat(found.get(words)).extracting(Place::line).isEqualTo(line);
    }

    @Test
    void aTextThatIsNoPlanHasNoPlaces() {
        assertThat(Whereabouts.find(List.of("A1"), new byte[] {'['}, Format.JSON))
                .isEmpty();
    }
}
