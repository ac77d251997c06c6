package dev.underprop.engine.lift;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * What low readings over posts could mean, each post by itself and together. In one state of the contacts forces go straight
 * from one extreme to the next, so that what lies between them lies between what they bring.
 */
final class Doubts {

    private final Begun begun;

    Doubts(Begun begun) {
        this.begun = begun;
    }

    /** All ways, what was read first. */
    List<Doubt> all() {
        List<Doubt> all = new ArrayList<>();
        int ways = 1;
        for (int i = 0; i < begun.low().size(); i++) {
            ways *= 3;
        }
        for (int way = 0; way < ways; way++) {
            all.add(doubt(way));
        }
        return all;
    }

    private Doubt doubt(int way) {
        Double[] lower = new Double[begun.raised().length];
        Arrays.fill(lower, 0.0);
        List<String> words = new ArrayList<>();
        int rest = way;
        for (int p : begun.low()) {
            switch (rest % 3) {
                case 0 -> {
                    lower[p] = begun.sunk()[p];
                    words.add(begun.name(p) + " come down as read");
                }
                case 1 -> {
                    lower[p] = Doubt.NOTHING_CARRIED;
                    words.add(begun.name(p) + " carrying nothing");
                }
                default -> words.add(begun.name(p) + " where its screw has it");
            }
            rest /= 3;
        }
        return new Doubt(String.join(" and ", words), Arrays.asList(lower), way == 0);
    }

    /** Why the lift may not go on from low readings: what one of their meanings breaks; empty where none breaks anything. */
    String unbounded(Run.Start sure, Run.Start doubted) {
        String low = String.join(" and ", begun.low().stream().map(begun::name).toList());
        String all = "the floor over " + low + " was read low; should " + low
                + " carry nothing, or carry as if nothing had come down, ";
        if (!doubted.course().stands()) {
            return all + "the floor would not stand: " + doubted.course().words();
        }
        Course before = new Watch(sure.floor(), sure.gauges(), false).held(sure.course());
        Course after = new Watch(doubted.floor(), doubted.gauges(), false).held(doubted.course());
        if (!after.stands()) {
            return all + "the floor would not stand: " + after.words();
        }
        Verdicts verdicts = new Verdicts(doubted.gauges().limits(), new BitSet());
        int limit = verdicts.refusing(before, after);
        return limit < 0
                ? ""
                : all + "a limit is broken: " + LettingDown.words(verdicts.limit(limit)) + ", "
                        + StrictMath.round(100 * verdicts.limit(limit).used(after.values()[limit]))
                        + " % of what is allowed";
    }
}
