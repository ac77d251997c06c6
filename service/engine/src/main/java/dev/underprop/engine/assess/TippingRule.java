package dev.underprop.engine.assess;

import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.asce7_16.Combination;
import dev.underprop.engine.clause.asce7_16.LoadKind;
import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.statics.Contact;
import dev.underprop.engine.statics.UnitLoad;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Safety against tipping, by moments about the support over which a member would turn: a joist over the last thing that
 * carries it, a beam or girder over its last post or pier. What holds counts 0.6 of its dead load and nothing else but
 * fastenings of described strength; what tips counts in full. It knows nothing of stiffness: it asks whether a motion
 * exists, not how loads share. Where other supports keep a member from turning there is nothing to tip.
 */
final class TippingRule {

    /** Least factor of safety: common practice, no source. */
    static final double LEAST = 1.5;

    private static final Citation HOLDS = Citation.remembered("ASCE", "7-16", "2.4.1 item 7");
    private static final Citation FULL =
            Citation.remembered("common practice, no source", "", "what tips counts in full");

    private final SituationRun run;
    private final PlanFrame frame;
    private final LoadModel model;
    private final List<List<OnMember>> pieces = new ArrayList<>();
    private final boolean wanted;
    private final Map<SituationResult.Tipping, Working> told = new HashMap<>();

    private record OnMember(LoadKind kind, UnitLoad.Piece piece) {}

    /** @param working whether calculation records are wanted */
    TippingRule(SituationRun run, boolean working) {
        this.run = run;
        this.wanted = working;
        this.frame = run.frame();
        this.model = run.model();
        for (int m = 0; m < frame.frame().members(); m++) {
            pieces.add(new ArrayList<>());
        }
        add(model.dead(), LoadKind.DEAD);
        add(model.roofLive(), LoadKind.ROOF_LIVE);
        add(model.snow(), LoadKind.SNOW);
        add(model.wind(), LoadKind.WIND);
        add(model.seismic(), LoadKind.SEISMIC);
        model.cells().forEach(cell -> add(cell.unit(), LoadKind.LIVE));
    }

    private void add(int unit, LoadKind kind) {
        if (unit != LoadModel.ABSENT) {
            for (UnitLoad.Piece piece : model.units().get(unit).pieces()) {
                pieces.get(piece.member()).add(new OnMember(kind, piece));
            }
        }
    }

    /** Every member that reaches beyond its supports, lowest factor first. */
    List<SituationResult.Tipping> all() {
        List<SituationResult.Tipping> all = new ArrayList<>();
        for (int j = 0; j < frame.frame().joists().size(); j++) {
            addJoist(j, all);
        }
        for (int c = 0; c < frame.frame().carriers().size(); c++) {
            addCarrier(c, all);
        }
        all.sort(Comparator.comparingDouble(SituationResult.Tipping::factor));
        return all;
    }

    /** How a factor comes about; {@link Working#OFF} where that is not wanted. */
    Working working(SituationResult.Tipping tipping) {
        return told.getOrDefault(tipping, Working.OFF);
    }

    private boolean carries(int contact) {
        // What stands clear by the plan's word holds nothing until something has moved.
        boolean clear = frame.frame().contacts().get(contact).gap() > 0;
        return !frame.taken(contact, run.situation()) && (!clear || run.met().everClosed(contact));
    }

    private List<Integer> seats(int joist, int exceptCarrier) {
        List<Integer> seats = new ArrayList<>();
        for (int c = 0; c < frame.contacts(); c++) {
            boolean except =
                    frame.frame().contacts().get(c) instanceof Contact.OnCarrier s && s.carrier() == exceptCarrier;
            if (frame.held(c) == joist && !except && carries(c)) {
                seats.add(c);
            }
        }
        seats.sort(Comparator.comparingDouble(frame::at));
        return seats;
    }

    private void addJoist(int joist, List<SituationResult.Tipping> all) {
        List<Integer> seats = seats(joist, -1);
        if (seats.isEmpty()) {
            return;
        }
        addJoist(joist, seats, seats.get(0), -1, all);
        addJoist(joist, seats, seats.get(seats.size() - 1), 1, all);
    }

