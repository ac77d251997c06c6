package dev.underprop.wire.pages;

import com.fasterxml.jackson.databind.JsonNode;
import dev.underprop.api.model.CheckList;
import dev.underprop.api.model.CheckPage;
import dev.underprop.api.model.CheckSummary;
import dev.underprop.api.model.Citation;
import dev.underprop.engine.check.CheckId;
import dev.underprop.wire.tree.Format;
import dev.underprop.wire.tree.Limits;
import dev.underprop.wire.tree.TreeReader;
import dev.underprop.wire.tree.TreeReading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The table of checks, and what there is to know about each. */
public final class CheckPages {

    private CheckPages() {}

    /** Every check, in table order. */
    public static CheckList list() {
        return new CheckList()
                .checks(Arrays.stream(CheckId.values()).map(CheckPages::summary).toList());
    }

    private static CheckSummary summary(CheckId id) {
        return new CheckSummary()
                .id(id.id())
                .title(id.title())
                .required(required(id.scope()))
                .implemented(id.built());
    }

    private static List<String> required(CheckId.Scope scope) {
        return switch (scope) {
            case ALWAYS -> List.of("shored", "bearing removed", "raised");
            case BEARING_REMOVED -> List.of("bearing removed");
        };
    }

    /**
     * The page of a check, or nothing when no check has the id.
     *
     * @param id id of the check, such as {@code beam-bending}
     */
    public static Optional<CheckPage> page(String id) {
        return Arrays.stream(CheckId.values())
                .filter(check -> check.id().equals(id))
                .findFirst()
                .map(CheckPages::read);
    }

    private static CheckPage read(CheckId id) {
        JsonNode page = tree("checks/" + id.id() + ".yaml");
        return new CheckPage()
                .id(id.id())
                .title(id.title())
                .what(text(page, "what"))
                .demand(text(page, "demand"))
                .capacity(text(page, "capacity"))
                .whenNotChecked(text(page, "whenNotChecked"))
                .whenFails(text(page, "whenFails"))
                .remedy(text(page, "remedy"))
                .citations(citations(page.path("citations")));
    }

    private static JsonNode tree(String name) {
        TreeReading reading = new TreeReader(Limits.USUAL).read(Pages.bytes(name), Format.YAML);
        if (reading instanceof TreeReading.Tree tree) {
            return tree.root();
        }
        throw new IllegalStateException(name + " cannot be read: " + ((TreeReading.Unreadable) reading).faults());
    }

    private static String text(JsonNode node, String name) {
        if (!node.path(name).isTextual()) {
            throw new IllegalStateException("a page without " + name);
        }
        return node.path(name).textValue();
    }

    private static List<Citation> citations(JsonNode list) {
        List<Citation> citations = new ArrayList<>();
        for (JsonNode one : list) {
            citations.add(new Citation()
                    .document(text(one, "document"))
                    .edition(text(one, "edition"))
                    .locator(text(one, "locator"))
                    .standing(text(one, "standing")));
        }
        return citations;
    }
}
