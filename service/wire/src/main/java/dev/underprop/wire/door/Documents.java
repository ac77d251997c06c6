package dev.underprop.wire.door;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import dev.underprop.wire.quantity.ValueWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/**
 * Writes the contract's models as JSON: members in the order of the contract, absent members left out, numbers with at
 * most nine significant digits, lines ended by LF.
 */
public final class Documents {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .defaultPropertyInclusion(
                    JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.NON_NULL))
            .addModule(new SimpleModule().addSerializer(Double.class, new Numbers()))
            .build();

    private static final JsonMapper READER = JsonMapper.builder()
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();
    private static final ObjectWriter COMPACT = MAPPER.writer();
    private static final ObjectWriter PRETTY = MAPPER.writer(printer());

    private Documents() {}

    /** UTF-8 JSON of a model, two-space indented if {@code pretty}, always the same bytes for the same model. */
    public static byte[] json(Object model, boolean pretty) {
        try {
            String text = (pretty ? PRETTY : COMPACT).writeValueAsString(model);
            return (text + '\n').getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a model of the contract cannot be written", e);
        }
    }

    /**
     * Reads a document that this program has written; members that it does not know are passed over.
     *
     * @param json UTF-8
     * @param type kind of document
     * @throws IllegalArgumentException when it is none
     */
    public static <T> T read(byte[] json, Class<T> type) {
        try {
            T read = READER.readValue(json, type);
            if (read == null) {
                throw new IllegalArgumentException("there is no document");
            }
            return read;
        } catch (IOException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    private static DefaultPrettyPrinter printer() {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        return new DefaultPrettyPrinter(
                        Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER))
                .withObjectIndenter(indenter)
                .withArrayIndenter(indenter);
    }

    /** Numbers by the one writer: what Java writes of itself differs between its versions. */
    private static final class Numbers extends StdSerializer<Double> {
        private static final long serialVersionUID = 1L;

        Numbers() {
            super(Double.class);
        }

        @Override
        public void serialize(Double value, JsonGenerator out, SerializerProvider provider) throws IOException {
            out.writeNumber(ValueWriter.nine(value));
        }
    }
}
