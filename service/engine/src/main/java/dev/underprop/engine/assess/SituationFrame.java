package dev.underprop.engine.assess;

import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.statics.Contact;
import dev.underprop.engine.statics.Frame;
import java.util.ArrayList;
import java.util.List;

/**
 * The structure of one situation, and which contact of it is what in the plan.
 *
 * @param frame for statics
 * @param places what each contact of the frame is
 */
record SituationFrame(Frame frame, List<ContactPlace> places) {

    static SituationFrame of(JobPlan plan, Situation situation) {
        List<Contact> contacts = new ArrayList<>();
        List<ContactPlace> places = new ArrayList<>();
        List<Joist> joists = plan.floor().joists();
        for (int j = 0; j < joists.size(); j++) {
            addBearings(plan, situation, j, contacts, places);
            addShores(plan, j, contacts, places);
        }
        for (int s = 0; s < plan.shores().size(); s++) {
            addPosts(plan.shores().get(s), s, situation, contacts, places);
        }
        List<Frame.Joist> lines = joists.stream()
                .map(j -> new Frame.Joist(j.x(), j.start(), j.end(), TimberCapacity.rigidity(j.member())))
                .toList();
        List<Frame.Carrier> carriers = plan.shores().stream()
                .map(s -> new Frame.Carrier(s.y(), s.start(), s.end(), TimberCapacity.rigidity(s.beam())))
                .toList();
        return new SituationFrame(new Frame(lines, carriers, contacts), List.copyOf(places));
    }

    private static void addBearings(
            JobPlan plan, Situation situation, int j, List<Contact> contacts, List<ContactPlace> places) {
        Joist joist = plan.floor().joists().get(j);
        for (int b = 0; b < plan.floor().bearings().size(); b++) {
            Bearing bearing = plan.floor().bearings().get(b);
            if (bearing.under(joist) && !situation.removed().contains(b)) {
                boolean held = bearing.fastening() instanceof Fastening.Held;
                contacts.add(new Contact.OnGround(j, bearing.y(), bearing.stiffness(), bearing.gapUnder(j), held));
                places.add(new ContactPlace.OnBearing(j, b));
            }
        }
    }

    private static void addShores(JobPlan plan, int j, List<Contact> contacts, List<ContactPlace> places) {
        Joist joist = plan.floor().joists().get(j);
        for (int s = 0; s < plan.shores().size(); s++) {
            Shore shore = plan.shores().get(s);
            if (shore.under(joist)) {
                contacts.add(new Contact.OnCarrier(j, s, shore.gapUnder(j), false));
                places.add(new ContactPlace.OnShore(j, s));
            }
        }
    }

    private static void addPosts(
            Shore shore, int s, Situation situation, List<Contact> contacts, List<ContactPlace> places) {
        for (int p = 0; p < shore.posts().size(); p++) {
            Post post = shore.posts().get(p);
            double gap = post.gap() - situation.liftOf(s, p, post);
            contacts.add(new Contact.OnProp(s, post.x(), stiffness(post.stiffness()), gap, false));
            places.add(new ContactPlace.OnPost(s, p));
        }
    }

    private static double stiffness(Post.Stiffness stiffness) {
        if (stiffness instanceof Post.About about) {
            return about.value();
        }
        return stiffness instanceof Post.Between between ? between.soft() : Double.POSITIVE_INFINITY;
    }
}
