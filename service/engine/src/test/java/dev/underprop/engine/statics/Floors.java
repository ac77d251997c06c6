package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Floors too large for the random layouts. */
final class Floors {

    private Floors() {}

    /** Sixty joists on two shores of ten posts each and one bearing, with some gaps and lifts. */
    static Layout large() {
        Random random = new Random(60);
        List<Frame.Joist> joists = new ArrayList<>();
        List<Contact> contacts = new ArrayList<>();
        List<UnitLoad.Piece> dead = new ArrayList<>();
        List<UnitLoad.Piece> live = new ArrayList<>();
        for (int j = 0; j < 60; j++) {
            joists.add(new Frame.Joist(0.4 * j, 0, 4.5, 2e5 + 2e5 * random.nextDouble()));
            contacts.add(new Contact.OnCarrier(j, 0, random.nextInt(3) == 0 ? 0.002 : 0, false));
            contacts.add(new Contact.OnCarrier(j, 1, random.nextInt(3) == 0 ? 0.001 : 0, false));
            contacts.add(new Contact.OnGround(j, 4.4, 2e7, 0, false));
            dead.add(new UnitLoad.Uniform(j, 0, 4.5, 300));
            if (random.nextBoolean()) {
                live.add(new UnitLoad.Uniform(j, 0, 4.5 * random.nextDouble(), 1500));
            }
        }
        List<Frame.Carrier> carriers = new ArrayList<>();
        for (int c = 0; c < 2; c++) {
            carriers.add(new Frame.Carrier(0.8 + 1.4 * c, -0.2, 23.9, 8e5));
            dead.add(new UnitLoad.Uniform(60 + c, -0.2, 23.9, 150));
            for (int p = 0; p < 10; p++) {
                double x = 0.05 + 2.6 * p;
                double gap = random.nextInt(4) == 0 ? 0.003 : -0.001 * random.nextInt(3);
                contacts.add(new Contact.OnProp(
                        c, Math.min(x, 23.8), p % 3 == 0 ? Double.POSITIVE_INFINITY : 2e7, gap, false));
            }
        }
        return new Layout(
                60,
                new Frame(joists, carriers, contacts),
                List.of(new UnitLoad("dead", dead), new UnitLoad("live", live)),
                List.of(
                        new LoadCase(new int[] {0}, new double[] {1}),
                        new LoadCase(new int[] {0, 1}, new double[] {1, 1}),
                        new LoadCase(new int[] {0, 1}, new double[] {0.6, 1})));
    }
}
