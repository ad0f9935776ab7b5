package throwline.liftingline;

import throwline.numerics.Interpolation;

/**
 * Correction for the finite chord, which a lifting line leaves out. The edge-velocity idea of R. T. Jones (NACA TN
 * 817, 1941, from memory; methods manual 6.2) takes the flow round the edge of a flat surface as slower than in the
 * plane section by the ratio of semi-perimeter to span; here it is an extra local downwash angle of {@code (E - 1) cl /
 * (2 pi)}, with the circulation split into its even and its odd part over the span. A local downwash leaves each
 * section its own stall, which scaling the section's lift would not.
 *
 * @param even factor E for loads that are the same on both sides, at least 1
 * @param odd factor E for loads that are opposite, at least 1
 */
public record ChordCorrection(double even, double odd) {

    /** No correction: the plain lifting line, for checks against theory. */
    public static ChordCorrection none() {
        return new ChordCorrection(1, 1);
    }

    /**
     * The correction for a planform.
     *
     * <p>Even factor: exact semi-perimeter over span of the ellipse with the same aspect ratio. Odd factor: fits to a
     * vortex lattice (COMPUTED): elliptic {@code 1 + 4.1 A^-1.55}, rectangular {@code 1 + 3.85 A^-1.336}, between them
     * by the equivalent taper, which is that of the straight-tapered wing whose area lies as far out. Checked against
     * the measured analogue of NACA ARR L5F23 for an ellipse of aspect ratio 6 (0.87 of lifting-line roll damping).
     *
     * @param grid the surface, aspect ratio 2 to 20
     * @return both factors
     */
    public static ChordCorrection of(SpanGrid grid) {
        return of(grid, EndPlates.none());
    }

    /** The same with plates at the ends, which leave the downwash of a wider surface. */
    public static ChordCorrection of(SpanGrid grid, EndPlates plates) {
        double aspect = grid.aspectRatio() * plates.widening();
        double full = fullness(grid);
        double elliptic = 1 + 4.1 * Math.pow(aspect, -1.55);
        double rectangular = 1 + 3.85 * Math.pow(aspect, -1.336);
        return new ChordCorrection(semiPerimeter(aspect), elliptic + full * (rectangular - elliptic));
    }

    /** Semi-perimeter over span of an ellipse, by Ramanujan's second formula (relative error below 1e-5 here). */
    static double semiPerimeter(double aspect) {
        double a = 0.5;
        double b = 2 / (Math.PI * aspect);
        double h = Math.pow((a - b) / (a + b), 2);
        return Math.PI * (a + b) * (1 + 3 * h / (10 + Math.sqrt(4 - 3 * h))) / 2;
    }

    private static double fullness(SpanGrid grid) {
        double secondMoment = 0;
        for (int i = 0; i < grid.size(); i++) {
            double y = grid.control(i);
            secondMoment += grid.chord(i) * grid.width(i) * y * y;
        }
        double radius = secondMoment / (grid.area() * Math.pow(grid.span() / 2, 2));
        double taper = (6 * radius - 1) / (3 - 6 * radius);
        return Interpolation.clamp((taper - 1.0 / 3) * 1.5, 0, 1);
    }
}
