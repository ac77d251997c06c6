package dev.underprop.app.batch;

import dev.underprop.app.earlier.Digests;
import dev.underprop.wire.record.EntryName;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Keys of the plans so far, each with where it stood: some 40 bytes a plan; files that hold many plans share their path. */
final class SeenKeys {
    private static final int PAGE = 1024;

    private final Digests keys = new Digests();
    private final List<Page> pages = new ArrayList<>();

    /** Where some plans stood. */
    @SuppressWarnings("ArrayRecordComponent") // a carrier that nobody compares
    private record Page(String[] paths, int[] lines) {}

    /** Notes a key; tells where it stood when it was noted before. */
    Optional<EntryName> add(String key, EntryName name) {
        int next = keys.size();
        int number = keys.add(key);
        if (number < next) {
            Page page = pages.get(number / PAGE);
            return Optional.of(new EntryName(page.paths()[number % PAGE], page.lines()[number % PAGE]));
        }
        if (next % PAGE == 0) {
            pages.add(new Page(new String[PAGE], new int[PAGE]));
        }
        Page page = pages.get(number / PAGE);
        page.paths()[number % PAGE] = name.path();
        page.lines()[number % PAGE] = name.line();
        return Optional.empty();
    }

    /** Plans noted. */
    int size() {
        return keys.size();
    }
}
