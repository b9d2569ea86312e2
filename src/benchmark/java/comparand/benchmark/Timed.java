package comparand.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Whole processes timed in turns, ours and another, so that whatever else the machine does meets both alike; medians.
 *
 * @param ours seconds of each turn
 * @param other seconds of each turn
 */
record Timed(double[] ours, double[] other) {

    /** A program with its arguments. */
    interface Program {
        void run() throws IOException;
    }

    static Timed inTurns(int turns, Program ours, Program other) throws IOException {
        // the first turn fills the caches of the disk and is not counted
        ours.run();
        other.run();
        var a = new double[turns];
        var b = new double[turns];
        for (int i = 0; i < turns; i++) {
            a[i] = seconds(ours);
            b[i] = seconds(other);
        }
        return new Timed(a, b);
    }

    static double[] alone(int turns, Program program) throws IOException {
        program.run();
        var all = new double[turns];
        for (int i = 0; i < turns; i++) {
            all[i] = seconds(program);
        }
        return all;
    }

    private static double seconds(Program program) throws IOException {
        long start = System.nanoTime();
        program.run();
        return (System.nanoTime() - start) / 1e9;
    }

    double ratio() {
        return median(ours) / median(other);
    }

    static double median(double[] all) {
        var sorted = all.clone();
        Arrays.sort(sorted);
        int n = sorted.length;
        return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
    }

    /** {@code 1.234 (1.2 to 1.3)}: the median with the fastest and slowest. */
    static String said(double[] all) {
        return String.format(
                Locale.ROOT,
                "%.2f (%.2f to %.2f)",
                median(all),
                Arrays.stream(all).min().orElseThrow(),
                Arrays.stream(all).max().orElseThrow());
    }

    /** The tool as it was packaged, with a heap of 512 MiB. */
    static Program tool(String... arguments) {
        return process(List.of("target/comparand/bin/comparand"), arguments);
    }

    /**
     * One of the programs beside this, under the very options the tool is started with.
     *
     * @param compiler 1 for short runs; 4 for long ones, which the launcher uses where a data file is large
     */
    static Program beside(int compiler, Class<?> program, String... arguments) {
        return process(
                List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=" + compiler,
                        "-XX:+UseSerialGC",
                        "-Xmx512m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        program.getName()),
                arguments);
    }

    static Program process(List<String> command, String... arguments) {
        var whole = new ArrayList<>(command);
        whole.addAll(List.of(arguments));
        return () -> {
            var builder = new ProcessBuilder(whole).redirectErrorStream(true);
            builder.environment().put("COMPARAND_JAVA_OPTIONS", "-Xmx512m");
            builder.redirectOutput(ProcessBuilder.Redirect.to(Path.of("target/benchmark.out").toFile()));
            try {
                int code = builder.start().waitFor();
                if (code != 0) {
                    throw new IllegalStateException(whole + " ended with " + code + ": see target/benchmark.out");
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException(e);
            }
        };
    }
}
