package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Irregular layouts from a seed. Places are whole sixteenths of an inch; neighbours may be one sixteenth apart. */
final class RandomLayouts {

    /** One sixteenth of an inch (m). */
    static final double SIXTEENTH = 0.0254 / 16;

    private final Random random;
    private final boolean girders;
    private final boolean offsets;
    private final boolean mixed;
    private final List<Frame.Joist> joists = new ArrayList<>();
    private final List<Frame.Carrier> carriers = new ArrayList<>();
    private final List<Contact> contacts = new ArrayList<>();

    private RandomLayouts(long seed, boolean mayHaveOffsets, boolean girders) {
        this.random = new Random(seed);
        this.girders = girders;
        this.offsets = random.nextDouble() < 0.6 && mayHaveOffsets;
        this.mixed = random.nextDouble() < 0.4;
    }

    /** A layout that may have gaps and lifts. */
    static Layout of(long seed) {
        return new RandomLayouts(seed, true, false).make(seed);
    }

    /** As {@link #of}, with one or two girders on piers beyond the shores, some of them held down. */
    static Layout onGirders(long seed) {
        return new RandomLayouts(seed, true, true).make(seed);
    }

    /** A layout in which everything touches and nothing is lifted. */
    static Layout snug(long seed) {
        return new RandomLayouts(seed, false, false).make(seed);
    }

    private Layout make(long seed) {
        addJoists();
        addCarriers();
        if (girders) {
            addGirders();
        }
        for (int j = 0; j < joists.size(); j++) {
            addCrossings(j);
            addBearings(j);
        }
        for (int c = 0; c < carriers.size(); c++) {
            addProps(c);
        }
        RandomLoads loads = new RandomLoads(random, joists, carriers);
        return new Layout(seed, new Frame(joists, carriers, contacts), loads.units(), loads.cases());
    }

    private double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    private static double snap(double x) {
        return Math.round(x / SIXTEENTH) * SIXTEENTH;
    }

    private double rigidity(double base) {
        return base * Math.pow(10, mixed ? between(-2, 2) : between(-0.3, 0.3));
    }

    private void addJoists() {
        int count = 2 + random.nextInt(9);
        double x = 0;
        for (int j = 0; j < count; j++) {
            double start = snap(between(0, 0.6));
            joists.add(new Frame.Joist(x, start, snap(start + between(3, 5.5)), rigidity(3e5)));
            x += random.nextDouble() < 0.12 ? SIXTEENTH : snap(between(0.25, 0.7));
        }
    }

    private void addCarriers() {
        int count = 1 + random.nextInt(3);
        double last = joists.get(joists.size() - 1).x();
        double y = 0.7;
        for (int c = 0; c < count; c++) {
            boolean part = random.nextDouble() < 0.15;
            double start = snap(part ? between(0, last / 2) : -between(0, 0.6));
            double end = snap(part ? start + 0.3 + between(0.3, 1) * (last - start) : last + between(0.02, 0.6));
            carriers.add(new Frame.Carrier(snap(y), start, end, rigidity(8e5)));
            y += between(0.3, 1.1);
        }
    }

    private void addGirders() {
        double last = joists.get(joists.size() - 1).x();
        double y = carriers.get(carriers.size() - 1).y();
        for (int g = 0; g < 1 + random.nextInt(2); g++) {
            y = snap(Math.max(y + 0.3, between(2.4, 3)));
            carriers.add(new Frame.Carrier(y, -snap(between(0, 0.4)), snap(last + between(0.02, 0.4)), rigidity(3e6)));
        }
    }

    private double gap() {
        double kind = random.nextDouble();
        if (!offsets || kind < 0.4) {
            return 0;
        }
        double size = between(0, 0.010);
        return kind < 0.7 ? size : -size;
    }

    private boolean fastened() {
        return random.nextDouble() < (girders ? 0.25 : 0.08);
    }

    private double stiffness() {
        return random.nextDouble() < 0.35 ? Double.POSITIVE_INFINITY : Math.pow(10, between(5, 8));
    }

    private void addCrossings(int j) {
        Frame.Joist joist = joists.get(j);
        for (int c = 0; c < carriers.size(); c++) {
            Frame.Carrier carrier = carriers.get(c);
            boolean cross = joist.x() >= carrier.start() && joist.x() <= carrier.end();
            if (cross && joist.start() <= carrier.y() && joist.end() >= carrier.y() && random.nextDouble() > 0.03) {
                contacts.add(new Contact.OnCarrier(j, c, gap(), fastened()));
            }
        }
    }

    private void addBearings(int j) {
        Frame.Joist joist = joists.get(j);
        int wanted = 1 + random.nextInt(4);
        List<Double> taken = new ArrayList<>();
        carriers.forEach(c -> taken.add(c.y()));
        for (int b = 0; b < wanted; b++) {
            double place = b == 0 ? joist.end() - between(0, 0.3) : between(joist.start(), joist.end());
            place = b == 1 ? joist.start() + between(0, 0.2) : place;
            double at = snap(place);
            boolean apart = taken.stream().allMatch(t -> Math.abs(t - at) > 0.08);
            boolean removed = random.nextDouble() < 0.08;
            if (apart && !removed && at >= joist.start() && at <= joist.end()) {
                taken.add(at);
                contacts.add(new Contact.OnGround(j, at, stiffness(), gap(), fastened()));
            }
        }
    }

    private void addProps(int c) {
        Frame.Carrier carrier = carriers.get(c);
        int wanted = 2 + random.nextInt(4);
        if (random.nextDouble() < 0.05) {
            wanted = 1;
        }
        List<Double> taken = new ArrayList<>();
        for (int p = 0; p < wanted; p++) {
            double at = propPlace(carrier, (p + random.nextDouble()) / wanted);
            boolean apart = taken.stream().allMatch(t -> Math.abs(t - at) > 0.1);
            if (apart && at >= carrier.start() && at <= carrier.end()) {
                taken.add(at);
                contacts.add(new Contact.OnProp(c, at, stiffness(), gap(), fastened()));
            }
        }
        if (taken.isEmpty()) {
            contacts.add(new Contact.OnProp(c, carrier.start(), stiffness(), gap(), false));
        }
    }

    private double propPlace(Frame.Carrier carrier, double along) {
        if (random.nextDouble() < 0.4) {
            double x = joists.get(random.nextInt(joists.size())).x();
            return x + (random.nextInt(3) - 1) * SIXTEENTH;
        }
        return snap(carrier.start() + along * (carrier.end() - carrier.start()));
    }
}
