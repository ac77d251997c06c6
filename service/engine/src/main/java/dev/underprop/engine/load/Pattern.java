package dev.underprop.engine.load;

import java.util.BitSet;

/**
 * Where live load lies.
 *
 * @param name in words, for people
 * @param cells which cells of the {@link LoadModel} carry live load
 */
public record Pattern(String name, BitSet cells) {

    public Pattern {
        cells = (BitSet) cells.clone();
    }

    @Override
    public BitSet cells() {
        return (BitSet) cells.clone();
    }

    /** Numbers of the loaded cells, ascending. */
    public int[] loaded() {
        int[] loaded = new int[cells.cardinality()];
        int cell = -1;
        for (int i = 0; i < loaded.length; i++) {
            cell = cells.nextSetBit(cell + 1);
            loaded[i] = cell;
        }
        return loaded;
    }
}
