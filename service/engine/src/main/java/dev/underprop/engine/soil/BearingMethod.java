package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The theories of bearing capacity, each with its author's factors and corrections and no other's. */
public enum BearingMethod {
    TERZAGHI("terzaghi", Terzaghi.CHART, Terzaghi::charted, Terzaghi::ultimate),
    TERZAGHI_KUMBHOJKAR("terzaghi-kumbhojkar", Terzaghi.ANEW, Terzaghi::kumbhojkar, Terzaghi::ultimate),
    MEYERHOF("meyerhof", Meyerhof.RULE, Meyerhof::factors, Meyerhof::ultimate),
    HANSEN("hansen", Hansen.RULE, Hansen::factors, Hansen::ultimate),
    VESIC("vesic", Vesic.RULE, Vesic::factors, Vesic::ultimate),
    EN_1997("en-1997-1-annex-d", AnnexD.RULE, AnnexD::factors, AnnexD::ultimate);

    private interface OfFriction {
        Factors at(double friction);
    }

    private interface OfBase {
        double at(Soil soil, Base base, Factors factors);
    }

    private final String id;
    private final Citation citation;

    @SuppressWarnings("ImmutableEnumChecker") // methods without state
    private final OfFriction factors;

    @SuppressWarnings("ImmutableEnumChecker") // methods without state
    private final OfBase ultimate;

    BearingMethod(String id, Citation citation, OfFriction factors, OfBase ultimate) {
        this.id = id;
        this.citation = citation;
        this.factors = factors;
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

    /** @param friction angle (rad), from 0 to {@link Soil#STEEPEST} */
    public Factors factors(double friction) {
        return factors.at(friction);
    }

    /** Ultimate pressure on the ground (Pa), gross: the overburden beside the base is in it. */
    public Cited ultimate(Soil soil, Base base) {
        return new Cited(ultimate.at(soil, base, factors.at(soil.friction())), "qu", citation);
    }
}
