package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
import java.util.List;

/**
 * A post against what its type declares; here its rating table. Between rows the taller row's value holds, below the first
 * row the first row's; above the last row there is no rating. Linear interpolation only where the plan asks for it.
 */
final class PostJudge {

    private static final String PRACTICE = "common practice, no source";
    private static final String READING = "rating table read on the safe side";

    private static final Citation RULE = Citation.remembered(
            "common practice, no source",
            "",
            "rating table read on the safe side; the table's own source is in the plan");

    static final Citation TUBE =
            Citation.remembered("AISC", "360-16", "E3, F8 and H1.1, amplified by Appendix 8, pinned ends");

    private PostJudge() {}

    /** As {@link #judge(Post, double, double, double, double, Working)}, without a record. */
    static PostMethods.Ruling judge(Post post, double load, double lift, double lean, double beam) {
        return judge(post, load, lift, lean, beam, Working.OFF);
    }

    /**
     * @param load on the post (N)
     * @param lift how far it is raised beyond its stated height (m)
     * @param lean of posts (rad), not negative
     * @param beam breadth of the beam on its head (m), positive
     */
    static PostMethods.Ruling judge(Post post, double load, double lift, double lean, double beam, Working working) {
        working.plan("h0", "height as set", Dimension.LENGTH, post.height());
        working.plan("u", "by which it is raised", Dimension.LENGTH, lift);
        double height = working.step("h", "height", Dimension.LENGTH, post.height() + lift, "h0 + u");
        working.analysis("P", "greatest load of the post", Dimension.FORCE, load);
        return post.type() instanceof PostType type
                ? PostMethods.rule(type, height, load, lean, beam, working)
                : new PostMethods.Ruling(new CheckResult.NotChecked("no post type is named (declare: type)"), RULE);
    }

    static Finding rated(PostType.Table table, double height, double load, Working working) {
        working.onSite();
        List<PostType.Row> rows = table.rows();
        if (height > rows.get(rows.size() - 1).height()) {
            double last = rows.get(rows.size() - 1).height();
            working.plan("hmax", "height of the last row of its rating table", Dimension.LENGTH, last);
            return working.compared(
                    "P",
                    "",
                    new CheckResult.Refused(
                            Measure.FORCE, load, "the post stands taller than the last row of its rating table"));
        }
        double rating = rating(table, height, working);
        working.plan("s", "by which the table's values are divided", Dimension.NUMBER, table.factor());
        double allowed =
                working.step("Pa", "allowed by the rating table", Dimension.FORCE, rating / table.factor(), "R / s");
        return working.compared("P", "Pa", new CheckResult.Judged(Measure.FORCE, load, allowed));
    }

    /** A rating never grows with height: a table in which it does is read at its least value up to there. */
    private static double rating(PostType.Table table, double height, Working working) {
        List<PostType.Row> rows = table.rows();
        int i = 0;
        double least = rows.get(0).load();
        while (rows.get(i).height() < height) {
            i++;
            least = Math.min(least, rows.get(i).load());
        }
        PostType.Row above = rows.get(i);
        working.plan("h2", "height of the row that is not below it", Dimension.LENGTH, above.height());
        if (i == 0 || !table.interpolate() || least < above.load()) {
            return working.plan("R", "least rating up to that row", Dimension.FORCE, least);
        }
        PostType.Row below = rows.get(i - 1);
        working.plan("R2", "its rating", Dimension.FORCE, above.load());
        working.plan("h1", "height of the row before", Dimension.LENGTH, below.height());
        working.plan("R1", "its rating", Dimension.FORCE, below.load());
        double part = (height - below.height()) / (above.height() - below.height());
        return working.step(
                "R",
                "rating between the rows, as the plan asks",
                Dimension.FORCE,
                below.load() + part * (above.load() - below.load()),
                "R1 + ( h - h1 ) / ( h2 - h1 ) × ( R2 - R1 )");
    }

    /** The rule of a table, said in full. */
    static Citation reading(PostType.Table table) {
        String reading = table.interpolate() ? "rating table interpolated between rows, as the plan asks" : READING;
        String factor = table.factor() > 1 ? "; characteristic values divided by " + table.factor() : "";
        return Citation.remembered(PRACTICE, "", reading + factor + "; the table's own source is in the plan");
    }
}
