package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.standard.Citation;
import java.util.List;

/**
 * A post against its rating table. Between rows the taller row's value holds, below the first row the first row's; above
 * the last row there is no rating. Linear interpolation only where the plan asks for it.
 */
final class PostJudge {

    static final Citation RULE = Citation.remembered(
            "common practice, no source",
            "",
            "rating table read on the safe side; the table's own source is in the plan");

    private PostJudge() {}

    /**
     * @param load on the post (N)
     * @param lift how far it is raised beyond its stated height (m)
     */
    static Finding judge(Post post, double load, double lift) {
        if (!(post.type() instanceof PostType type)) {
            return new CheckResult.NotChecked("no post type is named");
        }
        if (!(type.rating() instanceof PostType.Table table)) {
            return new CheckResult.NotChecked("post type " + type.name() + " has no rating");
        }
        double height = post.height() + lift;
        List<PostType.Row> rows = table.rows();
        if (height > rows.get(rows.size() - 1).height()) {
            return new CheckResult.Refused(
                    Measure.FORCE, load, "the post stands taller than the last row of its rating table");
        }
        return new CheckResult.Judged(Measure.FORCE, load, rating(table, height) / table.factor());
    }

    private static double rating(PostType.Table table, double height) {
        List<PostType.Row> rows = table.rows();
        int i = 0;
        while (rows.get(i).height() < height) {
            i++;
        }
        PostType.Row above = rows.get(i);
        if (i == 0 || !table.interpolate()) {
            return above.load();
        }
        PostType.Row below = rows.get(i - 1);
        double part = (height - below.height()) / (above.height() - below.height());
        return below.load() + part * (above.load() - below.load());
    }
}
