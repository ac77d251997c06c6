package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.standard.Citation;
import java.util.List;

/**
 * A post against its rating table, and where its tube is described against the strength of that. Between rows the taller row's value holds, below the first row the first row's; above
 * the last row there is no rating. Linear interpolation only where the plan asks for it.
 */
final class PostJudge {

    private static final String PRACTICE = "common practice, no source";
    private static final String READING = "rating table read on the safe side";

    private static final Citation RULE = Citation.remembered(
            "common practice, no source",
            "",
            "rating table read on the safe side; the table's own source is in the plan");

    private static final Citation TUBE =
            Citation.remembered("AISC", "360-16", "E3, F8 and H1.1, amplified by Appendix 8, pinned ends");

    private PostJudge() {}

    /**
     * @param load on the post (N)
     * @param lift how far it is raised beyond its stated height (m)
     */
    static Finding judge(Post post, double load, double lift) {
        if (!(post.type() instanceof PostType type)) {
            return new CheckResult.NotChecked("no post type is named (declare: type)");
        }
        double height = post.height() + lift;
        if (type.tube() instanceof PostType.Pipe pipe) {
            return tubed(type, pipe, height, load);
        }
        return type.rating() instanceof PostType.Table table
                ? rated(table, height, load)
                : new CheckResult.NotChecked("post type " + type.name() + " has no rating");
    }

    /** Every method whose data are present is made, and the lowest rules. */
    private static Finding tubed(PostType type, PostType.Pipe pipe, double height, double load) {
        Finding computed = PipeJudge.judge(pipe, height, load);
        if (type.rating() instanceof PostType.Table table) {
            return Worse.of(rated(table, height, load), computed);
        }
        return pipe.plain()
                ? computed
                : Worse.of(
                        new CheckResult.NotChecked("post type " + type.name()
                                + " has no rating, and its tube alone says nothing of screw, joint and pin"),
                        computed);
    }

    private static Finding rated(PostType.Table table, double height, double load) {
        List<PostType.Row> rows = table.rows();
        if (height > rows.get(rows.size() - 1).height()) {
            return new CheckResult.Refused(
                    Measure.FORCE, load, "the post stands taller than the last row of its rating table");
        }
        return new CheckResult.Judged(Measure.FORCE, load, rating(table, height) / table.factor());
    }

    /** A rating never grows with height: a table in which it does is read at its least value up to there. */
    private static double rating(PostType.Table table, double height) {
        List<PostType.Row> rows = table.rows();
        int i = 0;
        double least = rows.get(0).load();
        while (rows.get(i).height() < height) {
            i++;
            least = Math.min(least, rows.get(i).load());
        }
        PostType.Row above = rows.get(i);
        if (i == 0 || !table.interpolate() || least < above.load()) {
            return least;
        }
        PostType.Row below = rows.get(i - 1);
        double part = (height - below.height()) / (above.height() - below.height());
        return below.load() + part * (above.load() - below.load());
    }

    /** The rule by which a post was judged, said in full. */
    static Citation rule(Post post) {
        if (!(post.type() instanceof PostType type)) {
            return RULE;
        }
        boolean tube = type.tube() instanceof PostType.Pipe;
        if (!(type.rating() instanceof PostType.Table table)) {
            return tube ? TUBE : RULE;
        }
        String reading = table.interpolate() ? "rating table interpolated between rows, as the plan asks" : READING;
        String factor = table.factor() > 1 ? "; characteristic values divided by " + table.factor() : "";
        String also = tube ? "; and the tube by AISC 360-16, E3, F8 and H1, whichever is less" : "";
        return Citation.remembered(PRACTICE, "", reading + factor + "; the table's own source is in the plan" + also);
    }
}
