package dev.underprop.app.earlier;

import dev.underprop.api.model.PlanChange;
import dev.underprop.api.model.PlanCheckBrief;
import dev.underprop.api.model.PlanCheckRecord;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.record.Outcome;
import dev.underprop.wire.record.PlanRecords;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Results of an earlier run, by the key of the plan: enough of each to tell what has changed and because of what. */
final class EarlierResults {
    private static final int MOST_LISTED = 50;
    private static final String NOT_JUDGED = "not judged";

    /** What made an answer besides the plan; shared by all plans of a run. */
    private record Maker(String engine, List<String> editions, String catalogue) {}

    /** An answer; texts are empty when the plan was not judged. */
    private record Answer(String verdict, String plan, String checks, Maker maker) {}

    private static final Answer REFUSED = new Answer(NOT_JUDGED, "", "", new Maker("", List.of(), ""));

    private final Map<String, Answer> answers;
    private final boolean complete;
    private final Set<String> met = new HashSet<>();

    private EarlierResults(Map<String, Answer> answers, boolean complete) {
        this.answers = answers;
        this.complete = complete;
    }

    static EarlierResults read(String file) {
        Map<String, Answer> answers = new LinkedHashMap<>();
        Map<Maker, Maker> makers = new LinkedHashMap<>();
        boolean complete = false;
        try (BufferedReader lines = Files.newBufferedReader(Path.of(file), StandardCharsets.UTF_8)) {
            for (String text = lines.readLine(); text != null; text = lines.readLine()) {
                PlanCheckRecord record = Documents.read(text.getBytes(StandardCharsets.UTF_8), PlanCheckRecord.class);
                String id = record.getId();
                if (id != null) {
                    answers.put(id, answer(record, makers));
                } else if (Boolean.TRUE.equals(record.getComplete())) {
                    complete = true;
                }
            }
            return new EarlierResults(answers, complete);
        } catch (IOException | IllegalArgumentException e) {
            throw unreadable("file of earlier results", file, e);
        }
    }

    private static Answer answer(PlanCheckRecord record, Map<Maker, Maker> makers) {
        PlanCheckBrief brief = record.getBrief();
        if (brief == null) {
            brief = record.getResult() == null ? null : PlanRecords.brief(record.getResult());
        }
        if (brief == null && record.getProblem() == null) {
            throw new IllegalArgumentException("a record without answer and problem: " + record.getId());
        }
        return brief == null ? REFUSED : answer(brief, makers);
    }

    private static Answer answer(PlanCheckBrief brief, Map<Maker, Maker> makers) {
        Maker maker = new Maker(
                brief.getEngine().getName() + " " + brief.getEngine().getVersion(),
                List.copyOf(brief.getBasis().getEditions()),
                brief.getCatalogueDigest());
        return new Answer(
                brief.getVerdict().getValue(),
                brief.getPlanDigest(),
                brief.getChecksDigest(),
                makers.computeIfAbsent(maker, same -> same));
    }

    /** How an outcome differs; nothing when it does not. */
    Optional<PlanChange> change(Outcome outcome) {
        Answer before = answers.get(outcome.key());
        if (before == null) {
            return Optional.of(new PlanChange().what("new").because(List.of()));
        }
        Answer now = outcome instanceof Outcome.Judged judged
                ? answer(PlanRecords.brief(judged.result()), new LinkedHashMap<>())
                : REFUSED;
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
        if (answers.containsKey(key)) {
            met.add(key);
        }
    }

    /** Plans of the earlier run that were not met. */
    List<String> gone() {
        List<String> gone =
                answers.keySet().stream().filter(key -> !met.contains(key)).toList();
        List<String> remarks = new ArrayList<>(
                listed(gone, "plan of the earlier results was not met", "plans of the earlier results were not met"));
        if (!complete) {
            remarks.add("The earlier results are of a run that did not end; plans may be missing from them.");
        }
        return remarks;
    }

    /** A count with the first few by name; nothing for none. */
    static List<String> listed(List<String> all, String one, String many) {
        if (all.isEmpty()) {
            return List.of();
        }
        String some = String.join("; ", all.subList(0, Math.min(MOST_LISTED, all.size())));
        String more = all.size() > MOST_LISTED ? "; and " + (all.size() - MOST_LISTED) + " more" : "";
        return List.of(all.size() + " " + (all.size() == 1 ? one : many) + ": " + some + more + ".");
    }

    static UncheckedIOException unreadable(String what, String file, Exception failure) {
        String why = failure instanceof NoSuchFileException
                ? "there is no such file"
                : String.valueOf(failure.getMessage()).lines().findFirst().orElse("");
        return new UncheckedIOException(
                "the " + what + " " + file + " cannot be read: " + why + ".", new IOException(failure));
    }
}
