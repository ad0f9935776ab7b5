package throwline.input;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A key of the file after checking: its value, or what stands below it. A key that the file does not hold, or holds
 * wrongly, is a branch with neither.
 */
final class Branch {

    private final String name;
    private final String path;
    private final FilePlace keyPlace;
    private final FilePlace place;
    private final Optional<Object> value;
    private final Map<String, Branch> children = new LinkedHashMap<>();

    private Branch(String name, String path, FilePlace keyPlace, FilePlace place, Optional<Object> value) {
        this.name = name;
        this.path = path;
        this.keyPlace = keyPlace;
        this.place = place;
        this.value = value;
    }

    static Branch empty(String name, String path, FilePlace place) {
        return new Branch(name, path, place, place, Optional.empty());
    }

    static Branch of(String name, String path, FilePlace keyPlace, FilePlace place, Object value) {
        return new Branch(name, path, keyPlace, place, Optional.of(value));
    }

    void add(Branch child) {
        children.put(NearestName.key(child.name), child);
    }

    /** As written. */
    String name() {
        return name;
    }

    /** The whole path, entries of lists counted from 1. */
    String path() {
        return path;
    }

    /** Where its value stands; of a group, where its key stands. */
    FilePlace place() {
        return place;
    }

    /** Where its key stands. */
    FilePlace keyPlace() {
        return keyPlace;
    }

    boolean isAbsent() {
        return value.isEmpty() && children.isEmpty();
    }

    /** What stands below, in the order of the file. */
    Collection<Branch> children() {
        return children.values();
    }

    boolean has(String key) {
        return children.containsKey(NearestName.key(key));
    }

    /** What stands below a key; an absent branch where nothing does. */
    Branch child(String key) {
        Branch child = children.get(NearestName.key(key));
        return child == null ? empty(key, path.isEmpty() ? key : path + "." + key, place) : child;
    }

    /** SI value of a quantity or count. */
    OptionalDouble amount() {
        Optional<Double> amount = value(Double.class);
        return amount.isPresent() ? OptionalDouble.of(amount.get()) : OptionalDouble.empty();
    }

    /** A quantity that is known to be there, once a file has no problems. */
    double amount(String key) {
        return child(key).amount().orElseThrow();
    }

    /** A text or choice that is known to be there, once a file has no problems. */
    String text(String key) {
        return child(key).value(String.class).orElseThrow();
    }

    <T> Optional<T> value(Class<T> type) {
        return value.filter(type::isInstance).map(type::cast);
    }

    /** Entries of a list of names. */
    List<Branch> names() {
        return List.copyOf(children.values());
    }
}
