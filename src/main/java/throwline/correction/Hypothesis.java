package throwline.correction;

import java.util.ArrayList;
import java.util.List;

/**
 * Set of sources that are taken as wrong, as places in the list of sources.
 *
 * @param wrong rising
 */
record Hypothesis(List<Integer> wrong) {

    Hypothesis {
        wrong = List.copyOf(wrong);
    }

    /** All sets of at most so many of these sources; the one in which nothing is wrong first. */
    static List<Hypothesis> all(List<Integer> sources, int most) {
        List<Hypothesis> all = new ArrayList<>();
        add(all, sources, 0, List.of(), most);
        return all;
    }

    private static void add(List<Hypothesis> all, List<Integer> sources, int from, List<Integer> chosen, int left) {
        all.add(new Hypothesis(chosen));
        for (int i = from; i < sources.size() && left > 0; i++) {
            List<Integer> more = new ArrayList<>(chosen);
            more.add(sources.get(i));
            add(all, sources, i + 1, more, left - 1);
        }
    }
}
