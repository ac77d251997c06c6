package dev.underprop.wire.record;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.CheckVerdict;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.api.model.PlanCheckBrief;
import dev.underprop.api.model.PlanCheckRecord;
import dev.underprop.api.model.Quantity;
import dev.underprop.wire.quantity.ValueWriter;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Records of the contract, one a plan. */
public final class PlanRecords {
    private PlanRecords() {}

    /** The record of a plan. */
    public static PlanCheckRecord of(Outcome outcome, Extent extent) {
        PlanCheckRecord record = new PlanCheckRecord().id(outcome.key());
        if (!outcome.name().path().isEmpty()) {
            record.path(outcome.name().path());
        }
        if (outcome.name().line() > 0) {
            record.line(outcome.name().line());
        }
        if (outcome instanceof Outcome.Judged judged) {
            answer(record, judged.result(), extent);
        } else if (outcome instanceof Outcome.Refused refused) {
            record.problem(refused.problem());
        }
        return record;
    }

    private static void answer(PlanCheckRecord record, PlanCheck result, Extent extent) {
        if (extent == Extent.WHOLE) {
            record.result(result);
        } else {
            record.brief(brief(result));
        }
    }

    /** The verdict of an answer and what led to it. */
    public static PlanCheckBrief brief(PlanCheck result) {
        List<CheckResult> checks = result.getChecks();
        PlanCheckBrief brief = new PlanCheckBrief()
                .engine(result.getEngine())
                .basis(result.getBasis())
                .planDigest(result.getPlanDigest())
                .catalogueDigest(result.getCatalogueDigest())
                .verdict(result.getVerdict())
                .checksDigest(digest(checks))
                .failed(checks.stream()
                        .filter(Findings::fails)
                        .map(Findings::of)
                        .toList())
                .notChecked(checks.stream()
                        .filter(check -> check.getVerdict() == CheckVerdict.NOT_CHECKED)
                        .map(CheckResult::getCheck)
                        .distinct()
                        .toList());
        Findings.worst(checks).map(Findings::of).ifPresent(brief::governs);
        return brief;
    }

    /** SHA-256 over everything that is measured in the checks; words do not count. */
    private static String digest(List<CheckResult> checks) {
        StringBuilder all = new StringBuilder(96 * checks.size());
        for (CheckResult check : checks) {
            all.append(check.getCheck()).append('\t').append(check.getPlace()).append('\t');
            all.append(check.getVerdict().getValue()).append('\t');
            number(check.getDemand(), all);
            all.append('\t');
            number(check.getCapacity(), all);
            all.append('\t');
            Double ratio = check.getRatio();
            if (ratio != null) {
                ValueWriter.nine(ratio, all);
            }
            all.append('\n');
        }
        try {
            byte[] sha =
                    MessageDigest.getInstance("SHA-256").digest(all.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(sha);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static void number(@Nullable Quantity quantity, StringBuilder out) {
        if (quantity != null) {
            ValueWriter.nine(quantity.getValue(), out);
            out.append(' ').append(quantity.getUnit());
        }
    }
}
