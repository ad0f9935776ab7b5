package throwline.section.contour;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import throwline.section.AirfoilShape.Corner;

/**
 * Karman-Trefftz section: the circle through (1, 0) about a centre, mapped by {@code w = n ((z + 1)^n + (z - 1)^n) / ((z +
 * 1)^n - (z - 1)^n)}; a cusp (n = 2) is Joukowski's (W. F. Durand, Aerodynamic Theory II; closed forms from memory).
 */
final class KarmanTrefftz {

    private static final int STEPS = 4000;

    private final double radius;
    private final double turn;
    private final double power;
    private final Complex centre;
    private final List<Complex> outline = new ArrayList<>();
    private final Complex nose;
    private final double chord;

    /**
     * @param x centre of the circle, negative
     * @param y its height
     * @param edge angle of the trailing edge, rad
     */
    KarmanTrefftz(double x, double y, double edge) {
        power = 2 - edge / Math.PI;
        centre = new Complex(x, y);
        radius = Math.hypot(1 - x, y);
        turn = Math.asin(y / radius);
        for (int i = 0; i <= STEPS; i++) {
            outline.add(mapped(2 * Math.PI * i / STEPS));
        }
        Complex farthest = outline.get(0);
        for (Complex point : outline) {
            if (point.subtract(power).abs() > farthest.subtract(power).abs()) {
                farthest = point;
            }
        }
        nose = farthest;
        chord = nose.subtract(power).abs();
    }

    private Complex mapped(double angle) {
        double at = angle - turn;
        Complex z = centre.add(new Complex(radius * Math.cos(at), radius * Math.sin(at)));
        Complex front = z.subtract(1);
        if (front.abs() < 1e-9) {
            return new Complex(power);
        }
        Complex ratio = front.divide(z.add(1));
        double argument = ratio.getArgument();
        // The branch that is continuous round the body: cut from 1 to -1 inside it.
        Complex q = new Complex(Math.log(ratio.abs()), argument).multiply(power).exp();
        return new Complex(power).multiply(q.add(1)).divide(q.negate().add(1));
    }

    Contour contour() {
        int at = outline.indexOf(nose);
        Complex along = new Complex(power).subtract(nose).divide(chord);
        List<Corner> upper = new ArrayList<>();
        List<Corner> lower = new ArrayList<>();
        for (int i = at; i >= 0; i--) {
            upper.add(corner(outline.get(i), along));
        }
        for (int i = at; i <= STEPS; i++) {
            lower.add(corner(outline.get(i), along));
        }
        return Contour.ofDense(upper, lower);
    }

    private Corner corner(Complex point, Complex along) {
        Complex placed = point.subtract(nose).divide(chord).multiply(along.conjugate());
        return new Corner(placed.getReal(), placed.getImaginary());
    }

    /** Exact lift coefficient at an angle of attack to the chord: circulation by the Kutta condition on the circle. */
    double lift(double alpha) {
        double chordLine = new Complex(power).subtract(nose).getArgument();
        return 8 * Math.PI * radius * Math.sin(alpha + turn + chordLine) / chord;
    }
}
