package dev.underprop.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Writes an archive and measures the real jar over it: {@code java -cp benchmarks.jar dev.underprop.bench.ArchiveRun JAR FOLDER
 * PLANS...}. For each number of plans: time, plans a second and peak memory of the process, with two workers on lines and brief
 * records; for the first number also a folder of YAML, and the floor, which is to read, parse and validate each line and to write an
 * empty record; for the last number also one worker, and one worker on one processor. The JVM's compilers and its collector take the
 * second processor beside a single worker, so that only the latter tells what a processor more brings.
 */
public final class ArchiveRun {
    private static final double SECONDS = 1e-9;
    private static final int POLL_MILLIS = 50;

    /** A bound, so that peaks tell what is needed and not how much the machine has to spare. */
    private static final String HEAP = "-Xmx256m";

    /** As README says for archives. */
    private static final String COLLECTOR = "-XX:+UseParallelGC";

    private static final List<String> ONE_PROCESSOR = List.of("taskset", "-c", "0");

    private ArchiveRun() {}

    /**
     * Measures.
     *
     * @param args jar, folder for files, numbers of plans
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path jar = Path.of(args[0]);
        Path folder = Files.createDirectories(Path.of(args[1]));
        List<String> counts = List.of(args).subList(2, args.length);
        double floor = 0;
        for (int i = 0; i < counts.size(); i++) {
            int plans = Integer.parseInt(counts.get(i));
            Path lines = lines(folder, plans);
            System.out.printf(Locale.ROOT, "%d plans, %d bytes%n", plans, Files.size(lines));
            if (i == 0) {
                floor = floor(lines, plans).processor();
                measure(jar, folder, yaml(folder, plans), plans, 2, List.of());
            }
            Taken two = measure(jar, folder, lines, plans, 2, List.of());
            System.out.printf(Locale.ROOT, "  %.1f times the processor time of the floor%n", two.processor() / floor);
            if (i == counts.size() - 1) {
                Taken one = measure(jar, folder, lines, plans, 1, List.of());
                Taken alone = measure(jar, folder, lines, plans, 1, ONE_PROCESSOR);
                System.out.printf(
                        Locale.ROOT,
                        "  two workers: %.2f times one, %.2f times one on one processor%n",
                        one.seconds() / two.seconds(),
                        alone.seconds() / two.seconds());
            }
        }
    }

    /**
     * What a run took.
     *
     * @param seconds from start to end
     * @param processor seconds of processors for each plan
     */
    private record Taken(double seconds, double processor) {}

    private static Path lines(Path folder, int plans) throws IOException {
        Path file = folder.resolve("plans-" + plans + ".ndjson");
        ArchiveFile.write(file, plans);
        return file;
    }

    private static Path yaml(Path folder, int plans) throws IOException {
        Path all = folder.resolve("yaml-" + plans);
        for (int i = 0; i < plans; i++) {
            Path below = all.resolve(String.format(Locale.ROOT, "%03d", i / 1000));
            Files.createDirectories(below);
            Files.writeString(below.resolve(String.format(Locale.ROOT, "job-%06d.yaml", i)), ArchivePlans.yaml(i));
        }
        return all;
    }

    private static Taken floor(Path lines, int plans) throws IOException, InterruptedException {
        Floor floor = new Floor();
        floor.run(lines, 2);
        Duration before = ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
        long start = System.nanoTime();
        floor.run(lines, 2);
        Duration after = ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
        return report("floor, two threads", plans, System.nanoTime() - start, after.minus(before), 0);
    }

    private static Taken measure(Path jar, Path folder, Path input, int plans, int workers, List<String> held)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(held);
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                HEAP,
                COLLECTOR,
                "-jar",
                jar.toString(),
                "check",
                input.toString(),
                "--workers",
                Integer.toString(workers),
                "--detail",
                "brief",
                "--text",
                "sum",
                "--report",
                "ndjson:" + folder.resolve("results-" + workers + "-" + input.getFileName())));
        long start = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectOutput(folder.resolve("out.txt").toFile())
                .redirectError(folder.resolve("err.txt").toFile())
                .start();
        long peak = 0;
        Duration busy = Duration.ZERO;
        while (process.isAlive()) {
            peak = Math.max(peak, peak(process.pid()));
            busy = process.info().totalCpuDuration().orElse(busy);
            Thread.sleep(POLL_MILLIS);
        }
        String where = held.isEmpty() ? "" : ", one processor";
        String what = input.getFileName() + ", workers " + workers + where + ", status " + process.exitValue();
        return report(what, plans, System.nanoTime() - start, busy, peak);
    }

    /** Greatest memory of a process so far (kB); 0 where the system does not tell. */
    private static long peak(long pid) {
        try {
            for (String line : Files.readAllLines(Path.of("/proc/" + pid + "/status"))) {
                if (line.startsWith("VmHWM:")) {
                    return Long.parseLong(line.replaceAll("[^0-9]", ""));
                }
            }
            return 0;
        } catch (IOException e) {
            return 0;
        }
    }

    /** Tells what was measured. */
    private static Taken report(String what, int plans, long nanos, Duration busy, long peak) {
        double seconds = nanos * SECONDS;
        double processor = busy.toMillis() / 1000.0;
        System.out.printf(
                Locale.ROOT,
                "  %-56s %8.1f s %7.0f plans/s %8.1f processor s %7.0f plans a processor s %6d MB%n",
                what,
                seconds,
                plans / seconds,
                processor,
                plans / processor,
                peak / 1024);
        return new Taken(seconds, processor / plans);
    }
}
