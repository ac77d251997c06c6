package dev.underprop.app.http;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A media type with its parameters, as in the headers Content-Type and Accept (RFC 9110, sections 8.3 and 12.5.1).
 *
 * @param type type and subtype in lower case, such as {@code application/json}
 * @param parameters parameters by name in lower case
 */
record MediaType(String type, Map<String, String> parameters) {
    private static final String TOKEN = "[!#$%&'*+.^_`|~0-9A-Za-z-]+";
    private static final Pattern TYPE = Pattern.compile("\\s*(" + TOKEN + "/" + TOKEN + ")\\s*");
    private static final Pattern PARAMETER =
            Pattern.compile("\\s*(" + TOKEN + ")=(?:(" + TOKEN + ")|\"([^\"\\\\]*)\")\\s*");

    MediaType {
        parameters = Map.copyOf(parameters);
    }

    /**
     * Reads one media type.
     *
     * @throws IllegalArgumentException when the text is none
     */
    static MediaType of(String text) {
        List<String> parts = List.of(text.split(";", -1));
        Matcher type = TYPE.matcher(parts.get(0));
        if (!type.matches()) {
            throw new IllegalArgumentException("not a media type");
        }
        Map<String, String> parameters = new LinkedHashMap<>();
        for (String part : parts.subList(1, parts.size())) {
            if (!part.isBlank()) {
                Matcher parameter = PARAMETER.matcher(part);
                if (!parameter.matches()) {
                    throw new IllegalArgumentException("not a parameter of a media type");
                }
                String value = parameter.group(2) == null ? parameter.group(3) : parameter.group(2);
                parameters.put(parameter.group(1).toLowerCase(Locale.ROOT), value);
            }
        }
        return new MediaType(type.group(1).toLowerCase(Locale.ROOT), parameters);
    }

    /** True when this range of an Accept header covers a media type. */
    boolean covers(String other) {
        return type.equals("*/*") || type.equals(other) || type.equals(mainPart(other) + "/*");
    }

    /** How closely this range names a media type: 2 by itself, 1 by its first part, 0 not at all. */
    int closeness() {
        return type.equals("*/*") ? 0 : type.endsWith("/*") ? 1 : 2;
    }

    /**
     * The weight of this range, 0 to 1.
     *
     * @throws IllegalArgumentException when it is not such a number
     */
    double weight() {
        String weight = parameters.getOrDefault("q", "1");
        if (!weight.matches("0(\\.[0-9]{0,3})?|1(\\.0{0,3})?")) {
            throw new IllegalArgumentException("not a weight");
        }
        return Double.parseDouble(weight);
    }

    private static String mainPart(String type) {
        return type.substring(0, type.indexOf('/'));
    }
}
