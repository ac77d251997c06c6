package dev.underprop.wire.tree;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class CanonicalTest {
    @Test
    void sortsNamesAndShortensNumbers() {
        String text =
                "{ \"b\": [1.0, 1e21, 4.50, 1E-7, -0.0, true, null, \"x\"], \"a\": {}, \"\u20ac\": [], \"B\": 2 }";
        assertThat(canonical(text))
                .isEqualTo("{\"B\":2,\"a\":{},\"b\":[1,1e+21,4.5,1e-7,0,true,null,\"x\"],\"\u20ac\":[]}");
    }

    @Test
    void escapesOnlyWhatMustBe() {
        assertThat(canonical("[\"\\u0022 \\\\ \\/ \\u00e9\"]")).isEqualTo("[\"\\\" \\\\ / \u00e9\"]");
    }

    @Test
    void namesAreSortedByUtf16Units() {
        // U+1F600 begins with a surrogate, D83D, which comes before U+FB33.
        assertThat(canonical("{\"\uFB33\":1,\"\uD83D\uDE00\":2,\"\\u0031\":3}"))
                .isEqualTo("{\"1\":3,\"\uD83D\uDE00\":2,\"\uFB33\":1}");
    }

    private static String canonical(String json) {
        TreeReading reading = new TreeReader(Limits.USUAL).read(json.getBytes(StandardCharsets.UTF_8), Format.JSON);
        assertThat(reading).isInstanceOf(TreeReading.Tree.class);
        return Canonical.text(((TreeReading.Tree) reading).root());
    }
}
