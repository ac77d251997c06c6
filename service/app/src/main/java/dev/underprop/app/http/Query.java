package dev.underprop.app.http;

import dev.underprop.app.report.ProblemKind;
import dev.underprop.wire.catalogue.Wanted;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.AnswerOptions.Detail;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Nearest;
import dev.underprop.wire.quantity.UnitSystem;
import dev.underprop.wire.record.Extent;
import io.javalin.http.Context;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The query parameters of a request, every one of them known or refused. */
final class Query {
    private static final Map<String, UnitSystem> UNITS = ordered("us", UnitSystem.US, "si", UnitSystem.SI);
    private static final Map<String, Detail> DETAILS = ordered("compact", Detail.COMPACT, "full", Detail.FULL);

    private static final Map<String, Boolean> YES_NO = ordered("true", true, "false", false);

    private static final int LONGEST = 100;

    private final Map<String, String> given = new LinkedHashMap<>();
    private final List<Fault> faults = new ArrayList<>();

    private Query(String text) {
        for (String pair : text.split("&", -1)) {
            if (!pair.isEmpty()) {
                take(pair);
            }
        }
    }

    private void take(String pair) {
        int equals = pair.indexOf('=');
        String name = decoded(equals < 0 ? pair : pair.substring(0, equals));
        String value = equals < 0 ? "" : decoded(pair.substring(equals + 1));
        if (given.putIfAbsent(name, value) != null) {
            String detail = "The parameter stands more than once.";
            faults.add(fault(name, "parameter-repeated", detail, "Keep one of them.")
                    .withGot(value));
        }
    }

    /** The options of an answer. */
    static AnswerOptions options(Context context) {
        Query query = of(context);
        query.refuseOthers(List.of("units", "detail", "working"));
        UnitSystem units = query.choice("units", "system of units", UNITS, AnswerOptions.USUAL.units());
        Detail detail = query.choice("detail", "detail", DETAILS, AnswerOptions.USUAL.detail());
        boolean working = query.choice("working", "choice of working", YES_NO, AnswerOptions.USUAL.working());
        query.check();
        return new AnswerOptions(units, detail, working);
    }

    /** The options of an answer that is told in full always. */
    static AnswerOptions unitsOnly(Context context) {
        Query query = of(context);
        query.refuseOthers(List.of("units"));
        UnitSystem units = query.choice("units", "system of units", UNITS, AnswerOptions.USUAL.units());
        query.check();
        return new AnswerOptions(units, Detail.FULL);
    }

    /**
     * The options of many answers.
     *
     * @param answer how answers are written
     * @param extent how much of each is told
     */
    record RecordOptions(AnswerOptions answer, Extent extent) {}

    /** The options of records. */
    static RecordOptions recordOptions(Context context) {
        Query query = of(context);
        query.refuseOthers(List.of("units", "detail"));
        UnitSystem units = query.choice("units", "system of units", UNITS, AnswerOptions.USUAL.units());
        Map<String, Optional<Detail>> details = new LinkedHashMap<>();
        details.put("brief", Optional.empty());
        DETAILS.forEach((name, detail) -> details.put(name, Optional.of(detail)));
        Optional<Detail> detail = query.choice("detail", "detail", details, Optional.empty());
        query.check();
        return new RecordOptions(
                new AnswerOptions(units, detail.orElse(Detail.BRIEF)),
                detail.isPresent() ? Extent.WHOLE : Extent.BRIEF);
    }

    /**
     * Which entries of a part of the catalogue are wanted.
     *
     * @param tables tables of the part
     */
    static Wanted wanted(Context context, List<String> tables) {
        Query query = of(context);
        query.refuseOthers(List.of("q", "table", "limit", "offset"));
        String words = query.words("q");
        Map<String, String> choices = new LinkedHashMap<>();
        tables.forEach(table -> choices.put(table, table));
        String table = query.choice("table", "table", choices, "");
        int limit = query.whole("limit", 1, Wanted.MOST, Wanted.USUAL);
        int offset = query.whole("offset", 0, Wanted.FARTHEST, 0);
        query.check();
        return new Wanted(words, table, limit, offset);
    }

    /** Refuses every parameter. */
    static void none(Context context) {
        Query query = of(context);
        query.refuseOthers(List.of());
        query.check();
    }

    private static Query of(Context context) {
        String text = context.queryString();
        return new Query(text == null ? "" : text);
    }

    private void refuseOthers(List<String> known) {
        for (Map.Entry<String, String> entry : given.entrySet()) {
            if (!known.contains(entry.getKey())) {
                String detail = "The parameter is not known here.";
                faults.add(fault(entry.getKey(), "unknown-parameter", detail, remedy(entry.getKey(), known))
                        .withGot(entry.getValue()));
            }
        }
    }

    private static String remedy(String name, List<String> known) {
        if (known.isEmpty()) {
            return "Leave it out; there are no parameters here.";
        }
        String near = Nearest.to(name, known);
        return near.isEmpty()
                ? "Leave it out, or use one of: " + String.join(", ", known) + "."
                : "Did you mean " + near + "?";
    }

    private <T> T choice(String name, String what, Map<String, T> choices, T usual) {
        String value = given.get(name);
        if (value == null) {
            return usual;
        }
        T chosen = choices.get(value);
        if (chosen == null) {
            String detail = "There is no " + what + " named " + Fault.shown(value) + ".";
            String remedy = "Use one of: " + String.join(", ", choices.keySet()) + ".";
            faults.add(fault(name, "choice-unknown", detail, remedy).withGot(value));
            return usual;
        }
        return chosen;
    }

    private String words(String name) {
        String value = given.get(name);
        if (value == null) {
            return "";
        }
        if (value.isBlank() || value.length() > LONGEST) {
            String detail = "The words to look for are blank or too long.";
            faults.add(fault(name, "words-unusable", detail, "Give 1 to " + LONGEST + " characters, or leave it out.")
                    .withGot(value)
                    .withLimit(LONGEST + " characters"));
            return "";
        }
        return value;
    }

    /** A whole number in plain digits. */
    private int whole(String name, int least, int most, int usual) {
        String value = given.get(name);
        if (value == null) {
            return usual;
        }
        int number = value.matches("[0-9]{1,9}") ? Integer.parseInt(value) : -1;
        if (number < least || number > most) {
            String range = "from " + least + " to " + most;
            String detail = "The parameter is not a whole number " + range + ".";
            faults.add(fault(name, "number-out-of-range", detail, "Give a whole number " + range + ".")
                    .withGot(value)
                    .withLimit(range));
            return usual;
        }
        return number;
    }

    private void check() {
        if (!faults.isEmpty()) {
            throw Refused.because(ProblemKind.FAULTY, "request", faults);
        }
    }

    private static Fault fault(String name, String code, String detail, String remedy) {
        return Fault.of(code, detail, remedy).withPointer("?" + Fault.shown(name));
    }

    private static String decoded(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            throw Refused.because(ProblemKind.UNREADABLE, "The query of the address is not well percent-encoded.");
        }
    }

    private static <T> Map<String, T> ordered(String first, T one, String second, T two) {
        Map<String, T> map = new LinkedHashMap<>();
        map.put(first, one);
        map.put(second, two);
        return Collections.unmodifiableMap(map);
    }
}
