package throwline.correction;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The factors of one estimate, each with its place in the state. */
public final class Factors {

    private final List<Factor> list = new ArrayList<>();
    private final Map<String, Integer> places = new HashMap<>();

    /** The place of a factor; a new one at the end where its name is new. */
    public int place(Factor factor) {
        Integer known = places.putIfAbsent(factor.name(), list.size());
        if (known != null) {
            return known;
        }
        list.add(factor);
        return list.size() - 1;
    }

    /** All of them, in the order of the state. */
    public List<Factor> all() {
        return List.copyOf(list);
    }

    /** Expected values of all. */
    public double[] means() {
        return list.stream().mapToDouble(Factor::mean).toArray();
    }
}
