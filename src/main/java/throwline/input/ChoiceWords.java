package throwline.input;

import java.util.List;
import java.util.Optional;

/** Words of the trade for choices, such as {@code T-tail} for a tail on top of the fin. */
final class ChoiceWords {

    private final List<List<String>> rows = Lines.of("choice-words.csv");

    /**
     * The choice that a word stands for.
     *
     * @param key path of the key
     * @param word as written
     */
    Optional<String> choice(String key, String word) {
        String wanted = NearestName.key(word);
        return rows.stream()
                .filter(row ->
                        row.get(0).equals(key) && NearestName.key(row.get(1)).equals(wanted))
                .map(row -> row.get(2))
                .findFirst();
    }
}
