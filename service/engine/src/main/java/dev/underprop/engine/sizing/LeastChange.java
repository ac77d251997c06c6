package dev.underprop.engine.sizing;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.pad.PadChecks;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.sizing.PostSizing.Nearest;
import dev.underprop.engine.sizing.PostSizing.NoGround;
import dev.underprop.engine.sizing.PostSizing.NoStock;
import dev.underprop.engine.sizing.PostSizing.Shortfall;
import java.util.Comparator;
import java.util.List;

/** Why no pad passes under a post, and what would help with the least change. Searches end on the safe side. */
final class LeastChange {

    /** Halvings of a search: finer than any tape. */
    private static final int HALVINGS = 30;

    /** No pad is thicker than so many times as it is (m/m). */
    private static final double THICKEST = 4;

    private final Task task;
    private final PadChecks judges;
    private final Loaded post;
    private final double nearest;

    LeastChange(Task task, PadChecks judges, Loaded post) {
        this.task = task;
        this.judges = judges;
        this.post = post;
        this.nearest = task.nearest(post);
    }

    Shortfall find(List<Trial> trials) {
        if (trials.isEmpty()) {
            return new NoStock();
        }
        CheckResult ground = trials.get(0).checks().get(0);
        boolean same = trials.stream().allMatch(t -> reason(t.checks().get(0)).equals(reason(ground)));
        if (same && !reason(ground).isEmpty()) {
            return new NoGround(ground.finding() instanceof CheckResult.Refused, reason(ground));
        }
        return nearest(trials);
    }

    /** Why the ground has neither demand nor capacity; empty where it has both. */
    private static String reason(CheckResult ground) {
        if (ground.finding() instanceof CheckResult.Refused refused) {
            return refused.reason();
        }
        return ground.finding() instanceof CheckResult.NotChecked open ? open.reason() : "";
    }

    private Shortfall nearest(List<Trial> trials) {
        Trial best = trials.stream()
                .filter(t -> t.outcome() == Trial.Outcome.FAILS)
                .min(Comparator.comparing(t -> Trial.whole(t.standing(), judges), distance()))
                .orElse(trials.get(0));
        List<CheckResult> checks = Trial.whole(best.standing(), judges);
        return new Nearest(
                best.candidate(),
                checks,
                mostLoad(best.candidate()),
                area(checks),
                thickness(best.candidate(), checks));
    }

    /** How far a pad is from passing: what fails without a ratio counts first, then the worst ratio. */
    private static Comparator<List<CheckResult>> distance() {
        return Comparator.comparingLong((List<CheckResult> checks) -> checks.stream()
                        .filter(c -> c.verdict() == Verdict.FAIL && !Double.isFinite(c.ratio()))
                        .count())
                .thenComparingDouble(checks -> checks.stream()
                        .filter(c -> c.verdict() == Verdict.FAIL && Double.isFinite(c.ratio()))
                        .mapToDouble(CheckResult::ratio)
                        .max()
                        .orElse(0));
    }

    private boolean passes(Loaded under, Pad pad) {
        Candidate candidate = new Candidate(pad, Double.NaN, Double.NaN);
        return Trial.of(candidate, under.on(pad, nearest), judges).outcome() == Trial.Outcome.PASSES;
    }

    private double mostLoad(Candidate candidate) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            boolean passes = passes(post.under(middle), candidate.pad());
            low = passes ? middle : low;
            high = passes ? high : middle;
        }
        return low * post.load().greatest();
    }

    /** Area for the load alone, P over what the ground bears, where only the ground fails: the pad's own weight comes on top. */
    private double area(List<CheckResult> checks) {
        CheckResult ground = checks.get(0);
        boolean only = checks.stream()
                .allMatch(c -> c.verdict() != Verdict.FAIL
                        || c.id() == CheckId.PAD_SOIL_BEARING
                        || c.id() == CheckId.PAD_ECCENTRICITY);
        return only
                        && ground.verdict() == Verdict.FAIL
                        && ground.finding() instanceof Judged judged
                        && judged.capacity() > 0
                ? post.load().greatest() / judged.capacity()
                : Double.NaN;
    }

    private double thickness(Candidate candidate, List<CheckResult> checks) {
        boolean weak = checks.stream().anyMatch(c -> c.id() == CheckId.PAD_STRENGTH && c.verdict() == Verdict.FAIL);
        boolean solid =
                candidate.pad().make() instanceof Pad.Cast || candidate.pad().make() instanceof Pad.Plate;
        double low = candidate.pad().thickness();
        double high = low * THICKEST;
        if (!weak || !solid || !passes(post, thicker(candidate.pad(), high))) {
            return Double.NaN;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            boolean passes = passes(post, thicker(candidate.pad(), middle));
            high = passes ? middle : high;
            low = passes ? low : middle;
        }
        return high;
    }

    private static Pad thicker(Pad pad, double thickness) {
        return new Pad(
                pad.name(), pad.kind(), pad.along(), pad.across(), thickness, pad.weight(), pad.make(), pad.centring());
    }
}
