package dev.underprop.wire.meaning;

import java.util.List;

/** What a situation can take away by its name. */
sealed interface Removable {

    /** A bearing. */
    record Whole(int bearing) implements Removable {}

    /** A pier of a girder. */
    record Pier(int bearing, int pier) implements Removable {}

    /** All of them by name; a name that stands twice is reported. */
    static NameTable<Removable> of(List<BearingDraft> bearings) {
        NameTable<Removable> table = new NameTable<>("bearing or pier");
        for (int i = 0; i < bearings.size(); i++) {
            BearingDraft bearing = bearings.get(i);
            table.add(bearing.name(), new Whole(i), bearing.spot().member("name"));
        }
        for (int i = 0; i < bearings.size(); i++) {
            List<GirderDraft.Pier> piers =
                    bearings.get(i).girder().map(GirderDraft::piers).orElse(List.of());
            for (int p = 0; p < piers.size(); p++) {
                GirderDraft.Pier pier = piers.get(p);
                table.add(pier.name(), new Pier(i, p), pier.spot().member("name"));
            }
        }
        return table;
    }
}
