package dev.underprop.engine.statics;

import dev.underprop.engine.Halt;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * What every unit and group of units puts on the structure. Units come first, then the gaps and lifts, which have no load
 * of their own, then groups; a group is summed only when it is asked for.
 */
final class Loadings {

    /** A sum of this many rows costs about what one new row does. */
    private static final int SMALL_GROUP = 12;

    /** Marks a unit that was added after the others and is no group. */
    private static final int[] ALONE = {};

    private final List<Loading> loadings = new ArrayList<>();
    private final int units;
    private final double heaviest;
    private final List<int[]> groups = new ArrayList<>();
    private final List<Double> groupTotals = new ArrayList<>();
    private final List<Boolean> groupOffset = new ArrayList<>();
    private final BitSet gapsAlone = new BitSet();
    private final Loading notSummed = new Loading(0, 0, 0, 0);

    Loadings(
            Frame frame,
            List<UnitLoad> unitLoads,
            Pieces pieces,
            List<CondensedJoist> joists,
            CarrierNodes nodes,
            FieldLayout layout,
            Halt halt) {
        for (UnitLoad unit : unitLoads) {
            halt.check();
            Loading loading = nothing(frame, nodes);
            unit.pieces().forEach(piece -> loading.addTotal(piece.total()));
            unit.offsets().forEach(offset -> addOffset(frame, offset, loading));
            loadings.add(loading);
        }
        this.units = loadings.size();
        for (int c = 0; c < frame.carriers().size(); c++) {
            halt.check();
            addCarrier(frame, c, pieces.on(frame.carrierMember(c)), nodes);
        }
        for (int j = 0; j < joists.size(); j++) {
            halt.check();
            for (Pieces.OnMember unit : pieces.on(j)) {
                loadings.get(unit.unit()).setOnJoist(j, joists.get(j).condense(unit.pieces()));
            }
        }
        for (int m = 0; m < frame.members(); m++) {
            halt.check();
            spread(m, pieces.on(m), layout.stations(m));
        }
        double most = 0;
        for (Loading loading : loadings) {
            most = Math.max(most, loading.total());
        }
        this.heaviest = most;
        loadings.add(ownGaps(frame, nothing(frame, nodes)));
    }

    static Loading nothing(Frame frame, CarrierNodes nodes) {
        return new Loading(
                frame.joists().size(),
                frame.members(),
                2 * nodes.count(),
                frame.contacts().size());
    }

    private static void addOffset(Frame frame, UnitLoad.Offset offset, Loading loading) {
        if (offset.contact() >= frame.contacts().size()) {
            throw new IllegalArgumentException("an offset at a contact that is not in the frame");
        }
        loading.addGap(offset.contact(), offset.size());
    }

    private static Loading ownGaps(Frame frame, Loading gaps) {
        for (int c = 0; c < frame.contacts().size(); c++) {
            if (frame.contacts().get(c).gap() != 0) {
                gaps.addGap(c, frame.contacts().get(c).gap());
            }
        }
        return gaps;
    }

    private void addCarrier(Frame frame, int carrier, List<Pieces.OnMember> on, CarrierNodes nodes) {
        int[] mine = nodes.on(carrier);
        if (mine.length == 0) {
            throw new IllegalArgumentException("a carrier touches nothing");
        }
        double[] at = new double[mine.length];
        for (int i = 0; i < at.length; i++) {
            at[i] = nodes.x(mine[i]);
        }
        NodedBeam beam = new NodedBeam(at, frame.carriers().get(carrier).rigidity());
        for (Pieces.OnMember unit : on) {
            double[] own = new double[2 * mine.length];
            double[] nodal = loadings.get(unit.unit()).onCarriers();
            unit.pieces().forEach(piece -> beam.addLoad(piece, own));
            for (int i = 0; i < mine.length; i++) {
                nodal[2 * mine[i]] += own[2 * i];
                nodal[2 * mine[i] + 1] += own[2 * i + 1];
            }
        }
    }

    private void spread(int member, List<Pieces.OnMember> on, Stations stations) {
        for (Pieces.OnMember unit : on) {
            double[] uniform = new double[stations.count()];
            double[] point = new double[stations.count()];
            stations.spread(unit.pieces(), uniform, point);
            loadings.get(unit.unit()).setOnMember(member, uniform, point);
        }
    }

