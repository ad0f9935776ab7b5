package throwline.report.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import throwline.report.data.SheetEntry;
import throwline.report.document.Figures;
import throwline.report.document.Text;

/** Changes since an earlier sheet; a change that cannot be seen on paper is none. */
final class Changes {

    private final boolean compared;
    private final Figures figures;
    private final Map<String, String> earlier = new HashMap<>();

    Changes(Optional<List<SheetEntry>> entries, Figures figures) {
        this.figures = figures;
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
    Optional<Text> was(SheetEntry entry, DoubleFunction<? extends Text> shown) {
        String before = earlier.getOrDefault(entry.key(), "");
        if (before.isEmpty() || entry.value().isEmpty()) {
            return Optional.empty();
        }
        String then = figures.show(shown.apply(Double.parseDouble(before)));
        String now = figures.show(shown.apply(Double.parseDouble(entry.value())));
        return then.equals(now) ? Optional.empty() : Optional.of(Text.name(then));
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
