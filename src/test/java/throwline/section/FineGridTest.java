package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import throwline.input.PackedAirfoils;
import throwline.model.AirfoilName;
import throwline.model.Hinge;

/**
 * What must hold for every airfoil, Reynolds number, deflection and chord fraction, on a fine grid of angles. The limits
 * on drag square to the flow: flat plates and thick sections measure 1.1 to 2.0.
 */
class FineGridTest {

    private static final double[] REYNOLDS = {40e3, 60e3, 80e3, 100e3, 130e3, 200e3, 300e3, 500e3, 800e3, 1.5e6};
    private static final double[] DEFLECTIONS = {
        -45, -30, -20, -15, -10, -6, -3, 0, 3, 6, 10, 15, 20, 30, 40, 50, 60, 75, 90
    };
    private static final double[] CHORDS = {0.08, 0.25, 0.50};

    private static final PackedAirfoils LIBRARY = new PackedAirfoils();
    private static final MeasuredSections SECTIONS = new MeasuredSections();

    static Stream<String> names() {
        return LIBRARY.names().stream();
    }

    private static SectionCurve curve(String name, double deflection, double chord, double reynolds) {
        SectionPlace place = SectionPlace.of(LIBRARY.find(new AirfoilName(name)).orElseThrow());
        return SECTIONS.curve(place, new SurfaceState(Math.toRadians(deflection), chord, Hinge.TAPED), reynolds);
    }

    /** Looks at one curve. */
    private interface Check {
        void accept(SectionCurve curve, String where);
    }

