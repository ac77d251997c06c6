package dev.underprop.app.source;

import java.util.regex.Pattern;

/**
 * A pattern for paths with forward slashes, the same on every system: {@code *} and {@code ?} stay inside a name, {@code **} goes
 * through folders, {@code [abc]} is one of these characters. A pattern without a slash is held against the last name alone; one
 * that ends in a slash, or names a folder, takes all that is below.
 */
final class Glob {
    private final Pattern pattern;

    private Glob(Pattern pattern) {
        this.pattern = pattern;
    }

    static Glob of(String text) {
        String glob = text.endsWith("/") ? text.substring(0, text.length() - 1) : text;
        boolean anywhere = !glob.contains("/");
        String anchored = glob.startsWith("/") ? glob.substring(1) : glob;
        return new Glob(Pattern.compile((anywhere ? "(?:.*/)?" : "") + regex(anchored) + "(?:/.*)?", Pattern.DOTALL));
    }

    /** True when the pattern takes a path or a folder above it. */
    boolean matches(String path) {
        return pattern.matcher(path).matches();
    }

    private static String regex(String glob) {
        StringBuilder out = new StringBuilder();
        int at = 0;
        while (at < glob.length()) {
            char c = glob.charAt(at);
            if (glob.startsWith("**/", at)) {
                out.append("(?:.*/)?");
                at += 3;
            } else if (glob.startsWith("**", at)) {
                out.append(".*");
                at += 2;
            } else if (c == '[' && glob.indexOf(']', at + 2) > 0) {
                int end = glob.indexOf(']', at + 2);
                out.append(set(glob.substring(at + 1, end)));
                at = end + 1;
            } else {
                out.append(one(c));
                at++;
            }
        }
        return out.toString();
    }

    private static String one(char c) {
        return switch (c) {
            case '*' -> "[^/]*";
            case '?' -> "[^/]";
            default -> Pattern.quote(Character.toString(c));
        };
    }

    private static String set(String inside) {
        boolean not = inside.startsWith("!");
        String members = not ? inside.substring(1) : inside;
        StringBuilder out = new StringBuilder(not ? "[^/" : "[");
        members.chars().forEach(c -> {
            if (c != '-' && !Character.isLetterOrDigit(c)) {
                out.append('\\');
            }
            out.appendCodePoint(c);
        });
        return out.append(']').toString();
    }
}
