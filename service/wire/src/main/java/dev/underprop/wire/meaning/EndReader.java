package dev.underprop.wire.meaning;

import dev.underprop.api.model.PostEnd;
import dev.underprop.engine.plan.LagScrews;
import dev.underprop.engine.plan.Post;
import dev.underprop.wire.fault.Messages;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads what holds an end of a post. After a fault was reported, nothing is declared. */
final class EndReader {

    private EndReader() {}

    static Post.Ends read(@Nullable PostEnd head, @Nullable PostEnd foot, Spot post) {
        return new Post.Ends(read(head, post.member("head")), read(foot, post.member("foot")));
    }

    /** Each end as the post declares it, else as its type does. */
    static Post.Ends or(Post.Ends own, Post.Ends type) {
        return new Post.Ends(or(own.head(), type.head()), or(own.foot(), type.foot()));
    }

    private static Post.End or(Post.End own, Post.End type) {
        return own instanceof Post.Undeclared ? type : own;
    }

    private static Post.End read(@Nullable PostEnd end, Spot at) {
        if (end == null) {
            return new Post.Undeclared();
        }
        Text by = at.text("by", end.getBy());
        Text sideways = at.text("sideways", end.getSideways());
        double force = sideways.quantityOr(Range.CAPACITY, Double.NaN);
        Optional<LagScrews> screws = LagScrewsReader.read(end.getLagScrews(), at.member("lagScrews"));
        boolean loose = Boolean.TRUE.equals(end.getLoose());
        if (loose && (by.given() || sideways.given() || end.getLagScrews() != null)) {
            at.report(Messages.POST_END_TWO_WAYS, "");
        } else if (loose) {
            return new Post.Unfastened();
        } else if (!by.given()) {
            at.report(Messages.POST_END_UNSTATED, "");
        } else if (by.said()) {
            return new Post.Fastened(
                    by.value(), force, screws.<Post.Screws>map(s -> s).orElseGet(Post.NoScrews::new));
        }
        return new Post.Undeclared();
    }
}
