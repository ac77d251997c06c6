package dev.underprop.engine.plan;

/**
 * Values of one load by kind, downward positive, in the unit its geometry asks (Pa, N/m or N).
 *
 * @param dead permanent
 * @param live floor live load
 * @param roofLive roof live load
 * @param snow snow at allowable-stress level
 */
public record Intensity(double dead, double live, double roofLive, double snow) {

    public Intensity {
        Sense.notNegative(dead, "dead load");
        Sense.notNegative(live, "live load");
        Sense.notNegative(roofLive, "roof live load");
        Sense.notNegative(snow, "snow load");
    }
}
