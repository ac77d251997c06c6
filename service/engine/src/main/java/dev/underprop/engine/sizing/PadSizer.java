package dev.underprop.engine.sizing;

import dev.underprop.engine.Halt;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.pad.PadChecks;
import dev.underprop.engine.sizing.PostSizing.Proposal;
import dev.underprop.engine.sizing.PostSizing.State;
import java.util.ArrayList;
import java.util.List;

/** Finds pads for posts whose loads are known. */
public final class PadSizer {

    private final Task task;
    private final PadChecks judges;
    private final Halt halt;

    private PadSizer(Task task, Halt halt) {
        this.task = task;
        this.halt = halt;
        this.judges = new PadChecks(task.site());
    }

    /** Tries every pad under every post. */
    public static PadSizing size(Task task) {
        return size(task, Halt.NEVER);
    }

    /**
     * Tries every pad under every post as long as the answer is wanted.
     *
     * @param halt asked before every pad
     * @throws dev.underprop.engine.Halted when nobody wants the answer any more
     */
    public static PadSizing size(Task task, Halt halt) {
        return new PadSizer(task, halt).size();
    }

    private PadSizing size() {
        List<Trials> trials = task.posts().stream()
                .map(p -> new Trials(task, p, judges, halt))
                .toList();
        Choice choice = new Choice(task, judges, trials, halt);
        List<PostSizing> posts = new ArrayList<>();
        for (int p = 0; p < trials.size(); p++) {
            posts.add(post(p, trials.get(p), choice));
        }
        return new PadSizing(posts, Neighbours.of(posts), Below.of(posts));
    }

    private PostSizing post(int p, Trials trials, Choice choice) {
        Loaded post = task.posts().get(p);
        List<Trial> open = ofEachKind(trials.open());
        int tried = trials.all().size();
        if (!choice.made(p)) {
            State state = open.isEmpty() || groundless(trials) ? State.NONE : State.INCOMPLETE;
            return new PostSizing(
                    post,
                    state,
                    List.of(),
                    0,
                    tried,
                    trials.open().size(),
                    open,
                    List.of(new LeastChange(task, judges, post).find(trials.all())));
        }
        Step step = new Step(trials.all());
        List<Proposal> proposals = new ArrayList<>();
        proposals.add(proposal(choice.trial(p), choice.checks(p), step));
        for (Trial trial : trials.front()) {
            if (trial != choice.trial(p)) {
                halt.check();
                proposals.add(proposal(trial, choice.checks(p, trial), step));
            }
        }
        return new PostSizing(
                post,
                state(proposals.get(0).checks()),
                proposals,
                trials.passing().size(),
                tried,
                trials.open().size(),
                List.of(),
                List.of());
    }

    /** The best of each kind. */
    private static List<Trial> ofEachKind(List<Trial> trials) {
        List<Trial> best = new ArrayList<>();
        for (Trial trial : trials) {
            if (best.stream().noneMatch(b -> b.candidate().alike(trial.candidate()))) {
                best.add(trial);
            }
        }
        return best;
    }

    /** Whether the ground bears nothing. */
    private static boolean groundless(Trials trials) {
        return trials.all().stream().allMatch(t -> t.checks().get(0).finding() instanceof CheckResult.Refused);
    }

    private static Proposal proposal(Trial trial, List<CheckResult> checks, Step step) {
        return new Proposal(trial, checks, step.from(trial, -1), step.from(trial, 1));
    }

    private static State state(List<CheckResult> checks) {
        if (checks.stream().anyMatch(c -> c.verdict() == Verdict.FAIL)) {
            return State.NONE;
        }
        return checks.stream().anyMatch(c -> c.verdict() == Verdict.NOT_CHECKED) ? State.INCOMPLETE : State.ADEQUATE;
    }
}
