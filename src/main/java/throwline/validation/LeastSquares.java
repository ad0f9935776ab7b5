package throwline.validation;

import java.util.List;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/** A straight line through points. */
record LeastSquares(double slope, double intercept) {

    /** Through x and y. */
    static LeastSquares through(List<double[]> points) {
        SimpleRegression line = new SimpleRegression();
        points.forEach(p -> line.addData(p[0], p[1]));
        return new LeastSquares(line.getSlope(), line.getIntercept());
    }

    /** Where the line crosses zero. */
    double root() {
        return -intercept / slope;
    }
}
