package dev.underprop.app.earlier;

import java.util.ArrayList;
import java.util.List;

/** Things that are counted, the first few by name. */
final class Named {
    private static final int MOST = 50;

    private final List<String> first = new ArrayList<>();
    private int count;

    void add(String name) {
        count++;
        if (count <= MOST) {
            first.add(name);
        }
    }

    /** A remark; nothing for none. */
    List<String> told(String one, String many) {
        if (count == 0) {
            return List.of();
        }
        String more = count > MOST ? "; and " + (count - MOST) + " more" : "";
        return List.of(count + " " + (count == 1 ? one : many) + ": " + String.join("; ", first) + more + ".");
    }
}
