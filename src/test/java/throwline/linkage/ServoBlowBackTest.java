package throwline.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import throwline.linkage.ServoBlowBack.Hold;
import throwline.linkage.ServoBlowBack.Rest;
import throwline.model.Servo;

/**
 * Where a surface rests between its servo and the air, against closed forms and against independent numerics. A walk of the
 * servo that is not cut at the end of its swing would never end: hence the time limit.
 */
@Timeout(value = 30, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class ServoBlowBackTest {

    private static final double DEG = Math.PI / 180;
    private static final double RATING = 0.3;
    private static final long SEED = 20_251_125;

    private static ServoBlowBack held(Linkage linkage, double rating, double give, double play) {
        return new ServoBlowBack(
                new ControlRun("flaps", linkage, OptionalDouble.of(rating), 80 * DEG, 0, false), rating, give, play);
    }

    /**
     * Stretch of a control system, statics in closed form: a spring of stiffness rating over give at the servo, the surface
     * geared by the ratio r, and a hinge moment -h d. Balance: rating (told - d) / (r give) = h d r, so the surface keeps
     * 1 / (1 + r^2 h give / rating) of where it is told to stand.
     */
    @Test
    void stretchInClosedForm() {
        double ratio = 0.7;
        double slope = 0.4;
        double give = 4 * DEG;
        Rest rest = held(new EvenLinkage(ratio), RATING, give, 0).at(40 * DEG, d -> -slope * d);
        assertThat(rest.hold()).isEqualTo(Hold.HELD);
        assertThat(rest.angle()).isCloseTo(40 * DEG / (1 + ratio * ratio * slope * give / RATING), within(1e-6 * DEG));
    }

    /** Past its give a servo is a constant torque: the surface stands where the hinge moment is the rating over the ratio. */
    @Test
    void overpowered() {
        double ratio = 0.9;
        double slope = 1.2;
        Rest rest = held(new EvenLinkage(ratio), RATING, 4 * DEG, 0).at(50 * DEG, d -> -slope * d);
        assertThat(rest.hold()).isEqualTo(Hold.OVERPOWERED);
        assertThat(rest.angle()).isCloseTo(RATING / (ratio * slope), within(1e-6 * DEG));
    }

    @Test
    void noGiveAndNoPlay() {
        Rest rest = held(new EvenLinkage(0.7), RATING, 0, 0).at(40 * DEG, d -> -0.4 * d);
        assertThat(rest.angle()).isCloseTo(40 * DEG, within(1e-4 * DEG));
        assertThat(rest.hold()).isEqualTo(Hold.HELD);
    }

    /** Half of the play, to the side that the air pushes to: a geometric fact. */
    @Test
    void playGoesToTheUnloadedSide() {
        ServoBlowBack loose = held(new EvenLinkage(0.7), RATING, 0, 2 * DEG);
        assertThat(loose.at(20 * DEG, d -> -0.2 * d).angle()).isCloseTo(19 * DEG, within(1e-4 * DEG));
        assertThat(loose.at(-20 * DEG, d -> -0.2 * d).angle()).isCloseTo(-19 * DEG, within(1e-4 * DEG));
        assertThat(loose.at(20 * DEG, d -> 0.1).angle()).isCloseTo(21 * DEG, within(1e-4 * DEG));
    }

    /** Where the air pushes neither way within the play, the surface floats there and the servo has no load. */
    @Test
    void floatsWithinItsPlay() {
        ServoBlowBack loose = held(new EvenLinkage(0.7), RATING, 4 * DEG, 2 * DEG);
        assertThat(loose.at(5 * DEG, d -> -0.2 * (d - 5.4 * DEG)).angle()).isCloseTo(5.4 * DEG, within(1e-5 * DEG));
    }

    /** A surface that the air pulls away from neutral goes further than it is told: the same closed form, hinge moment h0 - h d. */
    @Test
    void pulledAwayFromNeutral() {
        double ratio = 0.6;
        double slope = 0.3;
        double pull = -0.1;
        double give = 4 * DEG;
        double told = -2 * DEG;
        Rest rest = held(new EvenLinkage(ratio), RATING, give, 0).at(told, d -> pull - slope * d);
        double stiff = RATING / (give * ratio * ratio);
        assertThat(rest.angle()).isCloseTo((stiff * told + pull) / (stiff + slope), within(1e-6 * DEG));
        assertThat(rest.angle()).isLessThan(told);
    }

    /** A surface at neutral is pushed off it, too. */
    @Test
    void pushedFromNeutral() {
        Rest rest = held(new EvenLinkage(0.6), RATING, 4 * DEG, 0).at(0, d -> -0.1 - 0.3 * d);
        double stiff = RATING / (4 * DEG * 0.6 * 0.6);
        assertThat(rest.angle()).isCloseTo(-0.1 / (stiff + 0.3), within(1e-6 * DEG));
    }

    /** More than the servo can hold anywhere: to the end of its swing of 80 degrees. */
    @Test
    void blown() {
        Rest rest = held(new EvenLinkage(0.5), RATING, 4 * DEG, 0).at(20 * DEG, d -> -5);
        assertThat(rest.hold()).isEqualTo(Hold.BLOWN);
        assertThat(rest.angle()).isCloseTo(-40 * DEG, within(1e-6 * DEG));
    }

    /**
     * A linkage that runs into line near the end carries most load on the way there. A servo that cannot pass that stays
     * before it, though it could hold the end: methods manual 14.2, "arm in line with rod takes the load off the servo".
     */
    @Test
    void staysBeforeTheHeaviestPartOfTheWay() {
        FourBar bar = new FourBar(0.012, 0.018, 0.090, 0);
        double told = bar.surface().high() - 1 * DEG;
        DoubleUnaryOperator hinge = d -> -0.35 * d;
        double atEnd =
                0.35 * told * bar.ratioAt(bar.servoAt(told).orElseThrow()).orElseThrow();
        double most = 0;
        for (double d = 0; d < told; d += 0.1 * DEG) {
            most = Math.max(
                    most, 0.35 * d * bar.ratioAt(bar.servoAt(d).orElseThrow()).orElseThrow());
        }
        double rating = (atEnd + most) / 2;
        assertThat(most).isGreaterThan(1.2 * atEnd);
        Rest stopped = held(bar, rating, 4 * DEG, 0).at(told, hinge);
        assertThat(stopped.hold()).isEqualTo(Hold.OVERPOWERED);
        Rest passes = held(bar, 1.6 * most, 4 * DEG, 0).at(told, hinge);
        assertThat(passes.hold()).isEqualTo(Hold.HELD);
        assertThat(passes.angle()).isGreaterThan(stopped.angle() + 5 * DEG);
    }

    /**
     * The same by other means, over random linkages, servos and winds that restore: an overdamped spring let go at neutral
     * settles at the rest (Commons Math, Dormand-Prince of order 8).
     */
    @Test
    void dampedSpringSettlesThere() {
        Random random = new Random(SEED);
        int compared = 0;
        for (int k = 0; k < 60; k++) {
            double arm = between(random, 0.008, 0.02);
            double horn = between(random, 0.01, 0.02);
            double lean = between(random, -20, 35);
            double share = between(random, -1, 1);
            double give = between(random, 0.5, 8);
            double slope = between(random, 0, 0.5);
            double offset = between(random, -0.02, 0.02);
            FourBar bar = new FourBar(arm, horn, 0.08, lean * DEG);
            double told = share > 0
                    ? share * 0.9 * bar.surface().high()
                    : -share * 0.9 * bar.surface().low();
            DoubleUnaryOperator hinge = d -> offset - slope * d;
            ServoBlowBack held = held(bar, RATING, give * DEG, 0);
            double servo = bar.servoAt(held.run().benchAngle(told)).orElseThrow();
            DoubleUnaryOperator push = s -> RATING * Math.max(-1, Math.min(1, (servo - s) / (give * DEG)))
                    + hinge.applyAsDouble(bar.surfaceAt(s).orElse(0))
                            * bar.ratioAt(s).orElse(0);
            double settled = settle(push);
            Rest rest = held.at(told, hinge);
            if (Math.abs(settled) < 79 * DEG && rest.hold() != Hold.BLOWN) {
                compared++;
                assertThat(rest.angle()).isCloseTo(bar.surfaceAt(settled).orElseThrow(), within(0.002 * DEG));
            }
        }
        assertThat(compared).isGreaterThan(45);
    }

    private static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static double settle(DoubleUnaryOperator push) {
        double[] state = {0};
        FirstOrderDifferentialEquations damped = new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return 1;
            }

            @Override
            public void computeDerivatives(double t, double[] y, double[] dot) {
                dot[0] = Math.abs(y[0]) > 80 * DEG ? 0 : push.applyAsDouble(y[0]);
            }
        };
        new DormandPrince853Integrator(1e-9, 0.5, 1e-9, 1e-9).integrate(damped, 0, state, 400, state);
        return state[0];
    }

    /** One root where linkage and air are even: Brent's method from end to end finds no other. */
    @Test
    void oneRootWhereTheAirRestores() {
        Random random = new Random(SEED);
        for (int k = 0; k < 200; k++) {
            double ratio = between(random, 0.2, 1.5);
            double told = between(random, -60, 60);
            double give = between(random, 0.2, 10);
            double slope = between(random, 0.01, 2);
            double offset = between(random, -0.1, 0.1);
            double servo = told * DEG / ratio;
            ServoBlowBack held = held(new EvenLinkage(ratio), RATING, give * DEG, 0);
            double sent = Math.max(-80 * DEG, Math.min(80 * DEG, servo));
            double root = new BrentSolver(1e-10)
                    .solve(
                            500,
                            s -> RATING * Math.max(-1, Math.min(1, (sent - s) / (give * DEG)))
                                    + (offset - slope * ratio * s) * ratio,
                            -10,
                            10);
            Rest rest = held.at(told * DEG, d -> offset - slope * d);
            if (Math.abs(root) < 80 * DEG) {
                assertThat(rest.angle()).isCloseTo(ratio * root, within(1e-5 * DEG));
            } else {
                assertThat(rest.hold()).isEqualTo(Hold.BLOWN);
            }
        }
    }

    /** More air never brings a restored surface nearer to where it is told to be, a stiffer servo never leaves it further. */
    @Test
    void monotone() {
        Random random = new Random(SEED);
        for (int k = 0; k < 200; k++) {
            double lean = between(random, -20, 35);
            double share = between(random, 0.1, 0.9);
            double give = between(random, 0.5, 8);
            double slope = between(random, 0, 0.6);
            FourBar bar = new FourBar(0.012, 0.014, 0.08, lean * DEG);
            double told = share * bar.surface().high();
            ServoBlowBack servo = held(bar, RATING, give * DEG, 1 * DEG);
            ServoBlowBack stiffer = held(bar, RATING, give * DEG / 2, 1 * DEG);
            double here = servo.at(told, d -> -slope * d).angle();
            assertThat(servo.at(told, d -> -1.3 * slope * d).angle()).isLessThanOrEqualTo(here + 1e-7);
            assertThat(stiffer.at(told, d -> -slope * d).angle()).isGreaterThanOrEqualTo(here - 1e-7);
            assertThat(here).isBetween(0.0, told + 0.5 * DEG + 1e-7);
        }
    }

    /** Up and down are alike where servo and air are. */
    @Test
    void mirrored() {
        Random random = new Random(SEED);
        for (int k = 0; k < 100; k++) {
            double told = between(random, 1, 50);
            double give = between(random, 0, 8);
            double slope = between(random, 0, 1.5);
            ServoBlowBack held = held(new EvenLinkage(0.8), RATING, give * DEG, 1 * DEG);
            assertThat(held.at(told * DEG, d -> -slope * d).angle())
                    .isCloseTo(-held.at(-told * DEG, d -> -slope * d).angle(), within(1e-6 * DEG));
        }
    }

    /** The bench shows what the servo reaches with nothing pushing: cut where the linkage turns back or the swing ends. */
    @Test
    void bench() {
        FourBar bar = new FourBar(0.012, 0.018, 0.090, 0);
        ControlRun wide = new ControlRun("flaps", bar, OptionalDouble.empty(), 110 * DEG, 0, false);
        assertThat(wide.benchAngle(25 * DEG)).isEqualTo(25 * DEG);
        assertThat(wide.benchAngle(50 * DEG)).isCloseTo(bar.surface().high(), within(1e-3 * DEG));
        ControlRun narrow = new ControlRun("flaps", bar, OptionalDouble.empty(), 30 * DEG, 0, false);
        assertThat(narrow.benchAngle(34 * DEG))
                .isCloseTo(bar.surfaceAt(30 * DEG).orElseThrow(), within(1e-9));
        ControlRun offset = new ControlRun("flaps", bar, OptionalDouble.empty(), 30 * DEG, 10 * DEG, false);
        assertThat(offset.benchAngle(-30 * DEG))
                .isCloseTo(bar.surfaceAt(-20 * DEG).orElseThrow(), within(1e-9));
    }

    /**
     * Air that lets go of a surface only past where it was told to stand has no say: the surface is stepped no further than
     * that, and keeps the share of the closed form, 1 / (1 + r^2 h give / rating).
     */
    @Test
    void nothingPastWhereItWasToldToStand() {
        double give = 0.1 * DEG;
        double told = 20.3 * DEG;
        DoubleUnaryOperator hinge = d -> d < 20.32 * DEG ? -0.4 * d : -0.4 * d + 900 * (d - 20.32 * DEG);
        Rest rest = held(new EvenLinkage(1), RATING, give, 0).at(told, hinge);
        assertThat(rest.hold()).isEqualTo(Hold.HELD);
        assertThat(rest.angle()).isCloseTo(told / (1 + 0.4 * give / RATING), within(1e-6 * DEG));
        Rest mirrored = held(new EvenLinkage(1), RATING, give, 0).at(-told, d -> -hinge.applyAsDouble(-d));
        assertThat(mirrored.angle()).isCloseTo(-rest.angle(), within(1e-9));
    }

    /** Blown back it stops at the end of the servo's swing, wherever that lies, and at the end of the linkage before it. */
    @Test
    void blownToTheEndOfTheSwing() {
        FourBar bar = new FourBar(0.012, 0.018, 0.090, 0);
        ControlRun narrow = new ControlRun("flaps", bar, OptionalDouble.of(RATING), 33.3 * DEG, 5 * DEG, false);
        Rest rest = new ServoBlowBack(narrow, RATING, 4 * DEG, 0).at(10 * DEG, d -> -9);
        assertThat(rest.hold()).isEqualTo(Hold.BLOWN);
        assertThat(rest.angle()).isCloseTo(bar.surfaceAt(-28.3 * DEG).orElseThrow(), within(1e-9));
    }

    /** Play of p at a chord c is an angle of 2 asin(p / 2c) (geometry); without a torque there is nothing to balance. */
    @Test
    void ofAServo() {
        OptionalDouble none = OptionalDouble.empty();
        ControlRun run = new ControlRun("flaps", new EvenLinkage(1), none, 1, 0, false);
        Servo servo = new Servo("flaps", OptionalDouble.of(0.3), none, none, none, none, 0, 0, 0.05, 0.012);
        ServoBlowBack held = ServoBlowBack.of(run, servo, 0.06).orElseThrow();
        assertThat(held.play()).isCloseTo(2 * Math.asin(0.1), within(1e-12));
        assertThat(held.rating()).isEqualTo(0.3);
        assertThat(held.give()).isEqualTo(0.05);
        assertThat(ServoBlowBack.of(run, Servo.unknown("flaps"), 0.06)).isEmpty();
    }
}
