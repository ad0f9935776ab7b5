package throwline.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Coordinates of the NACA four-digit family by the formulas of NACA TR 460 (READ in many textbooks), closed edge. */
final class FourDigit {

    private final double camber;
    private final double place;
    private final double thickness;

    FourDigit(double camber, double place, double thickness) {
        this.camber = camber;
        this.place = place;
        this.thickness = thickness;
    }

    /** Top or bottom from nose to trailing edge: pairs of x and y. */
    List<double[]> surface(boolean top) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i <= 40; i++) {
            double x = 0.5 * (1 - Math.cos(Math.PI * i / 40));
            double half = 5
                    * thickness
                    * (0.2969 * Math.sqrt(x)
                            - 0.1260 * x
                            - 0.3516 * x * x
                            + 0.2843 * x * x * x
                            - 0.1036 * x * x * x * x);
            double line = camber == 0
                    ? 0
                    : x < place
                            ? camber / (place * place) * (2 * place * x - x * x)
                            : camber / ((1 - place) * (1 - place)) * (1 - 2 * place + 2 * place * x - x * x);
            points.add(new double[] {x, top ? line + half : line - half});
        }
        return points;
    }

    /** From the trailing edge over the top and back. */
    List<double[]> loop() {
        List<double[]> loop = new ArrayList<>(surface(true));
        java.util.Collections.reverse(loop);
        loop.addAll(surface(false).subList(1, 41));
        return loop;
    }

    static String lines(List<double[]> points, double scale) {
        StringBuilder text = new StringBuilder();
        for (double[] point : points) {
            text.append(String.format(Locale.ROOT, "%.5f %.5f%n", scale * point[0], scale * point[1]));
        }
        return text.toString();
    }
}
