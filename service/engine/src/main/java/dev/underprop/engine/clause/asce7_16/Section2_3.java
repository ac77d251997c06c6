package dev.underprop.engine.clause.asce7_16;

import dev.underprop.engine.clause.asce7_16.Combination.Term;
import dev.underprop.engine.standard.Citation;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Section 2.3: combining factored loads using strength design, for what is designed by strength: concrete. */
public final class Section2_3 {

    private Section2_3() {}

    /**
     * Items 1 to 5 of 2.3.1 and 6 and 7 of 2.3.6 for the kinds of load that are there. Live load acts in full beside others.
     * From memory.
     *
     * @param present kinds with a load other than zero
     */
    public static List<Combination> strength(Set<LoadKind> present) {
        List<Combination> list = new ArrayList<>();
        list.add(item("2.3.1 item 1", LoadKind.DEAD, new Term(LoadKind.DEAD, 1.4)));
        List<LoadKind> above = List.of(LoadKind.ROOF_LIVE, LoadKind.SNOW).stream()
                .filter(present::contains)
                .toList();
        if (present.contains(LoadKind.LIVE)) {
            addBeside("2.3.1 item 2", above, 0.5, list, dead(1.2), new Term(LoadKind.LIVE, 1.6));
        }
        for (LoadKind kind : above) {
            list.add(item("2.3.1 item 3", kind, with(present, dead(1.2), new Term(kind, 1.6))));
        }
        if (present.contains(LoadKind.WIND)) {
            addBeside("2.3.1 item 4", above, 0.5, list, with(present, dead(1.2), new Term(LoadKind.WIND, 1)));
            list.add(item("2.3.1 item 5", LoadKind.WIND, dead(0.9), new Term(LoadKind.WIND, 1)));
        }
        if (present.contains(LoadKind.SEISMIC)) {
            List<LoadKind> snow = above.stream().filter(k -> k == LoadKind.SNOW).toList();
            addBeside("2.3.6 item 6", snow, 0.2, list, with(present, dead(1.2), new Term(LoadKind.SEISMIC, 1)));
            list.add(item("2.3.6 item 7", LoadKind.SEISMIC, dead(0.9), new Term(LoadKind.SEISMIC, -1)));
        }
        return List.copyOf(list);
    }

    /** The terms, with each load of the list beside them in turn, or alone where there is none. */
    private static void addBeside(
            String locator, List<LoadKind> above, double factor, List<Combination> list, Term... terms) {
        if (above.isEmpty()) {
            list.add(item(locator, terms[1].kind(), terms));
        }
        for (LoadKind kind : above) {
            List<Term> more = new ArrayList<>(List.of(terms));
            more.add(new Term(kind, factor));
            list.add(item(locator, terms[1].kind(), more.toArray(new Term[0])));
        }
    }

    private static Term[] with(Set<LoadKind> present, Term... terms) {
        List<Term> more = new ArrayList<>(List.of(terms));
        if (present.contains(LoadKind.LIVE)) {
            more.add(new Term(LoadKind.LIVE, 1));
        }
        return more.toArray(new Term[0]);
    }

    private static Term dead(double factor) {
        return new Term(LoadKind.DEAD, factor);
    }

    private static Combination item(String locator, LoadKind controlling, Term... terms) {
        List<Term> list = List.of(terms);
        return new Combination(Combination.name(list), list, controlling, Citation.remembered("ASCE", "7-16", locator));
    }
}
