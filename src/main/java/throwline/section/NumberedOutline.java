package throwline.section;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Outlines of the two families whose number says their shape by formula: four digits (Jacobs, Ward and Pinkerton, NACA Report
 * 460) and five digits with a simple mean line (Jacobs and Pinkerton, NACA Report 537, table I; its numbers from memory,
 * checked by the lift coefficient they are made for). Thickness is laid off straight up and down, not square to the mean
 * line: up to 0.25 % of the chord away at the bent nose of the five digits, elsewhere less than 0.15 %.
 */
public final class NumberedOutline {

    private static final double THINNEST = 0.05;
    private static final double THICKEST = 0.25;
    private static final double MOST_CAMBER = 0.07;

    /** Mean lines with the highest point at 5, 10, 15, 20 and 25 % for a lift coefficient of 0.3: where curving ends, strength. */
    private static final List<MeanLine> FIVE_DIGITS = List.of(
            new MeanLine(0.0580, 361.4),
            new MeanLine(0.1260, 51.64),
            new MeanLine(0.2025, 15.957),
            new MeanLine(0.2900, 6.643),
            new MeanLine(0.3910, 3.230));

    private record MeanLine(double end, double strength) {

        double height(double x) {
            double shape =
                    x < end ? x * x * x - 3 * end * x * x + end * end * (3 - end) * x : end * end * end * (1 - x);
            return strength / 6 * shape;
        }
    }

    private NumberedOutline() {}

    /**
     * The outline of a number.
     *
     * @param digits four or five digits
     * @return empty where they are of another family, thinner than 5 % or thicker than 25 %, or cambered by more than 7 %
     */
    public static Optional<AirfoilShape> of(String digits) {
        if (!digits.matches("[0-9]{4,5}")) {
            return Optional.empty();
        }
        double thickness = Integer.parseInt(digits.substring(digits.length() - 2)) / 100.0;
        if (thickness < THINNEST || thickness > THICKEST) {
            return Optional.empty();
        }
        Optional<DoubleUnaryOperator> line = digits.length() == 4 ? fourDigits(digits) : fiveDigits(digits);
        return line.map(mean -> UsualOutline.around(thickness, mean));
    }

    private static Optional<DoubleUnaryOperator> fourDigits(String digits) {
        double camber = digit(digits, 0) / 100.0;
        double top = digit(digits, 1) / 10.0;
        if (camber == 0 && top == 0) {
            return Optional.of(x -> 0);
        }
        return camber == 0 || top == 0 || camber > MOST_CAMBER
                ? Optional.empty()
                : Optional.of(UsualOutline.fourDigitLine(camber, top));
    }

    private static Optional<DoubleUnaryOperator> fiveDigits(String digits) {
        int place = digit(digits, 1);
        boolean known = digit(digits, 0) == 2 && place >= 1 && place <= FIVE_DIGITS.size() && digit(digits, 2) == 0;
        return known ? Optional.of(FIVE_DIGITS.get(place - 1)::height) : Optional.empty();
    }

    private static int digit(String digits, int place) {
        return digits.charAt(place) - '0';
    }
}
