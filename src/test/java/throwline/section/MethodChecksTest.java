package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import throwline.input.PackedAirfoils;
import throwline.model.AirfoilName;
import throwline.model.Hinge;

/** Every check value of {@code method-checks.csv}; each row names its source and mark. */
class MethodChecksTest {

    private final PackedAirfoils library = new PackedAirfoils();
    private final MeasuredSections sections = new MeasuredSections();
    private final FlapMethod method = new FlapMethod(FlapTables.load());

    @ParameterizedTest(name = "{0}: {1} {2} {3}")
    @CsvFileSource(resources = "method-checks.csv", useHeadersInDisplayName = false, numLinesToSkip = 1)
    void holds(
            String number,
            String figure,
            String airfoil,
            Double deflection,
            double chord,
            Hinge hinge,
            Double reynolds,
            Double alpha,
            double expected,
            String tolerance) {
        double found;
        if (airfoil != null) {
            SurfaceState surface = new SurfaceState(Math.toRadians(deflection), chord, hinge);
            SectionPlace place =
                    SectionPlace.of(library.find(new AirfoilName(airfoil)).orElseThrow());
            SectionCurve curve = sections.curve(place, surface, reynolds);
            found = ofCurve(figure, curve, alpha == null ? 0 : Math.toRadians(alpha));
        } else if (deflection == null) {
            found = ofTheory(figure, chord);
        } else {
            found = ofMethod(figure, Math.toRadians(deflection), chord, reynolds);
        }
        double allowed = tolerance.endsWith("%")
                ? Double.parseDouble(tolerance.substring(0, tolerance.length() - 1)) / 100 * Math.abs(expected)
                : Double.parseDouble(tolerance);
        assertThat(found).isCloseTo(expected, within(allowed));
    }

    private static double ofCurve(String figure, SectionCurve curve, double alpha) {
        return switch (figure) {
            case "lift" -> curve.lift(alpha);
            case "drag" -> curve.drag(alpha);
            case "moment" -> curve.moment(alpha);
            case "hinge" -> curve.hinge(alpha);
            case "maximum lift" -> curve.maxLift();
            case "stall angle" -> Math.toDegrees(curve.stallAngle());
            case "recovery angle" -> Math.toDegrees(curve.recoveryAngle().orElseThrow());
            default -> throw new IllegalArgumentException(figure);
        };
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
            case "maximum lift rise" -> effect.maxLift();
            default -> throw new IllegalArgumentException(figure);
        };
    }

    private FlapEffect effect(double deflection, double chord, double reynolds) {
        return method.effect(deflection, chord, 0.12, reynolds, Hinge.TAPED);
    }
}
