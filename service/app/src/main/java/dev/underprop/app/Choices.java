package dev.underprop.app;

import dev.underprop.wire.door.AnswerOptions.Detail;
import dev.underprop.wire.quantity.UnitSystem;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads choices as the contract writes them. */
final class Choices {
    private Choices() {}

    /** Reads a system of units. */
    static final class Units implements ITypeConverter<UnitSystem> {
        @Override
        public UnitSystem convert(String value) {
            return switch (value) {
                case "us" -> UnitSystem.US;
                case "si" -> UnitSystem.SI;
                default -> throw new TypeConversionException("use us or si, not " + value);
            };
        }
    }

    /** Reads how much is told. */
    static final class Details implements ITypeConverter<Detail> {
        @Override
        public Detail convert(String value) {
            return switch (value) {
                case "compact" -> Detail.COMPACT;
                case "full" -> Detail.FULL;
                default -> throw new TypeConversionException("use compact or full, not " + value);
            };
        }
    }
}
