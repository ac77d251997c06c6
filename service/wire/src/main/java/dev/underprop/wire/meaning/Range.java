package dev.underprop.wire.meaning;

import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.quantity.Dimension;
import dev.underprop.wire.quantity.Quantity;
import dev.underprop.wire.quantity.QuantityReading;
import java.util.Optional;

/**
 * What sizes a quantity may have. The bounds lie far outside of anything built, so that a slip of the unit is caught and
 * the computation never meets numbers that it cannot hold apart. They are a choice of this service, no standard's.
 */
enum Range {
    POSITION(Dimension.LENGTH, "-1000 ft", "1000 ft", false),
    MEMBER_LENGTH(Dimension.LENGTH, "6 in", "1000 ft", true),
    SPACING(Dimension.LENGTH, "1 in", "100 ft", true),
    THICKNESS(Dimension.LENGTH, "1/4 in", "100 ft", true),
    DEPTH(Dimension.LENGTH, "1 in", "4 ft", true),
    HEIGHT(Dimension.LENGTH, "1 in", "100 ft", true),
    CLEARANCE(Dimension.LENGTH, "0 in", "10 ft", false),
    FOUNDING_DEPTH(Dimension.LENGTH, "0 in", "100 ft", false),
    CUT_DEPTH(Dimension.LENGTH, "1/4 in", "100 ft", true),
    PLATE(Dimension.LENGTH, "1/32 in", "12 in", true),
    SCREW(Dimension.LENGTH, "1/32 in", "100 ft", true),
    LEAN(Dimension.ANGLE, "0 deg", "10 deg", false),
    ECCENTRICITY(Dimension.LENGTH, "0 in", "1 ft", false),
    CENTRING(Dimension.LENGTH, "0 in", "10 ft", false),
    SETTLEMENT(Dimension.LENGTH, "0.001 in", "1 ft", true),
    SUBGRADE(Dimension.SUBGRADE_MODULUS, "1 pci", "100000 pci", true),
    LEVEL(Dimension.LENGTH, "-10 ft", "10 ft", false),
    READING(Dimension.LENGTH, "0.001 in", "1 in", true),
    RAISE(Dimension.LENGTH, "0.001 in", "2 ft", true),
    TRAVEL(Dimension.LENGTH, "0 in", "10 ft", false),
    STROKE(Dimension.LENGTH, "1/4 in", "3 ft", true),
    THREAD(Dimension.LENGTH, "1/64 in", "12 in", true),
    THREAD_ANGLE(Dimension.ANGLE, "0 deg", "89 deg", false),
    WRENCH(Dimension.LENGTH, "1 in", "10 ft", true),
    PULL(Dimension.FORCE, "1 lb", "1000 lb", true),
    HOLD(Dimension.DURATION, "0.1 h", "1000 d", true),
    FIT_UP(Dimension.LENGTH, "0 in", "1 in", false),
    AREA_LOAD(Dimension.PRESSURE, "0 psf", "100 ksf", false),
    LINE_LOAD(Dimension.LINE_LOAD, "0 plf", "1000 klf", false),
    POINT_LOAD(Dimension.FORCE, "0 lb", "10000 kip", false),
    AREA_WIND(Dimension.PRESSURE, "-100 ksf", "100 ksf", false),
    LINE_WIND(Dimension.LINE_LOAD, "-1000 klf", "1000 klf", false),
    POINT_WIND(Dimension.FORCE, "-10000 kip", "10000 kip", false),
    WEIGHT(Dimension.LINE_LOAD, "0 plf", "10 klf", false),
    CAPACITY(Dimension.FORCE, "1 lb", "10000 kip", true),
    STIFFNESS(Dimension.STIFFNESS, "1 N/m", "1e12 N/m", true),
    SOIL_PRESSURE(Dimension.PRESSURE, "1 psf", "1000 ksf", true),
    SOIL_MODULUS(Dimension.PRESSURE, "1 psi", "10000 ksi", true),
    SOIL_COHESION(Dimension.PRESSURE, "0 psf", "1000 ksf", false),
    FRICTION(Dimension.ANGLE, "0.5 deg", "45 deg", true),
    GROWTH(Dimension.LENGTH, "1/8 in", "10 ft", true),
    SEAT_PRESSURE(Dimension.PRESSURE, "1 psi", "30 ksi", true),
    YIELD(Dimension.PRESSURE, "1 ksi", "200 ksi", true),
    STRENGTH(Dimension.PRESSURE, "100 psi", "30 ksi", true),
    UNIT_WEIGHT(Dimension.UNIT_WEIGHT, "1 pcf", "1000 pcf", true);

    private final Dimension dimension;
    private final String least;
    private final String greatest;
    private final double from;
    private final double to;
    private final boolean positive;

    Range(Dimension dimension, String least, String greatest, boolean positive) {
        this.dimension = dimension;
        this.least = least;
        this.greatest = greatest;
        this.from = bound(least, dimension);
        this.to = bound(greatest, dimension);
        this.positive = positive;
    }

    private static double bound(String text, Dimension dimension) {
        return ((QuantityReading.Value) Quantity.parse(text, dimension)).si();
    }

    Dimension dimension() {
        return dimension;
    }

    /** What is wrong with a value in SI, if anything. */
    Optional<Fault> fault(double si, String got) {
        if (positive && si <= 0) {
            return Optional.of(Messages.NOT_POSITIVE.fault(got).withLimit("above 0"));
        }
        if (from == 0 && si < 0) {
            return Optional.of(Messages.NEGATIVE.fault(got).withLimit("at least " + least));
        }
        return si >= from && si <= to
                ? Optional.empty()
                : Optional.of(Messages.BEYOND_SENSE.fault(got).withLimit(least + " to " + greatest));
    }
}
