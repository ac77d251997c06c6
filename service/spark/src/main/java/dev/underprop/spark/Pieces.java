package dev.underprop.spark;

import java.io.IOException;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.hadoop.conf.Configuration;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.util.SerializableConfiguration;

/** Cuts an archive into pieces of about the same size, in its order, each of which one task goes through. */
final class Pieces {
    private Pieces() {}

    /**
     * What one task goes through.
     *
     * @param slices files and parts of files, in order
     */
    record Piece(List<Slice> slices) implements Serializable {
        Piece {
            slices = new ArrayList<>(slices);
        }
    }

    /** The pieces of some files. */
    static List<Piece> of(
            List<Slice> files, long size, JavaSparkContext spark, Broadcast<SerializableConfiguration> cluster) {
        List<Slice> cut = new ArrayList<>();
        try {
            Configuration here = cluster.value().value();
            for (Slice file : files) {
                cut.addAll(Slices.cut(file, size, here));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return gathered(numbered(cut, spark, cluster), size);
    }

    /** Lines are numbered through a file, so that those of the parts before must be counted first. */
    private static List<Slice> numbered(
            List<Slice> slices, JavaSparkContext spark, Broadcast<SerializableConfiguration> cluster) {
        List<Slice> parts = slices.stream().filter(slice -> !slice.whole()).toList();
        if (parts.isEmpty()) {
            return slices;
        }
        List<Integer> counts = spark.parallelize(new ArrayList<>(parts), parts.size())
                .map(part -> Slices.count(part, cluster.value().value()))
                .collect();
        List<Slice> numbered = new ArrayList<>();
        int lines = 0;
        int next = 0;
        for (Slice slice : slices) {
            if (slice.whole()) {
                numbered.add(slice);
            } else {
                lines = slice.from() == 0 ? 0 : lines;
                numbered.add(slice.after(lines));
                lines = Math.addExact(lines, counts.get(next));
                next++;
            }
        }
        return numbered;
    }

    private static List<Piece> gathered(List<Slice> slices, long size) {
        List<Piece> pieces = new ArrayList<>();
        List<Slice> open = new ArrayList<>();
        long weight = 0;
        for (Slice slice : slices) {
            if (!open.isEmpty() && weight + slice.weight() > size) {
                pieces.add(new Piece(open));
                open.clear();
                weight = 0;
            }
            open.add(slice);
            weight += slice.weight();
        }
        pieces.add(new Piece(open));
        return pieces;
    }
}
