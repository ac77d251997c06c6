package dev.underprop.wire.meaning;

import dev.underprop.api.model.BearingPart;
import dev.underprop.engine.plan.Situation;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads what is taken away in a situation, and what the floor is raised clear of. */
final class RemovalReader {

    private final List<JoistDraft> joists;
    private final List<BearingDraft> bearings;
    private final NameTable<Integer> bearingNames;
    private final NameTable<Removable> removables;

    /** Names that stand twice among bearings and piers are reported here. */
    RemovalReader(List<JoistDraft> joists, List<BearingDraft> bearings) {
        this.joists = joists;
        this.bearings = bearings;
        this.bearingNames = NameTable.indexed(
                "bearing", bearings.stream().map(BearingDraft::name).toList());
        this.removables = Removable.of(bearings);
    }

    /** What is out whole. A pier goes with its girder, so that naming both is naming it twice. */
    List<Removable> removed(@Nullable List<String> names, Spot spot) {
        List<Removable> removed = new ArrayList<>();
        for (int i = 0; names != null && i < names.size(); i++) {
            String name = names.get(i);
            Spot at = spot.element(i);
            removables.find(name, at).ifPresent(thing -> {
                if (removed.stream().anyMatch(other -> overlap(thing, other))) {
                    at.report(Messages.REMOVED_TWICE, name, Fault.shown(name));
                }
                removed.add(thing);
            });
        }
        return removed;
    }

    private static boolean overlap(Removable one, Removable other) {
        return one.equals(other)
                || (one instanceof Removable.Whole whole
                        && other instanceof Removable.Pier pier
                        && pier.bearing() == whole.bearing())
                || (other instanceof Removable.Whole all
                        && one instanceof Removable.Pier its
                        && its.bearing() == all.bearing());
    }

    List<Situation.Part> parts(@Nullable List<BearingPart> parts, List<Removable> removed, Spot spot) {
        List<Situation.Part> read = new ArrayList<>();
        for (int i = 0; parts != null && i < parts.size(); i++) {
            BearingPart part = parts.get(i);
            Spot at = spot.element(i);
            double from = at.text("from", part.getFrom()).quantity(Range.POSITION);
            double to = at.text("to", part.getTo()).quantity(Range.POSITION);
            if (to <= from) {
                at.member("to").report(Messages.EXTENT_EMPTY, part.getTo());
            }
            Spot name = at.member("bearing");
            bearingNames.find(part.getBearing(), name).ifPresent(bearing -> {
                reportPart(bearing, removed, from, to, name);
                if (to > from) {
                    read.add(new Situation.Part(bearing, from, to));
                }
            });
        }
        return read;
    }

    private void reportPart(int index, List<Removable> removed, double from, double to, Spot at) {
        BearingDraft bearing = bearings.get(index);
        String shown = Fault.shown(bearing.name());
        if (bearing.girder().isPresent()) {
            at.report(Messages.GIRDER_PART, bearing.name(), shown);
        } else if (removed.contains(new Removable.Whole(index))) {
            at.report(Messages.PART_OF_REMOVED, bearing.name(), shown);
        } else if (bearing.placed() && to > from && joists.stream().allMatch(JoistDraft::known)) {
            boolean takes = joists.stream().anyMatch(joist -> bearing.under(joist) && joist.within(from, to));
            if (!takes && joists.stream().anyMatch(bearing::under)) {
                at.report(Messages.PART_UNDER_NO_JOIST, bearing.name(), shown);
            }
        }
    }

    List<Integer> clear(@Nullable List<String> names, List<Removable> removed, Spot spot) {
        List<Integer> clear = new ArrayList<>();
        for (int i = 0; names != null && i < names.size(); i++) {
            String name = names.get(i);
            Spot at = spot.element(i);
            bearingNames.find(name, at).ifPresent(bearing -> {
                if (clear.contains(bearing)) {
                    at.report(Messages.CLEAR_TWICE, name, Fault.shown(name));
                } else if (removed.contains(new Removable.Whole(bearing))) {
                    at.report(Messages.CLEAR_OF_REMOVED, name, Fault.shown(name));
                }
                clear.add(bearing);
            });
        }
        return clear;
    }
}
