package dev.underprop.wire.quantity;

import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.List;
import java.util.Map;

/** What to say about a unit that cannot be read. */
final class UnitAdvice {
    private static final Map<String, String> MEANT = Map.ofEntries(
            Map.entry("feet", "ft"),
            Map.entry("foot", "ft"),
            Map.entry("inch", "in"),
            Map.entry("inches", "in"),
            Map.entry("lbs", "lb"),
            Map.entry("pound", "lb"),
            Map.entry("pounds", "lb"),
            Map.entry("kips", "kip"),
            Map.entry("k", "kip"),
            Map.entry("lbs/ft", "plf"),
            Map.entry("k/ft", "klf"),
            Map.entry("lb/ft2", "psf"),
            Map.entry("lbf/ft2", "psf"),
            Map.entry("lb/in2", "psi"),
            Map.entry("lbf/in2", "psi"),
            Map.entry("lb/ft3", "pcf"),
            Map.entry("lb/in3", "pci"),
            Map.entry("kip/ft2", "ksf"),
            Map.entry("kip/in2", "ksi"),
            Map.entry("N/m2", "Pa"),
            Map.entry("pli", "lb/in"),
            Map.entry("k/in", "kip/in"),
            Map.entry("sec", "s"),
            Map.entry("hr", "h"),
            Map.entry("hrs", "h"),
            Map.entry("hour", "h"),
            Map.entry("hours", "h"),
            Map.entry("day", "d"),
            Map.entry("days", "d"),
            Map.entry("degree", "deg"),
            Map.entry("degrees", "deg"));

    private static final List<String> MASSES = List.of("kg", "g", "t", "tonne", "tonnes", "lbm", "slug", "kgf");
    private static final List<String> TONS = List.of("ton", "tons", "tonf");
    private static final List<String> TON_PRESSURES = List.of("tsf", "tons/ft2");

    private UnitAdvice() {}

    static Fault unread(String symbol, Dimension expected) {
        String got = Fault.shown(symbol);
        if (MASSES.contains(symbol)) {
            return Messages.UNIT_OF_MASS.fault(symbol, got, expected.phrase());
        }
        if (TONS.contains(symbol)) {
            return Messages.UNIT_AMBIGUOUS.fault(symbol, got, "kip or kN");
        }
        if (TON_PRESSURES.contains(symbol)) {
            return Messages.UNIT_AMBIGUOUS.fault(symbol, got, "ksf or kPa");
        }
        String near = near(symbol);
        return near.isEmpty()
                ? Messages.UNIT_UNKNOWN.fault(symbol, got, listed(expected))
                : Messages.UNIT_UNKNOWN_NEAR.fault(symbol, got, near);
    }

    static Fault wrong(Unit unit, Dimension expected) {
        return Messages.WRONG_DIMENSION.fault(unit.symbol(), unit.symbol(), expected.noun(), listed(expected));
    }

    private static String near(String symbol) {
        String meant = MEANT.getOrDefault(symbol, "");
        if (!meant.isEmpty()) {
            return meant;
        }
        return Unit.symbols().stream()
                .filter(symbol::equalsIgnoreCase)
                .findFirst()
                .orElse("");
    }

    private static String listed(Dimension expected) {
        return String.join(", ", Unit.symbols(expected));
    }
}
