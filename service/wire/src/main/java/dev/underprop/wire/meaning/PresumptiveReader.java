package dev.underprop.wire.meaning;

import dev.underprop.engine.clause.ibc2021.Section1806;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.wire.catalogue.SoilTables;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.fault.Nearest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Looks up the allowable pressure of a soil in one published table. Nothing is looked up in another one. */
final class PresumptiveReader {

    private static final String IBC = "ibc-1806.2";

    private PresumptiveReader() {}

    /**
     * What a table says.
     *
     * @param soil as the table names it
     * @param pressure allowable (Pa)
     * @param citation where it stands
     */
    record Value(String soil, double pressure, Citation citation) {}

    /** The value, or nothing after every fault was reported. */
    static Optional<Value> read(Text table, Text soil) {
        Optional<String> named = table.given() ? table.choice(tables()) : Optional.empty();
        if (!soil.given() || soil.value().isBlank() || table.given() && named.isEmpty()) {
            return Optional.empty();
        }
        String id = named.orElse(IBC);
        Optional<Value> found = id.equals(IBC) ? ofCode(soil.value()) : ofTable(id, soil.value());
        if (found.isEmpty()) {
            report(soil, id.equals(IBC) ? Section1806.classNames() : SoilTables.names(id));
        }
        return found;
    }

    private static List<String> tables() {
        List<String> tables = new ArrayList<>();
        tables.add(IBC);
        tables.addAll(SoilTables.ids());
        return tables;
    }

    private static Optional<Value> ofCode(String name) {
        return Section1806.classNamed(name).map(soil -> {
            Cited pressure = Section1806.pressure(soil);
            return new Value(soil.title(), pressure.value(), pressure.citation());
        });
    }

    private static Optional<Value> ofTable(String table, String name) {
        return SoilTables.find(table, name).map(row -> new Value(row.name(), row.pressure(), row.citation()));
    }

    private static void report(Text soil, List<String> names) {
        String shown = Fault.shown(soil.value());
        String near = Nearest.to(soil.value().toLowerCase(Locale.ROOT), names);
        if (Section1806.withoutValue(soil.value())) {
            soil.spot().report(Messages.GROUND_WITHOUT_VALUE, soil.value(), shown);
        } else if (near.isEmpty()) {
            soil.spot().report(Messages.GROUND_CLASS_UNKNOWN, soil.value(), shown, String.join("; ", names));
        } else {
            soil.spot().report(Messages.GROUND_CLASS_UNKNOWN_NEAR, soil.value(), shown, near);
        }
    }
}
