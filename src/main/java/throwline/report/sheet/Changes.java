package throwline.report.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import throwline.report.data.SheetEntry;

/** What has changed since an earlier sheet; a change that cannot be seen on paper is none. */
final class Changes {

    private final boolean compared;
    private final Map<String, String> earlier = new HashMap<>();

    Changes(Optional<List<SheetEntry>> entries) {
        compared = entries.isPresent();
        entries.ifPresent(all -> all.forEach(e -> earlier.put(e.key(), e.value())));
    }

    /** True where there is an earlier sheet that has no such number. */
    boolean isNew(SheetEntry entry) {
        return compared
                && !entry.value().isEmpty()
                && earlier.getOrDefault(entry.key(), "").isEmpty();
    }

    /**
     * How the number stood on the earlier sheet, where it stood otherwise.
     *
     * @param entry the number now
     * @param shown how a number is shown
     */
    Optional<String> was(SheetEntry entry, DoubleFunction<String> shown) {
        String before = earlier.getOrDefault(entry.key(), "");
        if (before.isEmpty() || entry.value().isEmpty()) {
            return Optional.empty();
        }
        String then = shown.apply(Double.parseDouble(before));
        return then.equals(shown.apply(Double.parseDouble(entry.value()))) ? Optional.empty() : Optional.of(then);
    }

    /** Numbers of the earlier sheet that are there no more. */
    List<String> gone(List<SheetEntry> now) {
        Map<String, String> left = new HashMap<>(earlier);
        now.forEach(e -> left.remove(e.key()));
        return left.keySet().stream()
                .filter(key -> key.endsWith("\tangle"))
                .map(key -> String.join(" ", key.replace("\tangle", "").split("\t", -1))
                        .replaceAll(" +", " "))
                .sorted()
                .toList();
    }
}
