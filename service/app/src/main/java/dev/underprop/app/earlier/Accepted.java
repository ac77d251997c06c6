package dev.underprop.app.earlier;

import com.fasterxml.jackson.databind.JsonNode;
import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.app.report.BaselineLines;
import dev.underprop.app.report.Judgement.Spot;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.record.Findings;
import dev.underprop.wire.record.Outcome;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Findings that somebody has accepted, each of one plan, check and place and up to the ratio it had. A finding that is worse is not
 * covered; a check that was accepted as not made does not cover one that fails; nothing covers faults and plans that are unstable. A
 * finding is held in some 20 bytes and a plan in some 40; names are looked up in the file again, and only where findings are gone.
 */
final class Accepted {
    /** Number of the spot, number of the plan's next finding (one more; 0 for none), ratio, negative where it was not made. */
    private static final int WIDTH = 2 * Integer.BYTES + Double.BYTES;

    private static final int NEXT = Integer.BYTES;
    private static final int RATIO = 2 * Integer.BYTES;
    private static final double NOT_MADE = -1;

    private final String file;
    private final Digests plans = new Digests();
    /** The first finding of each plan. */
    private final Rows firsts = new Rows(Integer.BYTES);

    private final Rows findings = new Rows(WIDTH);
    private final Numbered<Spot> spots = new Numbered<>();
    private final BitSet met = new BitSet();
    private final BitSet plansMet = new BitSet();

    /** One accepted finding; a ratio that is infinite stands for no capacity at all. */
    private record Line(String plan, Spot spot, double ratio) {}

    private Accepted(String file) {
        this.file = file;
    }

    static Accepted none() {
        return new Accepted("");
    }

    static Accepted read(String file) {
        Accepted accepted = new Accepted(file);
        accepted.eachLine(accepted::hold);
        return accepted;
    }

    private void eachLine(Consumer<Line> taker) {
        try (BufferedReader lines = Files.newBufferedReader(Path.of(file), StandardCharsets.UTF_8)) {
            String head = lines.readLine();
            if (head == null || !head.equals(BaselineLines.HEAD)) {
                throw new IOException("it does not begin as a list of accepted findings does");
            }
            for (String text = lines.readLine(); text != null; text = lines.readLine()) {
                taker.accept(line(text));
            }
        } catch (IOException | IllegalArgumentException e) {
            throw EarlierResults.unreadable("list of accepted findings", file, e);
        }
    }

    private static Line line(String text) {
        JsonNode node = Documents.read(text.getBytes(StandardCharsets.UTF_8), JsonNode.class);
        boolean whole = node.path("plan").isTextual()
                && node.path("check").isTextual()
                && node.path("place").isTextual();
        String verdict = node.path("verdict").asText();
        if (!whole || !(verdict.equals("FAIL") || verdict.equals("NOT_CHECKED"))) {
            throw new IllegalArgumentException("a line is not an accepted finding: " + text);
        }
        return new Line(
                node.path("plan").asText(),
                new Spot(node.path("check").asText(), node.path("place").asText()),
                verdict.equals("FAIL") ? node.path("ratio").asDouble(Double.POSITIVE_INFINITY) : NOT_MADE);
    }

    /** Of two lines about one spot of a plan the later counts. */
    private void hold(Line line) {
        int plan = plans.add(line.plan());
        if (plan == firsts.size()) {
            firsts.add();
        }
        int spot = spots.number(line.spot());
        int found = find(plan, spot);
        if (found < 0) {
            found = findings.add();
            ByteBuffer first = firsts.row(plan);
            findings.row(found).putInt(spot).putInt(first.getInt(0));
            first.putInt(0, found + 1);
        }
        findings.row(found).putDouble(RATIO, line.ratio());
    }

    /** The finding of a plan at a spot; below 0 when there is none. */
    private int find(int plan, int spot) {
        int finding = firsts.row(plan).getInt(0) - 1;
        while (finding >= 0 && findings.row(finding).getInt(0) != spot) {
            finding = findings.row(finding).getInt(NEXT) - 1;
        }
        return finding;
    }

    private int find(int plan, CheckResult check) {
        int spot = Findings.is(check) ? spots.find(Spot.of(check)) : -1;
        return spot < 0 ? -1 : find(plan, spot);
    }

    /** The findings of an outcome that are covered. */
    Set<Spot> covers(Outcome outcome) {
        int plan = plans.find(outcome.key());
        if (plan < 0
                || !(outcome instanceof Outcome.Judged judged)
                || judged.result().getVerdict() == PlanVerdict.UNSTABLE) {
            return Set.of();
        }
        Set<Spot> covered = new HashSet<>();
        for (CheckResult check : judged.result().getChecks()) {
            int finding = find(plan, check);
            if (finding >= 0 && covers(findings.row(finding).getDouble(RATIO), check)) {
                covered.add(Spot.of(check));
            }
        }
        return covered;
    }

    private static boolean covers(double ratio, CheckResult check) {
        return !Findings.fails(check) || (ratio != NOT_MADE && Findings.ratio(check) <= ratio);
    }

    /** Notes which accepted findings are still there, better or worse. */
    void met(Outcome outcome) {
        int plan = plans.find(outcome.key());
        if (plan < 0) {
            return;
        }
        plansMet.set(plan);
        if (outcome instanceof Outcome.Judged judged) {
            for (CheckResult check : judged.result().getChecks()) {
                int finding = find(plan, check);
                if (finding >= 0) {
                    met.set(finding);
                }
            }
        }
    }

    /** Accepted findings that were not met, told for the plans that were. */
    List<String> stale() {
        if (met.cardinality() == findings.size() && plansMet.cardinality() == plans.size()) {
            return List.of();
        }
        Named stale = new Named();
        Named missing = new Named();
        BitSet toldFindings = (BitSet) met.clone();
        BitSet toldPlans = (BitSet) plansMet.clone();
        eachLine(line -> {
            int plan = plans.find(line.plan());
            int spot = spots.find(line.spot());
            int finding = plan < 0 || spot < 0 ? -1 : find(plan, spot);
            if (finding >= 0 && plansMet.get(plan) && !toldFindings.get(finding)) {
                toldFindings.set(finding);
                stale.add(line.plan() + ", " + line.spot().check() + ", "
                        + line.spot().place());
            } else if (plan >= 0 && !toldPlans.get(plan)) {
                toldPlans.set(plan);
                missing.add(line.plan());
            }
        });
        List<String> remarks = new ArrayList<>(stale.told(
                "accepted finding is not there any more; take it off the list",
                "accepted findings are not there any more; take them off the list"));
        remarks.addAll(
                missing.told("plan with accepted findings was not met", "plans with accepted findings were not met"));
        return remarks;
    }
}
