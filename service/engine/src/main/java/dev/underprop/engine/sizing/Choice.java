package dev.underprop.engine.sizing;

import dev.underprop.engine.Halt;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.pad.PadChecks;
import dev.underprop.engine.pad.PadOverlap;
import dev.underprop.engine.pad.PadOverlap.Placed;
import dev.underprop.engine.pad.PadSettlement;
import dev.underprop.engine.plan.Post;
import java.util.ArrayList;
import java.util.List;

/**
 * One pad for every post. Each gets the best that passes and does not lie over those chosen before it; where none is left, the
 * best, which then lies over a neighbour. Pads that settle too far against others of their shore make way for larger ones.
 */
final class Choice {

    private final Task task;
    private final PadChecks judges;
    private final PadChecks tellers;
    private final List<Trials> trials;
    private final Halt halt;

    /** For each post the index of its pad among those that pass, -1 where none does. */
    private final int[] chosen;

    Choice(Task task, PadChecks judges, List<Trials> trials, Halt halt) {
        this.task = task;
        this.halt = halt;
        this.judges = judges;
        this.tellers = task.working() ? new PadChecks(task.site(), true) : judges;
        this.trials = trials;
        this.chosen = new int[trials.size()];
        for (int p = 0; p < chosen.length; p++) {
            chosen[p] = first(p, 0, p, -1);
            chosen[p] = chosen[p] < 0 && !trials.get(p).passing().isEmpty() ? 0 : chosen[p];
        }
        settle();
    }

    /** The first pad from an index on that lies over none of the posts before an end, and is larger than an area; -1 for none. */
    private int first(int post, int from, int end, double area) {
        halt.check();
        List<Trial> passing = trials.get(post).passing();
        for (int i = from; i < passing.size(); i++) {
            if (passing.get(i).candidate().pad().area() > area
                    && clear(passing.get(i).standing().placed(), post, end)) {
                return i;
            }
        }
        return -1;
    }

    private boolean clear(Placed here, int post, int end) {
        for (int other = 0; other < end; other++) {
            if (other != post && chosen[other] >= 0 && PadOverlap.overlap(here, placed(other))) {
                return false;
            }
        }
        return true;
    }

    private Placed placed(int post) {
        Loaded loaded = task.posts().get(post);
        return chosen[post] < 0
                ? new Placed(
                        loaded.with(new Post.NoPad()), loaded.y(), loaded.load().greatest())
                : trial(post).standing().placed();
    }

    /** Every step takes a pad of more area, so that this ends. */
    private void settle() {
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int p = 0; p < chosen.length && !moved; p++) {
                if (chosen[p] >= 0 && settlement(p).verdict() == Verdict.FAIL) {
                    moved = enlarge(p);
                }
            }
        }
    }

    private boolean enlarge(int post) {
        double area = trial(post).candidate().pad().area();
        int next = first(post, 0, chosen.length, area);
        if (next < 0) {
            return false;
        }
        chosen[post] = next;
        return true;
    }

    private CheckResult settlement(int post) {
        halt.check();
        return judges.settlement(trial(post).standing(), sinking(post, true), sinking(post, false));
    }

    /** The other posts, of the same shore or of the others. */
    private List<PadSettlement.Loaded> sinking(int post, boolean shore) {
        List<PadSettlement.Loaded> others = new ArrayList<>();
        for (int other = 0; other < chosen.length; other++) {
            Loaded near = task.posts().get(other);
            boolean same = near.shore().equals(task.posts().get(post).shore());
            if (other != post && same == shore) {
                others.add(new PadSettlement.Loaded(
                        placed(other).post(),
                        near.y(),
                        near.least(),
                        near.load().greatest()));
            }
        }
        return others;
    }

    private PadChecks.Around around(int post) {
        return new PadChecks.Around(others(post), sinking(post, true), sinking(post, false));
    }

    private List<Placed> others(int post) {
        List<Placed> others = new ArrayList<>();
        for (int other = 0; other < chosen.length; other++) {
            if (other != post) {
                others.add(placed(other));
            }
        }
        return others;
    }

    boolean made(int post) {
        return chosen[post] >= 0;
    }

    /** The pad of a post that has one. */
    Trial trial(int post) {
        return trials.get(post).passing().get(chosen[post]);
    }

    /** Every check of a chosen pad, neighbours included, in table order. */
    List<CheckResult> checks(int post) {
        return checks(post, trial(post));
    }

    /** Every check of another pad of a post, the other posts on theirs. */
    List<CheckResult> checks(int post, Trial trial) {
        return tellers.all(trial.standing(), around(post));
    }
}