    private void addJoist(int joist, List<Integer> seats, int over, int out, List<SituationResult.Tipping> all) {
        double pivot = frame.at(over);
        TippingSteps steps = new TippingSteps(wanted);
        double holding = held(joist, pivot, out, steps);
        for (int c : seats) {
            holding += tied(c, pivot, steps);
        }
        String place = run.names().contact(frame.places().get(over));
        Tipping tipping = (combination, told) -> tips(joist, pivot, out, combination, told);
        addWorst(run.names().joist(joist), place, steps.holds(holding), tipping, all, steps);
    }

    private interface Tipping {
        double under(Combination combination, TippingSteps told);
    }

    private void addWorst(
            String member,
            String over,
            double holding,
            Tipping tipping,
            List<SituationResult.Tipping> all,
            TippingSteps steps) {
        double most = 0;
        Combination worst = run.combinations().allowable().get(0);
        for (Combination combination : run.combinations().allowable()) {
            double moment = tipping.under(combination, new TippingSteps(false));
            if (moment > most) {
                most = moment;
                worst = combination;
            }
        }
        if (most > 0) {
            SituationResult.Tipping one = new SituationResult.Tipping(member, over, holding, most, worst.name());
            all.add(one);
            if (wanted) {
                told.put(one, steps.tips(tipping.under(worst, steps), holding, LEAST));
            }
        }
    }

    private double strength(int contact) {
        return frame.fastening(contact) instanceof Fastening.Held held ? held.uplift() : 0;
    }

    /** Moment of a fastening about a pivot (N·m). */
    private double tied(int contact, double pivot, TippingSteps told) {
        double arm = Math.abs(frame.at(contact) - pivot);
        return told.tied(
                run.names().contact(frame.places().get(contact)), strength(contact), arm, strength(contact) * arm);
    }

    /** Moment of what holds a member on its inner side of a pivot (N·m). */
    private double held(int member, double pivot, int out, TippingSteps told) {
        double moment = 0;
        for (OnMember one : pieces.get(member)) {
            if (one.kind == LoadKind.DEAD) {
                moment += told.load(
                        new TippingSteps.Factor("dead", StabilityCases.HOLDING, HOLDS),
                        one.piece,
                        pivot,
                        -out,
                        StabilityCases.HOLDING * moment(one.piece, pivot, -out));
            }
        }
        return moment;
    }

    /** Moment of what tips a member over a pivot: loads beyond it, and what lifts on the inner side (N·m). */
    private double tips(int member, double pivot, int out, Combination combination, TippingSteps told) {
        double moment = 0;
        for (OnMember one : pieces.get(member)) {
            double factor = factor(one.kind, combination);
            double beyond = factor * moment(one.piece, pivot, out);
            double inside = one.kind == LoadKind.DEAD ? 0 : factor * moment(one.piece, pivot, -out);
            if (beyond > 0) {
                told.load(factor(one.kind, factor, combination), one.piece, pivot, out, beyond);
            }
            if (inside < 0) {
                told.load(factor(one.kind, -factor, combination), one.piece, pivot, -out, -inside);
            }
            moment += Math.max(0, beyond) + Math.max(0, -inside);
        }
        return moment;
    }

    /** Dead load counts in full in what tips, whatever the combination says. */
    private static TippingSteps.Factor factor(LoadKind kind, double factor, Combination combination) {
        String name = kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return new TippingSteps.Factor(name, factor, kind == LoadKind.DEAD ? FULL : combination.citation());
    }

    private static double factor(LoadKind kind, Combination combination) {
        return kind == LoadKind.DEAD ? 1 : combination.factor(kind);
    }

    /** Moment of the part of a piece on one side of a pivot, about it (N·m); 1 is the side of greater coordinates. */
    private static double moment(UnitLoad.Piece piece, double pivot, int side) {
        if (piece instanceof UnitLoad.Point point) {
            return point.force() * Math.max(0, side * (point.at() - pivot));
        }
        UnitLoad.Uniform uniform = (UnitLoad.Uniform) piece;
        double a = Math.max(0, side * (uniform.from() - pivot));
        double b = Math.max(0, side * (uniform.to() - pivot));
        return uniform.intensity() * Math.abs(b * b - a * a) / 2;
    }

