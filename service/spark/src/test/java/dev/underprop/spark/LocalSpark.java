package dev.underprop.spark;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;

/** A cluster of two threads in this JVM. */
final class LocalSpark {
    private LocalSpark() {}

    static JavaSparkContext start() {
        return new JavaSparkContext(new SparkConf()
                .setMaster("local[2]")
                .setAppName("tests")
                .set("spark.ui.enabled", "false")
                .set("spark.driver.bindAddress", "127.0.0.1")
                .set("spark.driver.host", "127.0.0.1"));
    }

    /** All parts, one after the other in the order of their names. */
    static byte[] records(Path folder) throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (Path part : parts(folder)) {
            all.writeBytes(Files.readAllBytes(part));
        }
        return all.toByteArray();
    }

    static List<Path> parts(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return new ArrayList<>(
                    files.filter(file -> file.getFileName().toString().startsWith("part-"))
                            .sorted()
                            .toList());
        }
    }
}
