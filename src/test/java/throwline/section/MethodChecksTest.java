package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import throwline.model.Hinge;

/** Every check value of {@code method-checks.csv}; each row names its source and mark. */
class MethodChecksTest {

    private static final Airfoil AIRFOIL = new Airfoil(
            "cambered",
            "cambered, 12 %",
            0.12,
            0.03,
            0,
            List.of(new PolarRun(PolarRun.Kind.DRAG, 200_000, 0, 0, "", "", List.of())));

    private final FlapMethod method = new FlapMethod(FlapTables.load());

    @ParameterizedTest(name = "{0}: {1} {2} {3}")
    @CsvFileSource(resources = "method-checks.csv", useHeadersInDisplayName = false, numLinesToSkip = 1)
    void holds(
            String number,
            String figure,
            Double deflection,
            double chord,
            Double reynolds,
            double expected,
            String tolerance) {
        double found = deflection == null
                ? ofTheory(figure, chord)
                : ofMethod(figure, Math.toRadians(deflection), chord, reynolds);
        double allowed = tolerance.endsWith("%")
                ? Double.parseDouble(tolerance.substring(0, tolerance.length() - 1)) / 100 * Math.abs(expected)
                : Double.parseDouble(tolerance);
        assertThat(found).isCloseTo(expected, within(allowed));
    }

    private static double ofTheory(String figure, double chord) {
        return switch (figure) {
            case "effectiveness" -> ThinAirfoil.effectiveness(chord);
            case "lift per deflection" -> 2 * Math.PI * ThinAirfoil.effectiveness(chord);
            case "moment per deflection" -> ThinAirfoil.momentSlope(chord);
            case "hinge per angle" -> ThinAirfoil.hingeByAngle(chord);
            case "hinge per deflection" -> ThinAirfoil.hingeByDeflection(chord);
            default -> throw new IllegalArgumentException(figure);
        };
    }

    private double ofMethod(String figure, double deflection, double chord, double reynolds) {
        double ten = Math.toRadians(10);
        FlapEffect effect = effect(deflection, chord, reynolds);
        FlapEffect atTen = effect(ten, chord, reynolds);
        return switch (figure) {
            case "lift over that of 10 degrees in proportion" ->
                effect.zeroLift() / (atTen.zeroLift() * deflection / ten);
            case "drag over that of 30 degrees" ->
                effect.drag() / effect(Math.toRadians(30), chord, reynolds).drag();
            case "moment per lift over that of 10 degrees" ->
                effect.moment() / effect.zeroLift() / (atTen.moment() / atTen.zeroLift());
            case "drag" -> effect.drag();
            case "maximum lift rise" -> effect.maxLift();
            default -> throw new IllegalArgumentException(figure);
        };
    }

    private FlapEffect effect(double deflection, double chord, double reynolds) {
        return method.effect(deflection, chord, AIRFOIL, reynolds, Hinge.TAPED);
    }
}
