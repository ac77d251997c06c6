package dev.underprop.wire.meaning;

import dev.underprop.api.model.Load;
import dev.underprop.engine.clause.asce7_16.Section2_4;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.wire.fault.Messages;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Reads the parts of a load. The supplier is to be asked only when the plan has no fault. */
final class IntensityReader {

    /** The size of the parts of a load, and of its wind, which may lift. */
    enum Of {
        AREA(Range.AREA_LOAD, Range.AREA_WIND),
        LINE(Range.LINE_LOAD, Range.LINE_WIND),
        POINT(Range.POINT_LOAD, Range.POINT_WIND);

        private final Range downward;
        private final Range wind;

        Of(Range downward, Range wind) {
            this.downward = downward;
            this.wind = wind;
        }
    }

    private IntensityReader() {}

    static Supplier<Intensity> read(Load load, Spot at, Of of) {
        Text snow = at.text("snow", load.getSnow());
        Text wind = at.text("wind", load.getWind());
        List<Text> downward = List.of(
                at.text("dead", load.getDead()),
                at.text("live", load.getLive()),
                at.text("roofLive", load.getRoofLive()),
                snow,
                at.text("seismic", load.getSeismic()));
        if (Stream.concat(downward.stream(), Stream.of(wind)).noneMatch(Text::given)) {
            at.report(Messages.LOAD_EMPTY, "");
        }
        List<Double> values =
                downward.stream().map(part -> part.quantityOr(of.downward, 0)).toList();
        double blown = wind.quantityOr(of.wind, 0);
        double snowFactor = snowFactor(snow, at.text("snowLevel", load.getSnowLevel()));
        return () -> new Intensity(
                values.get(0), values.get(1), values.get(2), values.get(3) * snowFactor, blown, values.get(4));
    }

    private static double snowFactor(Text snow, Text level) {
        if (snow.given() && !level.given()) {
            level.spot().report(Messages.SNOW_LEVEL_MISSING, "");
        }
        if (!snow.given() && level.given()) {
            level.spot().report(Messages.SNOW_LEVEL_WITHOUT_SNOW, level.value());
        }
        boolean strength = level.given()
                && level.choice(List.of("allowable", "strength")).orElse("").equals("strength");
        return strength ? Section2_4.allowableSnow(1).value() : 1;
    }
}