    private static void forAll(String name, Check check) {
        for (double chord : CHORDS) {
            for (double reynolds : REYNOLDS) {
                for (double deflection : DEFLECTIONS) {
                    String where = name + " chord " + chord + " Re " + reynolds + " deflection " + deflection;
                    check.accept(curve(name, deflection, chord, reynolds), where);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void dragIsPositiveAndThatOfAPlateAcrossTheFlow(String name) {
        forAll(name, (curve, where) -> {
            double least = Double.POSITIVE_INFINITY;
            for (double degrees = -90; degrees <= 90; degrees += 0.5) {
                least = Math.min(least, curve.drag(Math.toRadians(degrees)));
            }
            assertThat(least).as(where).isGreaterThan(0.004);
            assertThat(curve.drag(Math.PI / 2)).as(where).isBetween(1.1, 2.0);
            assertThat(curve.drag(-Math.PI / 2)).as(where).isBetween(1.1, 2.0);
        });
    }

    /** A jump keeps its size when the step is made smaller; a measured leading-edge stall loses 0.5 within 0.8 degrees. */
    @ParameterizedTest
    @MethodSource("names")
    void nothingJumps(String name) {
        double step = Math.toRadians(0.1);
        forAll(name, (curve, where) -> {
            assertThat(largestStep(curve::lift, step)).as(where).isLessThan(0.17);
            assertThat(largestStep(curve::drag, step)).as(where).isLessThan(mostDragStep(name));
            assertThat(largestStep(curve::moment, step)).as(where).isLessThan(0.05);
            assertThat(largestStep(curve::hinge, step)).as(where).isLessThan(0.01);
        });
    }

    /**
     * FX 63-137 has no drag run below 101 000, where it stalls at once; at 61 000 its lift sags (READ: its files), so that the
     * drag carried there rises more steeply than its lift falls.
     */
    private static double mostDragStep(String name) {
        return name.equals("fx63-137") ? 0.12 : 0.08;
    }

    private static double largestStep(DoubleUnaryOperator figure, double step) {
        double largest = 0;
        double before = figure.applyAsDouble(-Math.PI / 2);
        for (double alpha = -Math.PI / 2; alpha < Math.PI / 2; alpha += step) {
            double value = figure.applyAsDouble(alpha);
            largest = Math.max(largest, Math.abs(value - before));
            before = value;
        }
        return largest;
    }

    /** The largest change of slope from step to step shrinks with the step; at a corner it would not. */
    @ParameterizedTest
    @MethodSource("names")
    void liftHasNoCorner(String name) {
        for (double reynolds : new double[] {60e3, 150e3, 700e3}) {
            for (double deflection : new double[] {-20, 0, 35}) {
                SectionCurve curve = curve(name, deflection, 0.25, reynolds);
                double coarse = largestChangeOfSlope(curve, Math.toRadians(0.02));
                double fine = largestChangeOfSlope(curve, Math.toRadians(0.005));
                assertThat(fine).as(name + " " + reynolds + " " + deflection).isLessThan(0.5 * coarse);
            }
        }
    }

    private static double largestChangeOfSlope(SectionCurve curve, double step) {
        double largest = 0;
        double before = (curve.lift(-Math.PI / 2 + step) - curve.lift(-Math.PI / 2)) / step;
        for (double alpha = -Math.PI / 2 + step; alpha < Math.PI / 2 - step; alpha += step) {
            double slope = (curve.lift(alpha + step) - curve.lift(alpha)) / step;
            largest = Math.max(largest, Math.abs(slope - before));
            before = slope;
        }
        return largest;
    }

    @ParameterizedTest
    @MethodSource("names")
    void hullRisesAndItsSlopeIsItsDerivative(String name) {
        double h = 1e-6;
        for (double reynolds : new double[] {60e3, 150e3, 700e3}) {
            SectionCurve curve = curve(name, 20, 0.25, reynolds);
            double before = curve.risingLift(-Math.PI / 2);
            for (double alpha = -1.5; alpha < 1.5; alpha += 0.01) {
                double value = curve.risingLift(alpha);
                double numeric = (curve.risingLift(alpha + h) - curve.risingLift(alpha - h)) / (2 * h);
                assertThat(value).isGreaterThanOrEqualTo(before - 1e-12);
                assertThat(curve.risingLiftSlope(alpha)).isGreaterThanOrEqualTo(0);
                assertThat(Math.abs(curve.risingLiftSlope(alpha) - numeric)).isLessThan(0.02);
                before = value;
            }
            assertThat(curve.risingLift(curve.stallAngle())).isEqualTo(curve.maxLift());
            assertThat(curve.risingLift(1.2)).isEqualTo(curve.maxLift());
            assertThat(curve.risingLift(-1.2)).isEqualTo(curve.minLift());
        }
    }

    /**
     * At an angle attached with both deflections. Where the measured curve itself dips before its stall (NACA 6409 at 61
     * 300, a bubble bursting) lift may follow the dip by 0.005; the hull that is solved with may not.
     */
    @ParameterizedTest
    @MethodSource("names")
    void liftDoesNotFallWithDeflection(String name) {
        for (double chord : CHORDS) {
            for (double reynolds : REYNOLDS) {
                for (int i = 1; i < DEFLECTIONS.length; i++) {
                    SectionCurve less = curve(name, DEFLECTIONS[i - 1], chord, reynolds);
                    SectionCurve more = curve(name, DEFLECTIONS[i], chord, reynolds);
                    double from = Math.max(less.negativeStallAngle(), more.negativeStallAngle());
                    double to = Math.min(less.stallAngle(), more.stallAngle());
                    String where = name + " chord " + chord + " Re " + reynolds + " deflection " + DEFLECTIONS[i];
                    double gain = 0;
                    double rise = 0;
                    for (double alpha = from; alpha < to; alpha += Math.toRadians(0.25)) {
                        gain = Math.min(gain, more.lift(alpha) - less.lift(alpha));
                        rise = Math.min(rise, more.risingLift(alpha) - less.risingLift(alpha));
                    }
                    assertThat(gain).as(where).isGreaterThan(-0.006);
                    assertThat(rise).as(where).isGreaterThan(-1e-9);
                }
            }
        }
    }

    /** Root finders run over speed and throws: a small step in either is a small step in every result. */
    @ParameterizedTest
    @MethodSource("names")
    void resultsFollowReynoldsNumberAndDeflectionContinuously(String name) {
        SectionCurve before = curve(name, -20, 0.25, 45e3);
        for (int i = 1; i <= 1000; i++) {
            double share = i / 1000.0;
            SectionCurve curve = curve(name, -20 + 80 * share, 0.25, 45e3 * Math.pow(20, share));
            assertThat(Math.abs(curve.maxLift() - before.maxLift())).isLessThan(0.02);
            assertThat(Math.abs(curve.minLift() - before.minLift())).isLessThan(0.02);
            assertThat(Math.toDegrees(Math.abs(curve.zeroLiftAngle() - before.zeroLiftAngle())))
                    .isLessThan(0.5);
            assertThat(Math.toDegrees(Math.abs(curve.stallAngle() - before.stallAngle())))
                    .isLessThan(0.5);
            for (double degrees : new double[] {-30, -5, 0, 5, 10, 40}) {
                double alpha = Math.toRadians(degrees);
                assertThat(Math.abs(curve.lift(alpha) - before.lift(alpha))).isLessThan(0.2);
                assertThat(Math.abs(curve.drag(alpha) / before.drag(alpha) - 1)).isLessThan(0.2);
            }
            before = curve;
        }
    }
}
