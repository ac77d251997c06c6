package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Working;
import java.util.List;
import java.util.function.Function;

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

    /** The same, with the record of that one. */
    static Judged told(Working working, List<Function<Working, Judged>> ways) {
        Working told = working.branch();
        Judged worst = ways.get(0).apply(told);
        for (Function<Working, Judged> way : ways.subList(1, ways.size())) {
            Working branch = working.branch();
            Judged other = way.apply(branch);
            if (of(worst, other) == other) {
                worst = other;
                told = branch;
            }
        }
        working.adopt(told);
        return worst;
    }

    /** A judgement whose lines are told. */
    static Judged compared(Working working, String demand, String capacity, Judged judged) {
        working.compared(demand, capacity, judged);
        return judged;
    }
}
