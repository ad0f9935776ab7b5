package throwline.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Drive, jet and fin of a propeller against a second program (COMPUTED) and closed forms. */
class DriveTest {

    private static final double DENSITY = 1.17;
    private static final BladeElements BLADES =
            new BladeElements(14 * 0.0254, 7 * 0.0254, 2, BladeElements.USUAL_CHORD);

    /** 14 x 7, kv 500, 0.045 ohm, 1.2 A, 15.6 V without load behind 0.040 ohm. */
    private static final Drive DRIVE = new Drive(
            BLADES,
            new PropellerChart(BLADES, 7000 / 60.0, 7001 / 60.0),
            new ElectricMotor(ElectricMotor.speedConstant(500), 0.045, 1.2),
            new Supply(15.6, 0.040));

    /** Full throttle, the wing 0.28 m behind the disc (COMPUTED by the second program with a table at 7000 rpm). */
    @ParameterizedTest
    @CsvSource({
        "0,  23.61, 10.08, 20.16, 18.59, 0.131, 14.0, 1.00, 0.54",
        "6,  20.27, 6.81,  19.62, 18.56, 0.148, 9.9,  0.81, 0.69",
        "8,  18.94, 5.87,  19.75, 18.83, 0.153, 8.7,  0.69, 0.75",
        "10, 17.47, 5.01,  20.02, 19.24, 0.157, 7.6,  0.57, 0.80",
        "12, 15.89, 4.22,  20.43, 19.78, 0.161, 6.5,  0.46, 0.85",
        "15, 13.40, 3.17,  21.35, 20.85, 0.166, 5.0,  0.32, 0.90"
    })
    void jet(
            double speed,
            double thrust,
            double induced,
            double far,
            double atWing,
            double radius,
            double swirl,
            double strength,
            double lift) {
        OperatingPoint point = DRIVE.at(speed, 1, DENSITY);
        assertThat(point.thrust()).isCloseTo(thrust, within(0.01 * thrust));
        Slipstream jet = Slipstream.of(point, BLADES.diameter() / 2, DENSITY);
        assertThat(jet.induced()).isCloseTo(induced, within(0.01 * induced));
        assertThat(speed + 2 * jet.induced()).isCloseTo(far, within(0.01 * far));
        assertThat(jet.speedAt(0.28)).isCloseTo(atWing, within(0.01 * atWing));
        assertThat(jet.radiusAt(0.28)).isCloseTo(radius, within(0.001));
        assertThat(Math.toDegrees(jet.swirlAt(0.28))).isCloseTo(swirl, within(0.02 * swirl));
        double images = FiniteJet.strength(speed == 0 ? 1e6 : jet.speedAt(0.28) / speed);
        assertThat(images).isCloseTo(strength, within(0.01));
        assertThat(FiniteJet.lift(images, jet.radiusAt(0.28) / 0.29)).isCloseTo(lift, within(0.01));
    }

    /** Images in both edges of a jet, summed by the second program (COMPUTED). */
    @ParameterizedTest
    @CsvSource({
        "0.35, 0.2, .873", "0.35, 0.4, .760", "0.35, 0.6, .656", "0.35, 0.8, .556", "0.35, 1.0, .436",
        "0.5,  0.2, .921", "0.5,  0.4, .845", "0.5,  0.6, .769", "0.5,  0.8, .689", "0.5,  1.0, .584",
        "0.7,  0.2, .954", "0.7,  0.4, .907", "0.7,  0.6, .857", "0.7,  0.8, .800", "0.7,  1.0, .721",
        "1.0,  0.2, .976", "1.0,  0.4, .950", "1.0,  0.6, .921", "1.0,  0.8, .886", "1.0,  1.0, .835"
    })
    void finiteJet(double halfWidth, double strength, double lift) {
        assertThat(FiniteJet.lift(strength, halfWidth)).isCloseTo(lift, within(0.001));
    }

    /**
     * With images of full strength the sum has a closed form (series of 1/(1 + (k/a)^2)): pi a coth(pi a) is twice it and
     * one, with a = 1 / (4 half width).
     */
    @Test
    void fullStrength() {
        double a = 1 / (4 * 0.6);
        double closed = Math.PI * a / Math.tanh(Math.PI * a);
        assertThat(FiniteJet.lift(1, 0.6)).isCloseTo(1 / closed, within(1e-3));
    }

