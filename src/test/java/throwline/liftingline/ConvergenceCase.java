package throwline.liftingline;

import java.util.Locale;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * A wing and a quantity whose exact value is known: COMPUTED, by two independent methods to seven figures (wing-cases.csv).
 * The limits of the order and of the errors at 40 and 80 strips are those that a user of the tables is promised.
 */
enum ConvergenceCase {
    RECTANGLE_LIFT("taper", 6, 1, "", false, 4.530425 * 0.1, 0.1, 1.8, 3e-4, 1e-4),
    TAPER_LIFT("taper", 8, 0.4, "", false, 4.979227 * 0.1, 0.1, 1.8, 3e-4, 1e-4),
    ELLIPSE_LIFT("ellipse", 6, 0, "", false, 0.1 * 2 * Math.PI * 6 / 8, 0.1, 1.8, 3e-4, 1e-4),
    FLAP_LIFT("taper", 6, 1, "0.1:0.55:5:5", false, 0.1983899, 0, 1.8, 1.2e-3, 3e-4),
    TAPER_FLAP_LIFT("taper", 8, 0.4, "0.1:0.55:5:5", false, 0.2302793, 0, 1.8, 1.2e-3, 3e-4),
    FLAP_DRAG("taper", 6, 1, "0.1:0.55:5:5", true, 0.003906178, 0, 1.7, 8e-3, 2e-3),
    TAPER_FLAP_DRAG("taper", 10, 0.6, "0.1:0.55:5:5", true, 0.003898105, 0, 1.7, 8e-3, 2e-3);

    private final String wing;
    private final double aspect;
    private final double taper;
    private final String surfaces;
    private final boolean drag;
    private final double exact;
    private final double incidence;
    private final double order;
    private final double at40;
    private final double at80;

    ConvergenceCase(
            String wing,
            double aspect,
            double taper,
            String surfaces,
            boolean drag,
            double exact,
            double incidence,
            double order,
            double at40,
            double at80) {
        this.wing = wing;
        this.aspect = aspect;
        this.taper = taper;
        this.surfaces = surfaces;
        this.drag = drag;
        this.exact = exact;
        this.incidence = incidence;
        this.order = order;
        this.at40 = at40;
        this.at80 = at80;
    }

    /** Relative error with this many strips over the span. */
    double error(int strips) {
        WingCase row = WingCase.read(wing, aspect, taper, "0", surfaces, "linear", Double.POSITIVE_INFINITY, "alpha 0");
        StripForces forces = row.wing(strips).at(incidence);
        return (drag ? forces.inducedDragCoefficient() : forces.liftCoefficient()) / exact - 1;
    }

    double order() {
        return order;
    }

    /**
     * True where a power law is fitted. Flapped lift is exact to five figures at 40 strips already: what is left has either
     * sign, and only its envelope falls.
     */
    boolean isFitted() {
        return drag || surfaces.isEmpty();
    }

    double at40() {
        return at40;
    }

    double at80() {
        return at80;
    }

    /** Its name in words. */
    String shown() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Slope of the logarithm of the error over that of the strips by least squares, falling positive. */
    static double order(int[] strips, double[] errors) {
        SimpleRegression line = new SimpleRegression();
        for (int k = 0; k < errors.length; k++) {
            line.addData(Math.log(strips[k]), Math.log(Math.abs(errors[k])));
        }
        return -line.getSlope();
    }
}
