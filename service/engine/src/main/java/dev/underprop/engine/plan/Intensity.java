package dev.underprop.engine.plan;

/**
 * Values of one load by kind, downward positive, in the unit its geometry asks (Pa, N/m or N).
 *
 * @param dead permanent
 * @param live floor live load
 * @param roofLive roof live load
 * @param snow snow at allowable-stress level
 * @param wind vertical part of wind, negative where it lifts
 * @param seismic vertical part of earthquake; it acts down or up
 */
public record Intensity(double dead, double live, double roofLive, double snow, double wind, double seismic) {

    /** Without wind and earthquake. */
    public Intensity(double dead, double live, double roofLive, double snow) {
        this(dead, live, roofLive, snow, 0, 0);
    }

    public Intensity {
        Sense.notNegative(dead, "dead load");
        Sense.notNegative(live, "live load");
        Sense.notNegative(roofLive, "roof live load");
        Sense.notNegative(snow, "snow load");
        Sense.finite(wind, "wind load");
        Sense.notNegative(seismic, "seismic load");
    }
}
