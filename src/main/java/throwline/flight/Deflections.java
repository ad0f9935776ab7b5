package throwline.flight;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import throwline.model.FileOrder;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.model.Wing;
import throwline.section.SectionPlace;

/**
 * Angles of every wing surface on each side: a set-up, with or without a stick, cut at the travel.
 *
 * @param left deflection by surface name, rad, trailing edge down positive
 * @param right the same for the right side
 * @param atItsStop true where a surface was cut at its travel
 */
public record Deflections(Map<String, Double> left, Map<String, Double> right, boolean atItsStop) {

    public Deflections {
        left = FileOrder.copyOf(left);
        right = FileOrder.copyOf(right);
    }

    /** {@inheritDoc} Written out as that of {@link SectionPlace}. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Deflections deflections
                && left.equals(deflections.left)
                && right.equals(deflections.right)
                && atItsStop == deflections.atItsStop;
    }

    @Override
    public int hashCode() {
        return 31 * left.hashCode() + right.hashCode();
    }

    /** A set-up alone. */
    public static Deflections of(Wing wing, SetUp setUp) {
        return of(wing, setUp, new Stick.Pull("", Map.of(), 0, List.of()), 1);
    }

    /**
     * A set-up with part of a stick's throw.
     *
     * @param wing the wing
     * @param setUp the set-up
     * @param stick the stick
     * @param share of full stick, 0 to 1
     */
    public static Deflections of(Wing wing, SetUp setUp, Stick stick, double share) {
        Map<String, Double> left = new LinkedHashMap<>();
        Map<String, Double> right = new LinkedHashMap<>();
        boolean cut = false;
        for (Surface surface : wing.surfaces()) {
            double base = setUp.deflection(surface.name());
            double wantedLeft = base;
            double wantedRight = base;
            if (stick instanceof Stick.Roll roll && roll.throwsBySurface().containsKey(surface.name())) {
                Stick.Throws t = roll.throwsBySurface().get(surface.name());
                wantedLeft += share * t.down();
                wantedRight -= share * t.up();
            } else if (stick instanceof Stick.Pull pull) {
                double added = share * pull.deflections().getOrDefault(surface.name(), 0.0);
                wantedLeft += added;
                wantedRight += added;
            }
            cut |= surface.reached(wantedLeft) != wantedLeft || surface.reached(wantedRight) != wantedRight;
            left.put(surface.name(), surface.reached(wantedLeft));
            right.put(surface.name(), surface.reached(wantedRight));
        }
        return new Deflections(left, right, cut);
    }

    /** These with one side of a surface, -1 left and 1 right, at another angle, rad. */
    Deflections with(Surface surface, int side, double angle) {
        Map<String, Double> changed = new LinkedHashMap<>(side < 0 ? left : right);
        changed.put(surface.name(), angle);
        return side < 0 ? new Deflections(changed, right, atItsStop) : new Deflections(left, changed, atItsStop);
    }

    /** Deflection of a surface on a side, -1 left and 1 right, rad. */
    public double on(Surface surface, int side) {
        return (side < 0 ? left : right).getOrDefault(surface.name(), 0.0);
    }
}
