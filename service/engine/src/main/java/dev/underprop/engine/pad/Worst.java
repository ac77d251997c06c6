package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult.Judged;

/** Of several judgements of one pad, the one whose demand is the greatest share of its capacity. */
final class Worst {

    private Worst() {}

    static Judged of(Judged first, Judged... others) {
        Judged worst = first;
        for (Judged other : others) {
            worst = other.demand() * worst.capacity() > worst.demand() * other.capacity() ? other : worst;
        }
        return worst;
    }
}
