package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Excavation;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.standard.Citation;
import java.util.List;
import java.util.function.Function;

/** The checks of a pad that does not stand yet, each made by the judge that judges a given one. */
public final class PadChecks {

    private final Site site;
    private final boolean wanted;

    /** @param site where the pads will stand */
    public PadChecks(Site site) {
        this(site, false);
    }

    /**
     * @param site where the pads will stand
     * @param working whether calculation records are wanted
     */
    public PadChecks(Site site, boolean working) {
        this.site = site;
        this.wanted = working;
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
            return new PadSettlement.Loaded(post, y, least, load.greatest());
        }

        /** As its neighbours see it. */
        public PadOverlap.Placed placed() {
            return new PadOverlap.Placed(post, y, load.greatest());
        }
    }

    /** Pressure on the ground: cheap, and what most pads fail. */
    public CheckResult pressure(Standing on) {
        Citation rule = PadPressure.citation(site.ground);
        return told(CheckId.PAD_SOIL_BEARING, on, rule, w -> PadPressure.judge(on.post, site.ground, on.load, w));
    }

    /** The pad itself. */
    public CheckResult strength(Standing on) {
        Citation rule = PadStrength.citation(on.post);
        return told(
                CheckId.PAD_STRENGTH, on, rule, w -> PadStrength.judge(on.post, site.ground, on.load, on.nearest, w));
    }

    /** The base plate on it. */
    public CheckResult plate(Standing on) {
        BasePlateJudge.Material material = BasePlateJudge.material(on.post);
        return told(
                CheckId.BASE_PLATE_BEARING,
                on,
                BasePlateJudge.rule(on.post),
                w -> BasePlateJudge.judge(on.post, material, on.load.greatest(), on.load.factored(), w));
    }

    /** Load off its middle. */
    public CheckResult eccentricity(Standing on) {
        Citation rule = PadEccentricity.citation();
        return told(CheckId.PAD_ECCENTRICITY, on, rule, w -> PadEccentricity.judge(on.post, site.ground, on.load, w));
    }

    /**
     * Settlement, also against others.
     *
     * @param shore the other posts of its shore
     * @param beyond those of other shores
     */
    public CheckResult settlement(Standing on, List<PadSettlement.Loaded> shore, List<PadSettlement.Loaded> beyond) {
        return told(
                CheckId.PAD_SETTLEMENT,
                on,
                PadSettlement.citation(site.ground),
                w -> PadSettlement.judge(on.loaded(), shore, beyond, site.ground, site.settlement, w));
    }

    /** Cuts beside it. */
    public CheckResult cut(Standing on) {
        return told(
                CheckId.EXCAVATION,
                on,
                CutBeside.citation(),
                w -> CutBeside.judge(site.excavation, on.post, on.y, site.ground));
    }

    /** Other pads. */
    public CheckResult overlap(Standing on, List<PadOverlap.Placed> others) {
        return told(
                CheckId.PAD_OVERLAP,
                on,
                PadOverlap.citation(),
                w -> PadOverlap.judge(on.placed(), others, site.ground));
    }

    /**
     * The posts around one.
     *
     * @param all with what they stand on
     * @param shore those of its own shore
     * @param beyond those of other shores
     */
    public record Around(
            List<PadOverlap.Placed> all, List<PadSettlement.Loaded> shore, List<PadSettlement.Loaded> beyond) {

        /** None. */
        public static final Around NOBODY = new Around(List.of(), List.of(), List.of());

        public Around {
            all = List.copyOf(all);
            shore = List.copyOf(shore);
            beyond = List.copyOf(beyond);
        }
    }

    /** All of them, in table order. */
    public List<CheckResult> all(Standing on, Around around) {
        return List.of(
                pressure(on),
                overlap(on, around.all),
                strength(on),
                plate(on),
                eccentricity(on),
                settlement(on, around.shore, around.beyond),
                cut(on));
    }

    private CheckResult told(CheckId id, Standing on, Citation rule, Function<Working, Finding> judge) {
        Working working = Working.when(wanted);
        Finding finding = judge.apply(working);
        return new CheckResult(id, on.post.name(), finding, new CheckResult.NoCase(), rule, working.steps(finding));
    }
}
