package dev.underprop.wire.answer;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.sizing.Below;
import dev.underprop.engine.sizing.Neighbours;
import dev.underprop.engine.sizing.PadSizing;
import dev.underprop.engine.sizing.PlanSizer;
import dev.underprop.engine.sizing.PostSizing;
import dev.underprop.engine.sizing.PostSizing.Nearest;
import dev.underprop.engine.sizing.PostSizing.NoGround;
import dev.underprop.engine.sizing.PostSizing.Proposal;
import dev.underprop.engine.sizing.PostSizing.Shortfall;
import dev.underprop.engine.sizing.PostSizing.State;
import dev.underprop.wire.quantity.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** The sentences of an answer to a question for pads. */
final class SizingWords {

    private final Figures figures;
    private final Wording wording;

    SizingWords(Figures figures) {
        this.figures = figures;
        this.wording = new Wording(figures);
    }

    String headline(PadSizing sizing) {
        List<PostSizing> none =
                sizing.posts().stream().filter(p -> p.state() == State.NONE).toList();
        if (!none.isEmpty()) {
            String names = none.stream().map(SizingWords::name).collect(Collectors.joining(", "));
            return "No pad will do under " + (none.size() == 1 ? "post " : "posts ") + names + ". "
                    + message(none.get(0));
        }
        if (sizing.posts().stream().anyMatch(p -> p.proposals().isEmpty())) {
            return "Under some post no pad fails, and none is known to pass: see what is open.";
        }
        String found = "A pad is found for every post";
        return sizing.state() == State.ADEQUATE
                ? found + ", and every check of it passes" + closest(sizing) + "."
                : found + "; nothing fails in what was checked, but not everything was checked" + closest(sizing) + ".";
    }

    static String headline(PlanSizer.Unstable unstable) {
        String moves = "in situation " + unstable.situation() + ", " + unstable.reason();
        return unstable.fitted()
                ? "The plan is unstable with the pads that were found: " + moves + ". No pads are proposed."
                : "The plan is unstable: " + moves + ". Its posts have no loads, so that no pads are sized.";
    }

    private static String closest(PadSizing sizing) {
        return sizing.posts().stream()
                .map(p -> governing(p.proposals().get(0).checks()))
                .filter(c -> !Double.isNaN(c.ratio()))
                .max(CheckResult.BEST_FIRST)
                .map(c -> "; " + Wording.title(c.id()) + " at " + c.place() + " is nearest to its limit, ratio "
                        + Figures.ratio(c.ratio()))
                .orElse("");
    }

    private static String name(PostSizing post) {
        return post.post().post().name();
    }

    /** The check that fails, or the one that passes nearest to its limit. */
    static CheckResult governing(List<CheckResult> checks) {
        return checks.stream()
                .filter(c -> c.verdict() == Verdict.FAIL || c.verdict() == Verdict.PASS)
                .max(CheckResult.BEST_FIRST)
                .orElse(checks.get(0));
    }

    String message(PostSizing post) {
        if (!post.proposals().isEmpty()) {
            return proposed(post, post.proposals().get(0));
        }
        boolean groundless = post.shortfall().stream().anyMatch(NoGround.class::isInstance);
        if (post.state() == State.INCOMPLETE && !groundless) {
            return "Of " + counted(post.tried()) + " none is known to pass; " + post.undecided()
                    + (post.undecided() == 1 ? " fails" : " fail")
                    + " nothing, and something about each is not known. The best of each kind is told.";
        }
        return post.shortfall().stream()
                .map(s -> reason(post, s) + " " + change(s))
                .collect(Collectors.joining(" "));
    }

    private String proposed(PostSizing post, Proposal proposal) {
        CheckResult governs = governing(proposal.checks());
        String pad = "Pad " + proposal.trial().candidate().pad().name();
        if (governs.verdict() == Verdict.FAIL) {
            return pad + " passes by itself. " + wording.message(governs);
        }
        String ratio = Double.isNaN(governs.ratio())
                ? ""
                : "; " + Wording.title(governs.id()) + " is nearest to its limit, ratio "
                        + Figures.ratio(governs.ratio());
        List<String> open = proposal.checks().stream()
                .filter(c -> c.verdict() == Verdict.NOT_CHECKED)
                .map(c -> c.id().id())
                .toList();
        String not = open.isEmpty() ? "" : " Not checked: " + String.join(", ", open) + ".";
        return pad + " passes" + (open.isEmpty() ? "" : " what was checked") + ratio + "; " + post.passing() + " of "
                + counted(post.tried()) + " pass." + not;
    }

    private static String counted(int pads) {
        return pads == 1 ? "1 pad" : pads + " pads";
    }

