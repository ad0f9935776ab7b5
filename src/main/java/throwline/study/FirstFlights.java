package throwline.study;

import java.util.Map;
import java.util.Optional;

/**
 * The model's own rules for trying its set-ups and its pull sticks the first time.
 *
 * @param moves by name of the set-up; the reference and set-ups that do not fly are left out
 * @param stallsBelow by name of the pull stick, with its flaps at half: entry speed below which full stick stalls the wing, m/s;
 *     empty where it does not; sticks without flaps are left out
 */
public record FirstFlights(Map<String, MoveRule> moves, Map<String, Optional<Double>> stallsBelow) {

    public FirstFlights {
        moves = Map.copyOf(moves);
        stallsBelow = Map.copyOf(stallsBelow);
    }

    /** Nothing worked out. */
    public static FirstFlights none() {
        return new FirstFlights(Map.of(), Map.of());
    }
}
