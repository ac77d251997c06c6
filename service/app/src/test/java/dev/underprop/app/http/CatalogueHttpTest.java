package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@ExtendWith(RunningService.class)
class CatalogueHttpTest {
    private static final String ROOT = "/v1/catalogue";

    @Test
    void pagesOfEveryPartGoThroughItsEntriesOnce() {
        JsonPath index = Client.right().get(ROOT).jsonPath();
        List<String> parts = index.getList("parts.part");
        List<Integer> counts = index.getList("parts.entries");
        List<String> all = new ArrayList<>();

        assertThat(parts).hasSize(12);
        for (int i = 0; i < parts.size(); i++) {
            List<String> ids = idsOf(parts.get(i));
            assertThat(ids).as(parts.get(i)).hasSize(counts.get(i));
            all.addAll(ids);
        }
        assertThat(all).hasSizeGreaterThan(200).doesNotHaveDuplicates();
    }

    private static List<String> idsOf(String part) {
        List<String> ids = new ArrayList<>();
        Integer next = 0;
        while (next != null) {
            Response answer = Client.right().get(ROOT + "/" + part + "?limit=20&offset=" + next);
            assertThat(answer.statusCode()).isEqualTo(200);
            ids.addAll(answer.jsonPath().getList("entries.id"));
            next = answer.jsonPath().get("next");
        }
        return ids;
    }

    @Test
    void findsByWordsAndTable() {
        JsonPath found = Client.right()
                .get(ROOT + "/soils?q=silty%20sand&table=ibc-1806.2")
                .jsonPath();

        assertThat(found.getInt("total")).isEqualTo(1);
        assertThat(found.getString("entries[0].id")).isEqualTo("ibc-sand");
        assertThat(found.getString("entries[0].values[0].value")).isEqualTo("2000 psf");
        assertThat(found.getString("entries[0].values[0].source.standing")).isEqualTo("read");
    }

    @Test
    void usualPageHoldsFifty() {
        JsonPath page = Client.right().get(ROOT + "/tubes").jsonPath();

        assertThat(page.getList("entries")).hasSize(50);
        assertThat(page.getInt("limit")).isEqualTo(50);
        assertThat(page.getInt("next")).isEqualTo(50);
    }

    @Test
    void unknownPartNamesTheParts() {
        Response missing = Client.right().get(ROOT + "/soil");

        assertThat(missing.statusCode()).isEqualTo(404);
        List<String> parts = Client.right().get(ROOT).jsonPath().getList("parts.part");
        assertThat(missing.jsonPath().getString("detail"))
                .isEqualTo("The catalogue has no part soil; its parts are " + String.join(", ", parts) + ".");
    }

    @ParameterizedTest
    @CsvSource({
        "limit=0, ?limit, number-out-of-range",
        "limit=201, ?limit, number-out-of-range",
        "limit=, ?limit, number-out-of-range",
        "limit=ten, ?limit, number-out-of-range",
        "limit=-1, ?limit, number-out-of-range",
        "limit=1.5, ?limit, number-out-of-range",
        "limit=99999999999999999999, ?limit, number-out-of-range",
        "offset=-1, ?offset, number-out-of-range",
        "offset=1000001, ?offset, number-out-of-range",
        "limit=1&limit=2, ?limit, parameter-repeated",
        "table=ibc, ?table, choice-unknown",
        "q=, ?q, words-unusable",
        "q=%20, ?q, words-unusable",
        "page=2, ?page, unknown-parameter"
    })
    void faultyParametersAreNamed(String query, String pointer, String code) {
        Response refused = Client.wrong().get(ROOT + "/soils?" + query);

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.jsonPath().getList("errors.pointer")).containsExactly(pointer);
        assertThat(refused.jsonPath().getList("errors.code")).containsExactly(code);
        assertThat(refused.jsonPath().getString("errors[0].remedy")).isNotBlank();
    }

    @Test
    void allFaultyParametersAreToldAtOnce() {
        Response refused = Client.wrong().get(ROOT + "/soils?limit=0&offset=x&table=y");

        assertThat(new TreeSet<String>(refused.jsonPath().getList("errors.pointer")))
                .containsExactly("?limit", "?offset", "?table");
    }

    @ParameterizedTest
    @ValueSource(strings = {ROOT, ROOT + "/soils?limit=3"})
    void answerThatIsHeldIsNotSentAgain(String path) {
        Response first = Client.right().get(path);
        String tag = first.header("ETag");
        assertThat(tag).matches("\"[0-9a-f]{64}\"");

        for (String held : List.of(tag, "W/" + tag, "\"other\", " + tag, "*")) {
            Response again = Client.right().header("If-None-Match", held).get(path);
            assertThat(again.statusCode()).as(held).isEqualTo(304);
            assertThat(again.asByteArray()).isEmpty();
            assertThat(again.header("ETag")).isEqualTo(tag);
        }
        Response changed = Client.right().header("If-None-Match", "\"other\"").get(path);
        assertThat(changed.statusCode()).isEqualTo(200);
        assertThat(changed.asByteArray()).isEqualTo(first.asByteArray());
    }

    @Test
    void otherPagesHaveOtherTags() {
        assertThat(Client.right().get(ROOT + "/soils?limit=3").header("ETag"))
                .isNotEqualTo(Client.right().get(ROOT + "/soils?limit=4").header("ETag"));
    }
}
