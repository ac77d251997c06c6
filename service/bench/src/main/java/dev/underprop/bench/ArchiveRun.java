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
 * records; for the first number also one worker, a folder of YAML, and the floor, which is to read, parse and validate each line and
 * to write an empty record.
 */
public final class ArchiveRun {
    private static final double SECONDS = 1e-9;
    private static final int POLL_MILLIS = 50;

    /** A bound, so that peaks tell what is needed and not how much the machine has to spare. */
    private static final String HEAP = "-Xmx256m";

    private ArchiveRun() {}

    /**
     * Measures.
     *
     * @param args jar, folder for files, numbers of plans
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path jar = Path.of(args[0]);
        Path folder = Files.createDirectories(Path.of(args[1]));
        boolean first = true;
        double floor = 0;
        for (String count : List.of(args).subList(2, args.length)) {
            int plans = Integer.parseInt(count);
            Path lines = lines(folder, plans);
            System.out.printf(Locale.ROOT, "%d plans, %d bytes%n", plans, Files.size(lines));
            if (first) {
                floor = floor(lines, plans);
                measure(jar, folder, lines, plans, 1);
                measure(jar, folder, yaml(folder, plans), plans, 2);
            }
            double whole = measure(jar, folder, lines, plans, 2);
            System.out.printf(Locale.ROOT, "  %.1f times the processor time of the floor%n", whole / floor);
            first = false;
        }
    }

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

    private static double floor(Path lines, int plans) throws IOException, InterruptedException {
        Floor floor = new Floor();
        floor.run(lines, 2);
        Duration before = ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
        long start = System.nanoTime();
        floor.run(lines, 2);
        Duration after = ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
        return report("floor, two threads", plans, System.nanoTime() - start, after.minus(before), 0);
    }

    private static double measure(Path jar, Path folder, Path input, int plans, int workers)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                HEAP,
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
        String what = input.getFileName() + ", workers " + workers + ", status " + process.exitValue();
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

    /** Tells what was measured, and returns the processor time of a plan (s). */
    private static double report(String what, int plans, long nanos, Duration busy, long peak) {
        double seconds = nanos * SECONDS;
        double processor = busy.toMillis() / 1000.0;
        System.out.printf(
                Locale.ROOT,
                "  %-46s %8.1f s %7.0f plans/s %8.1f processor s %7.0f plans a processor s %6d MB%n",
                what,
                seconds,
                plans / seconds,
                processor,
                plans / processor,
                peak / 1024);
        return processor / plans;
    }
}
