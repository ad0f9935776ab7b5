package throwline.model;

import java.util.List;
import java.util.Map;

/** Deflections that full stick adds to a set-up. */
public sealed interface Stick extends Named permits Stick.Roll, Stick.Pull {

    /** Names of the set-ups it works in; empty for all. */
    List<String> in();

    /** True where the stick works in this set-up. */
    default boolean worksIn(SetUp setUp) {
        return in().isEmpty() || in().contains(setUp.name());
    }

    /**
     * Full stick to the right: surfaces move oppositely, up on the right side and down on the left.
     *
     * @param name what its owner calls it
     * @param throwsBySurface by surface name, what is added to the set-up
     * @param in names of the set-ups it works in; empty for all
     */
    record Roll(String name, Map<String, Throws> throwsBySurface, List<String> in) implements Stick {
        public Roll {
            throwsBySurface = FileOrder.copyOf(throwsBySurface);
            in = List.copyOf(in);
        }
    }

    /**
     * Full stick back: surfaces move alike on both sides.
     *
     * @param name what its owner calls it
     * @param deflections by surface name, added deflection, rad, trailing edge down positive
     * @param elevator added elevator, rad, trailing edge down positive, so negative for a pull
     * @param in names of the set-ups it works in; empty for all
     */
    record Pull(String name, Map<String, Double> deflections, double elevator, List<String> in) implements Stick {
        public Pull {
            deflections = FileOrder.copyOf(deflections);
            in = List.copyOf(in);
        }
    }

    /**
     * Throws of one surface at full roll stick.
     *
     * @param up how far the rising side goes up, rad, not negative
     * @param down how far the falling side goes down, rad, not negative
     */
    record Throws(double up, double down) {}
}
