package throwline.liftingline;

/**
 * The ground below the surface.
 *
 * @param height of the lifting line above it, m; infinite for free air
 * @param boundImages true to include the image of the bound vortex, which slows the air and turns it up, besides that of
 *     the trailing vortices
 */
public record Ground(double height, boolean boundImages) {

    public Ground {
        if (!(height > 0)) {
            throw new IllegalArgumentException("the lifting line must be above the ground, not at " + height + " m");
        }
    }

    /** No ground. */
    public static Ground none() {
        return new Ground(Double.POSITIVE_INFINITY, false);
    }

    /** True where there is ground. */
    public boolean isNear() {
        return !Double.isInfinite(height);
    }
}
