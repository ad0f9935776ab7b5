package throwline.section;

import throwline.model.Hinge;

/**
 * The hinged surface of a section.
 *
 * @param deflection rad, trailing edge down positive, -pi/4 to pi/2
 * @param chordFraction chord behind the hinge over the section's chord, 0.08 to 0.5; not read where there is no surface
 * @param hinge how the hinge line is closed
 */
public record SurfaceState(double deflection, double chordFraction, Hinge hinge) {

    /** {@inheritDoc} Written out as that of {@link SectionPlace}. */
    @Override
    public boolean equals(Object other) {
        return other instanceof SurfaceState state
                && Double.compare(deflection, state.deflection) == 0
                && Double.compare(chordFraction, state.chordFraction) == 0
                && hinge == state.hinge;
    }

    @Override
    public int hashCode() {
        return 31 * (31 * Double.hashCode(deflection) + Double.hashCode(chordFraction))
                + hinge.name().hashCode();
    }

    /** A section without a surface, or with it fixed at zero. */
    public static SurfaceState none() {
        return new SurfaceState(0, 0, Hinge.TAPED);
    }
}
