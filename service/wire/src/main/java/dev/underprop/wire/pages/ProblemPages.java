package dev.underprop.wire.pages;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The pages that the types of problem documents lead to. */
public final class ProblemPages {

    /** The last part of every problem type, in order of status. */
    public static final List<String> NAMES = List.of(
            "unreadable",
            "unauthorized",
            "not-found",
            "method-not-allowed",
            "not-acceptable",
            "too-large",
            "unsupported-media-type",
            "faulty",
            "too-costly",
            "internal-error",
            "unavailable");

    private ProblemPages() {}

    /**
     * The page of a kind of problem, in Markdown, which reads well as plain text; nothing when there is no such kind.
     *
     * @param name last part of the problem's type, such as {@code faulty}
     */
    public static Optional<String> page(String name) {
        return NAMES.contains(name)
                ? Optional.of(new String(Pages.bytes("problems/" + name + ".md"), StandardCharsets.UTF_8))
                : Optional.empty();
    }

    /**
     * The title of a kind of problem, as its documents carry it; nothing when there is no such kind.
     *
     * @param name last part of the problem's type
     */
    public static Optional<String> title(String name) {
        return page(name).map(text -> text.substring("# ".length(), text.indexOf('\n')));
    }
}
