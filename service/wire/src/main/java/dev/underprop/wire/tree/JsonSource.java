package dev.underprop.wire.tree;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** JSON text as tokens. */
final class JsonSource implements TokenSource {
    /** The limits that count are held by the builder of the tree, the same for both formats. */
    private static final JsonFactory FACTORY = new JsonFactoryBuilder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(Integer.MAX_VALUE)
                    .maxNumberLength(Integer.MAX_VALUE)
                    .maxStringLength(Integer.MAX_VALUE)
                    .maxNameLength(Integer.MAX_VALUE)
                    .build())
            .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
            // Names come from outside: keep none of them.
            .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
            .build();

    private final String text;
    private final JsonParser parser;
    private int depth;
    private boolean whole;

    JsonSource(String text) {
        this.text = text;
        try {
            this.parser = FACTORY.createParser(text);
        } catch (IOException e) {
            throw new UncheckedIOException("Text in memory cannot be opened", e);
        }
    }

    @Override
    public Token next() {
        if (whole) {
            return end();
        }
        JsonToken token = advance();
        if (token == null) {
            throw new Stopped(Messages.DOCUMENT_EMPTY.fault("").at(1, 1));
        }
        depth += token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
        whole = depth == 0;
        return translated(token);
    }

    private Token end() {
        int after = after();
        for (int i = after; i < text.length(); i++) {
            if (" \t\r\n".indexOf(text.charAt(i)) < 0) {
                Place place = Place.of(text.substring(0, i));
                throw new Stopped(
                        Messages.TRAILING_CONTENT.fault(text.substring(i)).at(place.line(), place.column()));
            }
        }
        return Token.END;
    }

    private int after() {
        // Also finishes a text that was not asked for, so that its end is known.
        text();
        return (int) parser.currentLocation().getCharOffset();
    }

    private JsonToken advance() {
        try {
            return parser.nextToken();
        } catch (JsonProcessingException e) {
            throw new Stopped(JsonComplaint.of(text, e));
        } catch (IOException e) {
            throw new UncheckedIOException("Text in memory cannot be read", e);
        }
    }

    private static Token translated(JsonToken token) {
        return switch (token) {
            case START_OBJECT -> Token.OBJECT_START;
            case END_OBJECT -> Token.OBJECT_END;
            case START_ARRAY -> Token.LIST_START;
            case END_ARRAY -> Token.LIST_END;
            case FIELD_NAME -> Token.KEY;
            case VALUE_STRING -> Token.TEXT;
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Token.NUMBER;
            case VALUE_TRUE -> Token.TRUE;
            case VALUE_FALSE -> Token.FALSE;
            case VALUE_NULL -> Token.NULL;
            case NOT_AVAILABLE, VALUE_EMBEDDED_OBJECT ->
                throw new IllegalStateException("Not a token of JSON: " + token);
        };
    }

    @Override
    public String text() {
        try {
            return parser.getText();
        } catch (JsonProcessingException e) {
            throw new Stopped(JsonComplaint.of(text, e));
        } catch (IOException e) {
            throw new UncheckedIOException("Text in memory cannot be read", e);
        }
    }

    @Override
    public int line() {
        return place().line();
    }

    @Override
    public int column() {
        return place().column();
    }

    private Place place() {
        return Place.of(text.substring(0, (int) parser.currentTokenLocation().getCharOffset()));
    }

    @Override
    public List<Fault> complaints() {
        return List.of();
    }
}
