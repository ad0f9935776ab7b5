package throwline.logs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * Places of a trace that follow each other and share something.
 *
 * @param from first place
 * @param to one past the last
 */
record Runs(int from, int to) {

    /** Runs of places that keep a rule, within stretches without gaps; a change of set-up ends a run. */
    static List<Runs> of(Trace trace, IntPredicate rule) {
        return of(trace, 0, trace.grid.size(), rule);
    }

    /** The same between two places. */
    static List<Runs> of(Trace trace, int low, int high, IntPredicate rule) {
        List<Runs> runs = new ArrayList<>();
        int[] starts = trace.grid.starts();
        for (int s = 0; s + 1 < starts.length; s++) {
            int first = -1;
            int end = Math.min(high, starts[s + 1]);
            for (int i = Math.max(low, starts[s]); i <= end; i++) {
                boolean in = i < end && rule.test(i);
                boolean same = first >= 0 && in && trace.setUp[i] == trace.setUp[first];
                if (first >= 0 && !same) {
                    runs.add(new Runs(first, i));
                    first = -1;
                }
                if (first < 0 && in) {
                    first = i;
                }
            }
        }
        return runs;
    }

    double seconds(Trace trace) {
        return (to - from) * trace.grid.step();
    }

    double start(Trace trace) {
        return trace.time(from);
    }

    double end(Trace trace) {
        return trace.time(to - 1);
    }

    Optional<String> setUp(Trace trace) {
        return trace.setUpAt(from);
    }
}
