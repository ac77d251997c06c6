package dev.underprop.app.report;

import dev.underprop.api.model.BearingPart;
import dev.underprop.api.model.LiftHelp;
import dev.underprop.api.model.LiftLimitUse;
import dev.underprop.api.model.LiftObstacle;
import dev.underprop.api.model.LiftOutcome;
import dev.underprop.api.model.LiftPlan;
import dev.underprop.api.model.LiftPointResult;
import dev.underprop.api.model.LiftPostResult;
import dev.underprop.api.model.LiftRelease;
import dev.underprop.api.model.LiftRemark;
import dev.underprop.api.model.LiftSituation;
import dev.underprop.api.model.LiftSpan;
import dev.underprop.api.model.LiftStage;
import dev.underprop.api.model.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A lift in words that a crew lead can read aloud: first who keeps away and when to stop, then turn after turn. */
final class LiftText {

    private final Paint paint;
    private final LiftTurnText turns = new LiftTurnText();

    LiftText(Paint paint) {
        this.paint = paint;
    }

    String of(String path, LiftPlan plan) {
        StringBuilder out = new StringBuilder(heading(path, plan));
        out.append(outcome(plan.getOutcome())).append('\n');
        out.append(Lines.wrapped("  ", 2, plan.getHeadline()));
        section(out, paint.danger("KEEP IN MIND"), plan.getCautions());
        section(out, paint.danger("STOP RULES"), plan.getStopRules());
        section(out, paint.warning("NOT CHECKED"), plan.getNotChecked());
        section(out, paint.warning("REMARKS"), remarks(plan.getRemarks()));
        section(out, "Broken as found, and never made worse", uses(plan.getBrokenAsFound()));
        obstacle(out, plan.getObstacle());
        section(out, "Readings against what was expected", readings(plan.getPoints()));
        section(out, "Posts", plan.getPosts().stream().map(LiftText::post).toList());
        count(out, plan);
        for (LiftStage stage : plan.getStages()) {
            String name =
                    "STAGE " + stage.getNumber() + " of " + plan.getStages().size();
            out.append(turns.stage(paint.strong(name), stage, plan.getHold()));
        }
        release(out, plan);
        raised(out, plan.getRaised());
        section(out, "Taken, and under what every turn was looked at", plan.getAssumptions());
        return out.toString();
    }

    private String heading(String path, LiftPlan plan) {
        String id = plan.getId();
        String title = plan.getTitle();
        String words =
                (id == null ? path : id) + (title == null ? "" : "  " + title) + (id == null ? "" : "  (" + path + ")");
        return paint.strong(Lines.visible(words)) + "\n";
    }

    private String outcome(LiftOutcome outcome) {
        return switch (outcome) {
            case PLANNED -> paint.good("PLANNED");
            case INCOMPLETE, SHORT -> paint.warning(outcome.getValue());
            default -> paint.danger(outcome.getValue());
        };
    }

    private static List<String> remarks(List<LiftRemark> remarks) {
        return remarks.stream()
                .map(r -> (r.getAt() == null ? "" : r.getAt() + ": ") + r.getMessage())
                .toList();
    }

    static List<String> uses(List<LiftLimitUse> uses) {
        return uses.stream().map(LiftText::use).toList();
    }

    static String use(LiftLimitUse use) {
        String words = LiftTurnText.kind(use.getLimit()) + " at " + use.getAt() + ": ";
        Double used = use.getUsed();
        Quantity value = use.getValue();
        Quantity allowed = use.getAllowed();
        if (value != null && allowed != null) {
            return words + CheckText.shown(value) + ", where " + CheckText.shown(allowed) + " is allowed";
        }
        return words + (used == null ? "nothing is allowed" : LiftTurnText.part(used) + " of what is allowed");
    }

    private void obstacle(StringBuilder out, @Nullable LiftObstacle obstacle) {
        if (obstacle != null) {
            List<String> lines = new ArrayList<>();
            for (LiftHelp help : obstacle.getHelp()) {
                LiftLimitUse needed = help.getNeeded();
                lines.add(help.getChange() + (needed == null ? "" : " Needed, " + use(needed) + " now."));
            }
            section(out, paint.danger("WHAT STOPS IT"), List.of(obstacle.getReason()));
            section(out, "What would help", lines);
        }
    }

