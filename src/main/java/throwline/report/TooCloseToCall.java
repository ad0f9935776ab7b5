package throwline.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import throwline.study.Headline;

/**
 * Numbers of a row that cannot be told apart: groups in which every pair differs by less than the band of its
 * difference, from which errors that both share have gone. A number may stand in two groups.
 */
public final class TooCloseToCall {

    private TooCloseToCall() {}

    /**
     * One number and whose it is.
     *
     * @param name of the set-up
     * @param value with its band
     */
    public record Entry(String name, Headline.Known value) {}

    /** The largest groups of two or more, by rising value; names inside a group keep their order. */
    public static List<List<String>> groups(List<Entry> entries) {
        List<Entry> rising = entries.stream()
                .sorted(Comparator.comparingDouble(entry -> entry.value().value()))
                .toList();
        List<List<String>> groups = new ArrayList<>();
        int reached = 0;
        for (int i = 0; i < rising.size(); i++) {
            int end = i + 1;
            while (end < rising.size() && closeToAll(rising.subList(i, end), rising.get(end))) {
                end++;
            }
            if (end > reached && end - i > 1) {
                List<Entry> group = rising.subList(i, end);
                groups.add(entries.stream()
                        .filter(group::contains)
                        .map(Entry::name)
                        .toList());
                reached = end;
            }
        }
        return groups;
    }

    private static boolean closeToAll(List<Entry> group, Entry candidate) {
        return group.stream().allMatch(entry -> entry.value().tooCloseTo(candidate.value()));
    }
}