    String reason(PostSizing post, Shortfall shortfall) {
        if (shortfall instanceof NoGround ground) {
            return capital(ground.reason()) + ".";
        }
        if (shortfall instanceof Nearest nearest) {
            return "Of " + counted(post.tried()) + " none passes. Nearest is "
                    + nearest.candidate().pad().name() + ". " + without(governing(nearest.checks()));
        }
        return "There is no pad to try.";
    }

    /** What a check found, without what usually helps: here it is known. */
    private String without(CheckResult check) {
        String message = wording.message(check);
        String remedy = " " + Wording.remedy(check.id());
        return message.endsWith(remedy) ? message.substring(0, message.length() - remedy.length()) : message;
    }

    String change(Shortfall shortfall) {
        if (shortfall instanceof NoGround ground) {
            return ground.refused()
                    ? "No size of pad helps: have the ground investigated, dig down to firm undisturbed ground, or bring the load"
                            + " to it another way."
                    : "State it where it is known; else have it found out.";
        }
        return shortfall instanceof Nearest nearest ? change(nearest) : "Offer some.";
    }

    private String change(Nearest nearest) {
        List<String> ways = new ArrayList<>();
        if (!Double.isNaN(nearest.area())) {
            ways.add("a pad of at least " + figures.words(Kind.AREA, nearest.area()) + ", such as "
                    + figures.words(Kind.SIZE, Math.sqrt(nearest.area()))
                    + " square, and as much more as its own weight wants");
        }
        if (!Double.isNaN(nearest.thickness())) {
            ways.add("this pad " + figures.words(Kind.SIZE, nearest.thickness()) + " thick");
        }
        if (nearest.load() > 0) {
            ways.add("no more than " + figures.words(Kind.FORCE, nearest.load())
                    + " on this pad, from posts set closer together");
        }
        return ways.isEmpty()
                ? Wording.remedy(governing(nearest.checks()).id())
                : "What would help: " + String.join("; or ", ways) + ".";
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    String step(CheckResult check) {
        return without(check);
    }

    String neighbours(Neighbours pair) {
        if (!pair.combined().isEmpty()) {
            Neighbours.Combined one = pair.combined().get(0);
            return "The pads lie over each other. One pad for both, " + figures.words(Kind.SIZE, one.along()) + " by "
                    + figures.words(Kind.SIZE, one.across())
                    + ", has its middle where the loads meet; an engineer designs how it bends between the posts.";
        }
        return "The neighbour adds " + Figures.ratio(100 * pair.share())
                + " percent of the stress of the pad's own load at a depth of its breadth. The settlement of the pad has it in it.";
    }

    /** What all neighbours together add. */
    String below(Below below) {
        double total = below.own() + below.added();
        String sum =
                "All other pads together add most at " + figures.words(Kind.SIZE, below.depth()) + " below this one, "
                        + Figures.ratio(100 * below.added() / below.pressure())
                        + " percent of the pressure of its own load; with its own that is "
                        + figures.words(Kind.PRESSURE, total) + " there";
        String held = Double.isNaN(below.allowed())
                ? "."
                : total <= below.allowed()
                        ? ", no more than the " + figures.words(Kind.PRESSURE, below.allowed())
                                + " that the ground may take right under the pad."
                        : ", more than the " + figures.words(Kind.PRESSURE, below.allowed())
                                + " that the ground may take right under the pad: set the posts further apart.";
        return sum + held
                + " Whether the ground gives way is judged pad by pad; settlement, and a weaker layer that is named, by all.";
    }

    /** What is to be known of the ground. */
    static List<String> warnings(Ground ground) {
        List<String> warnings = new ArrayList<>();
        if (ground.top() instanceof Ground.Strength strength) {
            if (strength.shear() instanceof Ground.Penetrometer) {
                warnings.add(
                        "A pocket penetrometer is off by about 30 percent and is not meant for the design of foundations"
                                + " (Texas Department of Transportation; read in a public copy). Half of the least reading is taken for"
                                + " the undrained strength; have it confirmed.");
            }
            warnings.add("What the ground bears is worked out by "
                    + strength.method().id()
                    + " for level ground, a level base and the sideways push of its post, in whichever direction; a slope or a cut nearby takes"
                    + " from it.");
            if (strength.founding().factors()) {
                warnings.add(
                        "The ground beside the pads is counted on by depth factors: it must be as strong as below them, and"
                                + " stay there.");
            }
        }
        return warnings;
    }

    static Comparator<CheckResult> inTableOrder() {
        return Comparator.comparing(CheckResult::id);
    }
}
