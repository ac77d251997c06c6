package dev.underprop.wire.shape;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.FaultList;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.fault.Nearest;
import dev.underprop.wire.fault.Pointers;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Compares trees with the class they are to be bound to and reports every difference at once: unknown members, wrong
 * kinds, nulls, fractions where whole numbers are wanted, items that stand twice in a set. A member that is missing is
 * not a matter of shape. Several threads may use it.
 */
public final class ShapeCheck {
    private final Shape root;
    private final int mostFaults;

    /**
     * A check for one class.
     *
     * @param mapper the mapper that will bind the tree; decides how members are called
     * @param model the class
     * @param mostFaults greatest number of faults listed, at least 1
     */
    public ShapeCheck(ObjectMapper mapper, Class<?> model, int mostFaults) {
        this.root = new ShapeFinder(mapper).of(model);
        this.mostFaults = mostFaults;
    }

    /**
     * The faults in a tree's shape, in document order; empty when there are none.
     *
     * @param tree the tree of a document
     */
    public List<Fault> check(JsonNode tree) {
        FaultList faults = new FaultList(mostFaults);
        check(tree, root, "", faults);
        return faults.list();
    }

    // Recursion is bounded by the depth of the tree, which the reader limits.
    private void check(JsonNode node, Shape shape, String pointer, FaultList faults) {
        if (faults.full() || (shape instanceof Shape.Any && !node.isNull())) {
            return;
        }
        if (node.isNull()) {
            faults.add(Messages.NULL_VALUE.fault("null").withPointer(pointer));
        } else if (shape instanceof Shape.Members object && node.isObject()) {
            members(node, object, pointer, faults);
        } else if (shape instanceof Shape.Named object && node.isObject()) {
            for (Map.Entry<String, JsonNode> entry : node.properties()) {
                check(entry.getValue(), object.value(), Pointers.member(pointer, entry.getKey()), faults);
            }
        } else if (shape instanceof Shape.Many list && node.isArray()) {
            elements(node, list, pointer, faults);
        } else {
            faults.addAll(Scalars.faults(node, shape), pointer);
        }
    }

    private void members(JsonNode node, Shape.Members object, String pointer, FaultList faults) {
        for (Map.Entry<String, JsonNode> entry : node.properties()) {
            String at = Pointers.member(pointer, entry.getKey());
            Shape shape = object.members().get(entry.getKey());
            if (shape == null) {
                faults.add(unknown(entry.getKey(), object).withPointer(at));
            } else {
                check(entry.getValue(), shape, at, faults);
            }
        }
    }

    private static Fault unknown(String name, Shape.Members object) {
        String shown = Fault.shown(name);
        String near = Nearest.to(name, object.members().keySet());
        return near.isEmpty()
                ? Messages.UNKNOWN_MEMBER.fault(
                        name, shown, String.join(", ", object.members().keySet()))
                : Messages.UNKNOWN_MEMBER_NEAR.fault(name, shown, near);
    }

    private void elements(JsonNode node, Shape.Many list, String pointer, FaultList faults) {
        Set<JsonNode> seen = new HashSet<>();
        for (int i = 0; i < node.size(); i++) {
            JsonNode element = node.get(i);
            String at = Pointers.element(pointer, i);
            if (element.isNull()) {
                faults.add(Messages.NULL_ELEMENT.fault("null").withPointer(at));
                continue;
            }
            if (list.unique() && !seen.add(element)) {
                faults.add(Messages.DUPLICATE_ITEM
                        .fault(element.isTextual() ? element.textValue() : "")
                        .withPointer(at));
            }
            check(element, list.element(), at, faults);
        }
    }
}
