package dev.underprop.engine.assess;

import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.statics.Contact;
import dev.underprop.engine.statics.Frame;
import dev.underprop.engine.statics.Rules;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The structure of a plan with everything that is there in any situation, and which contact of it is what. Carriers are the
 * shore beams, then the girders. Gaps and lifts of posts are not in it: they come with the situations.
 *
 * @param frame for statics
 * @param places what each contact of the frame is
 */
record PlanFrame(JobPlan plan, Frame frame, List<ContactPlace> places) {

    static PlanFrame of(JobPlan plan) {
        List<Contact> contacts = new ArrayList<>();
        List<ContactPlace> places = new ArrayList<>();
        List<Joist> joists = plan.floor().joists();
        for (int j = 0; j < joists.size(); j++) {
            addBearings(plan, j, contacts, places);
            addShores(plan, j, contacts, places);
        }
        for (int s = 0; s < plan.shores().size(); s++) {
            addPosts(plan.shores().get(s), s, contacts, places);
        }
        addPiers(plan, contacts, places);
        List<Frame.Joist> lines = joists.stream()
                .map(j -> new Frame.Joist(j.x(), j.start(), j.end(), TimberCapacity.rigidity(j.member())))
                .toList();
        return new PlanFrame(plan, new Frame(lines, carriers(plan), contacts), List.copyOf(places));
    }

    private static List<Frame.Carrier> carriers(JobPlan plan) {
        List<Frame.Carrier> carriers = new ArrayList<>();
        plan.shores()
                .forEach(s ->
                        carriers.add(new Frame.Carrier(s.y(), s.start(), s.end(), TimberCapacity.rigidity(s.beam()))));
        for (Bearing bearing : plan.floor().bearings()) {
            if (bearing.body() instanceof Girder girder) {
                carriers.add(new Frame.Carrier(
                        bearing.y(), girder.start(), girder.end(), TimberCapacity.rigidity(girder.member())));
            }
        }
        return carriers;
    }

    private static void addBearings(JobPlan plan, int j, List<Contact> contacts, List<ContactPlace> places) {
        Joist joist = plan.floor().joists().get(j);
        int carrier = plan.shores().size();
        for (int b = 0; b < plan.floor().bearings().size(); b++) {
            Bearing bearing = plan.floor().bearings().get(b);
            boolean girder = bearing.body() instanceof Girder;
            if (bearing.under(joist)) {
                boolean held = !(bearing.fastening() instanceof Fastening.Loose);
                contacts.add(
                        girder
                                ? new Contact.OnCarrier(j, carrier, bearing.gapUnder(j), held)
                                : new Contact.OnGround(j, bearing.y(), bearing.stiffness(), bearing.gapUnder(j), held));
                places.add(new ContactPlace.OnBearing(j, b));
            }
            carrier += girder ? 1 : 0;
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

    private static void addPosts(Shore shore, int s, List<Contact> contacts, List<ContactPlace> places) {
        for (int p = 0; p < shore.posts().size(); p++) {
            contacts.add(new Contact.OnProp(s, shore.posts().get(p).x(), Double.POSITIVE_INFINITY, 0, false));
            places.add(new ContactPlace.OnPost(s, p));
        }
    }

    private static void addPiers(JobPlan plan, List<Contact> contacts, List<ContactPlace> places) {
        int carrier = plan.shores().size();
        for (int b = 0; b < plan.floor().bearings().size(); b++) {
            if (plan.floor().bearings().get(b).body() instanceof Girder girder) {
                for (int p = 0; p < girder.piers().size(); p++) {
                    Girder.Pier pier = girder.piers().get(p);
                    boolean held = !(pier.fastening() instanceof Fastening.Loose);
                    contacts.add(new Contact.OnProp(carrier, pier.x(), pier.stiffness(), 0, held));
                    places.add(new ContactPlace.OnPier(b, p));
                }
                carrier++;
            }
        }
    }

    int contacts() {
        return places.size();
    }

    /** The member that a contact holds up, numbered as in {@link Frame}. */
    int held(int contact) {
        Contact one = frame.contacts().get(contact);
        if (one instanceof Contact.OnGround seat) {
            return seat.joist();
        }
        return one instanceof Contact.OnCarrier seat
                ? seat.joist()
                : frame.carrierMember(((Contact.OnProp) one).carrier());
    }

    /** Place of a contact along the member that it holds up (m). */
    double at(int contact) {
        Contact one = frame.contacts().get(contact);
        if (one instanceof Contact.OnGround seat) {
            return seat.y();
        }
        return one instanceof Contact.OnCarrier seat
                ? frame.carriers().get(seat.carrier()).y()
                : ((Contact.OnProp) one).x();
    }

    /** What holds the carried member down at a contact; loose at posts and shores. */
    Fastening fastening(int contact) {
        ContactPlace place = places.get(contact);
        if (place instanceof ContactPlace.OnBearing seat) {
            return plan.floor().bearings().get(seat.bearing()).fastening();
        }
        return place instanceof ContactPlace.OnPier head
                ? ((Girder) plan.floor().bearings().get(head.bearing()).body())
                        .piers()
                        .get(head.pier())
                        .fastening()
                : new Fastening.Loose();
    }

    /** Whether a contact is taken away in a situation. */
    boolean taken(int contact, Situation situation) {
        ContactPlace place = places.get(contact);
        if (place instanceof ContactPlace.OnBearing seat) {
            return situation.takes(seat.bearing(), plan.floor().joists().get(seat.joist()));
        }
        return place instanceof ContactPlace.OnPier head && situation.takesPier(head.bearing(), head.pier());
    }

    /** Contacts taken away in a situation. */
    BitSet taken(Situation situation) {
        BitSet taken = new BitSet();
        for (int c = 0; c < contacts(); c++) {
            taken.set(c, taken(c, situation));
        }
        return taken;
    }

    /** The rules of a situation. */
    Rules rules(Situation situation, Setting.Ties ties) {
        return new Rules(taken(situation), fastened(ties));
    }

    /** Contacts that hold down. */
    BitSet fastened(Setting.Ties ties) {
        BitSet fastened = new BitSet();
        for (int c = 0; c < contacts(); c++) {
            Fastening fastening = fastening(c);
            fastened.set(
                    c,
                    switch (ties) {
                        case HOLD -> !(fastening instanceof Fastening.Loose);
                        case DESCRIBED -> fastening instanceof Fastening.Held;
                        case RELEASED -> false;
                    });
        }
        return fastened;
    }
}
