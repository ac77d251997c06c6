package dev.underprop.wire.meaning;

import dev.underprop.api.model.Post;
import dev.underprop.engine.plan.Pad;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Reads the posts of a shore. The list comes back in order of x. */
final class PostsReader {

    /** Posts nearer than this are in one place (m). */
    private static final double SAME_PLACE = 1e-3;

    private final NameTable<PostTypesReader.Draft> types;
    private final NameTable<Supplier<Pad>> pads;

    PostsReader(NameTable<PostTypesReader.Draft> types, NameTable<Supplier<Pad>> pads) {
        this.types = types;
        this.pads = pads;
    }

    List<PostDraft> read(List<Post> posts, Spot spot) {
        List<PostDraft> drafts = new ArrayList<>();
        for (int i = 0; i < posts.size(); i++) {
            drafts.add(read(posts.get(i), spot.element(i)));
        }
        drafts.sort(Comparator.comparingDouble(PostDraft::x));
        for (int i = 1; i < drafts.size(); i++) {
            PostDraft one = drafts.get(i - 1);
            PostDraft other = drafts.get(i);
            if (other.x() - one.x() < SAME_PLACE) {
                other.spot()
                        .member("at")
                        .report(Messages.POSTS_TOO_CLOSE, "", Fault.shown(one.name()), Fault.shown(other.name()));
            }
        }
        return drafts;
    }

    /** One post. */
    PostDraft read(Post post, Spot at) {
        Text typeName = at.text("type", post.getType());
        Text padName = at.text("pad", post.getPad());
        Optional<PostTypesReader.Draft> type =
                typeName.given() ? types.find(typeName.value(), typeName.spot()) : Optional.empty();
        Optional<Supplier<Pad>> pad = padName.given() ? pads.find(padName.value(), padName.spot()) : Optional.empty();
        double gap = at.text("gap", post.getGap()).quantityOr(Range.CLEARANCE, 0);
        double lift = at.text("lift", post.getLift()).quantityOr(Range.CLEARANCE, 0);
        if (gap > 0 && lift > 0) {
            at.member("lift").report(Messages.LIFT_WITH_GAP, "", Fault.shown(post.getName()));
        }
        return new PostDraft(
                at,
                post.getName(),
                at.text("at", post.getAt()).quantity(Range.POSITION),
                at.text("height", post.getHeight()).quantity(Range.HEIGHT),
                stiffness(post, type, at),
                gap,
                lift,
                type.map(PostTypesReader.Draft::type),
                pad,
                ends(post, type, at));
    }

    /** Its own, else that of its type; a post that is said not to be rigid does not become so by its type. */
    private static dev.underprop.engine.plan.Post.Stiffness stiffness(
            Post post, Optional<PostTypesReader.Draft> type, Spot at) {
        StiffnessReader.Said said = new StiffnessReader.Said(
                at.truth("rigid", post.getRigid()),
                at.text("stiffness", post.getStiffness()),
                at.text("soft", post.getSoft()),
                at.text("stiff", post.getStiff()));
        boolean notRigid = Boolean.FALSE.equals(post.getRigid());
        return StiffnessReader.read(said)
                .or(() -> type.flatMap(PostTypesReader.Draft::stiffness)
                        .filter(taken -> !(notRigid && taken instanceof dev.underprop.engine.plan.Post.Rigid)))
                .orElse(new dev.underprop.engine.plan.Post.NoStiffness());
    }

    private static dev.underprop.engine.plan.Post.Ends ends(Post post, Optional<PostTypesReader.Draft> type, Spot at) {
        dev.underprop.engine.plan.Post.Ends own = EndReader.read(post.getHead(), post.getFoot(), at);
        return type.map(its -> EndReader.or(own, its.ends())).orElse(own);
    }
}
