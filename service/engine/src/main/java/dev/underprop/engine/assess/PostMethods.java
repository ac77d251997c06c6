package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.PropClass;
import dev.underprop.engine.plan.Telescope;
import dev.underprop.engine.plan.TimberPost;
import dev.underprop.engine.standard.Citation;
import java.util.ArrayList;
import java.util.List;
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
    private record Method(String name, Finding finding, Citation rule) {
        boolean complete() {
            return !(finding instanceof CheckResult.NotChecked);
        }

        String open() {
            return ((CheckResult.NotChecked) finding).reason();
        }
    }

    private final List<Method> methods = new ArrayList<>();

    /**
     * @param height between the pins (m), positive
     * @param load (N), not negative
     * @param lean of posts (rad), not negative
     * @param beam breadth of the beam on its head (m), positive
     */
    static Ruling rule(PostType type, double height, double load, double lean, double beam) {
        PostMethods all = new PostMethods();
        if (type.rating() instanceof PostType.Table table) {
            all.add("rating table", PostJudge.rated(table, height, load), PostJudge.reading(table));
        }
        if (type.named() instanceof PropClass named) {
            all.add("class " + named.mark(), PropClassJudge.judge(named, height, load), PropClassJudge.RULE);
        }
        if (type.shaft() instanceof TimberPost timber) {
            all.add("timber", TimberPostJudge.judge(type, timber, height, load, beam), TimberPostJudge.RULE);
        }
        if (type.shaft() instanceof Telescope telescope) {
            Ruling ruling = TelescopeJudge.judge(telescope, height, load, lean);
            all.add("telescopic post", ruling.finding(), ruling.rule());
        }
        if (type.tube() instanceof PostType.Pipe pipe) {
            all.tube(type, pipe, height, load);
        }
        return all.lowest(type);
    }

    /** A tube that is not the whole post, or is not shown to be, can fail it but not pass it. */
    private void tube(PostType type, PostType.Pipe pipe, double height, double load) {
        boolean alone = methods.stream().noneMatch(Method::complete);
        Finding computed = PipeJudge.judge(pipe, height, load);
        boolean whole = pipe.plain() && !otherwise(type);
        String why = pipe.plain()
                ? " is said to be a plain tube, and is also described otherwise, which is not complete"
                : " has no rating, and its tube alone says nothing of screw, joint and pin";
        Finding rest = new CheckResult.NotChecked("post type " + type.name() + why);
        add("tube", whole || !alone ? computed : Worse.of(rest, computed), PostJudge.TUBE);
    }

    /** Whether it is described as more than a tube. */
    private static boolean otherwise(PostType type) {
        return !(type.shaft() instanceof PostType.NoShaft && type.named() instanceof PostType.NoClass);
    }

    private void add(String name, Finding finding, Citation rule) {
        methods.add(new Method(name, finding, rule));
    }

    private Ruling lowest(PostType type) {
        List<Method> complete = methods.stream().filter(Method::complete).toList();
        if (!complete.isEmpty()) {
            Method worst = complete.get(0);
            for (Method method : complete) {
                boolean same = Worse.of(worst.finding(), method.finding()) == worst.finding();
                worst = same ? worst : method;
            }
            return new Ruling(worst.finding(), beside(worst));
        }
        String why = methods.isEmpty()
                ? "post type " + type.name() + " has no rating, and is of no class and no described make"
                : methods.stream().map(Method::open).collect(Collectors.joining("; "));
        return new Ruling(
                new CheckResult.NotChecked(why),
                methods.isEmpty() ? NONE : methods.get(0).rule());
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
