package dev.underprop.wire.shape;

import com.fasterxml.jackson.databind.JsonNode;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.quantity.ShortestNumber;
import java.util.List;

/** Compares single values with the shape they must have. */
final class Scalars {
    private Scalars() {}

    /** No fault or one, its pointer still to be said. */
    static List<Fault> faults(JsonNode node, Shape shape) {
        if (shape instanceof Shape.Whole whole && node.isNumber()) {
            return whole(node, whole);
        }
        boolean right = (shape instanceof Shape.Text && node.isTextual())
                || (shape instanceof Shape.Truth && node.isBoolean())
                || (shape instanceof Shape.Decimal && node.isNumber());
        return right ? List.of() : List.of(wrongKind(node, shape));
    }

    private static List<Fault> whole(JsonNode node, Shape.Whole whole) {
        if (!node.isIntegralNumber()) {
            return List.of(Messages.NOT_AN_INTEGER.fault(ShortestNumber.of(node.doubleValue())));
        }
        boolean within = node.longValue() >= whole.least() && node.longValue() <= whole.greatest();
        return within
                ? List.of()
                : List.of(Messages.INTEGER_OUT_OF_RANGE
                        .fault(node.asText())
                        .withLimit(whole.least() + " to " + whole.greatest()));
    }

    private static Fault wrongKind(JsonNode node, Shape shape) {
        String got = node.isContainerNode() ? kind(node) : scalar(node);
        return Messages.WRONG_KIND.fault(got, kind(node), shape.phrase(), remedy(node, shape));
    }

    private static String scalar(JsonNode node) {
        return node.isDouble() ? ShortestNumber.of(node.doubleValue()) : node.asText();
    }

    private static String kind(JsonNode node) {
        return switch (node.getNodeType()) {
            case OBJECT -> "an object";
            case ARRAY -> "a list";
            case STRING -> "a text";
            case NUMBER -> "a number";
            case BOOLEAN -> "true or false";
            default -> "something else";
        };
    }

    private static String remedy(JsonNode node, Shape shape) {
        if (shape instanceof Shape.Text && node.isNumber()) {
            return "Write it in quotes; a quantity is a text with its unit, like \"10 ft\".";
        }
        if (shape instanceof Shape.Text && node.isBoolean()) {
            return "Write it in quotes.";
        }
        boolean number = shape instanceof Shape.Decimal || shape instanceof Shape.Whole;
        if (number && node.isTextual()) {
            return "Write the number without quotes and without a unit.";
        }
        if (shape instanceof Shape.Truth) {
            return "Write true or false, without quotes.";
        }
        return "Write " + shape.phrase() + ".";
    }
}
