package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The theories of bearing capacity, each with its author's factors and corrections and no other's. */
public enum BearingMethod {
    TERZAGHI("terzaghi", Terzaghi.CHART, Terzaghi::charted, BearingMethod::upright, Terzaghi::ultimate),
    TERZAGHI_KUMBHOJKAR(
            "terzaghi-kumbhojkar", Terzaghi.ANEW, Terzaghi::kumbhojkar, BearingMethod::upright, Terzaghi::ultimate),
    MEYERHOF("meyerhof", Meyerhof.RULE, Meyerhof::factors, Meyerhof::inclination, Meyerhof::ultimate),
    HANSEN("hansen", Hansen.RULE, Hansen::factors, Hansen::inclination, Hansen::ultimate),
    VESIC("vesic", Vesic.RULE, Vesic::factors, Vesic::inclination, Vesic::ultimate),
    EN_1997("en-1997-1-annex-d", AnnexD.RULE, AnnexD::factors, AnnexD::inclination, AnnexD::ultimate);

    private interface OfFriction {
        Factors at(double friction);
    }

    private interface OfPush {
        Inclination at(Soil soil, Base base, Push push, Factors factors);
    }

    private interface OfBase {
        double at(Soil soil, Base base, Factors factors, Inclination inclination);
    }

    private final String id;
    private final Citation citation;

    @SuppressWarnings("ImmutableEnumChecker") // methods without state
    private final OfFriction factors;

    @SuppressWarnings("ImmutableEnumChecker") // methods without state
    private final OfPush inclination;

    @SuppressWarnings("ImmutableEnumChecker") // methods without state
    private final OfBase ultimate;

    BearingMethod(String id, Citation citation, OfFriction factors, OfPush inclination, OfBase ultimate) {
        this.id = id;
        this.citation = citation;
        this.factors = factors;
        this.inclination = inclination;
        this.ultimate = ultimate;
    }

    /** As plans write it. */
    public String id() {
        return id;
    }

    /** Where factors and corrections stand. */
    public Citation citation() {
        return citation;
    }

    /** All ids, in order. */
    public static List<String> ids() {
        return Arrays.stream(values()).map(BearingMethod::id).toList();
    }

    /** The method of an id. */
    public static Optional<BearingMethod> named(String id) {
        return Arrays.stream(values()).filter(m -> m.id.equals(id)).findFirst();
    }

    /** Whether its author says what a load bears that is not upright; Terzaghi does not. */
    public boolean inclines() {
        return this != TERZAGHI && this != TERZAGHI_KUMBHOJKAR;
    }

    /** @param friction angle (rad), from 0 to {@link Soil#STEEPEST} */
    public Factors factors(double friction) {
        return factors.at(friction);
    }

    /**
     * What a sideways push leaves of each part, by the author's own factors.
     *
     * @param push under which the ground does not shear off at the base itself
     * @throws IllegalArgumentException of a push that is not upright where the author has none
     */
    public Inclination inclination(Soil soil, Base base, Push push) {
        return push.tilt() == 0 ? Inclination.NONE : inclination.at(soil, base, push, factors.at(soil.friction()));
    }

    /** Ultimate pressure on the ground under an upright load (Pa), gross: the overburden beside the base is in it. */
    public Cited ultimate(Soil soil, Base base) {
        return ultimate(soil, base, Push.UPRIGHT);
    }

    /**
     * Ultimate pressure on the ground (Pa), gross; 0 where the ground shears off at the base itself.
     *
     * @throws IllegalArgumentException of a push that is not upright where the author has none
     */
    public Cited ultimate(Soil soil, Base base, Push push) {
        if (push.slides(soil)) {
            return new Cited(0, "qu", citation);
        }
        Inclination inclined = inclination(soil, base, push);
        return new Cited(ultimate.at(soil, base, factors.at(soil.friction()), inclined), "qu", citation);
    }

    private static Inclination upright(Soil soil, Base base, Push push, Factors factors) {
        throw new IllegalArgumentException("Terzaghi has no factors for a load that is not upright");
    }
}
