package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Random;

/** Situations of one floor on shores and girders: bearings and piers out, shores not yet set, posts turned, ties let go. */
final class RandomSituations {

    private final Random random;
    private final Layout plain;
    private final List<Contact> contacts;

    private RandomSituations(long seed) {
        this.random = new Random(seed);
        this.plain = RandomLayouts.onGirders(seed);
        this.contacts = plain.frame().contacts();
    }

    /** Four situations of one layout, the first of them as the frame says. */
    static List<Situation> of(long seed) {
        RandomSituations make = new RandomSituations(seed);
        Layout layout = make.layout();
        Rules own = Rules.of(layout.frame());
        return List.of(
                new Situation(layout, own, make.asListed()),
                new Situation(layout, new Rules(make.partsOut(), own.fastened()), make.asListed()),
                new Situation(layout, new Rules(make.carrierOut(), new BitSet()), make.otherProps()),
                new Situation(layout, new Rules(make.partsOut(), make.held()), make.otherProps()));
    }

    /** The layout with units that change gaps: a history, a post out by its tolerance, and a load that comes with a lift. */
    private Layout layout() {
        List<UnitLoad.Offset> history = new ArrayList<>();
        for (int c = 0; c < contacts.size(); c++) {
            if (!(contacts.get(c) instanceof Contact.OnGround)) {
                history.add(new UnitLoad.Offset(c, between(-0.004, 0.004)));
            }
        }
        int turned = random.nextInt(contacts.size());
        List<UnitLoad> units = new ArrayList<>(plain.units());
        units.add(new UnitLoad("history", List.of(), history));
        units.add(new UnitLoad("out", List.of(), List.of(new UnitLoad.Offset(turned, RandomLayouts.SIXTEENTH))));
        units.add(new UnitLoad(
                "both",
                List.of(new UnitLoad.Uniform(0, plain.frame().joists().get(0).start(), 3, 400)),
                List.of(new UnitLoad.Offset(0, 0.001), new UnitLoad.Offset(turned, -0.0005))));
        List<LoadCase> cases = List.of(
                new LoadCase(new int[] {0, 4}, new double[] {1, 1}),
                new LoadCase(
                        new int[] {0, 1, 2, 5}, new double[] {1, 1, between(0.2, 1), random.nextBoolean() ? 1 : -1}),
                new LoadCase(new int[] {0, 4, 3, 6}, new double[] {0.6, between(0, 1), 1, between(0, 1)}));
        return new Layout(plain.seed(), plain.frame(), units, cases);
    }

    private double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    private double[] asListed() {
        double[] stiffness = new double[contacts.size()];
        Arrays.fill(stiffness, Double.NaN);
        return stiffness;
    }

    private double[] otherProps() {
        double[] stiffness = asListed();
        for (int c = 0; c < stiffness.length; c++) {
            if (contacts.get(c) instanceof Contact.OnProp && random.nextDouble() < 0.8) {
                stiffness[c] = random.nextDouble() < 0.3 ? Double.POSITIVE_INFINITY : Math.pow(10, between(6, 8));
            }
        }
        return stiffness;
    }

    /** One bearing line, one pier or post, and a few seats. */
    private BitSet partsOut() {
        BitSet absent = new BitSet();
        double line = random.nextDouble() * 4;
        int pier = random.nextInt(contacts.size());
        for (int c = 0; c < contacts.size(); c++) {
            boolean out = contacts.get(c) instanceof Contact.OnGround seat
                    ? Math.abs(seat.y() - line) < 0.3
                    : contacts.get(c) instanceof Contact.OnProp && c == pier;
            absent.set(c, out || random.nextDouble() < 0.03);
        }
        return absent;
    }

    /** A shore or girder that is not there. */
    private BitSet carrierOut() {
        int carrier = random.nextInt(plain.frame().carriers().size());
        BitSet absent = new BitSet();
        for (int c = 0; c < contacts.size(); c++) {
            absent.set(
                    c,
                    contacts.get(c) instanceof Contact.OnCarrier seat && seat.carrier() == carrier
                            || contacts.get(c) instanceof Contact.OnProp prop && prop.carrier() == carrier);
        }
        return absent;
    }

    private BitSet held() {
        BitSet held = new BitSet();
        for (int c = 0; c < contacts.size(); c++) {
            held.set(c, random.nextDouble() < 0.3);
        }
        return held;
    }
}
