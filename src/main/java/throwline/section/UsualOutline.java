package throwline.section;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import throwline.section.AirfoilShape.Corner;

/** Outlines of airfoils of which only thickness, camber and perhaps moment are known. */
final class UsualOutline {

    private static final int STEPS = 80;

    /** Steepest and flattest tail that is looked at, as factor of x in the mean line x (1 - x) (1 + factor x). */
    private static final double MOST_REFLEX = -2.2;

    private static final double MOST_AFT = 2;
    private static final double STEP = 0.05;

    private UsualOutline() {}

    /** The four-digit family's thickness (NACA Report 460, edge closed) on its mean line with the top at 40 %. */
    static AirfoilShape of(double thickness, double camber) {
        return around(thickness, fourDigitLine(camber, 0.4));
    }

    /** Mean line of the four-digit family: height over x, both in chords (NACA Report 460). */
    static DoubleUnaryOperator fourDigitLine(double camber, double top) {
        return x -> x < top
                ? camber / (top * top) * (2 * top * x - x * x)
                : camber / ((1 - top) * (1 - top)) * (1 - 2 * top + 2 * top * x - x * x);
    }

    /** The same thickness on the cubic mean line of this camber whose thin-section moment is nearest to one given. */
    static AirfoilShape of(double thickness, double camber, double moment) {
        AirfoilShape best = of(thickness, camber);
        double miss = Double.POSITIVE_INFINITY;
        for (double factor = MOST_REFLEX; factor <= MOST_AFT; factor += STEP) {
            AirfoilShape shape = cubic(thickness, camber, factor);
            double apart = Math.abs(shape.moment() - moment);
            if (apart < miss) {
                miss = apart;
                best = shape;
            }
        }
        return best;
    }

    private static AirfoilShape cubic(double thickness, double camber, double factor) {
        double highest = IntStream.rangeClosed(1, STEPS)
                .mapToDouble(i -> (double) i / STEPS)
                .map(x -> x * (1 - x) * (1 + factor * x))
                .max()
                .orElse(1);
        return around(thickness, x -> camber / highest * x * (1 - x) * (1 + factor * x));
    }

    /** The four-digit family's thickness around a mean line. */
    static AirfoilShape around(double thickness, DoubleUnaryOperator line) {
        return new AirfoilShape(side(line, 0.5 * thickness), side(line, -0.5 * thickness));
    }

    private static List<Corner> side(DoubleUnaryOperator line, double half) {
        return IntStream.rangeClosed(0, STEPS)
                .mapToDouble(i -> 0.5 * (1 - Math.cos(Math.PI * i / STEPS)))
                .mapToObj(x -> new Corner(x, line.applyAsDouble(x) + half * thickness(x)))
                .toList();
    }

    private static double thickness(double x) {
        double polynomial = x * (-0.1260 + x * (-0.3516 + x * (0.2843 - 0.1036 * x)));
        return 10 * (0.2969 * Math.sqrt(x) + polynomial);
    }
}
