package dev.underprop.wire.answer;

import dev.underprop.api.model.CombinedPad;
import dev.underprop.api.model.Pad;
import dev.underprop.api.model.PadHandCheck;
import dev.underprop.api.model.PadNeighbours;
import dev.underprop.api.model.PadProposal;
import dev.underprop.api.model.PadShortfall;
import dev.underprop.api.model.PadStep;
import dev.underprop.api.model.SizingState;
import dev.underprop.api.model.StressBelow;
import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.sizing.Below;
import dev.underprop.engine.sizing.Candidate;
import dev.underprop.engine.sizing.Neighbours;
import dev.underprop.engine.sizing.PostSizing;
import dev.underprop.engine.sizing.PostSizing.Nearest;
import dev.underprop.engine.sizing.PostSizing.Proposal;
import dev.underprop.engine.sizing.PostSizing.Shortfall;
import dev.underprop.engine.sizing.Trial;
import dev.underprop.wire.quantity.Kind;
import java.util.List;
import java.util.Optional;

/** Writes what was found for one post. */
final class ProposalWriter {

    /** Proposals told of unless all are asked for. */
    private static final int FEW = 3;

    private final SizingQuestion question;
    private final Figures figures;
    private final CheckWriter checks;
    private final SizingWords words;

    ProposalWriter(SizingQuestion question, Figures figures, CheckWriter checks, SizingWords words) {
        this.question = question;
        this.figures = figures;
        this.checks = checks;
        this.words = words;
    }

    dev.underprop.api.model.PostSizing post(PostSizing post, List<Below> below) {
        double greatest = post.post().load().greatest();
        double factored = post.post().load().factored();
        dev.underprop.api.model.PostSizing model = new dev.underprop.api.model.PostSizing()
                .post(post.post().post().name())
                .state(SizingState.fromValue(post.state().name()))
                .message(words.message(post))
                .load(figures.quantity(Kind.FORCE, greatest))
                .least(figures.quantity(Kind.FORCE, post.post().least()))
                .tried(post.tried())
                .passing(post.passing())
                .proposals(post.proposals().stream()
                        .limit(question.full() ? post.proposals().size() : FEW)
                        .map(this::proposal)
                        .toList())
                .open(post.open().stream().map(this::open).toList());
        if (!Double.isNaN(factored)) {
            model.factored(figures.quantity(Kind.FORCE, factored));
        }
        handCheck(post).ifPresent(model::handCheck);
        post.shortfall().stream().map(s -> shortfall(post, s)).forEach(model::shortfall);
        below.stream()
                .filter(b -> b.post().equals(post.post().post().name()))
                .map(this::below)
                .forEach(model::below);
        return model;
    }

    private StressBelow below(Below below) {
        return new StressBelow()
                .depth(figures.quantity(Kind.SIZE, below.depth()))
                .own(figures.quantity(Kind.PRESSURE, below.own()))
                .added(figures.quantity(Kind.PRESSURE, below.added()))
                .message(words.below(below));
    }

    /** By the allowable pressure under the pad that is proposed, or under the one that is nearest to passing. */
    private Optional<PadHandCheck> handCheck(PostSizing post) {
        return ground(post)
                .filter(q -> q > 0)
                .map(q -> new PadHandCheck()
                        .load(figures.quantity(Kind.FORCE, post.post().load().greatest()))
                        .pressure(figures.quantity(Kind.PRESSURE, q))
                        .area(figures.quantity(Kind.AREA, post.post().load().greatest() / q)));
    }

    private static Optional<Double> ground(PostSizing post) {
        if (!post.proposals().isEmpty()) {
            return pressure(post.proposals().get(0).checks());
        }
        if (!post.open().isEmpty()) {
            return pressure(post.open().get(0).checks());
        }
        return post.shortfall().stream()
                .filter(Nearest.class::isInstance)
                .flatMap(s -> pressure(((Nearest) s).checks()).stream())
                .findFirst();
    }

