package dev.underprop.engine.clause.distortion;

import dev.underprop.engine.standard.Citation;
import java.util.Arrays;
import java.util.Optional;

/**
 * Limits of angular distortion: difference of two movements over the distance between them. They were found on buildings that
 * settled, not on floors that were raised; for a raised floor they are the nearest there is.
 */
public enum AngularDistortion {
    SKEMPTON_STRUCTURE("skempton-macdonald-structure", 150, "structural damage", Source.SKEMPTON),
    SKEMPTON_WALLS("skempton-macdonald-walls", 300, "cracks in walls and partitions", Source.SKEMPTON),
    MEYERHOF_STRUCTURE("meyerhof-structure", 250, "structural damage", Source.MEYERHOF),
    MEYERHOF_WALLS("meyerhof-walls", 500, "cracks in walls and partitions", Source.MEYERHOF),
    POLSHIN_STRUCTURE("polshin-tokar-structure", 200, "structural damage", Source.POLSHIN),
    POLSHIN_WALLS("polshin-tokar-walls", 500, "cracks in walls and partitions", Source.POLSHIN),
    BJERRUM_STRUCTURE("bjerrum-structure", 150, "structural damage", Source.BJERRUM),
    BJERRUM_WALLS("bjerrum-walls", 500, "cracks in walls and partitions", Source.BJERRUM),
    BJERRUM_MACHINERY("bjerrum-machinery", 750, "machinery sensitive to settlement", Source.BJERRUM_LIST),
    BJERRUM_DIAGONALS("bjerrum-diagonals", 600, "frames with diagonals", Source.BJERRUM_LIST),
    BJERRUM_NO_CRACKS("bjerrum-no-cracks", 500, "buildings in which no cracks may come", Source.BJERRUM_LIST),
    BJERRUM_FIRST_CRACKS("bjerrum-first-cracks", 300, "first cracks in panel walls", Source.BJERRUM_LIST),
    BJERRUM_TILT("bjerrum-tilt", 250, "tilt of high buildings becomes visible", Source.BJERRUM_LIST),
    BJERRUM_DAMAGE("bjerrum-damage", 150, "considerable cracks, damage to the structure", Source.BJERRUM_LIST);

    private static final class Source {
        private static final String AS_READ = "limits of relative rotation, as tabulated in a public manual";
        static final Citation SKEMPTON = Citation.read("Skempton and MacDonald", "1956", AS_READ);
        static final Citation MEYERHOF = Citation.read("Meyerhof", "1956", AS_READ);
        static final Citation POLSHIN = Citation.read("Polshin and Tokar", "1957", AS_READ);
        static final Citation BJERRUM = Citation.read("Bjerrum", "1963", AS_READ);
        static final Citation BJERRUM_LIST = Citation.remembered("Bjerrum", "1963", "list of limits");

        private Source() {}
    }

    private final String id;
    private final double divisor;
    private final String what;
    private final Citation citation;

    AngularDistortion(String id, double divisor, String what, Citation citation) {
        this.id = id;
        this.divisor = divisor;
        this.what = what;
        this.citation = citation;
    }

    /** The criterion of a name. */
    public static Optional<AngularDistortion> named(String id) {
        return Arrays.stream(values()).filter(c -> c.id.equals(id)).findFirst();
    }

    /** Its name, as plans write it. */
    public String id() {
        return id;
    }

    /** What it guards against. */
    public String what() {
        return what;
    }

    /** Difference of movement over distance. */
    public double slope() {
        return 1 / divisor;
    }

    /** One over {@link #slope}. */
    public double divisor() {
        return divisor;
    }

    public Citation citation() {
        return citation;
    }

    /** Angular distortion between two places that move differently. */
    public static double between(double one, double other, double distance) {
        return Math.abs(one - other) / distance;
    }
}
