package throwline;

import org.junit.jupiter.api.Test;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmarks whose names match the system property {@code bench}, else all. */
class RunBenchmarks {

    @Test
    void run() throws RunnerException {
        String wanted = System.getProperty("bench", "throwline.*");
        new Runner(new OptionsBuilder()
                        .include(wanted)
                        .addProfiler(GCProfiler.class)
                        .shouldFailOnError(true)
                        .build())
                .run();
    }
}
