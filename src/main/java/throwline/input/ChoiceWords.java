package throwline.input;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Words of the trade for choices, such as {@code T-tail} for a tail on top of the fin. */
final class ChoiceWords {

    private final Map<String, List<List<String>>> rowsByWord =
            Lines.of("choice-words.csv").stream().collect(Collectors.groupingBy(row -> NearestName.key(row.get(1))));

    /**
     * The choice that a word stands for.
     *
     * @param key path of the key
     * @param word as written
     */
    Optional<String> choice(String key, String word) {
        return rowsByWord.getOrDefault(NearestName.key(word), List.of()).stream()
                .filter(row -> row.get(0).equals(key))
                .map(row -> row.get(2))
                .findFirst();
    }
}
