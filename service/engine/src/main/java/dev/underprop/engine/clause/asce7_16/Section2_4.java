package dev.underprop.engine.clause.asce7_16;

import dev.underprop.engine.clause.asce7_16.Combination.Term;
import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Section 2.4: combining nominal loads using allowable stress design. Items 1 to 7 of 2.4.1 and 8 to 10 of 2.4.5. Rain is
 * not here.
 */
public final class Section2_4 {

    private static final List<Citation> ITEMS =
            List.of(item(1), item(2), item(3), item(4), item(5), item(6), item(7), item5(8), item5(9), item5(10));
    private static final Citation STRENGTH_SNOW = Citation.remembered("ASCE", "7-22", "2.4.1");

    private Section2_4() {}

    /**
     * Items 1 to 4 of 2.4.1 for the kinds of load that are there, dead load alone first.
     *
     * <p>An item is left out when what it is about is absent: with a snow of nothing, D + 0.75 L + 0.75 S would be less
     * than D + L, yet take the load duration factor of snow. Dead load is always there. Where roof live load and snow are
     * both given, each has its own combinations; they do not act together.
     *
     * @param present kinds with a load other than zero
     */
    public static List<Combination> gravity(Set<LoadKind> present) {
        List<Combination> list = new ArrayList<>();
        list.add(combination(1, LoadKind.DEAD, dead()));
        if (present.contains(LoadKind.LIVE)) {
            list.add(combination(2, LoadKind.LIVE, dead(), new Term(LoadKind.LIVE, 1)));
        }
        List<LoadKind> above = List.of(LoadKind.ROOF_LIVE, LoadKind.SNOW);
        above.stream().filter(present::contains).map(Section2_4::withDead).forEach(list::add);
        if (present.contains(LoadKind.LIVE)) {
            above.stream().filter(present::contains).map(Section2_4::withLive).forEach(list::add);
        }
        return List.copyOf(list);
    }

    /**
     * Items 5 to 10 for the vertical parts of wind and earthquake, as far as they are there: with full dead load, with what
     * else may act, and against 0.6 of dead load. The horizontal parts act on the restraints, not here.
     *
     * @param present kinds with a load other than zero
     */
    public static List<Combination> lateral(Set<LoadKind> present) {
        List<Combination> list = new ArrayList<>();
        if (present.contains(LoadKind.WIND)) {
            list.add(combination(5, LoadKind.WIND, dead(), new Term(LoadKind.WIND, 0.6)));
            list.add(beside(6, present, new Term(LoadKind.WIND, 0.45)));
            list.add(combination(7, LoadKind.WIND, new Term(LoadKind.DEAD, 0.6), new Term(LoadKind.WIND, 0.6)));
        }
        if (present.contains(LoadKind.SEISMIC)) {
            list.add(combination(8, LoadKind.SEISMIC, dead(), new Term(LoadKind.SEISMIC, 0.7)));
            list.add(beside(9, present, new Term(LoadKind.SEISMIC, 0.525)));
            list.add(combination(10, LoadKind.SEISMIC, new Term(LoadKind.DEAD, 0.6), new Term(LoadKind.SEISMIC, -0.7)));
        }
        return List.copyOf(list);
    }

    /** Sideways force of wind in allowable stress combinations, as part of W: 0.6. */
    public static Cited windSideways() {
        return new Cited(0.6, "0.6 W", ITEMS.get(4));
    }

    /** Sideways force of earthquake in allowable stress combinations, as part of Eh: 0.7. */
    public static Cited seismicSideways() {
        return new Cited(0.7, "0.7 Eh", ITEMS.get(7));
    }

    private static Combination beside(int item, Set<LoadKind> present, Term leading) {
        List<Term> terms = new ArrayList<>();
        terms.add(dead());
        terms.add(leading);
        List.of(LoadKind.LIVE, LoadKind.SNOW).stream()
                .filter(present::contains)
                .forEach(kind -> terms.add(new Term(kind, 0.75)));
        if (item == 6 && !present.contains(LoadKind.SNOW) && present.contains(LoadKind.ROOF_LIVE)) {
            terms.add(new Term(LoadKind.ROOF_LIVE, 0.75));
        }
        return combination(item, leading.kind(), terms.toArray(new Term[0]));
    }

    private static Combination withDead(LoadKind above) {
        return combination(3, above, dead(), new Term(above, 1));
    }

    private static Combination withLive(LoadKind above) {
        return combination(4, above, dead(), new Term(LoadKind.LIVE, 0.75), new Term(above, 0.75));
    }

    private static Citation item(int number) {
        return Citation.remembered("ASCE", "7-16", "2.4.1 item " + number);
    }

    private static Citation item5(int number) {
        return Citation.remembered("ASCE", "7-16", "2.4.5 item " + number);
    }

    private static Term dead() {
        return new Term(LoadKind.DEAD, 1);
    }

    private static Combination combination(int item, LoadKind controlling, Term... terms) {
        List<Term> list = List.of(terms);
        return new Combination(Combination.name(list), list, controlling, ITEMS.get(item - 1));
    }

    /**
     * Snow at allowable-stress level from snow at strength level: 0.7 S. The maps of the 2022 edition give strength level
     * and its combinations take 0.7 S where those of the 2016 edition take S.
     *
     * @param strength snow at strength level (Pa, N/m or N), not negative
     */
    public static Cited allowableSnow(double strength) {
        return new Cited(0.7 * Admissible.notNegative(strength, "snow"), "0.7 S", STRENGTH_SNOW);
    }
}
