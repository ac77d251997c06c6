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

    BitSet shared() {
        return cells;
    }
}
