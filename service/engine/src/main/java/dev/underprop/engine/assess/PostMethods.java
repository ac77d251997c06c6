package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.PropClass;
import dev.underprop.engine.plan.Telescope;
import dev.underprop.engine.plan.TimberPost;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * All methods by which a post's strength can be told from what its type declares. Every one whose data are there is made, and
 * the lowest rules; one whose data are not complete is named beside it, and rules only where there is no other.
 */
final class PostMethods {

    private static final Citation NONE =
            Citation.remembered("common practice, no source", "", "a rating, a class, or a post described in full");

    /**
     * A judgement and the rule it rests on.
     *
     * @param finding what was found
     * @param rule the one that decides, the others named
     */
    record Ruling(Finding finding, Citation rule) {}

    /** One method. */
    private record Method(String name, Finding finding, Citation rule, Working working) {
        boolean complete() {
            return !(finding instanceof CheckResult.NotChecked);
        }

        String open() {
            return ((CheckResult.NotChecked) finding).reason();
        }
    }

    private final List<Method> methods = new ArrayList<>();
    private final Working working;

    private PostMethods(Working working) {
        this.working = working;
    }

    /** As {@link #rule(PostType, double, double, double, double, Working)}, without a record. */
    static Ruling rule(PostType type, double height, double load, double lean, double beam) {
        return rule(type, height, load, lean, beam, Working.OFF);
    }

    /**
     * @param height between the pins (m), positive
     * @param load (N), not negative
     * @param lean of posts (rad), not negative
     * @param beam breadth of the beam on its head (m), positive
     */
    static Ruling rule(PostType type, double height, double load, double lean, double beam, Working working) {
        PostMethods all = new PostMethods(working);
        if (type.rating() instanceof PostType.Table table) {
            Citation reading = PostJudge.reading(table);
            all.add("rating table", w -> new Ruling(PostJudge.rated(table, height, load, w), reading));
        }
        if (type.named() instanceof PropClass named) {
            all.add(
                    "class " + named.mark(),
                    w -> new Ruling(PropClassJudge.judge(named, height, load, w), PropClassJudge.RULE));
        }
        if (type.shaft() instanceof TimberPost timber) {
            all.add(
                    "timber",
                    w -> new Ruling(TimberPostJudge.judge(type, timber, height, load, beam, w), TimberPostJudge.RULE));
        }
        if (type.shaft() instanceof Telescope telescope) {
            all.add("telescopic post", w -> TelescopeJudge.judge(telescope, height, load, lean, w));
        }
        if (type.tube() instanceof PostType.Pipe pipe) {
            all.tube(type, pipe, height, load);
        }
        return all.lowest(type);
    }

    /** A tube that is not the whole post, or is not shown to be, can fail it but not pass it. */
    private void tube(PostType type, PostType.Pipe pipe, double height, double load) {
        boolean alone = methods.stream().noneMatch(Method::complete);
        Working computing = working.branch();
        Finding computed = PipeJudge.judge(pipe, height, load, computing);
        boolean whole = pipe.plain() && !otherwise(type);
        String why = pipe.plain()
                ? " is said to be a plain tube, and is also described otherwise, which is not complete"
                : " has no rating, and its tube alone says nothing of screw, joint and pin (declare: rating)";
        Finding rest = new CheckResult.NotChecked("post type " + type.name() + why);
        Finding finding = whole || !alone ? computed : Worse.of(rest, computed);
        methods.add(new Method("tube", finding, PostJudge.TUBE, computing));
    }

    /** Whether it is described as more than a tube. */
    private static boolean otherwise(PostType type) {
        return !(type.shaft() instanceof PostType.NoShaft && type.named() instanceof PostType.NoClass);
    }

    private void add(String name, Function<Working, Ruling> method) {
        Working branch = working.branch();
        Ruling ruling = method.apply(branch);
        methods.add(new Method(name, ruling.finding(), ruling.rule(), branch));
    }

    private Ruling lowest(PostType type) {
        List<Method> complete = methods.stream().filter(Method::complete).toList();
        if (!complete.isEmpty()) {
            Method worst = complete.get(0);
            for (Method method : complete) {
                boolean same = Worse.of(worst.finding(), method.finding()) == worst.finding();
                worst = same ? worst : method;
            }
            tell(worst, complete);
            return new Ruling(worst.finding(), beside(worst));
        }
        String why = methods.isEmpty()
                ? "post type " + type.name()
                        + " has no rating, and is of no class and no described make (declare: rating)"
                : methods.stream().map(Method::open).collect(Collectors.joining("; "));
        return new Ruling(
                new CheckResult.NotChecked(why),
                methods.isEmpty() ? NONE : methods.get(0).rule());
    }

    /** The record of the method that rules; of the others what they allow. */
    private void tell(Method worst, List<Method> complete) {
        working.adopt(worst.working());
        for (Method other : complete) {
            if (other != worst && other.finding() instanceof CheckResult.Judged judged) {
                working.rule(
                        "Pa" + (complete.indexOf(other) + 1),
                        "not less: allowed by " + other.name(),
                        Dimension.FORCE,
                        judged.capacity(),
                        other.rule(),
                        "");
            }
        }
    }

    private Citation beside(Method ruling) {
        String others = names(ruling, true);
        String open = names(ruling, false);
        String said = (others.isEmpty() ? "" : "; lower than by " + others)
                + (open.isEmpty() ? "" : "; not complete, and so not made: " + open);
        Citation rule = ruling.rule();
        return new Citation(rule.document(), rule.edition(), rule.locator() + said, rule.standing());
    }

    private String names(Method ruling, boolean complete) {
        return methods.stream()
                .filter(method -> method != ruling && method.complete() == complete)
                .map(method -> complete ? method.name() : method.name() + " (" + method.open() + ")")
                .collect(Collectors.joining(", "));
    }
}
