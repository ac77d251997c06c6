package dev.underprop.engine.plan;

/**
 * What stands around the structure itself.
 *
 * @param floorRestraint what holds the floor sideways
 * @param lateral sideways loads given by the engineer of the job
 * @param excavation cuts near the pads
 * @param intake questions asked on site
 * @param limits tolerances and limits
 */
public record Circumstances(
        Restraint.Sides floorRestraint, Lateral lateral, Excavation excavation, Intake intake, Limits limits) {

    /** The plan says nothing of any of them. */
    public static final Circumstances UNSTATED = new Circumstances(
            Restraint.Sides.UNDECLARED,
            new Lateral.Unstated(),
            new Excavation.Unstated(),
            Intake.EMPTY,
            Limits.DEFAULT);
}
