package dev.underprop.app;

import dev.underprop.app.batch.FailOn;
import dev.underprop.app.report.TextReport;
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

    /** Reads how much an answer tells. */
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

    /** How much records tell. */
    enum RecordDetail {
        BRIEF(Detail.COMPACT),
        COMPACT(Detail.COMPACT),
        FULL(Detail.FULL);

        private final Detail answer;

        RecordDetail(Detail answer) {
            this.answer = answer;
        }

        /** How much answers tell. */
        Detail answer() {
            return answer;
        }
    }

    /** Reads how much records tell. */
    static final class RecordDetails implements ITypeConverter<RecordDetail> {
        @Override
        public RecordDetail convert(String value) {
            return switch (value) {
                case "brief" -> RecordDetail.BRIEF;
                case "compact" -> RecordDetail.COMPACT;
                case "full" -> RecordDetail.FULL;
                default -> throw new TypeConversionException("use brief, compact or full, not " + value);
            };
        }
    }

    /** Reads how much the text says. */
    static final class Levels implements ITypeConverter<TextReport.Level> {
        @Override
        public TextReport.Level convert(String value) {
            return switch (value) {
                case "full" -> TextReport.Level.FULL;
                case "lines" -> TextReport.Level.LINES;
                case "sum" -> TextReport.Level.SUM;
                default -> throw new TypeConversionException("use full, lines or sum, not " + value);
            };
        }
    }

    /** Reads the mildest verdict that is a failure. */
    static final class Failing implements ITypeConverter<FailOn> {
        @Override
        public FailOn convert(String value) {
            return switch (value) {
                case "unstable" -> FailOn.UNSTABLE;
                case "inadequate" -> FailOn.INADEQUATE;
                case "incomplete" -> FailOn.INCOMPLETE;
                default -> throw new TypeConversionException("use unstable, inadequate or incomplete, not " + value);
            };
        }
    }
}