    private static Optional<Double> pressure(List<CheckResult> checks) {
        return checks.stream()
                .filter(c -> c.id() == CheckId.PAD_SOIL_BEARING && c.finding() instanceof CheckResult.Judged)
                .map(c -> ((CheckResult.Judged) c.finding()).capacity())
                .findFirst();
    }

    private PadProposal proposal(Proposal proposal) {
        PadProposal model = pad(proposal.trial().candidate(), proposal.checks());
        proposal.smaller().stream().map(this::step).forEach(model::smaller);
        proposal.larger().stream().map(this::step).forEach(model::larger);
        return model;
    }

    private PadProposal open(Trial trial) {
        return pad(
                trial.candidate(),
                trial.checks().stream().sorted(SizingWords.inTableOrder()).toList());
    }

    private PadProposal pad(Candidate candidate, List<CheckResult> made) {
        Pad pad = question.pads().get(candidate.pad().name());
        CheckResult governs = SizingWords.governing(made);
        PadProposal model = new PadProposal()
                .pad(pad)
                .area(figures.quantity(Kind.AREA, candidate.pad().area()))
                .pieces(candidate.pieces())
                .governs(governs.id().id())
                .checks(made.stream().map(checks::check).toList());
        if (!Double.isNaN(candidate.weight())) {
            model.weight(figures.quantity(Kind.FORCE, candidate.weight()));
        }
        if (!Double.isNaN(candidate.weight()) && candidate.pieces() > 0) {
            model.heaviestPiece(figures.quantity(Kind.FORCE, candidate.weight() / candidate.pieces()));
        }
        if (!Double.isNaN(candidate.price())) {
            model.price(candidate.price());
        }
        return told(governs) ? model.ratio(governs.ratio()) : model;
    }

    private static boolean told(CheckResult check) {
        return Double.isFinite(check.ratio());
    }

    private PadStep step(Trial trial) {
        CheckResult governs = trial.governing();
        PadStep model = new PadStep()
                .pad(trial.candidate().pad().name())
                .area(figures.quantity(Kind.AREA, trial.candidate().pad().area()))
                .passes(trial.outcome() == Trial.Outcome.PASSES)
                .governs(governs.id().id())
                .message(words.step(governs));
        return told(governs) ? model.ratio(governs.ratio()) : model;
    }

    private PadShortfall shortfall(PostSizing post, Shortfall shortfall) {
        PadShortfall model =
                new PadShortfall().reason(words.reason(post, shortfall)).change(words.change(shortfall));
        if (!(shortfall instanceof Nearest nearest)) {
            return model;
        }
        model.nearest(nearest.candidate().pad().name())
                .checks(nearest.checks().stream()
                        .sorted(SizingWords.inTableOrder())
                        .map(checks::check)
                        .toList());
        if (nearest.load() > 0) {
            model.loadAllowed(figures.quantity(Kind.FORCE, nearest.load()));
        }
        if (!Double.isNaN(nearest.area())) {
            model.areaWanted(figures.quantity(Kind.AREA, nearest.area()));
        }
        return Double.isNaN(nearest.thickness())
                ? model
                : model.thicknessWanted(figures.quantity(Kind.SIZE, nearest.thickness()));
    }

    PadNeighbours neighbours(Neighbours pair) {
        PadNeighbours model = new PadNeighbours()
                .post(pair.one())
                .neighbour(pair.other())
                .apart(figures.quantity(Kind.SIZE, pair.apart()))
                .depth(figures.quantity(Kind.SIZE, pair.depth()))
                .share(pair.share())
                .message(words.neighbours(pair));
        pair.combined()
                .forEach(one -> model.combined(new CombinedPad()
                        .x(figures.quantity(Kind.POSITION, one.x()))
                        .y(figures.quantity(Kind.POSITION, one.y()))
                        .along(figures.quantity(Kind.SIZE, one.along()))
                        .across(figures.quantity(Kind.SIZE, one.across()))
                        .load(figures.quantity(Kind.FORCE, one.load()))
                        .notChecked(checks.notChecked(one.open()))));
        return model;
    }
}
