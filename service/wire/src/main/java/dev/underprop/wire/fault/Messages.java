package dev.underprop.wire.fault;

import java.util.Locale;

/**
 * Every fault of reading: its code, what is wrong, and what to do about it. The code is the constant's name in
 * kebab-case and never changes once released; a constant ending in NEAR shares the code of its elder and only knows a
 * better remedy. {@code {0}}, {@code {1}} stand for the arguments given.
 */
public enum Messages {
    TOO_MANY_FAULTS("There are more faults than are listed here.", "Mend these first, then try again."),

    // Bytes and syntax
    DOCUMENT_TOO_LARGE("The document is larger than the limit.", "Send a smaller document."),
    DOCUMENT_EMPTY("There is no document here.", "Send one document; it starts as an object."),
    ENCODING_NOT_UTF8("The bytes are not UTF-8: {0}.", "Save the document as UTF-8."),
    SYNTAX("The text is not {0}: {1}.", "Mend the text at this line and column, or just before it."),
    TRAILING_CONTENT("There is something after the end of the document.", "Send one document and nothing else."),
    DEPTH_EXCEEDED("The document is nested deeper than the limit.", "Take out a level of nesting."),
    TEXT_TOO_LONG("A text or a name is longer than the limit.", "Shorten it."),
    TEXT_CHARACTER("A text or a name holds the character {0}.", "Take the character out."),
    NUMBER_TOO_LONG("A number is written with more characters than the limit.", "Write it with fewer digits."),
    NUMBER_OUT_OF_RANGE(
            "The number is too large, too close to zero, or an integer beyond 2^53 - 1.",
            "Write a number that a double holds; write an identifier as text, in quotes."),
    NUMBER_NOT_FINITE("The number is not finite.", "Write a finite number, or leave the member out."),
    DUPLICATE_KEY("The name stands more than once in the same object.", "Keep one of them."),
    YAML_SEVERAL_DOCUMENTS("There are several YAML documents here.", "Send one document."),
    YAML_ANCHOR("Anchors are not read.", "Take out the anchor, and write the values out where they are used."),
    YAML_ALIAS("Aliases are not read.", "Write the values out in place of the alias."),
    YAML_TAG("Tags are not read.", "Take out the tag; put text in quotes."),
    YAML_MERGE_KEY("Merge keys are not read.", "Write the members out."),
    YAML_KEY_NOT_TEXT("A name is a list or an object.", "Write the name as text."),
    YAML_AMBIGUOUS_NUMBER(
            "YAML readers disagree about what this is.", "Write a plain decimal number, or put text in quotes."),

    // Shape
    UNKNOWN_MEMBER("The name {0} is not known here.", "Take it out, or use one of: {1}."),
    UNKNOWN_MEMBER_NEAR("The name {0} is not known here.", "Did you mean {1}?"),
    WRONG_KIND("Here stands {0}; {1} is wanted.", "{2}"),
    NOT_AN_INTEGER("The number is not a whole number.", "Write a whole number."),
    INTEGER_OUT_OF_RANGE("The whole number is out of range.", "Write a smaller number."),
    NULL_VALUE("Null is not a value here.", "Write the value, or leave the member out."),
    NULL_ELEMENT("Null is not an element of a list.", "Take the element out, or write its value."),
    DUPLICATE_ITEM("The item stands more than once in the list.", "Keep one of them."),

    // Quantities
    QUANTITY_EMPTY("There is no quantity here; {0} is wanted.", "Write one like {1}."),
    QUANTITY_TOO_LONG("The quantity is longer than the limit.", "Write it shorter."),
    QUANTITY_CHARACTER("The character {0} is not used in quantities.", "{1}"),
    QUANTITY_MALFORMED("This is not a number with a unit.", "Write one like {0}."),
    DECIMAL_COMMA("A comma is not used in numbers.", "Write the decimal point as a point, and thousands unmarked."),
    SIGN_INSIDE(
            "A sign stands inside the quantity, where it is unclear what it belongs to.",
            "Write one sign before the whole, and inches after feet as 6 ft 10 in or 6'-10\"."),
    UNIT_MISSING("The unit is missing; {0} is wanted.", "Write the number with a unit, like {1}."),
    UNIT_UNKNOWN("The unit {0} is not known.", "Use one of: {1}."),
    UNIT_UNKNOWN_NEAR("The unit {0} is not known.", "Write {1}."),
    UNIT_OF_MASS("{0} is a unit of mass, and {1} is wanted.", "Write a force: N, kN, lb or kip."),
    UNIT_AMBIGUOUS("The unit {0} means different things to different people.", "Write {1}."),
    WRONG_DIMENSION("{0} is not a unit of {1}.", "Use one of: {2}."),
    FRACTION_OF_ZERO("The fraction has a zero denominator.", "Write a fraction like 1/2."),
    FRACTION_NOT_BELOW_ONE("The fraction after a whole number is not less than one.", "Write one like 1 1/2."),
    FEET_NOT_WHOLE("Feet that are followed by inches are not a whole number.", "Write whole feet, then inches."),
    INCHES_NOT_BELOW_12("Inches after feet are 12 or more.", "Write {0}."),
    QUANTITY_NOT_FINITE("NaN and infinity are not quantities.", "Write a finite number with a unit."),
    QUANTITY_OUT_OF_RANGE("The number is too large or too close to zero.", "Write a number within reach.");

    private static final String NEAR = "_NEAR";

    private final String detail;
    private final String remedy;

    Messages(String detail, String remedy) {
        this.detail = detail;
        this.remedy = remedy;
    }

    /** The stable code, kebab-case. */
    public String code() {
        String elder = name().endsWith(NEAR) ? name().substring(0, name().length() - NEAR.length()) : name();
        return elder.toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * A fault of this kind, its place still to be said.
     *
     * @param got what was found, empty when there is nothing to show
     * @param arguments values for the places {0}, {1}, ... of the templates; those taken from a request are shortened
     *     with {@link Fault#shown}
     */
    public Fault fault(String got, String... arguments) {
        return Fault.of(code(), filled(detail, arguments), filled(remedy, arguments))
                .withGot(got);
    }

    private static String filled(String template, String... arguments) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < template.length(); i++) {
            if (template.charAt(i) == '{') {
                out.append(arguments[template.charAt(i + 1) - '0']);
                i += 2;
            } else {
                out.append(template.charAt(i));
            }
        }
        return out.toString();
    }
}
