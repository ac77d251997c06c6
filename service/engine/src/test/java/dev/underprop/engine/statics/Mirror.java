package dev.underprop.engine.statics;

import java.util.List;

/** A layout seen in a mirror: the same structure with places counted from the other end. */
final class Mirror {

    private final boolean x;
    private final Frame frame;

    private Mirror(boolean x, Frame frame) {
        this.x = x;
        this.frame = frame;
    }

    static Layout alongX(Layout layout) {
        return new Mirror(true, layout.frame()).of(layout);
    }

    static Layout alongY(Layout layout) {
        return new Mirror(false, layout.frame()).of(layout);
    }

    private Layout of(Layout layout) {
        Frame mirrored = new Frame(
                frame.joists().stream().map(this::joist).toList(),
                frame.carriers().stream().map(this::carrier).toList(),
                frame.contacts().stream().map(this::contact).toList());
        List<UnitLoad> units = layout.units().stream()
                .map(u -> new UnitLoad(
                        u.name(), u.pieces().stream().map(this::piece).toList()))
                .toList();
        return new Layout(layout.seed(), mirrored, units, layout.cases());
    }

    private Frame.Joist joist(Frame.Joist j) {
        return x
                ? new Frame.Joist(-j.x(), j.start(), j.end(), j.rigidity())
                : new Frame.Joist(j.x(), -j.end(), -j.start(), j.rigidity());
    }

    private Frame.Carrier carrier(Frame.Carrier c) {
        return x
                ? new Frame.Carrier(c.y(), -c.end(), -c.start(), c.rigidity())
                : new Frame.Carrier(-c.y(), c.start(), c.end(), c.rigidity());
    }

    private Contact contact(Contact contact) {
        if (contact instanceof Contact.OnGround seat && !x) {
            return new Contact.OnGround(seat.joist(), -seat.y(), seat.stiffness(), seat.gap(), seat.fastened());
        } else if (contact instanceof Contact.OnProp prop && x) {
            return new Contact.OnProp(prop.carrier(), -prop.x(), prop.stiffness(), prop.gap(), prop.fastened());
        }
        return contact;
    }

    private UnitLoad.Piece piece(UnitLoad.Piece piece) {
        boolean onCarrier = piece.member() >= frame.joists().size();
        if (onCarrier != x) {
            return piece;
        }
        if (piece instanceof UnitLoad.Uniform u) {
            return new UnitLoad.Uniform(u.member(), -u.to(), -u.from(), u.intensity());
        }
        UnitLoad.Point point = (UnitLoad.Point) piece;
        return new UnitLoad.Point(point.member(), -point.at(), point.force());
    }
}
