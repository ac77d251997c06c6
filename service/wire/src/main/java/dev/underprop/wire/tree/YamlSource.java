package dev.underprop.wire.tree;

import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.ReaderException;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * YAML text as tokens: the part of YAML that means the same as JSON. Anchors, aliases, tags and merge keys are refused,
 * which also rules out documents that grow when they are read. Names are text whatever they look like. What an unquoted
 * value is, {@link YamlScalar} says.
 */
final class YamlSource implements TokenSource {
    private static final String MERGE = "<<";

    /** What the walk is inside of: a list, or an object before or after a name. */
    private enum Inside {
        LIST,
        BEFORE_NAME,
        AFTER_NAME
    }

    private final String source;
    private final StreamReader reader;
    private final Parser parser;
    private final Deque<Inside> inside = new ArrayDeque<>();
    private final List<Fault> complaints = new ArrayList<>();
    private Mark mark = new Mark("", 0, 0, 0, new int[0], 0);
    private String text = "";

    YamlSource(String source) {
        this.source = source;
        this.reader = new StreamReader(source);
        LoaderOptions options = new LoaderOptions();
        // The size was bounded in bytes before; a character is at least one.
        options.setCodePointLimit(Integer.MAX_VALUE);
        this.parser = new ParserImpl(reader, options);
    }

    @Override
    public Token next() {
        complaints.clear();
        Event event = advance();
        mark = event.getStartMark();
        return switch (event.getEventId()) {
            case StreamStart -> first();
            case DocumentEnd -> last();
            case MappingStart -> start((CollectionStartEvent) event, Inside.BEFORE_NAME, Token.OBJECT_START);
            case SequenceStart -> start((CollectionStartEvent) event, Inside.LIST, Token.LIST_START);
            case MappingEnd -> close(Token.OBJECT_END);
            case SequenceEnd -> close(Token.LIST_END);
            case Scalar -> scalar((ScalarEvent) event);
            case Alias -> alias((AliasEvent) event);
            default -> throw new IllegalStateException("Not expected inside a document: " + event);
        };
    }

    private Token first() {
        Event event = advance();
        mark = event.getStartMark();
        if (event.is(Event.ID.StreamEnd)) {
            throw stopped(Messages.DOCUMENT_EMPTY.fault(""));
        }
        return next();
    }

    private Token last() {
        Event event = advance();
        mark = event.getStartMark();
        if (!event.is(Event.ID.StreamEnd)) {
            throw stopped(Messages.YAML_SEVERAL_DOCUMENTS.fault(""));
        }
        return Token.END;
    }

    private Token start(CollectionStartEvent event, Inside what, Token token) {
        if (inside.peek() == Inside.BEFORE_NAME) {
            throw stopped(Messages.YAML_KEY_NOT_TEXT.fault(""));
        }
        refuseProperties(event, event.getTag() != null);
        valueSeen();
        inside.push(what);
        return token;
    }

    private Token close(Token token) {
        inside.pop();
        return token;
    }

    private Token scalar(ScalarEvent event) {
        refuseProperties(event, event.getTag() != null);
        text = event.getValue();
        boolean plain = event.getScalarStyle() == ScalarStyle.PLAIN;
        if (inside.peek() == Inside.BEFORE_NAME) {
            return key(plain);
        }
        if (inside.isEmpty() && plain && text.isEmpty() && complaints.isEmpty()) {
            throw stopped(Messages.DOCUMENT_EMPTY.fault(""));
        }
        valueSeen();
        return plain ? plain() : Token.TEXT;
    }

    private Token key(boolean plain) {
        inside.pop();
        inside.push(Inside.AFTER_NAME);
        if (plain && text.equals(MERGE)) {
            complain(Messages.YAML_MERGE_KEY.fault(text));
        }
        return Token.KEY;
    }

    private Token plain() {
        YamlScalar scalar = YamlScalar.of(text);
        switch (scalar) {
            case AMBIGUOUS -> complain(Messages.YAML_AMBIGUOUS_NUMBER.fault(text));
            case NOT_FINITE -> complain(Messages.NUMBER_NOT_FINITE.fault(text));
            default -> {}
        }
        return scalar.token();
    }

    private Token alias(AliasEvent event) {
        text = "*" + event.getAnchor();
        complain(Messages.YAML_ALIAS.fault(text));
        if (inside.peek() == Inside.BEFORE_NAME) {
            return key(false);
        }
        valueSeen();
        return Token.TEXT;
    }

    private void refuseProperties(NodeEvent event, boolean tagged) {
        if (event.getAnchor() != null) {
            complain(Messages.YAML_ANCHOR.fault("&" + event.getAnchor()));
        }
        if (tagged) {
            complain(Messages.YAML_TAG.fault(""));
        }
    }

    private void valueSeen() {
        if (inside.peek() == Inside.AFTER_NAME) {
            inside.pop();
            inside.push(Inside.BEFORE_NAME);
        }
    }

    private void complain(Fault fault) {
        complaints.add(fault.at(line(), column()));
    }

    private Stopped stopped(Fault fault) {
        return new Stopped(fault.at(line(), column()));
    }

    private Event advance() {
        try {
            return parser.getEvent();
        } catch (MarkedYAMLException e) {
            Mark problem = e.getProblemMark() == null ? mark : e.getProblemMark();
            throw new Stopped(Messages.SYNTAX
                    .fault("", "YAML", YamlComplaint.of(e))
                    .at(problem.getLine() + 1, problem.getColumn() + 1));
        } catch (ReaderException e) {
            throw new Stopped(unprintable(e));
        } catch (YAMLException | IllegalArgumentException e) {
            // The second comes from the Java library, through the parser, when an escape has no digits.
            mark = reader.getMark();
            throw stopped(Messages.SYNTAX.fault("", "YAML", "it cannot be read on from here"));
        }
    }

    /** YAML allows no control characters even in quotes; the parser counts characters from the start. */
    private Fault unprintable(ReaderException e) {
        int end = source.offsetByCodePoints(0, Math.min(e.getPosition(), source.codePointCount(0, source.length())));
        Place place = Place.of(source.substring(0, end));
        String shown = Fault.shown(Character.toString(e.getCodePoint()));
        return Messages.TEXT_CHARACTER.fault(shown, shown).at(place.line(), place.column());
    }

    @Override
    public String text() {
        return text;
    }

    @Override
    public int line() {
        return mark.getLine() + 1;
    }

    @Override
    public int column() {
        return mark.getColumn() + 1;
    }

    @Override
    public List<Fault> complaints() {
        return complaints;
    }
}
