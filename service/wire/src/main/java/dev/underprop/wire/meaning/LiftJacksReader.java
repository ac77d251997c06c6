package dev.underprop.wire.meaning;

import dev.underprop.api.model.LiftJack;
import dev.underprop.api.model.Post;
import dev.underprop.engine.lift.LiftRequest;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads the jacks beside the posts: one a post, each read as a post of its own. */
final class LiftJacksReader {

    private final Spot at;
    private final NameTable<Integer> posts;
    private final List<String> postNames;
    private final PostsReader stands;

    LiftJacksReader(Spot at, NameTable<Integer> posts, List<String> postNames, PostsReader stands) {
        this.at = at;
        this.posts = posts;
        this.postNames = postNames;
        this.stands = stands;
    }

    /**
     * A jack as far as it was understood.
     *
     * @param post which it lifts free, counted over all shores; -1 where that was faulty
     */
    record Draft(Spot spot, int post, PostDraft stand, double stroke) {

        LiftRequest.Jack jack() {
            return new LiftRequest.Jack(post, stand.post(), stroke);
        }
    }

    List<Draft> read(List<LiftJack> jacks) {
        NameTable<Integer> names = NameTable.indexed("post or jack", postNames);
        Set<Integer> seen = new HashSet<>();
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < jacks.size(); i++) {
            LiftJack jack = jacks.get(i);
            Spot spot = at.element(i);
            names.add(jack.getName(), i, spot.member("name"));
            int post = posts.find(jack.getPost(), spot.member("post")).orElse(-1);
            if (post >= 0 && !seen.add(post)) {
                spot.member("post").report(Messages.JACK_TWICE, jack.getPost(), Fault.shown(jack.getPost()));
            }
            double stroke = spot.text("stroke", jack.getStroke()).quantity(Range.STROKE);
            drafts.add(new Draft(spot, post, stands.read(stand(jack), spot), stroke));
        }
        return drafts;
    }

    private static Post stand(LiftJack jack) {
        Post stand = new Post().name(jack.getName()).at(jack.getAt()).height(jack.getHeight());
        stand.setType(jack.getType());
        stand.setPad(jack.getPad());
        stand.setRigid(jack.getRigid());
        stand.setStiffness(jack.getStiffness());
        stand.setSoft(jack.getSoft());
        stand.setStiff(jack.getStiff());
        return stand;
    }
}
