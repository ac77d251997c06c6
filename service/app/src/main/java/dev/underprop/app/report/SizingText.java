package dev.underprop.app.report;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.CheckVerdict;
import dev.underprop.api.model.PadHandCheck;
import dev.underprop.api.model.PadNeighbours;
import dev.underprop.api.model.PadProposal;
import dev.underprop.api.model.PadQuantities;
import dev.underprop.api.model.PadQuantity;
import dev.underprop.api.model.PadSizing;
import dev.underprop.api.model.PadStep;
import dev.underprop.api.model.PostSizing;
import dev.underprop.api.model.Quantity;
import dev.underprop.api.model.SizingState;
import dev.underprop.api.model.SizingVerification;
import dev.underprop.api.model.StressBelow;
import dev.underprop.wire.door.Documents;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Pads that were looked for, in words: the result, what was not checked, post by post what will do and what else would. */
final class SizingText {
    private final Paint paint;

    SizingText(Paint paint) {
        this.paint = paint;
    }

    String of(String path, PadSizing result) {
        StringBuilder out = new StringBuilder(paint.strong(Lines.visible(path))).append('\n');
        out.append(state(result.getState())).append('\n');
        out.append(Lines.wrapped("  ", 2, result.getHeadline()));
        section(out, paint.warning("NOT CHECKED"), OpenQuestions.lines(result.getNotChecked()));
        section(out, paint.warning("WARNING"), result.getWarnings());
        result.getPosts().forEach(post -> post(out, post));
        section(
                out,
                "Neighbours",
                result.getNeighbours().stream().map(SizingText::neighbours).toList());
        section(out, "What to bring", quantities(result.getQuantities()));
        verification(out, result.getVerification());
        section(out, "Taken, since the request does not say", result.getAssumptions());
        result.getCautions().forEach(caution -> out.append(Lines.wrapped("", 0, caution)));
        return out.toString();
    }

    private String state(SizingState state) {
        return switch (state) {
            case ADEQUATE -> paint.good("ADEQUATE");
            case INCOMPLETE -> paint.warning("INCOMPLETE");
            default -> paint.danger(state.getValue());
        };
    }

    private void post(StringBuilder out, PostSizing post) {
        out.append("  ")
                .append(paint.strong("Post " + Lines.visible(post.getPost())))
                .append("  ")
                .append(state(post.getState()))
                .append("  ")
                .append(loads(post))
                .append('\n');
        out.append(Lines.wrapped("    ", 4, post.getMessage()));
        PadHandCheck hand = post.getHandCheck();
        if (hand != null) {
            out.append(Lines.wrapped(
                    "    By hand: ",
                    13,
                    shown(hand.getLoad()) + " / " + shown(hand.getPressure()) + " = " + shown(hand.getArea())
                            + ", without the pad's weight."));
        }
        for (int i = 0; i < post.getProposals().size(); i++) {
            proposal(out, post.getProposals().get(i), i == 0 ? "Take" : "Or");
        }
        post.getOpen().forEach(open -> proposal(out, open, "Open"));
        StressBelow below = post.getBelow();
        if (below != null) {
            out.append(Lines.wrapped("    Below: ", 11, below.getMessage()));
        }
    }

    private static String loads(PostSizing post) {
        Quantity factored = post.getFactored();
        return shown(post.getLoad()) + (factored == null ? "" : ", " + shown(factored) + " factored");
    }

    private void proposal(StringBuilder out, PadProposal proposal, String word) {
        out.append(Lines.wrapped("    " + word + ": ", 6 + word.length(), size(proposal)));
        if (word.equals("Take")) {
            CheckText text = new CheckText(paint);
            proposal.getChecks().stream().filter(SizingText::compared).forEach(check -> out.append(text.of(check)));
            proposal.getChecks().stream()
                    .filter(check -> check.getVerdict() == CheckVerdict.PASS && !compared(check))
                    .forEach(check -> out.append(Lines.wrapped("    ", 6, check.getMessage())));
            step(out, "One size down: ", proposal.getSmaller());
            step(out, "One size up: ", proposal.getLarger());
            out.append("    In the plan: ").append(plan(proposal)).append('\n');
        } else if (word.equals("Open")) {
            proposal.getChecks().stream()
                    .filter(check -> check.getVerdict() == CheckVerdict.NOT_CHECKED)
                    .forEach(check -> out.append(Lines.wrapped("      ", 8, check.getMessage())));
        }
    }

    private static boolean compared(CheckResult check) {
        return check.getVerdict() == CheckVerdict.FAIL
                || check.getVerdict() == CheckVerdict.PASS && check.getRatio() != null;
    }

    private static String size(PadProposal proposal) {
        Quantity weight = proposal.getWeight();
        Quantity piece = proposal.getHeaviestPiece();
        List<String> parts = new ArrayList<>();
        parts.add(proposal.getPad().getName());
        parts.add(shown(proposal.getArea()));
        if (weight != null) {
            parts.add(shown(weight)
                    + (piece == null || proposal.getPieces() <= 1
                            ? ""
                            : " in " + proposal.getPieces() + " pieces of " + shown(piece)));
        }
        Double price = proposal.getPrice();
        if (price != null) {
            parts.add("price " + money(price));
        }
        Double ratio = proposal.getRatio();
        parts.add(proposal.getGoverns() + (ratio == null ? "" : String.format(Locale.ROOT, " %.3f", ratio)));
        return String.join(", ", parts);
    }

    private static String money(double price) {
        return String.format(Locale.ROOT, "%.2f", price);
    }

    private static void step(StringBuilder out, String word, @Nullable PadStep step) {
        if (step != null) {
            out.append(Lines.wrapped(
                    "    " + word,
                    6,
                    step.getPad() + (step.getPasses() ? " passes. " : " does not pass. ") + step.getMessage()));
        }
    }

    /** JSON of one line, which YAML reads too. */
    private static String plan(PadProposal proposal) {
        return new String(Documents.json(proposal.getPad(), false), StandardCharsets.UTF_8).strip();
    }

    private static String neighbours(PadNeighbours pair) {
        return pair.getPost() + " and " + pair.getNeighbour() + ", " + shown(pair.getApart()) + " apart: "
                + pair.getMessage();
    }

    private static List<String> quantities(PadQuantities quantities) {
        List<String> lines = new ArrayList<>();
        for (PadQuantity item : quantities.getItems()) {
            Quantity weight = item.getWeight();
            Double price = item.getPrice();
            lines.add(item.getCount() + " x " + item.getPad() + (weight == null ? "" : ", " + shown(weight))
                    + (price == null ? "" : ", price " + money(price)) + ", under "
                    + String.join(", ", item.getPosts()) + ".");
        }
        Quantity weight = quantities.getWeight();
        Quantity piece = quantities.getHeaviestPiece();
        if (weight != null) {
            lines.add(shown(weight) + " in all"
                    + (piece == null ? ", cast in place." : "; the heaviest piece weighs about " + shown(piece) + "."));
        }
        return lines;
    }

    private void verification(StringBuilder out, @Nullable SizingVerification verification) {
        if (verification != null) {
            section(
                    out,
                    "The plan with these pads: " + verification.getPlanVerdict().getValue(),
                    List.of(verification.getMessage()));
        }
    }

    private static String shown(Quantity quantity) {
        return CheckText.shown(quantity);
    }

    private static void section(StringBuilder out, String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            out.append("  ").append(heading).append('\n');
            lines.forEach(line -> out.append(Lines.wrapped("    - ", 6, line)));
        }
    }
}
