package dev.underprop.wire.answer;

import dev.underprop.api.model.BasisEditions;
import dev.underprop.api.model.DocumentKind;
import dev.underprop.api.model.PadSizing;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.api.model.SizingState;
import dev.underprop.api.model.SizingVerification;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.sizing.PlanSizer;
import dev.underprop.engine.sizing.PostSizing;
import dev.underprop.engine.standard.Basis;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Writes the answer to a question for pads. */
public final class SizingWriter {

    private final SizingQuestion question;
    private final Figures figures;
    private final CheckWriter checks;
    private final SizingWords words;

    /**
     * @param question what was asked
     */
    public SizingWriter(SizingQuestion question) {
        this.question = question;
        this.figures = new Figures(question.units());
        this.checks = new CheckWriter(figures, question.full(), question.working());
        this.words = new SizingWords(figures);
    }

    /** Pads for posts whose loads were given. */
    public PadSizing found(dev.underprop.engine.sizing.PadSizing sizing) {
        ProposalWriter proposals = new ProposalWriter(question, figures, checks, words);
        return common().state(SizingState.fromValue(sizing.state().name()))
                .headline(words.headline(sizing))
                .notChecked(checks.notChecked(open(sizing)))
                .posts(sizing.posts().stream()
                        .map(post -> proposals.post(post, sizing.below()))
                        .toList())
                .neighbours(
                        sizing.neighbours().stream().map(proposals::neighbours).toList())
                .quantities(new QuantityWriter(figures).of(sizing));
    }

    /** Of the pads that are proposed, and of those for two posts that are offered in their place. */
    private static List<CheckResult> open(dev.underprop.engine.sizing.PadSizing sizing) {
        List<CheckResult> all = chosen(sizing);
        sizing.neighbours().forEach(pair -> pair.combined().forEach(one -> all.addAll(one.open())));
        return all;
    }

    private static List<CheckResult> chosen(dev.underprop.engine.sizing.PadSizing sizing) {
        List<CheckResult> all = new ArrayList<>();
        for (PostSizing post : sizing.posts()) {
            post.proposals().stream().limit(1).forEach(p -> all.addAll(p.checks()));
            if (post.proposals().isEmpty()) {
                post.open().stream().limit(1).forEach(t -> all.addAll(t.checks()));
            }
        }
        return all;
    }

    /** Pads for the posts of a plan. */
    public PadSizing ofPlan(PlanSizer.Outcome outcome) {
        if (outcome instanceof PlanSizer.Unstable unstable) {
            PadSizing none = common().state(SizingState.NONE)
                    .headline(SizingWords.headline(unstable))
                    .notChecked(List.of())
                    .posts(List.of())
                    .neighbours(List.of())
                    .quantities(new QuantityWriter(figures)
                            .of(new dev.underprop.engine.sizing.PadSizing(List.of(), List.of(), List.of())));
            return unstable.fitted() ? none.verification(unstable(unstable)) : none;
        }
        PlanSizer.Sized sized = (PlanSizer.Sized) outcome;
        PadSizing model = found(sized.sizing()).verification(verification(sized));
        return sized.stays() || model.getState() != SizingState.ADEQUATE
                ? model
                : model.state(SizingState.INCOMPLETE)
                        .headline(
                                "Pads are proposed, but the plan with them asks for others each time it is assessed.");
    }

    private static SizingVerification unstable(PlanSizer.Unstable unstable) {
        return new SizingVerification()
                .rounds(unstable.rounds())
                .stays(false)
                .planVerdict(PlanVerdict.UNSTABLE)
                .message("The plan was assessed again with the pads that were found, and does not stand with them.");
    }

    private static SizingVerification verification(PlanSizer.Sized sized) {
        return new SizingVerification()
                .rounds(sized.rounds())
                .stays(sized.stays())
                .planVerdict(PlanVerdict.fromValue(sized.assessment().verdict().name()))
                .message(
                        sized.stays()
                                ? "The plan was assessed again with these pads, which change how far posts give; it asks for no"
                                        + " others. The verdict is that of the whole plan with them."
                                : "The plan with these pads still asks for others: larger pads draw load. The verdict is that of the"
                                        + " whole plan with these. Choose pads by hand and check the plan.");
    }

    private PadSizing common() {
        return new PadSizing()
                .document(DocumentKind.PAD_SIZING)
                .engine(AnswerWriter.engine())
                .basis(new BasisEditions().name(Basis.US_ASD.name()).editions(Basis.US_ASD.editions()))
                .requestDigest(question.digest())
                .catalogueDigest(question.catalogueDigest())
                .cautions(Cautions.ALL)
                .assumptions(question.assumptions())
                .warnings(SizingWords.warnings(question.ground()))
                .objective(question.objective().name().toLowerCase(Locale.ROOT));
    }
}
