package dev.underprop.engine.load;

import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Shore;
import java.util.List;

/** A plan without loads but with members that weigh something. */
final class Heavy {

    private Heavy() {}

    static JobPlan of(JobPlan plan, double joistWeight, double beamWeight) {
        List<Joist> joists = plan.floor().joists().stream()
                .map(j -> new Joist(j.name(), j.x(), j.start(), j.length(), weighing(j.member(), joistWeight)))
                .toList();
        List<Shore> shores = plan.shores().stream()
                .map(s -> new Shore(
                        s.name(), s.y(), weighing(s.beam(), beamWeight), s.start(), s.length(), s.gaps(), s.posts()))
                .toList();
        Floor floor = new Floor(joists, plan.floor().bearings(), List.of(), Floor.JoistWeight.ADDED);
        return new JobPlan(plan.basis(), floor, shores, plan.ground(), plan.situations());
    }

    private static Member weighing(Member m, double weight) {
        return new Member(m.label(), m.ply(), m.plies(), m.grade(), m.nominal(), m.moisture(), weight);
    }
}