    /** Momentum: the mass that passes the disc times what it gains is the thrust; energy: with half of that at the disc. */
    @ParameterizedTest
    @CsvSource({"0, 20", "8, 15", "15, 4", "15, -2"})
    void actuatorDisc(double speed, double thrust) {
        Slipstream jet = new Slipstream(speed, 0.18, 1.2, thrust, 0.3);
        double mass = 1.2 * Math.PI * 0.18 * 0.18 * (speed + jet.induced());
        double far = jet.speedAt(1e6);
        assertThat(mass * (far - speed)).isCloseTo(thrust, within(1e-6));
        assertThat(mass * (far * far - speed * speed) / 2).isCloseTo(thrust * (speed + jet.induced()), within(1e-6));
        assertThat(Math.PI * Math.pow(jet.radiusAt(0.4), 2) * jet.speedAt(0.4) * 1.2)
                .isCloseTo(mass, within(1e-9));
    }

    /**
     * Force across the axis by Ribner's rule, full throttle: 0.76, 1.14 and 2.55 N/rad; blade elements with frozen
     * inflow give 0.74, 1.15 and 2.45 (COMPUTED).
     */
    @ParameterizedTest
    @CsvSource({"9, 0.76", "12, 1.14", "20, 2.55"})
    void fin(double speed, double normal) {
        Slipstream jet = Slipstream.of(DRIVE.at(speed, 1, DENSITY), BLADES.diameter() / 2, DENSITY);
        assertThat(PropellerForces.normalPerRadian(BLADES, jet)).isCloseTo(normal, within(0.02 * normal));
    }

    /** Level flight of an invented model: duty, turns a minute and amps that give this drag (COMPUTED, 2 per cent). */
    @ParameterizedTest
    @CsvSource({
        "12, 3.59, 0.577, 4243, 5.10",
        "15, 4.38, 0.690, 0,    7.70",
        "18, 5.67, 0.824, 0,    11.93",
        "10, 4.88, 0.580, 0,    5.86",
        "12, 8.85, 0.773, 0,    12.85"
    })
    void partThrottle(double speed, double drag, double throttle, double rpm, double amps) {
        OperatingPoint point = DRIVE.at(speed, throttle, DENSITY);
        assertThat(point.thrust()).isCloseTo(drag, within(0.02 * drag));
        assertThat(point.current()).isCloseTo(amps, within(0.02 * amps));
        if (rpm > 0) {
            assertThat(60 * point.turns()).isCloseTo(rpm, within(0.01 * rpm));
        }
    }

    /** What goes in comes out: battery, losses in wire and friction, shaft. */
    @ParameterizedTest
    @CsvSource({"0, 1", "10, 1", "10, 0.5", "15, 0.7"})
    void energyOfTheMotor(double speed, double throttle) {
        OperatingPoint point = DRIVE.at(speed, throttle, DENSITY);
        double through = point.current() / throttle;
        double lost = through * through * 0.045 + 1.2 * 2 * Math.PI * point.turns() / ElectricMotor.speedConstant(500);
        assertThat(point.electricPower()).isCloseTo(point.shaftPower() + lost, within(1e-3 * point.electricPower()));
    }

    /** Thrust falls with speed and rises with throttle. */
    @Test
    void monotone() {
        double before = Double.POSITIVE_INFINITY;
        for (double v = 0; v <= 22; v += 2) {
            double full = DRIVE.at(v, 1, DENSITY).thrust();
            assertThat(full).isLessThan(before);
            assertThat(DRIVE.at(v, 0.7, DENSITY).thrust()).isLessThan(full);
            before = full;
        }
    }

    /** The table stands for the blade elements within half a per cent of the thrust at rest. */
    @Test
    void chart() {
        PropellerChart chart = new PropellerChart(BLADES);
        for (double j = 0.03; j < 0.9; j += 0.11) {
            for (double n : new double[] {35, 80, 140}) {
                Coefficients direct = BLADES.at(j, n);
                assertThat(chart.at(j, n).thrust()).isCloseTo(direct.thrust(), within(5e-4));
                assertThat(chart.at(j, n).power()).isCloseTo(direct.power(), within(2e-4));
            }
        }
    }
}
