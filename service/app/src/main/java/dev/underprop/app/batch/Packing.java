package dev.underprop.app.batch;

import dev.underprop.api.model.PlanCheck;
import dev.underprop.api.model.PlanCheckRecord;
import dev.underprop.api.model.Problem;
import dev.underprop.app.report.Judgement;
import dev.underprop.app.report.Records;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.Extent;
import dev.underprop.wire.record.Outcome;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/** Outcomes as the journal keeps them: their whole record, deflated. */
final class Packing {
    private Packing() {}

    static byte[] pack(Outcome outcome) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 13);
        Deflater deflater = new Deflater(Deflater.BEST_SPEED);
        try (DeflaterOutputStream out = new DeflaterOutputStream(bytes, deflater)) {
            out.write(Documents.json(Records.of(Judgement.of(outcome), Extent.WHOLE), false));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            deflater.end();
        }
        return bytes.toByteArray();
    }

    /**
     * The outcome of an entry.
     *
     * @param entry the entry it was packed for
     * @param packed what was packed
     * @param lines whether to look up where the places of findings stand
     */
    static Outcome unpack(Entry entry, byte[] packed, boolean lines) {
        PlanCheckRecord record = Documents.read(inflated(packed), PlanCheckRecord.class);
        PlanCheck result = record.getResult();
        Problem problem = record.getProblem();
        if (result != null && entry instanceof Entry.Text text) {
            return new Outcome.Judged(entry.name(), result, lines ? PlanJudge.lines(text, result) : Map.of());
        }
        if (problem == null) {
            throw new IllegalArgumentException("a record of the journal has neither result nor problem");
        }
        String id = record.getId();
        String own = id == null || id.equals(entry.name().key()) ? "" : id;
        return new Outcome.Refused(entry.name(), own, problem);
    }

    private static byte[] inflated(byte[] packed) {
        try (InflaterInputStream in = new InflaterInputStream(new ByteArrayInputStream(packed))) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
