package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.List;

/** The pieces of all unit loads sorted by member, so that each member looks only at its own. */
final class Pieces {

    /** What one unit puts on one member. */
    record OnMember(int unit, List<UnitLoad.Piece> pieces) {}

    private final List<List<OnMember>> byMember = new ArrayList<>();

    Pieces(int members, List<UnitLoad> units) {
        for (int m = 0; m < members; m++) {
            byMember.add(new ArrayList<>(units.size()));
        }
        for (int u = 0; u < units.size(); u++) {
            for (UnitLoad.Piece piece : units.get(u).pieces()) {
                list(piece.member(), u).add(piece);
            }
        }
    }

    private List<UnitLoad.Piece> list(int member, int unit) {
        List<OnMember> units = byMember.get(member);
        if (units.isEmpty() || units.get(units.size() - 1).unit != unit) {
            units.add(new OnMember(unit, new ArrayList<>(4)));
        }
        return units.get(units.size() - 1).pieces;
    }

    /** The units that act on a member, ascending. */
    List<OnMember> on(int member) {
        return byMember.get(member);
    }
}
