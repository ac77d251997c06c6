package dev.underprop.spark;

import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;

/** What the cluster starts: {@code ArchiveJob [--detail WORD] [--units WORD] [--piece BYTES] --out FOLDER PATH...}. */
public final class ArchiveJob {
    private static final int DONE = 0;
    private static final int NOT_DONE = 2;

    private ArchiveJob() {}

    /**
     * Checks an archive. The status tells whether the job could be done, not what the plans came to: a cluster starts a job again
     * that ends otherwise than with 0.
     *
     * @param args as the class says
     */
    public static void main(String[] args) {
        System.exit(run(args));
    }

    private static int run(String[] args) {
        JobSettings settings;
        try {
            settings = JobSettings.of(args);
        } catch (IllegalArgumentException e) {
            System.err.println(e.getMessage());
            return NOT_DONE;
        }
        try (JavaSparkContext spark =
                new JavaSparkContext(new SparkConf().setIfMissing("spark.app.name", "underprop"))) {
            System.out.print(new Archive(spark, settings).check());
            return DONE;
        } catch (JobRefused e) {
            System.err.println("underprop: " + e.getMessage());
            return NOT_DONE;
        }
    }
}
