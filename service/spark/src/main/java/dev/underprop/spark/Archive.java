package dev.underprop.spark;

import dev.underprop.spark.Pieces.Piece;
import dev.underprop.spark.Repeats.Repeat;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.record.Extent;
import dev.underprop.wire.record.Sum;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.apache.hadoop.conf.Configuration;
import org.apache.spark.TaskContext;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.storage.StorageLevel;
import org.apache.spark.util.SerializableConfiguration;

/**
 * Checks an archive: cuts it into pieces, judges the plans of each on whatever machine is free, finds keys that were given before
 * in all of the archive, and writes the records of each piece as one part. Every plan is judged once; outcomes wait on the disks of
 * the machines until the keys are known.
 */
final class Archive {
    private final JavaSparkContext spark;
    private final JobSettings settings;
    private final Configuration here;
    private final Broadcast<SerializableConfiguration> cluster;

    Archive(JavaSparkContext spark, JobSettings settings) {
        this.spark = spark;
        this.settings = settings;
        this.here = spark.hadoopConfiguration();
        this.cluster = spark.broadcast(new SerializableConfiguration(here));
    }

    /**
     * Checks it and returns the summary, as it stands on the last line of the records.
     *
     * @throws JobRefused when it cannot be done as asked for
     */
    String check() {
        try {
            List<Slice> files = Listing.of(settings.paths(), here);
            Parts.begin(settings.out(), here);
            List<Piece> pieces = Pieces.of(files, settings.piece(), spark, cluster);
            JavaRDD<Told> plans = judged(pieces).persist(StorageLevel.DISK_ONLY());
            Sum sum = new Sum();
            written(plans).collect().forEach(sum::add);
            plans.unpersist();
            byte[] last = sum.last(true);
            Parts.write(settings.out(), pieces.size(), 0, here, out -> {
                out.write(last);
                return sum;
            });
            Parts.end(settings.out(), here);
            return new String(Documents.json(sum.summary(), true), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A partition a piece. */
    private JavaRDD<Told> judged(List<Piece> pieces) {
        JobSettings how = settings;
        Broadcast<SerializableConfiguration> conf = cluster;
        return spark.parallelize(pieces, pieces.size())
                .mapPartitions(own -> new Judging(own, how, conf.value().value()));
    }

    private JavaRDD<Sum> written(JavaRDD<Told> plans) {
        String folder = settings.out();
        Extent extent = settings.extent();
        Broadcast<SerializableConfiguration> conf = cluster;
        return plans.zipPartitions(
                Repeats.of(plans),
                (told, repeats) -> List.of(written(
                                told, repeats, folder, extent, conf.value().value()))
                        .iterator());
    }

    private static Sum written(
            Iterator<Told> plans, Iterator<Repeat> repeats, String folder, Extent extent, Configuration conf)
            throws IOException {
        Map<Integer, Repeats.Place> firsts = new HashMap<>();
        repeats.forEachRemaining(repeat -> firsts.put(repeat.number(), repeat.first()));
        TaskContext task = TaskContext.get();
        return Parts.write(folder, task.partitionId(), task.taskAttemptId(), conf, out -> {
            Sum sum = new Sum();
            for (int number = 0; plans.hasNext(); number++) {
                Told told = plans.next();
                Repeats.Place first = firsts.get(number);
                Told unique = first == null ? told : told.repeated(first.name(), extent);
                out.write(unique.record());
                sum.add(unique.mark());
            }
            return sum;
        });
    }
}
