package throwline.section.computed;

import java.util.Optional;
import throwline.section.NotComputed;

/** Outlines and Reynolds numbers for which the section method is meant (methods manual 3.12). */
public final class SectionRange {

    static final double SLOWEST = 60_000;
    private static final double FASTEST = 500_000;

    /** Thinner ones are plates; thicker ones, and those that hang down, are unlike all that were measured. */
    private static final double THINNEST = 0.06;

    private static final double THICKEST = 0.18;
    private static final double LEAST_CAMBER = -0.002;

    /** Sections of more camber collapse at 130 000 and below, and what is predicted of them without them is far off. */
    private static final double HIGHEST_CAMBER = 0.07;

    private static final double LEAST_PEAK_LIFT = 0.5;

    /** Outlines less alike than this to every measured one are not predicted (PRACTICE). */
    private static final double FARTHEST = 5;

    private SectionRange() {}

    /** True where the method is meant for an outline at a Reynolds number. */
    public static boolean holds(SectionTraits traits, double reynolds) {
        return holds(traits) && reynolds >= SLOWEST && reynolds <= FASTEST;
    }

    static boolean holds(SectionTraits traits) {
        return outside(traits).isEmpty();
    }

    /** Why the method is not meant for an outline; empty where it is. */
    static Optional<NotComputed> outside(SectionTraits traits, LearnedAirfoil nearest) {
        return outside(traits)
                .or(() -> traits.distance(nearest.traits()) <= FARTHEST
                        ? Optional.empty()
                        : Optional.of(NotComputed.UNLIKE));
    }

    private static Optional<NotComputed> outside(SectionTraits traits) {
        Optional<NotComputed> plain = outside(traits.thickness(), traits.camber());
        if (plain.isPresent()) {
            return plain;
        }
        if (!(traits.peakLift() >= LEAST_PEAK_LIFT)) {
            return Optional.of(NotComputed.NOSE);
        }
        return traits.drag().finite() ? Optional.empty() : Optional.of(NotComputed.LAYER);
    }

    /** The same of thickness and camber alone. */
    static Optional<NotComputed> outside(double thickness, double camber) {
        if (!(thickness >= THINNEST)) {
            return Optional.of(NotComputed.THIN);
        }
        if (!(thickness <= THICKEST)) {
            return Optional.of(NotComputed.THICK);
        }
        if (!(camber >= LEAST_CAMBER)) {
            return Optional.of(NotComputed.HANGING);
        }
        return camber <= HIGHEST_CAMBER ? Optional.empty() : Optional.of(NotComputed.CAMBERED);
    }
}
