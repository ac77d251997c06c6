package dev.underprop.engine.assess;

import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.JobPlan;

/** How places are called: in the plan's own names, the same everywhere. */
final class Names {

    private final JobPlan plan;

    Names(JobPlan plan) {
        this.plan = plan;
    }

    String joist(int joist) {
        return plan.floor().joists().get(joist).name();
    }

    String beam(int shore) {
        return "beam of " + plan.shores().get(shore).name();
    }

    String post(int shore, int post) {
        return plan.shores().get(shore).posts().get(post).name();
    }

    String bearing(int bearing) {
        return plan.floor().bearings().get(bearing).name();
    }

    String contact(ContactPlace place) {
        if (place instanceof ContactPlace.OnBearing seat) {
            return joist(seat.joist()) + " on " + bearing(seat.bearing());
        }
        if (place instanceof ContactPlace.OnShore seat) {
            return joist(seat.joist()) + " on "
                    + plan.shores().get(seat.shore()).name();
        }
        if (place instanceof ContactPlace.OnPier pier) {
            return bearing(pier.bearing()) + " on " + pier(pier.bearing(), pier.pier());
        }
        ContactPlace.OnPost head = (ContactPlace.OnPost) place;
        return post(head.shore(), head.post());
    }

    String pier(int bearing, int pier) {
        return ((Girder) plan.floor().bearings().get(bearing).body())
                .piers()
                .get(pier)
                .name();
    }

    /** Member of the frame: joists first, then shore beams, then girders. */
    String member(int member) {
        int joists = plan.floor().joists().size();
        if (member < joists) {
            return joist(member);
        }
        int carrier = member - joists;
        return carrier < plan.shores().size()
                ? beam(carrier)
                : girder(carrier - plan.shores().size());
    }

    private String girder(int girder) {
        return plan.floor().bearings().stream()
                .filter(b -> b.body() instanceof Girder)
                .skip(girder)
                .findFirst()
                .orElseThrow()
                .name();
    }
}
