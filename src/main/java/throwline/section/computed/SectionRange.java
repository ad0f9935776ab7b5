package throwline.section.computed;

/** Outlines and Reynolds numbers for which the section method is meant (methods manual 3.12). */
final class SectionRange {

    /** Sections of more camber than this collapse at and below this Reynolds number: no rule holds there. */
    private static final double MOST_CAMBER = 0.07;

    private static final double COLLAPSE = 150_000;

    private static final double SLOWEST = 60_000;

    /** Thinner ones are plates; thicker ones, and those that hang down, are unlike all that were measured. */
    private static final double THINNEST = 0.06;

    private static final double THICKEST = 0.18;
    private static final double LEAST_CAMBER = -0.002;
    private static final double HIGHEST_CAMBER = 0.10;
    private static final double LEAST_PEAK_LIFT = 0.5;

    /** Outlines less alike than this to every measured one are not predicted (PRACTICE). */
    private static final double FARTHEST = 5;

    private SectionRange() {}

    /** The lowest Reynolds number. */
    static double from(SectionTraits traits) {
        return traits.camber() <= MOST_CAMBER ? SLOWEST : COLLAPSE;
    }

    static boolean holds(SectionTraits traits, LearnedAirfoil nearest) {
        return holds(traits) && traits.distance(nearest.traits()) <= FARTHEST;
    }

    static boolean holds(SectionTraits traits) {
        return traits.thickness() >= THINNEST
                && traits.thickness() <= THICKEST
                && traits.camber() >= LEAST_CAMBER
                && traits.camber() <= HIGHEST_CAMBER
                && traits.peakLift() >= LEAST_PEAK_LIFT
                && traits.drag().finite();
    }
}
