package dev.underprop.app.report;

import dev.underprop.api.model.CheckPage;
import dev.underprop.api.model.Citation;
import dev.underprop.wire.fault.Nearest;
import java.util.List;

/** The page of a check as text. */
public final class CheckPageText {
    private CheckPageText() {}

    /** The whole page. */
    public static String of(CheckPage page) {
        StringBuilder out = new StringBuilder(page.getTitle() + " (" + page.getId() + ")\n");
        part(out, "What", page.getWhat());
        part(out, "Demand", page.getDemand());
        part(out, "Capacity", page.getCapacity());
        part(out, "When not checked", page.getWhenNotChecked());
        part(out, "When it fails", page.getWhenFails());
        part(out, "What helps", page.getRemedy());
        out.append("\nSources\n");
        for (Citation citation : page.getCitations()) {
            out.append(Lines.wrapped("  - ", 4, CheckText.cited(citation)));
        }
        return out.toString();
    }

    /** What to say when there is no such check. */
    public static String unknown(String id, List<String> ids) {
        String near = Nearest.to(id, ids);
        List<String> alike = ids.stream().filter(known -> alike(known, id)).toList();
        StringBuilder out = new StringBuilder("There is no check with the id " + Lines.visible(id) + ".\n");
        if (!near.isEmpty()) {
            out.append("Did you mean ").append(near).append("?\n");
        } else if (!alike.isEmpty()) {
            out.append("Near to it: ").append(String.join(", ", alike)).append(".\n");
        } else {
            out.append(Lines.wrapped("", 0, "The checks are: " + String.join(", ", ids) + "."));
        }
        return out.toString();
    }

    /** True when the two share a word. */
    private static boolean alike(String known, String id) {
        return List.of(known.split("-")).stream().anyMatch(List.of(id.split("[-_ ]"))::contains);
    }

    private static void part(StringBuilder out, String heading, String text) {
        out.append('\n').append(heading).append('\n').append(Lines.wrapped("  ", 2, text));
    }
}
