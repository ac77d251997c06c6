package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.plan.Excavation;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.standard.Citation;
import java.util.List;

/** The checks of a pad that does not stand yet, each made by the judge that judges a given one. */
public final class PadChecks {

    private final Site site;

    /** @param site where the pads will stand */
    public PadChecks(Site site) {
        this.site = site;
    }

    /**
     * Where pads stand.
     *
     * @param ground under them
     * @param excavation cuts beside them
     * @param settlement how far they may settle
     */
    public record Site(Ground ground, Excavation excavation, Limits.Settlement settlement) {}

    /**
     * A post on a pad.
     *
     * @param post with its pad
     * @param y of its shore (m)
     * @param load on it
     * @param least least load on it (N)
     * @param nearest distance to the nearest other post that may stand on a slab (m), infinite where there is none
     */
    public record Standing(Post post, double y, PadLoad load, double least, double nearest) {
        /** As settlement sees it. */
        public PadSettlement.Loaded loaded() {
            return new PadSettlement.Loaded(post, least, load.greatest());
        }

        /** As its neighbours see it. */
        public PadOverlap.Placed placed() {
            return new PadOverlap.Placed(post, y);
        }
    }

    /** Pressure on the ground: cheap, and what most pads fail. */
    public CheckResult pressure(Standing on) {
        Finding finding = PadPressure.judge(on.post, site.ground, on.load.greatest());
        return result(CheckId.PAD_SOIL_BEARING, on, finding, PadPressure.citation(site.ground));
    }

    /** The pad itself. */
    public CheckResult strength(Standing on) {
        Finding finding = PadStrength.judge(on.post, site.ground, on.load, on.nearest);
        return result(CheckId.PAD_STRENGTH, on, finding, PadStrength.citation(on.post));
    }

    /** The base plate on it. */
    public CheckResult plate(Standing on) {
        Finding finding =
                BasePlateJudge.judge(on.post, BasePlateJudge.material(on.post), on.load.greatest(), on.load.factored());
        return result(CheckId.BASE_PLATE_BEARING, on, finding, BasePlateJudge.rule(on.post));
    }

    /** Load off its middle. */
    public CheckResult eccentricity(Standing on) {
        Finding finding = PadEccentricity.judge(on.post, site.ground, on.load);
        return result(CheckId.PAD_ECCENTRICITY, on, finding, PadEccentricity.citation());
    }

    /** Settlement, also against others of its shore. */
    public CheckResult settlement(Standing on, List<PadSettlement.Loaded> others) {
        Finding finding = PadSettlement.judge(on.loaded(), others, site.ground, site.settlement);
        return result(CheckId.PAD_SETTLEMENT, on, finding, PadSettlement.citation(site.ground));
    }

    /** Cuts beside it. */
    public CheckResult cut(Standing on) {
        Finding finding = CutBeside.judge(site.excavation, on.post, on.y);
        return result(CheckId.EXCAVATION, on, finding, CutBeside.citation());
    }

    /** Other pads. */
    public CheckResult overlap(Standing on, List<PadOverlap.Placed> others) {
        return result(
                CheckId.PAD_OVERLAP, on, PadOverlap.judge(on.placed(), others, site.ground), PadOverlap.citation());
    }

    /** All of them, in table order. */
    public List<CheckResult> all(Standing on, List<PadOverlap.Placed> near, List<PadSettlement.Loaded> shore) {
        return List.of(
                pressure(on),
                overlap(on, near),
                strength(on),
                plate(on),
                eccentricity(on),
                settlement(on, shore),
                cut(on));
    }

    private static CheckResult result(CheckId id, Standing on, Finding finding, Citation rule) {
        return new CheckResult(id, on.post.name(), finding, new CheckResult.NoCase(), rule);
    }
}
