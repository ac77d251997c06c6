package dev.underprop.wire.meaning;

import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.fault.Pointers;
import jakarta.validation.ConstraintViolation;
import jakarta.validation.ElementKind;
import jakarta.validation.Path;
import java.util.List;
import java.util.Map;

/** Turns violations of the contract's limits into faults. */
final class Violations {

    /** The one member whose name in Java differs. */
    private static final Map<String, String> NAMES = Map.of("groundClass", "class");

    private Violations() {}

    static Fault fault(ConstraintViolation<?> violation) {
        String pointer = pointer(violation.getPropertyPath());
        String name = pointer.substring(pointer.lastIndexOf('/') + 1);
        return fault(violation, name).withPointer(pointer);
    }

    private static Fault fault(ConstraintViolation<?> violation, String name) {
        Map<String, Object> limits = violation.getConstraintDescriptor().getAttributes();
        Object value = violation.getInvalidValue();
        String kind = violation
                .getConstraintDescriptor()
                .getAnnotation()
                .annotationType()
                .getSimpleName();
        return switch (kind) {
            case "NotNull" -> Messages.MEMBER_MISSING.fault("", name);
            case "Size" -> size(value, (Integer) limits.get("min"), (Integer) limits.get("max"));
            case "Min" ->
                Messages.NUMBER_TOO_SMALL.fault(value.toString()).withLimit("at least " + limits.get("value"));
            case "DecimalMin" ->
                Messages.NUMBER_TOO_SMALL
                        .fault(number(value))
                        .withLimit((Boolean.TRUE.equals(limits.get("inclusive")) ? "at least " : "above ")
                                + limits.get("value"));
            case "Max" -> Messages.NUMBER_TOO_LARGE.fault(value.toString()).withLimit("at most " + limits.get("value"));
            case "DecimalMax" ->
                Messages.NUMBER_TOO_LARGE.fault(number(value)).withLimit("at most " + limits.get("value"));
            default -> throw new IllegalStateException("a constraint without a message: " + kind);
        };
    }

    private static String number(Object value) {
        return dev.underprop.wire.quantity.ShortestNumber.of(((Number) value).doubleValue());
    }

    private static Fault size(Object value, int least, int most) {
        if (value instanceof List<?> list) {
            String got = list.size() + " items";
            return list.size() < least
                    ? Messages.LIST_TOO_SHORT.fault(got).withLimit("at least " + least)
                    : Messages.LIST_TOO_LONG.fault(got).withLimit("at most " + most);
        }
        String text = (String) value;
        return text.length() < least
                ? Messages.TEXT_EMPTY.fault(text)
                : Messages.TEXT_TOO_LONG.fault(text).withLimit(most + " characters");
    }

    private static String pointer(Path path) {
        String pointer = "";
        for (Path.Node node : path) {
            if (node.getIndex() != null) {
                pointer = Pointers.element(pointer, node.getIndex());
            }
            if (node.getKind() == ElementKind.PROPERTY) {
                pointer = Pointers.member(pointer, NAMES.getOrDefault(node.getName(), node.getName()));
            }
        }
        return pointer;
    }
}
