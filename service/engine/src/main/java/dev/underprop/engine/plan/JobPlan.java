package dev.underprop.engine.plan;

import dev.underprop.engine.standard.Basis;
import java.util.List;

/**
 * One job: a floor, the shores under it and the situations to be survived.
 *
 * @param basis the standards to apply
 * @param floor joists, what they rest on and what they carry
 * @param shores shore beams with their posts
 * @param ground what the pads stand on
 * @param situations states of the job, in order
 * @param circumstances what stands around the structure itself
 */
public record JobPlan(
        Basis basis,
        Floor floor,
        List<Shore> shores,
        Ground ground,
        List<Situation> situations,
        Circumstances circumstances) {

    /** A plan that says nothing of its circumstances. */
    public JobPlan(Basis basis, Floor floor, List<Shore> shores, Ground ground, List<Situation> situations) {
        this(basis, floor, shores, ground, situations, Circumstances.UNSTATED);
    }

    /** The girders among the bearings, in their order. */
    public List<Girder> girders() {
        return floor.bearings().stream()
                .filter(b -> b.body() instanceof Girder)
                .map(b -> (Girder) b.body())
                .toList();
    }

    public JobPlan {
        shores = List.copyOf(shores);
        situations = List.copyOf(situations);
        if (situations.isEmpty()) {
            throw new IllegalArgumentException("a plan needs at least one situation");
        }
    }
}
