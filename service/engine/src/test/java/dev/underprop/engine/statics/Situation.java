package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * A layout solved by rules, on props of given stiffness, with units that change gaps; and the plain layout that this comes
 * to in one case.
 *
 * @param layout as listed
 * @param rules what is absent and what can pull
 * @param stiffness of each contact (N/m) where it differs, else NaN
 */
record Situation(Layout layout, Rules rules, double[] stiffness) {

    /**
     * What a situation comes to in one case.
     *
     * @param layout with contacts missing, gaps changed and stiffness set
     * @param contacts number, in the situation, of each contact of the layout
     */
    record Plain(Layout layout, int[] contacts) {}

    Plain plain(LoadCase loadCase) {
        BitSet away = away();
        Frame frame = layout.frame();
        int[] renumbered = new int[frame.carriers().size()];
        List<Frame.Carrier> carriers = new ArrayList<>();
        for (int k = 0; k < renumbered.length; k++) {
            renumbered[k] = carriers.size();
            if (!away.get(k)) {
                carriers.add(frame.carriers().get(k));
            }
        }
        List<Contact> contacts = new ArrayList<>();
        List<Integer> numbers = new ArrayList<>();
        for (int c = 0; c < frame.contacts().size(); c++) {
            if (!rules.absent().get(c)) {
                contacts.add(changed(c, gap(c, loadCase), renumbered));
                numbers.add(c);
            }
        }
        List<UnitLoad> units =
                layout.units().stream().map(u -> loads(u, away, renumbered)).toList();
        return new Plain(
                new Layout(layout.seed(), new Frame(frame.joists(), carriers, contacts), units, List.of(loadCase)),
                numbers.stream().mapToInt(Integer::intValue).toArray());
    }

    private BitSet away() {
        BitSet away = new BitSet();
        away.set(0, layout.frame().carriers().size());
        for (int c = 0; c < layout.frame().contacts().size(); c++) {
            Contact contact = layout.frame().contacts().get(c);
            if (contact instanceof Contact.OnCarrier seat && !rules.absent().get(c)) {
                away.clear(seat.carrier());
            } else if (contact instanceof Contact.OnProp prop && !rules.absent().get(c)) {
                away.clear(prop.carrier());
            }
        }
        return away;
    }

    private double gap(int contact, LoadCase loadCase) {
        double gap = layout.frame().contacts().get(contact).gap();
        for (int i = 0; i < loadCase.size(); i++) {
            for (UnitLoad.Offset offset : layout.units().get(loadCase.unit(i)).offsets()) {
                gap += offset.contact() == contact ? loadCase.factor(i) * offset.size() : 0;
            }
        }
        return gap;
    }

    private Contact changed(int c, double gap, int[] renumbered) {
        Contact contact = layout.frame().contacts().get(c);
        boolean fastened = rules.fastened().get(c);
        if (contact instanceof Contact.OnGround seat) {
            return new Contact.OnGround(seat.joist(), seat.y(), seat.stiffness(), gap, fastened);
        } else if (contact instanceof Contact.OnCarrier seat) {
            return new Contact.OnCarrier(seat.joist(), renumbered[seat.carrier()], gap, fastened);
        }
        Contact.OnProp prop = (Contact.OnProp) contact;
        double k = Double.isNaN(stiffness[c]) ? prop.stiffness() : stiffness[c];
        return new Contact.OnProp(renumbered[prop.carrier()], prop.x(), k, gap, fastened);
    }

    private UnitLoad loads(UnitLoad unit, BitSet away, int[] renumbered) {
        int joists = layout.frame().joists().size();
        List<UnitLoad.Piece> pieces = new ArrayList<>();
        for (UnitLoad.Piece piece : unit.pieces()) {
            int member = piece.member();
            if (member < joists || !away.get(member - joists)) {
                pieces.add(moved(piece, member < joists ? member : joists + renumbered[member - joists]));
            }
        }
        return new UnitLoad(unit.name(), pieces);
    }

    private static UnitLoad.Piece moved(UnitLoad.Piece piece, int member) {
        if (piece instanceof UnitLoad.Uniform load) {
            return new UnitLoad.Uniform(member, load.from(), load.to(), load.intensity());
        }
        UnitLoad.Point load = (UnitLoad.Point) piece;
        return new UnitLoad.Point(member, load.at(), load.force());
    }
}
