package dev.underprop.spark;

import dev.underprop.wire.record.EntryName;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import org.apache.spark.HashPartitioner;
import org.apache.spark.Partitioner;
import org.apache.spark.api.java.JavaPairRDD;
import org.apache.spark.api.java.JavaRDD;
import scala.Tuple2;

/** Finds plans whose key was given before, wherever in the archive that was. */
final class Repeats {
    private Repeats() {}

    /**
     * Where a key was met.
     *
     * @param key the key
     * @param piece number of the piece
     * @param number number of the plan in its piece
     */
    record Met(String key, int piece, int number) implements Serializable {}

    /** A place, of which only the path and the line are told. */
    record Place(String path, int line) implements Serializable {
        EntryName name() {
            return new EntryName(path, line);
        }
    }

    /**
     * A plan whose key was given before.
     *
     * @param number its number in its piece
     * @param first where the key was given first
     */
    record Repeat(int number, Place first) implements Serializable {}

    /** Plans of one key side by side, in the order of the input. */
    private static final class InOrder implements Comparator<Met>, Serializable {
        private static final long serialVersionUID = 1L;

        @Override
        public int compare(Met one, Met other) {
            int keys = one.key().compareTo(other.key());
            int pieces = keys != 0 ? keys : Integer.compare(one.piece(), other.piece());
            return pieces != 0 ? pieces : Integer.compare(one.number(), other.number());
        }
    }

    /** All plans of one key in one partition. */
    private static final class ByKey extends Partitioner {
        private static final long serialVersionUID = 1L;

        private final HashPartitioner keys;

        ByKey(int partitions) {
            this.keys = new HashPartitioner(partitions);
        }

        @Override
        public int numPartitions() {
            return keys.numPartitions();
        }

        @Override
        public int getPartition(Object met) {
            return keys.getPartition(((Met) met).key());
        }
    }

    /** The number of a piece is its partition. */
    private static final class ByPiece extends Partitioner {
        private static final long serialVersionUID = 1L;

        private final int pieces;

        ByPiece(int pieces) {
            this.pieces = pieces;
        }

        @Override
        public int numPartitions() {
            return pieces;
        }

        @Override
        public int getPartition(Object piece) {
            return (Integer) piece;
        }
    }

    /** The repeats of each piece, in the partition of the piece. */
    static JavaRDD<Repeat> of(JavaRDD<Told> plans) {
        int pieces = plans.getNumPartitions();
        JavaPairRDD<Met, Place> met = plans.mapPartitionsWithIndex(Repeats::met, true)
                .mapToPair(pair -> pair)
                .repartitionAndSortWithinPartitions(new ByKey(pieces), new InOrder());
        return met.mapPartitions(Repeats::repeats)
                .mapToPair(pair -> pair)
                .partitionBy(new ByPiece(pieces))
                .values();
    }

    private static Iterator<Tuple2<Met, Place>> met(int piece, Iterator<Told> plans) {
        return new Iterator<>() {
            private int number;

            @Override
            public boolean hasNext() {
                return plans.hasNext();
            }

            @Override
            public Tuple2<Met, Place> next() {
                Told told = plans.next();
                Met met = new Met(told.key(), piece, number);
                number++;
                return new Tuple2<>(met, new Place(told.path(), told.line()));
            }
        };
    }

    private static Iterator<Tuple2<Integer, Repeat>> repeats(Iterator<Tuple2<Met, Place>> sorted) {
        List<Tuple2<Integer, Repeat>> repeats = new ArrayList<>();
        String key = "";
        Place first = new Place("", 0);
        boolean begun = false;
        while (sorted.hasNext()) {
            Tuple2<Met, Place> next = sorted.next();
            Met met = next._1();
            if (begun && met.key().equals(key)) {
                repeats.add(new Tuple2<>(met.piece(), new Repeat(met.number(), first)));
            } else {
                key = met.key();
                first = next._2();
                begun = true;
            }
        }
        return repeats.iterator();
    }
}
