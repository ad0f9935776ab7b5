package throwline.flight;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import throwline.section.SectionCurve;

/**
 * A wing's section curves at the speeds that were asked for last. A search asks for few speeds again and again, and a
 * comparison of many set-ups is not to hold the curves of all that were ever asked for. For one thread.
 */
final class RecentCurves {

    /** As many as the searches of one pack come back to: fewer are made anew, more are not asked for again. */
    private static final int MOST_SPEEDS = 32;

    private final Map<Double, List<SectionCurve>> bySpeed = new LinkedHashMap<>(2 * MOST_SPEEDS, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Double, List<SectionCurve>> eldest) {
            return size() > MOST_SPEEDS;
        }
    };

    /** The curves at a speed, m/s, made where they are not there any more. */
    List<SectionCurve> at(double speed, DoubleFunction<List<SectionCurve>> maker) {
        List<SectionCurve> known = bySpeed.get(speed);
        if (known != null) {
            return known;
        }
        List<SectionCurve> made = maker.apply(speed);
        bySpeed.put(speed, made);
        return made;
    }
}
