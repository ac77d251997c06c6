package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.List;

/** The props of all carriers with the stiffness they have in one solver. */
final class Props {

    private final int[] contacts;
    private final int[] freedoms;
    private final double[] stiffness;

    private Props(int[] contacts, int[] freedoms, double[] stiffness) {
        this.contacts = contacts;
        this.freedoms = freedoms;
        this.stiffness = stiffness;
    }

    /** The props as the frame has them. */
    static Props of(Frame frame, CarrierNodes nodes) {
        List<Integer> found = new ArrayList<>();
        for (int c = 0; c < frame.contacts().size(); c++) {
            if (frame.contacts().get(c) instanceof Contact.OnProp) {
                found.add(c);
            }
        }
        int[] contacts = found.stream().mapToInt(Integer::intValue).toArray();
        int[] freedoms = found.stream().mapToInt(c -> 2 * nodes.of(c)).toArray();
        double[] stiffness = found.stream()
                .mapToDouble(c -> frame.contacts().get(c).stiffness())
                .toArray();
        return new Props(contacts, freedoms, stiffness);
    }

    /**
     * The same props with other stiffness.
     *
     * @param byContact stiffness (N/m) by contact number, infinite when rigid, NaN where it stays
     * @throws IllegalArgumentException where a number is given for what is no prop, or is not positive
     */
    Props with(double[] byContact) {
        double[] changed = stiffness.clone();
        int given = 0;
        for (int i = 0; i < contacts.length; i++) {
            double value = byContact[contacts[i]];
            if (!Double.isNaN(value)) {
                if (!(value > 0)) {
                    throw new IllegalArgumentException("stiffness must be positive, or infinite for a rigid prop");
                }
                changed[i] = value;
                given++;
            }
        }
        for (double value : byContact) {
            given -= Double.isNaN(value) ? 0 : 1;
        }
        if (given != 0) {
            throw new IllegalArgumentException("only props can be given another stiffness");
        }
        return new Props(contacts, freedoms, changed);
    }

    int count() {
        return contacts.length;
    }

    int contact(int i) {
        return contacts[i];
    }

    /** The freedom of the carriers that the i-th prop holds. */
    int freedom(int i) {
        return freedoms[i];
    }

    /** Stiffness (N/m), infinite when rigid. */
    double stiffness(int i) {
        return stiffness[i];
    }

    /** Stiffness (N/m) of any contact of a frame: as it is here for a prop, else as the frame has it. */
    double stiffness(int contact, Frame frame) {
        for (int i = 0; i < contacts.length; i++) {
            if (contacts[i] == contact) {
                return stiffness[i];
            }
        }
        return frame.contacts().get(contact).stiffness();
    }

    boolean rigid(int i) {
        return Double.isInfinite(stiffness[i]);
    }
}
