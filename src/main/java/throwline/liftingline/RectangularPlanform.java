package throwline.liftingline;

/**
 * A straight surface of constant chord.
 *
 * @param semiSpan half the span, m
 * @param chord chord, m
 */
public record RectangularPlanform(double semiSpan, double chord) implements Planform {

    @Override
    public double[] breaks() {
        return new double[0];
    }

    @Override
    public double chord(double y) {
        return chord;
    }

    @Override
    public double twist(double y) {
        return 0;
    }

    @Override
    public double quarterChord(double y) {
        return 0;
    }

    @Override
    public double sweep(double y) {
        return 0;
    }

    @Override
    public double dihedral() {
        return 0;
    }
}
