package dev.underprop.engine.assess;

import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.statics.Contact;
import dev.underprop.engine.statics.Solution;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Says in words what moves and why nothing stops it. */
final class Mechanism {

    private final JobPlan plan;
    private final PlanFrame frame;
    private final Names names;

    Mechanism(JobPlan plan, PlanFrame frame, Names names) {
        this.plan = plan;
        this.frame = frame;
        this.names = names;
    }

    String describe(Solution solution) {
        if (solution.outcome() == Solution.Outcome.NOT_SETTLED) {
            return "no set of pressing contacts was found in which everything holds";
        }
        BitSet loose = solution.loose();
        List<String> sentences = new ArrayList<>();
        for (int m = loose.nextSetBit(0); m >= 0; m = loose.nextSetBit(m + 1)) {
            sentences.add(describe(m, solution));
        }
        int shown = Math.min(3, sentences.size());
        String text = String.join("; ", sentences.subList(0, shown));
        return sentences.size() > shown ? text + "; and " + (sentences.size() - shown) + " more like these" : text;
    }

    private String describe(int member, Solution solution) {
        List<String> pressing = new ArrayList<>();
        List<String> lifted = new ArrayList<>();
        for (int c = 0; c < frame.places().size(); c++) {
            String support = supportOf(c, member);
            if (!support.isEmpty() && !solution.absent(c)) {
                (solution.closed(c) ? pressing : lifted).add(support);
            }
        }
        String name = names.member(member);
        if (pressing.isEmpty()) {
            return name + " rests on nothing";
        }
        String off = lifted.isEmpty() ? "nothing else is under it" : "it lifts off " + String.join(" and ", lifted);
        return pressing.size() == 1
                ? name + " turns over " + pressing.get(0) + ": " + off
                : name + " is not held by what it rests on (" + String.join(", ", pressing) + "): " + off;
    }

    private String supportOf(int c, int member) {
        ContactPlace place = frame.places().get(c);
        if (place instanceof ContactPlace.OnBearing seat && seat.joist() == member) {
            return names.bearing(seat.bearing());
        }
        if (place instanceof ContactPlace.OnShore seat && seat.joist() == member) {
            return plan.shores().get(seat.shore()).name();
        }
        if (frame.frame().contacts().get(c) instanceof Contact.OnProp prop
                && frame.frame().carrierMember(prop.carrier()) == member) {
            return place instanceof ContactPlace.OnPier pier
                    ? names.pier(pier.bearing(), pier.pier())
                    : names.contact(place);
        }
        return "";
    }
}
