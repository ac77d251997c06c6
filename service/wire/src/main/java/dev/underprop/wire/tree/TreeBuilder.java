package dev.underprop.wire.tree;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.FaultList;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.fault.Pointers;
import java.util.ArrayDeque;
import java.util.Deque;

/** Builds the tree of a document from its tokens, and keeps every fault it meets on the way. */
final class TreeBuilder {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final TokenSource source;
    private final Limits limits;
    private final FaultList faults;
    private final Path path = new Path();
    private final Deque<ContainerNode<?>> open = new ArrayDeque<>();
    private JsonNode root = NullNode.getInstance();
    private String key = "";
    private int values;

    TreeBuilder(TokenSource source, Limits limits, FaultList faults) {
        this.source = source;
        this.limits = limits;
        this.faults = faults;
    }

    /** The tree; of use only when no fault was found. */
    JsonNode build() {
        Token token = source.next();
        while (token != Token.END && !faults.full()) {
            take(token);
            token = source.next();
        }
        return root;
    }

    private void take(Token token) {
        switch (token) {
            case KEY -> {
                key();
                complaints();
            }
            case OBJECT_END, LIST_END -> leave();
            case OBJECT_START -> enter(NODES.objectNode());
            case LIST_START -> enter(NODES.arrayNode());
            default -> {
                path.value();
                complaints();
                add(scalar(token));
            }
        }
    }

    private void complaints() {
        for (Fault complaint : source.complaints()) {
            faults.add(complaint.withPointer(path.pointer()));
        }
    }

    private JsonNode scalar(Token token) {
        return switch (token) {
            case TEXT -> TextNode.valueOf(text());
            case NUMBER -> number();
            case TRUE -> BooleanNode.TRUE;
            case FALSE -> BooleanNode.FALSE;
            case NULL -> NullNode.getInstance();
            default -> throw new IllegalStateException("Not a scalar: " + token);
        };
    }

    private void key() {
        key = source.text();
        if (key.length() > limits.textLength()) {
            // Stops here, for no pointer could be given without repeating the name.
            path.name("");
            Fault fault = placed(tooLong(key));
            throw new Stopped(fault.withPointer(Pointers.parent(fault.pointer())));
        }
        path.name(key);
        checkCharacters(key);
        if (open.element() instanceof ObjectNode object && object.has(key)) {
            complain(Messages.DUPLICATE_KEY.fault(key));
        }
    }

    private void enter(ContainerNode<?> node) {
        path.value();
        complaints();
        if (path.depth() == limits.depth()) {
            Fault fault = placed(Messages.DEPTH_EXCEEDED.fault("").withLimit(limits.depth() + " levels"));
            throw new Stopped(fault);
        }
        add(node);
        open.push(node);
        path.enter(node instanceof ObjectNode);
    }

    private void leave() {
        open.pop();
        path.leave();
    }

    /** The first of several members with one name stays. */
    private void add(JsonNode node) {
        values++;
        if (values > limits.values()) {
            throw new Stopped(placed(Messages.TOO_MANY_VALUES.fault("").withLimit(limits.values() + " values")));
        }
        ContainerNode<?> holder = open.peek();
        if (holder instanceof ObjectNode object) {
            object.putIfAbsent(key, node);
        } else if (holder instanceof ArrayNode array) {
            array.add(node);
        } else {
            root = node;
        }
    }

    private String text() {
        String text = source.text();
        if (text.length() > limits.textLength()) {
            complain(tooLong(text));
        }
        checkCharacters(text);
        return text;
    }

    private Fault tooLong(String text) {
        return Messages.TEXT_TOO_LONG.fault(text).withLimit(limits.textLength() + " characters");
    }

    private void checkCharacters(String text) {
        String wrong = TextCheck.wrongCharacter(text);
        if (!wrong.isEmpty()) {
            complain(Messages.TEXT_CHARACTER.fault(text, wrong));
        }
    }

    private JsonNode number() {
        String text = source.text();
        if (text.length() > limits.numberLength()) {
            complain(Messages.NUMBER_TOO_LONG.fault(text).withLimit(limits.numberLength() + " characters"));
            return NullNode.getInstance();
        }
        try {
            return NumberNodes.of(text);
        } catch (Stopped refused) {
            complain(refused.fault());
            return NullNode.getInstance();
        }
    }

    private void complain(Fault fault) {
        faults.add(placed(fault));
    }

    private Fault placed(Fault fault) {
        return fault.withPointer(path.pointer()).at(source.line(), source.column());
    }
}