    /** Number of unit loads; also the number under which the gaps and lifts stand. */
    int units() {
        return units;
    }

    /** Number of all units and groups, the gaps and lifts among them. */
    int all() {
        return loadings.size();
    }

    /** Greatest total of a unit (N). */
    double heaviest() {
        return heaviest;
    }

    /** What a unit or a group puts on the structure. */
    Loading of(int unit) {
        if (isGroup(unit) && loadings.get(unit) == notSummed) {
            int[] members = group(unit);
            Loading[] parts = new Loading[members.length];
            double[] factors = new double[members.length];
            for (int i = 0; i < parts.length; i++) {
                parts[i] = loadings.get(members[i]);
                factors[i] = 1;
            }
            loadings.set(unit, Loading.sum(parts, factors));
        }
        return loadings.get(unit);
    }

    /** What a whole case puts on the structure, the frame's own gaps among it. */
    Loading of(LoadCase loadCase) {
        Loading[] parts = new Loading[1 + loadCase.size()];
        double[] factors = new double[parts.length];
        parts[0] = loadings.get(units);
        factors[0] = 1;
        for (int i = 1; i < parts.length; i++) {
            parts[i] = of(loadCase.unit(i - 1));
            factors[i] = loadCase.factor(i - 1);
        }
        return Loading.sum(parts, factors);
    }

    /** Clear space that a case leaves at a contact before anything bends (m). */
    double gap(int contact, LoadCase loadCase) {
        double gap = loadings.get(units).gaps()[contact];
        for (int i = 0; i < loadCase.size(); i++) {
            gap += loadCase.factor(i) * of(loadCase.unit(i)).gaps()[contact];
        }
        return gap;
    }

    /** Whether any gap or lift acts in a case. */
    boolean offset(LoadCase loadCase) {
        boolean offset = loadings.get(units).offset();
        for (int i = 0; i < loadCase.size(); i++) {
            offset |= offset(loadCase.unit(i));
        }
        return offset;
    }

    boolean offset(int unit) {
        return unit > units
                ? groupOffset.get(unit - units - 1)
                : loadings.get(unit).offset();
    }

    /** Makes a group of units that act together at full value; answers with its number as a unit. */
    int addGroup(int[] members) {
        double total = 0;
        boolean offset = false;
        for (int member : members) {
            total += loadings.get(member).total();
            offset |= loadings.get(member).offset();
        }
        groupOffset.add(offset);
        groups.add(members.clone());
        groupTotals.add(total);
        loadings.add(notSummed);
        return loadings.size() - 1;
    }

    /** Adds a unit of changed gaps alone; answers with its number as a unit. */
    int addOffsets(Frame frame, CarrierNodes nodes, List<UnitLoad.Offset> offsets) {
        Loading loading = nothing(frame, nodes);
        offsets.forEach(offset -> addOffset(frame, offset, loading));
        groupOffset.add(true);
        groups.add(ALONE);
        groupTotals.add(0.0);
        loadings.add(loading);
        gapsAlone.set(loadings.size() - 1);
        return loadings.size() - 1;
    }

    /** Whether a unit was added as one of changed gaps, with no load on anything. */
    boolean gapsAlone(int unit) {
        return gapsAlone.get(unit);
    }

    /** Whether a unit number is that of a group. */
    boolean isGroup(int unit) {
        return unit > units && group(unit) != ALONE;
    }

    /** Whether summing the answers to a group's units costs less than answering for the group itself. */
    boolean smallGroup(int unit) {
        return isGroup(unit) && group(unit).length <= SMALL_GROUP;
    }

    /** The units of a group. */
    int[] group(int unit) {
        return groups.get(unit - units - 1);
    }

    /** Sum of the magnitudes of all loads of a case (N). */
    double total(LoadCase loadCase) {
        double total = 0;
        for (int i = 0; i < loadCase.size(); i++) {
            total += gapsAlone(loadCase.unit(i)) ? 0 : Math.abs(loadCase.factor(i)) * total(loadCase.unit(i));
        }
        return total;
    }

    /** Sum of the magnitudes of a unit's or group's loads (N). */
    double total(int unit) {
        return isGroup(unit)
                ? groupTotals.get(unit - units - 1)
                : loadings.get(unit).total();
    }
}