    private void addCarrier(int carrier, List<SituationResult.Tipping> all) {
        List<Integer> props = new ArrayList<>();
        for (int c = 0; c < frame.contacts(); c++) {
            if (frame.frame().contacts().get(c) instanceof Contact.OnProp prop
                    && prop.carrier() == carrier
                    && carries(c)) {
                props.add(c);
            }
        }
        props.sort(Comparator.comparingDouble(frame::at));
        if (!props.isEmpty()) {
            addCarrier(carrier, props, props.get(0), -1, all);
            addCarrier(carrier, props, props.get(props.size() - 1), 1, all);
        }
    }

    private void addCarrier(int carrier, List<Integer> props, int over, int out, List<SituationResult.Tipping> all) {
        int member = frame.frame().carrierMember(carrier);
        double pivot = frame.at(over);
        TippingSteps steps = new TippingSteps(wanted);
        double holding = held(member, pivot, out, steps);
        for (int c : props) {
            holding += tied(c, pivot, steps);
        }
        List<Integer> beyond = new ArrayList<>();
        for (int c = 0; c < frame.contacts(); c++) {
            if (frame.frame().contacts().get(c) instanceof Contact.OnCarrier seat
                    && seat.carrier() == carrier
                    && carries(c)) {
                double arm = out * (frame.frame().joists().get(seat.joist()).x() - pivot);
                if (arm > 0) {
                    beyond.add(c);
                } else {
                    double down = keepsDown(seat);
                    holding += steps.joist(run.names().joist(seat.joist()), "keeps down", down, -arm, -arm * down);
                }
            }
        }
        String place = run.names().contact(frame.places().get(over));
        Tipping tipping = (combination, told) -> {
            double moment = tips(member, pivot, out, combination, told);
            for (int c : beyond) {
                Contact.OnCarrier seat =
                        (Contact.OnCarrier) frame.frame().contacts().get(c);
                double arm = out * (frame.frame().joists().get(seat.joist()).x() - pivot);
                double leans = leansOn(seat, combination);
                moment += told.joist(run.names().joist(seat.joist()), "leans", leans, arm, arm * leans);
            }
            return moment;
        };
        addWorst(run.names().member(member), place, steps.holds(holding), tipping, all, steps);
    }

    /** Force that a joist needs from a carrier so as not to fall itself (N): none where other supports hold it. */
    private double leansOn(Contact.OnCarrier seat, Combination combination) {
        List<Integer> others = seats(seat.joist(), seat.carrier());
        double at = frame.frame().carriers().get(seat.carrier()).y();
        if (others.isEmpty()) {
            return pieces.get(seat.joist()).stream()
                    .mapToDouble(one -> factor(one.kind, combination) * one.piece.total())
                    .filter(force -> force > 0)
                    .sum();
        }
        double first = frame.at(others.get(0));
        double last = frame.at(others.get(others.size() - 1));
        if (others.size() > 1 && at >= first && at <= last) {
            return 0;
        }
        int side = at > last ? 1 : -1;
        double pivot = side > 0 ? last : first;
        double holding = held(seat.joist(), pivot, side, new TippingSteps(false));
        for (int c : others) {
            holding += strength(c) * Math.abs(frame.at(c) - pivot);
        }
        return Math.max(0, tips(seat.joist(), pivot, side, combination, new TippingSteps(false)) - holding)
                / Math.abs(at - pivot);
    }

    /** Force by which a joist keeps a carrier from rising (N): what it takes to lift the joist about its furthest support. */
    private double keepsDown(Contact.OnCarrier seat) {
        List<Integer> others = seats(seat.joist(), seat.carrier());
        double at = frame.frame().carriers().get(seat.carrier()).y();
        if (others.isEmpty()) {
            return pieces.get(seat.joist()).stream()
                    .filter(one -> one.kind == LoadKind.DEAD)
                    .mapToDouble(one -> StabilityCases.HOLDING * one.piece.total())
                    .sum();
        }
        double least = Double.POSITIVE_INFINITY;
        for (double pivot : new double[] {frame.at(others.get(0)), frame.at(others.get(others.size() - 1))}) {
            if (pivot != at) {
                int side = at > pivot ? 1 : -1;
                double far = 0;
                for (OnMember one : pieces.get(seat.joist())) {
                    far += one.kind == LoadKind.DEAD ? moment(one.piece, pivot, -side) : 0;
                }
                double near = held(seat.joist(), pivot, -side, new TippingSteps(false));
                least = Math.min(least, Math.max(0, near - far) / Math.abs(at - pivot));
            }
        }
        return Double.isInfinite(least) ? 0 : least;
    }
}
