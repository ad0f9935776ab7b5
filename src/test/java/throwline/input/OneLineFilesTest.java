package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files of one long line are read, or refused, in a time that grows as their length. */
class OneLineFilesTest {

    private static final int SIZE = 60_000;

    /** Twice the size in at most 2.5 times the time, twice over, which a single pause of the machine blurs less. */
    private static final double MOST_GROWTH = 2.5 * 2.5;

    /** The least time of so many runs counts. */
    private static final int RUNS = 3;

    /** Tries before a growth is believed: the machine may do something else meanwhile. */
    private static final int TRIES = 4;

    /** Below this, in seconds, times are those of the machine. */
    private static final double SHORT = 0.005;

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    /** What stands before the line, what is repeated in it, and what ends it, with a bar between. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "[|a, |]",
                "{|a, |}",
                "|a |",
                "|a: |",
                "|a: b |",
                "|- |",
                "|? |",
                "[|a #b, |]",
                "|#|",
                "| #|",
                "| |x",
                "|:|",
                "|: |",
                "|[|",
                "|{|",
                "|]|",
                "|\"a\" |",
                "[|\"a\", |]",
                "[|'a', |]",
                "|\"|",
                "name: |1|",
                "name: |a |",
                "throwline: 1\npacks: {|a: b, |}",
                "throwline: 1\nsetups: {|a: {}, |}",
                "throwline: 1\nwing: {sections: [|{at: 1 mm}, |]}",
                "throwline: 1\nwing: {sections: |1 |}",
                "throwline: 1\nsticks: {|a: {surfaces: [a, b]}, |}",
                "\"|\\\\x|\"",
                "|%|",
                "|\u00e9, |"
            })
    void growth(String shape) {
        String[] parts = shape.split("\\|", -1);
        double growth = Double.MAX_VALUE;
        for (int i = 0; i < TRIES && growth > MOST_GROWTH; i++) {
            double once = seconds(text(parts, SIZE));
            double fourfold = seconds(text(parts, 4 * SIZE));
            growth = fourfold / Math.max(once, SHORT);
        }
        assertThat(growth).isLessThanOrEqualTo(MOST_GROWTH);
    }

    private static String text(String[] parts, int size) {
        return parts[0] + parts[1].repeat(size / parts[1].length()) + parts[2];
    }

    /** Time of the processor for this thread. */
    private static double seconds(String text) {
        double least = Double.MAX_VALUE;
        for (int i = 0; i < RUNS; i++) {
            long start = THREADS.getCurrentThreadCpuTime();
            TestFile.read(text, "line.yaml");
            least = Math.min(least, (THREADS.getCurrentThreadCpuTime() - start) * 1e-9);
        }
        return least;
    }
}
