package dev.underprop.app.report;

import dev.underprop.api.model.LiftExpected;
import dev.underprop.api.model.LiftJackUse;
import dev.underprop.api.model.LiftLimitKind;
import dev.underprop.api.model.LiftLimitUse;
import dev.underprop.api.model.LiftPass;
import dev.underprop.api.model.LiftSpan;
import dev.underprop.api.model.LiftStage;
import dev.underprop.api.model.LiftTurn;
import dev.underprop.api.model.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A stage in words: its turns one by one, what is most used, the hold, and lines for readings and initials. */
final class LiftTurnText {
    private static final MathContext SHOWN = new MathContext(3);
    private static final String BLANK = "________";
    private static final int SHOWN_LIMITS = 3;

    String stage(String heading, LiftStage stage, Quantity hold) {
        StringBuilder out =
                new StringBuilder("\n  ").append(heading).append(begins(stage)).append('\n');
        int number = 0;
        for (LiftPass pass : stage.getPasses()) {
            out.append("    Pass ").append(pass.getNumber()).append('\n');
            for (LiftTurn turn : pass.getTurns()) {
                number++;
                out.append(turn(number, turn));
            }
        }
        out.append(Lines.wrapped("    ", 6, "Most used in this stage: " + mostUsed(stage.getGoverning()) + "."));
        out.append("    Hold ")
                .append(CheckText.shown(hold))
                .append(". Read every point at once and again at the end, write it down, then go on or stop:\n");
        int width = stage.getLevels().stream()
                .mapToInt(l -> l.getAt().length())
                .max()
                .orElse(0);
        for (LiftExpected level : stage.getLevels()) {
            Quantity tolerance = level.getTolerance();
            String give = tolerance == null ? "" : ", give or take " + CheckText.shown(tolerance);
            out.append("      ")
                    .append(padded(Lines.visible(level.getAt()), width))
                    .append("  expect ")
                    .append(padded(span(level.getExpected()) + give, 44))
                    .append("  read ")
                    .append(BLANK)
                    .append("  initials ____\n");
        }
        out.append(Lines.wrapped("    ", 6, "Posts then carry: " + loads(stage.getLoads()) + "."));
        return out.toString();
    }

    private static String begins(LiftStage stage) {
        return stage.getStart().getValue() == 0
                ? ""
                : ": not before " + CheckText.shown(stage.getStart()) + " after stage 1 began";
    }

    private static String turn(int number, LiftTurn turn) {
        LiftSpan pull = turn.getPull();
        LiftSpan torque = turn.getTorque();
        String words = Lines.visible(turn.getPost()) + ", " + turn.getWords() + ".";
        String wrench = pull != null ? "; wrench " + span(pull) : torque == null ? "" : "; torque " + span(torque);
        String told = jack(turn.getJack()) + "raised " + CheckText.shown(turn.getRaised()) + " in all; load "
                + span(turn.getLoadBefore()) + ", then " + span(turn.getLoadAfter()) + wrench;
        String first = String.format(Locale.ROOT, "    %3d. %s", number, padded(words, 24));
        return Lines.wrapped(first + "  [ ] ____  ", 9, told);
    }

    private static String jack(@Nullable LiftJackUse use) {
        return use == null
                ? ""
                : Lines.visible(use.getJack()) + " lifts " + span(use.getLift()) + " and carries " + span(use.getLoad())
                        + ", then the screw, by hand, then the jack off; ";
    }

    private static String mostUsed(List<LiftLimitUse> governing) {
        return governing.stream()
                .sorted(Comparator.comparingDouble(LiftTurnText::used).reversed())
                .limit(SHOWN_LIMITS)
                .filter(use -> used(use) > 0)
                .map(use -> kind(use.getLimit()) + " " + use.getAt() + " " + part(used(use)))
                .collect(Collectors.joining(", "));
    }

    private static double used(LiftLimitUse use) {
        Double used = use.getUsed();
        return used == null ? Double.POSITIVE_INFINITY : used;
    }

    private static String loads(List<LiftExpected> loads) {
        return loads.stream()
                .map(load -> load.getAt() + " " + span(load.getExpected()))
                .collect(Collectors.joining(", "));
    }

    /** A range, or one value where both ends read alike. */
    static String span(LiftSpan span) {
        String least = shown(span.getLeast());
        String greatest = shown(span.getGreatest());
        return (least.equals(greatest) ? least : least + " to " + greatest) + " " + span.getUnit();
    }

    private static String shown(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(SHOWN);
        boolean nothing = Math.abs(value) < 1e-6;
        return nothing ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    static String part(double used) {
        return String.format(Locale.ROOT, "%.2f", used);
    }

    private static String padded(String text, int width) {
        return text.length() >= width ? text : text + " ".repeat(width - text.length());
    }

    static String kind(LiftLimitKind kind) {
        return switch (kind) {
            case POST -> "post";
            case PAD -> "ground under the pad of";
            case BEAM -> "bending and shear,";
            case JOIST -> "bending and shear, joist";
            case CONTACT -> "contact that must stay closed,";
            case TIE -> "fastening,";
            case SLACK -> "clear space over post";
            case SLOPE -> "change of slope,";
            case TRAVEL -> "screw travel of";
            case TOTAL -> "total raise of";
            default -> "limit";
        };
    }
}
