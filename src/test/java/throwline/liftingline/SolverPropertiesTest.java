package throwline.liftingline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.section.SectionCurve;

/** What must hold for any lifting line: mirror image, no surface moved, more strips, any start. No source needed. */
class SolverPropertiesTest {

    private static final double[] ENDS = {0.1, 0.5, 0.55, 0.95};

    /** Flaps down alike, ailerons different left and right. */
    private static SectionCurve flown(double y) {
        double distance = Math.abs(y);
        if (distance > 0.1 && distance < 0.5) {
            return LawCurve.linear(Math.toRadians(6));
        }
        if (distance > 0.55 && distance < 0.95) {
            return LawCurve.linear(Math.toRadians(y < 0 ? 7 : -4));
        }
        return LawCurve.linear(0);
    }

    private static TheoryWing wing(DoubleFunction<SectionCurve> section, int strips) {
        TheoryPlanform planform = TheoryPlanform.tapered(7, 0.5).twisted(-0.04);
        return new TheoryWing(planform, ENDS, strips, section, Ground.none(), ChordCorrection::of);
    }

    @Test
    void mirroredSetUpMirrorsRollAndYaw() {
        Motion motion = new Motion(0.03, 0.01, 0.02, 0);
        Motion mirrored = new Motion(-0.03, 0.01, -0.02, 0);
        StripForces forces = wing(SolverPropertiesTest::flown, 80).at(0.1, motion);
        StripForces mirror = wing(y -> flown(-y), 80).at(0.1, mirrored);
        assertThat(forces.rollingCoefficient()).isNotCloseTo(0, offset(0.001));
        assertThat(forces.yawingCoefficient()).isNotCloseTo(0, offset(0.0001));
        assertThat(mirror.rollingCoefficient()).isCloseTo(-forces.rollingCoefficient(), offset(1e-9));
        assertThat(mirror.yawingCoefficient()).isCloseTo(-forces.yawingCoefficient(), offset(1e-9));
        assertThat(mirror.liftCoefficient()).isCloseTo(forces.liftCoefficient(), offset(1e-9));
        assertThat(mirror.dragCoefficient()).isCloseTo(forces.dragCoefficient(), offset(1e-9));
    }

    @Test
    void noDeflectionEqualsClean() {
        TheoryWing unmoved = wing(y -> LawCurve.linear(0 * flown(y).zeroLiftAngle()), 80);
        TheoryWing clean = wing(y -> LawCurve.linear(0), 80);
        for (int i = 0; i < clean.grid.size(); i++) {
            assertThat(unmoved.solve(0.1, Motion.straight()).circulation(i))
                    .isEqualTo(clean.solve(0.1, Motion.straight()).circulation(i));
        }
    }

    @Test
    void halfSizeSolveEqualsFullSizeSolve() {
        TheoryWing wing = wing(y -> flown(Math.abs(y)), 80);
        LiftingLineSolution half = wing.solve(0.1, Motion.straight());
        double[] unequal = new double[wing.grid.size()];
        unequal[0] = 0.01;
        LiftingLineSolution full = wing.solver.solveFrom(half.problem(), Optional.of(unequal));
        for (int i = 0; i < wing.grid.size(); i++) {
            assertThat(full.circulation(i)).isCloseTo(half.circulation(i), offset(1e-10));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"clean", "flown"})
    void doublingTheStripsFromEightyHardlyChangesLift(String setUp) {
        DoubleFunction<SectionCurve> section =
                setUp.equals("clean") ? y -> LawCurve.linear(0) : SolverPropertiesTest::flown;
        double at80 = wing(section, 80).at(0.1).liftCoefficient();
        double at160 = wing(section, 160).at(0.1).liftCoefficient();
        assertThat(at160 / at80 - 1).isCloseTo(0, offset(3e-4));
    }

    @Test
    void anyStartReachesOneAnswer() {
        TheoryWing wing = wing(y -> LawCurve.tanh(1.2), 80);
        LiftingLineSolution answer = wing.solve(0.3, Motion.straight());
        Random random = new Random(20_261_125);
        for (int k = 0; k < 50; k++) {
            double[] start = random.doubles(wing.grid.size(), -2, 2).toArray();
            LiftingLineSolution again = wing.solver.solveFrom(answer.problem(), Optional.of(start));
            assertThat(again.status().converged()).isTrue();
            for (int i = 0; i < wing.grid.size(); i++) {
                assertThat(again.circulation(i)).isCloseTo(answer.circulation(i), offset(1e-9));
            }
        }
    }

    @Test
    void endsOfUnmovedSurfacesHardlyChangeLift() {
        TheoryPlanform planform = TheoryPlanform.tapered(6, 1);
        double without = new TheoryWing(planform, new double[0], 160, y -> LawCurve.linear(0))
                .at(0.1)
                .liftCoefficient();
        double with = new TheoryWing(planform, ENDS, 160, y -> LawCurve.linear(0))
                .at(0.1)
                .liftCoefficient();
        assertThat(with / without - 1).isCloseTo(0, offset(3e-4));
    }

    @Test
    void anAnswerOfTheOtherSideIsLeftBehind() {
        TheoryWing wing = wing(SolverPropertiesTest::flown, 40);
        LiftingLineSolution answer = wing.solve(0.1, Motion.rolling(0.05));
        Double[] boxed = Arrays.stream(answer.circulations()).boxed().toArray(Double[]::new);
        List<Double> turned = Arrays.asList(boxed);
        Collections.reverse(turned);
        double[] start = turned.stream().mapToDouble(Double::doubleValue).toArray();
        LiftingLineSolution again = wing.solver.solveFrom(answer.problem(), Optional.of(start));
        assertThat(again.circulations()).containsExactly(answer.circulations(), offset(1e-10));
        assertThat(wing.solver
                        .solve(answer.problem(), Optional.of(answer))
                        .status()
                        .iterations())
                .isZero();
    }
}
