package throwline.model;

import java.util.Map;

/**
 * Steady angles of every surface.
 *
 * @param name what its owner calls it
 * @param deflections deflection by surface name, rad, trailing edge down positive, both sides alike; a surface that is
 *     not named stands at zero
 * @param elevator elevator already mixed to this set-up, rad, trailing edge down positive
 * @param switchPosition switch or lever that brings it in, as its owner calls it; empty where not told
 */
public record SetUp(String name, Map<String, Double> deflections, double elevator, String switchPosition)
        implements Named {

    public SetUp {
        deflections = FileOrder.copyOf(deflections);
    }

    /** A set-up of which no switch is told. */
    public SetUp(String name, Map<String, Double> deflections, double elevator) {
        this(name, deflections, elevator, "");
    }

    /** Deflection of a surface, rad, trailing edge down positive. */
    public double deflection(String surface) {
        return deflections.getOrDefault(surface, 0.0);
    }

    /** True where no wing surface is moved. */
    public boolean isClean() {
        return deflections.values().stream().allMatch(d -> d == 0);
    }
}
