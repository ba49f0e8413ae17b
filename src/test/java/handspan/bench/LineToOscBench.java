package handspan.bench;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collection;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** What one reading costs from the line's bytes to the bundle's bytes. */
@Tag("bench")
class LineToOscBench {
    private static final double MOST_NANOS = 3000;
    private static final double MOST_BYTES = 1024;
    private static final int ROOMS = 4;

    @Test
    void lineToOpenSoundControlBytes() throws RunnerException {
        BenchTable table = new BenchTable(
                "2-line-to-osc",
                "(2) One line to Open Sound Control bytes: intake, path with glide off, encoder; no network (JMH, 2 forks)",
                "room",
                "ns a reading",
                "+- (99.9 %)",
                "bytes a reading");
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include(LineToOsc.class.getName() + "\\.")
                        .forks(2)
                        .warmupIterations(3)
                        .warmupTime(TimeValue.seconds(1))
                        .measurementIterations(3)
                        .measurementTime(TimeValue.seconds(1))
                        .addProfiler(GCProfiler.class)
                        .shouldFailOnError(true)
                        .verbosity(VerboseMode.SILENT)
                        .build())
                .run();
        assertEquals(ROOMS, results.size());
        double mostNanos = 0;
        double mostBytes = 0;
        for (RunResult result : results) {
            double nanos = result.getPrimaryResult().getScore();
            double bytes = requireNonNull(result.getSecondaryResults().get("gc.alloc.rate.norm"))
                    .getScore();
            assertTrue(nanos > 0 && bytes > 0, nanos + " ns, " + bytes + " bytes");
            table.row(
                    result.getParams().getParam("room"),
                    BenchTable.figure(nanos, 0),
                    BenchTable.figure(result.getPrimaryResult().getScoreError(), 0),
                    BenchTable.figure(bytes, 0));
            mostNanos = Math.max(mostNanos, nanos);
            mostBytes = Math.max(mostBytes, bytes);
        }
        table.figure("under 3 microseconds", BenchTable.figure(mostNanos / 1000, 2), mostNanos < MOST_NANOS)
                .figure("under 1 kB", BenchTable.figure(mostBytes, 0) + " bytes", mostBytes < MOST_BYTES)
                .publish();
    }
}
