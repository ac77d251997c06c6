package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** The way of the rule that changes all offending contacts at once, until it settles or repeats itself. */
final class FastRule {

    private FastRule() {}

    /** States visited, the first included. */
    static List<BitSet> path(Layout layout, LoadCase loadCase) {
        List<Contact> contacts = layout.frame().contacts();
        Assembly assembly = new Assembly(layout.frame(), layout.units());
        BitSet closed = new BitSet();
        for (int c = 0; c < contacts.size(); c++) {
            closed.set(c, contacts.get(c).fastened() || contacts.get(c).gap() <= 0);
        }
        List<BitSet> path = new ArrayList<>();
        BitSet wrong;
        do {
            path.add((BitSet) closed.clone());
            wrong = wrong(contacts, state(assembly, closed), loadCase);
            closed.xor(wrong);
        } while (!wrong.isEmpty() && !path.contains(closed));
        return path;
    }

    private static ContactState state(Assembly assembly, BitSet closed) {
        return new ContactState(assembly, assembly.props(), new Closure((BitSet) closed.clone(), new BitSet()));
    }

    private static BitSet wrong(List<Contact> contacts, ContactState state, LoadCase loadCase) {
        BitSet wrong = new BitSet();
        for (int c = 0; c < contacts.size(); c++) {
            double value = state.response(state.offsetsUnit()).values()[c];
            for (int i = 0; i < loadCase.size(); i++) {
                value += loadCase.factor(i) * state.response(loadCase.unit(i)).values()[c];
            }
            wrong.set(
                    c,
                    value < -1e-9 && !(state.closed().get(c) && contacts.get(c).fastened()));
        }
        return wrong;
    }
}
