package throwline.input;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** A model file that is being written: values by key, in any order; what has no value yet is left blank. */
final class Draft {

    private final Map<String, Draft> children = new LinkedHashMap<>();
    private Optional<String> value = Optional.empty();
    private boolean guess;

    /** The place of a path, made where it is not there yet; entries of lists are called 1, 2, ... */
    Draft at(String... path) {
        Draft place = this;
        for (String step : path) {
            place = place.children.computeIfAbsent(step, s -> new Draft());
        }
        return place;
    }

    /** Writes a value that its owner gave. */
    void give(String text) {
        value = Optional.of(text);
    }

    /** Writes a value that must stand in the file but is a guess. */
    void guess(String text) {
        value = Optional.of(text);
        guess = true;
    }

    Map<String, Draft> children() {
        return new LinkedHashMap<>(children);
    }

    Optional<Draft> child(String step) {
        return Optional.ofNullable(children.get(step));
    }

    Optional<String> value() {
        return value;
    }

    boolean isGuess() {
        return guess;
    }
}
