package dev.underprop.wire.meaning;

import dev.underprop.api.model.JobPlan;
import dev.underprop.api.model.Load;
import dev.underprop.engine.plan.Circumstances;

/** Reads what stands around the structure itself. */
final class CircumstancesReader {

    private CircumstancesReader() {}

    static Circumstances read(JobPlan model, Spot root) {
        NameTable<Integer> loads = NameTable.indexed(
                "load", model.getFloor().getLoads().stream().map(Load::getName).toList());
        return new Circumstances(
                RestraintReader.sides(model.getRestraint(), root.member("restraint")),
                LateralReader.read(model.getLateral(), root.member("lateral")),
                ExcavationReader.read(model.getExcavation(), root.member("excavation")),
                new IntakeReader(loads).read(model.getIntake(), root.member("intake")),
                LimitsReader.read(model.getLimits(), root.member("limits")));
    }
}