    private static List<String> readings(List<LiftPointResult> points) {
        List<String> lines = new ArrayList<>();
        for (LiftPointResult point : points) {
            Quantity read = point.getRead();
            Quantity off = point.getOutBy();
            LiftSpan expected = point.getExpected();
            if (read != null && off != null && expected != null) {
                String judged = off.getValue() == 0
                        ? "as expected"
                        : "OFF by " + CheckText.shown(off) + " more than may be read wrong";
                lines.add(point.getPoint() + ": read " + CheckText.shown(read) + ", expected "
                        + LiftTurnText.span(expected) + ": " + judged + ".");
            }
        }
        return lines;
    }

    private static String post(LiftPostResult post) {
        Quantity now = post.getLevelNow();
        Quantity target = post.getTarget();
        StringBuilder words = new StringBuilder(post.getPost()).append(": ");
        if (now != null && target != null) {
            words.append("floor over it at ").append(CheckText.shown(now)).append(", to come to ");
            words.append(CheckText.shown(target)).append("; ");
        }
        words.append(post.getTurns()).append(", a raise of ").append(CheckText.shown(post.getPlanned()));
        words.append("; it stands ").append(CheckText.shown(post.getHeight())).append(" tall then");
        Quantity travel = post.getTravelLeft();
        return words.append(travel == null ? "" : ", with " + CheckText.shown(travel) + " of screw left")
                .append('.')
                .toString();
    }

    private void count(StringBuilder out, LiftPlan plan) {
        if (!plan.getStages().isEmpty()) {
            String why = plan.getCount().getWhy();
            String words = String.format(
                    Locale.ROOT,
                    "%d stages; no fewer than %d are possible.%s",
                    plan.getCount().getStages(),
                    plan.getCount().getLeast(),
                    why == null ? "" : " " + why);
            section(out, "Stages", List.of(words));
        }
    }

    private void release(StringBuilder out, LiftPlan plan) {
        LiftRelease release = plan.getRelease();
        if (release == null) {
            return;
        }
        List<LiftStage> stages = release.getStages();
        List<String> onto = release.getOnto();
        if (stages == null || onto == null) {
            String reason = release.getReason();
            section(out, paint.danger("THE POSTS CANNOT BE LET DOWN"), List.of(reason == null ? "" : reason));
            return;
        }
        section(
                out,
                paint.strong("LETTING DOWN"),
                List.of(
                        "First build up " + String.join(" and ", onto)
                                + " snug under every joist of the raised floor, and secure it.",
                        "Then let the posts down in these stages; take them out only when none carries anything."));
        for (LiftStage stage : stages) {
            out.append(turns.stage(
                    paint.strong("LETTING DOWN, STAGE " + stage.getNumber() + " of " + stages.size()),
                    stage,
                    plan.getHold()));
        }
    }

    private void raised(StringBuilder out, @Nullable LiftSituation raised) {
        if (raised != null) {
            section(
                    out,
                    "The raised floor, to be pasted into the plan's situations and checked",
                    List.of(pasted(raised)));
        }
    }

    /** In plan syntax, every text in quotes: names may hold whatever means something there. */
    static String pasted(LiftSituation raised) {
        StringBuilder out = new StringBuilder("{ name: ").append(quoted(raised.getName()));
        List<String> removed = raised.getRemoved();
        if (removed != null) {
            out.append(", removed: ").append(quoted(removed));
        }
        List<BearingPart> parts = raised.getRemovedParts();
        if (parts != null) {
            out.append(parts.stream()
                    .map(p -> "{ bearing: " + quoted(p.getBearing()) + ", from: " + quoted(p.getFrom()) + ", to: "
                            + quoted(p.getTo()) + " }")
                    .collect(Collectors.joining(", ", ", removedParts: [", "]")));
        }
        List<String> clear = raised.getClear();
        if (clear != null) {
            out.append(", clear: ").append(quoted(clear));
        }
        out.append(raised.getLifts().stream()
                .map(l -> "{ post: " + quoted(l.getPost()) + ", lift: " + quoted(l.getLift()) + " }")
                .collect(Collectors.joining(", ", ", lifts: [", "]")));
        return out.append(" }").toString();
    }

    private static String quoted(List<String> names) {
        return names.stream().map(LiftText::quoted).collect(Collectors.joining(", ", "[", "]"));
    }

    private static String quoted(String text) {
        return '"' + Lines.visible(text).replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    private static void section(StringBuilder out, String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            out.append("  ").append(heading).append('\n');
            lines.forEach(line -> out.append(Lines.wrapped("    - ", 6, line)));
        }
    }
}
