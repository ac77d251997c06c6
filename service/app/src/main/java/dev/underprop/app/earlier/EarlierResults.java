package dev.underprop.app.earlier;

import dev.underprop.api.model.PlanChange;
import dev.underprop.api.model.PlanCheckBrief;
import dev.underprop.api.model.PlanCheckRecord;
import dev.underprop.app.earlier.Digests.Digest;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.record.Outcome;
import dev.underprop.wire.record.PlanRecords;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Results of an earlier run, by the key of the plan: enough of each to tell what has changed and because of what. A plan is held in
 * some 70 bytes; names are looked up in the file again, and only where plans are missing.
 */
final class EarlierResults {
    private static final String NOT_JUDGED = "not judged";
    private static final int WIDTH = 4 * Long.BYTES + 2 * Integer.BYTES;

    /** What made an answer besides the plan; shared by all plans of a run. */
    private record Maker(String engine, List<String> editions, String catalogue) {}

    /** An answer, as far as it is held: digests of digests. */
    private record Answer(String verdict, Digest plan, Digest checks, Maker maker) {}

    private static final Answer REFUSED =
            new Answer(NOT_JUDGED, new Digest(0, 0), new Digest(0, 0), new Maker("", List.of(), ""));

    private final String file;
    private final Digests keys = new Digests();
    private final Rows answers = new Rows(WIDTH);
    private final Numbered<String> verdicts = new Numbered<>();
    private final Numbered<Maker> makers = new Numbered<>();
    private final BitSet met = new BitSet();
    private boolean complete;

    private EarlierResults(String file) {
        this.file = file;
    }

    static EarlierResults read(String file) {
        EarlierResults results = new EarlierResults(file);
        results.eachRecord(results::take);
        return results;
    }

    private void eachRecord(Consumer<PlanCheckRecord> taker) {
        try (BufferedReader lines = Files.newBufferedReader(Path.of(file), StandardCharsets.UTF_8)) {
            for (String text = lines.readLine(); text != null; text = lines.readLine()) {
                taker.accept(Documents.read(text.getBytes(StandardCharsets.UTF_8), PlanCheckRecord.class));
            }
        } catch (IOException | IllegalArgumentException e) {
            throw unreadable("file of earlier results", file, e);
        }
    }

    private void take(PlanCheckRecord record) {
        String id = record.getId();
        if (id != null) {
            hold(id, answer(record));
        } else if (Boolean.TRUE.equals(record.getComplete())) {
            complete = true;
        }
    }

    private void hold(String key, Answer answer) {
        int number = keys.add(key);
        if (number == answers.size()) {
            answers.add();
        }
        answers.row(number)
                .putLong(answer.plan().high())
                .putLong(answer.plan().low())
                .putLong(answer.checks().high())
                .putLong(answer.checks().low())
                .putInt(verdicts.number(answer.verdict()))
                .putInt(makers.number(answer.maker()));
    }

    private Answer held(int number) {
        ByteBuffer row = answers.row(number);
        Digest plan = new Digest(row.getLong(), row.getLong());
        Digest checks = new Digest(row.getLong(), row.getLong());
        return new Answer(verdicts.get(row.getInt()), plan, checks, makers.get(row.getInt()));
    }

    private static Answer answer(PlanCheckRecord record) {
        PlanCheckBrief brief = record.getBrief();
        if (brief == null) {
            brief = record.getResult() == null ? null : PlanRecords.brief(record.getResult());
        }
        if (brief == null && record.getProblem() == null) {
            throw new IllegalArgumentException("a record without answer and problem: " + record.getId());
        }
        return brief == null ? REFUSED : answer(brief);
    }

    private static Answer answer(PlanCheckBrief brief) {
        Maker maker = new Maker(
                brief.getEngine().getName() + " " + brief.getEngine().getVersion(),
                List.copyOf(brief.getBasis().getEditions()),
                brief.getCatalogueDigest());
        return new Answer(
                brief.getVerdict().getValue(),
                Digest.of(brief.getPlanDigest()),
                Digest.of(brief.getChecksDigest()),
                maker);
    }

    /** How an outcome differs; nothing when it does not. */
    Optional<PlanChange> change(Outcome outcome) {
        int number = keys.find(outcome.key());
        if (number < 0) {
            return Optional.of(new PlanChange().what("new").because(List.of()));
        }
        Answer before = held(number);
        Answer now = outcome instanceof Outcome.Judged judged ? answer(PlanRecords.brief(judged.result())) : REFUSED;
        if (before.verdict().equals(now.verdict()) && before.checks().equals(now.checks())) {
            return Optional.empty();
        }
        return Optional.of(new PlanChange()
                .what(before.verdict().equals(now.verdict()) ? "numbers" : "verdict")
                .before(before.verdict())
                .because(because(before, now)));
    }

    /** What is not the same; nothing can be said where one was not judged. */
    private static List<String> because(Answer before, Answer now) {
        List<String> because = new ArrayList<>();
        if (before.equals(REFUSED) || now.equals(REFUSED)) {
            return because;
        }
        add(because, "plan", before.plan(), now.plan());
        add(because, "engine", before.maker().engine(), now.maker().engine());
        add(because, "edition", before.maker().editions(), now.maker().editions());
        add(because, "catalogue", before.maker().catalogue(), now.maker().catalogue());
        return because;
    }

    private static void add(List<String> because, String what, Object before, Object now) {
        if (!before.equals(now)) {
            because.add(what);
        }
    }

    void met(String key) {
        int number = keys.find(key);
        if (number >= 0) {
            met.set(number);
        }
    }

    /** Plans of the earlier run that were not met. */
    List<String> gone() {
        List<String> remarks = new ArrayList<>();
        if (met.cardinality() < keys.size()) {
            Named gone = new Named();
            BitSet told = (BitSet) met.clone();
            eachRecord(record -> {
                String id = record.getId();
                int number = id == null ? -1 : keys.find(id);
                if (id != null && number >= 0 && !told.get(number)) {
                    told.set(number);
                    gone.add(id);
                }
            });
            remarks.addAll(
                    gone.told("plan of the earlier results was not met", "plans of the earlier results were not met"));
        }
        if (!complete) {
            remarks.add("The earlier results are of a run that did not end; plans may be missing from them.");
        }
        return remarks;
    }

    static UncheckedIOException unreadable(String what, String file, Exception failure) {
        String why = failure instanceof NoSuchFileException
                ? "there is no such file"
                : String.valueOf(failure.getMessage()).lines().findFirst().orElse("");
        return new UncheckedIOException(
                "the " + what + " " + file + " cannot be read: " + why + ".", new IOException(failure));
    }
}
