package dev.underprop.wire.meaning;

import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import java.util.Optional;
import java.util.function.Supplier;

/** A post as far as it was understood; NaN where a quantity was faulty. */
record PostDraft(
        Spot spot,
        String name,
        double x,
        double height,
        Post.Stiffness stiffness,
        double gap,
        double lift,
        Optional<Supplier<PostType>> type,
        Optional<Supplier<Pad>> pad,
        Post.Ends ends) {

    Post post() {
        Post.Type its = type.isPresent() ? type.get().get() : new Post.NoType();
        Post.Footing footing = pad.isPresent() ? pad.get().get() : new Post.NoPad();
        return new Post(name, x, height, stiffness, gap, lift, its, footing, ends);
    }
}
