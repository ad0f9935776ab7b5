package throwline.liftingline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The correction for the finite chord against what others measured and derived. */
class ChordCorrectionTest {

    private static final double ROLL = 0.05;

    private static double damping(ChordCorrection correction) {
        TheoryWing wing = new TheoryWing(
                TheoryPlanform.ellipse(6), new double[0], 80, y -> LawCurve.linear(0), Ground.none(), g -> correction);
        return wing.at(0, Motion.rolling(ROLL)).rollingCoefficient() / ROLL;
    }

    /** NACA ARR L5F23 (Swanson and Priddy, electrical analogue), summary, READ: 0.87 of the lifting line's. */
    @Test
    void ellipticWingDampsRollAsMeasuredByAnalogue() {
        SpanGrid grid = SpanGrid.of(TheoryPlanform.ellipse(6), new double[0], 80);
        double share = damping(ChordCorrection.of(grid)) / damping(ChordCorrection.none());
        assertThat(share).isCloseTo(0.87, withPercentage(1.5));
    }

    /** The other statement there turned round: the factor 1.145 of disc theory leaves 0.920 (COMPUTED). */
    @Test
    void factorOfDiscTheoryGivesLess() {
        double share = damping(new ChordCorrection(1.0556, 1.145)) / damping(ChordCorrection.none());
        assertThat(share).isCloseTo(0.920, offset(0.001));
    }

    /** Helmbold's formula for elliptic wings, from memory: 2 pi / (sqrt(1 + (2/A)^2) + 2/A). */
    @ParameterizedTest
    @ValueSource(doubles = {4, 5, 6, 8, 10, 12})
    void ellipticWingsHaveHelmboldsSlope(double aspect) {
        double helmbold = 2 * Math.PI / (Math.sqrt(1 + Math.pow(2 / aspect, 2)) + 2 / aspect);
        assertThat(ellipticSlope(aspect)).isCloseTo(helmbold, withPercentage(1));
    }

    /** Helmbold at the aspect ratios of tails (methods manual 7.2, COMPUTED): an approximation itself, the better the longer. */
    @ParameterizedTest
    @CsvSource({"2, 2.603, 5", "3, 3.363, 2.1", "4, 3.883, 1", "5, 4.254, 1", "6, 4.529, 1"})
    void tailsHaveHelmboldsSlope(double aspect, double slope, double percent) {
        assertThat(ellipticSlope(aspect)).isCloseTo(slope, withPercentage(percent));
    }

    private static double ellipticSlope(double aspect) {
        TheoryWing wing = new TheoryWing(
                TheoryPlanform.ellipse(aspect),
                new double[0],
                80,
                y -> LawCurve.linear(0),
                Ground.none(),
                ChordCorrection::of);
        return wing.at(0.1).liftCoefficient() / 0.1;
    }

    /** Semi-perimeter over span of ellipses, by the complete elliptic integral (COMPUTED). */
    @ParameterizedTest
    @CsvSource({"4, 1.1059", "6, 1.0556", "8, 1.0348", "10, 1.0240", "12, 1.0177"})
    void evenFactorIsTheSemiPerimeterOverSpan(double aspect, double factor) {
        assertThat(ChordCorrection.semiPerimeter(aspect)).isCloseTo(factor, offset(6e-5));
    }

    /** Elliptic 1 + 4.1 A^-1.55, rectangular 1 + 3.85 A^-1.336, between them for taper (COMPUTED by a lattice, methods manual 19.2). */
    @Test
    void oddFactorGoesFromEllipseToRectangle() {
        double ellipse = 1 + 4.1 * Math.pow(6, -1.55);
        double rectangle = 1 + 3.85 * Math.pow(6, -1.336);
        assertThat(odd(TheoryPlanform.ellipse(6))).isCloseTo(ellipse, offset(0.002));
        assertThat(odd(TheoryPlanform.tapered(6, 1))).isCloseTo(rectangle, offset(0.002));
        assertThat(odd(TheoryPlanform.tapered(6, 0.7))).isCloseTo((ellipse + rectangle) / 2, offset(0.01));
    }

    private static double odd(Planform planform) {
        return ChordCorrection.of(SpanGrid.of(planform, new double[0], 80)).odd();
    }

    /** The corrected line against a vortex lattice of flat plates (methods manual 19.2, COMPUTED beside this test). */
    @ParameterizedTest
    @CsvSource({"3, false", "4, false", "6, false", "8, false", "10, false", "4, true", "6, true", "8, true", "10, true"
    })
    void rollDampingIsThatOfALattice(double aspect, boolean elliptic) {
        VortexLattice lattice = new VortexLattice(aspect, elliptic);
        TheoryPlanform plan = elliptic ? TheoryPlanform.ellipse(aspect) : TheoryPlanform.tapered(aspect, 1);
        TheoryWing wing =
                new TheoryWing(plan, new double[0], 80, y -> LawCurve.linear(0), Ground.none(), ChordCorrection::of);
        double damping = wing.at(0, Motion.rolling(ROLL)).rollingCoefficient() / ROLL;
        assertThat(damping).isCloseTo(lattice.rollDamping(), withPercentage(elliptic ? 1.5 : 1));
    }

    /** The same for lift: the even factor leaves the slope of an ellipse 2 to 5 % above that of the lattice. */
    @ParameterizedTest
    @ValueSource(doubles = {4, 6, 8, 10})
    void liftSlopeIsNearThatOfALattice(double aspect) {
        assertThat(ellipticSlope(aspect)).isCloseTo(new VortexLattice(aspect, true).liftSlope(), withPercentage(5));
    }
}
