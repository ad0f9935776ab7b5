package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.air.Gravity;
import throwline.flight.LoopPath.Spot;
import throwline.model.SetUp;
import throwline.model.Stick;

/** Loops with the motor running against closed forms of mechanics, and their place beside those with the throttle closed. */
class PoweredLoopTest {

    private static final PoweredModel POWERED = new PoweredModel();
    private static final Stick.Pull FULL = new Stick.Pull("pull", Map.of(), Math.toRadians(-60), List.of());
    private static final SteadyDescent BALANCE = new SteadyDescent(3 * Gravity.STANDARD, 1.225, 0.45);

    /** The same lift as with a lift coefficient of 0.8, along the path a constant force over the weight. */
    private static LoopForces constant(double against) {
        return new LoopForces() {
            @Override
            public double across(double speed) {
                return 0.8 / BALANCE.resultantFor(speed);
            }

            @Override
            public double against(double speed) {
                return against;
            }
        };
    }

    /** Pull equal to drag: nothing but gravity changes the speed, V^2 = V0^2 - 2 g h at every place of the loop. */
    @Test
    void pullEqualToDragKeepsTheEnergy() {
        LoopPath loop = LoopPath.fly(constant(0), 25);
        assertThat(loop.topSpeed()).isPresent();
        for (Spot spot : loop.way()) {
            assertThat(spot.speed() * spot.speed())
                    .isCloseTo(25 * 25 - 2 * Gravity.STANDARD * spot.height(), withPercentage(0.1));
        }
    }

    /** A constant force along the path does its work over the way flown: V^2 = V0^2 - 2 g h + 2 F s/m, closed form. */
    @ParameterizedTest
    @CsvSource({"-0.3, 25", "-0.9, 25", "0.15, 30"})
    void aConstantForceDoesItsWork(double against, double entry) {
        LoopPath loop = LoopPath.fly(constant(against), entry);
        assertThat(loop.endSpeed()).isPresent();
        List<Spot> way = loop.way();
        double flown = flown(way);
        Spot end = way.get(way.size() - 1);
        double energy = entry * entry - 2 * Gravity.STANDARD * (end.height() + against * flown);
        assertThat(end.speed() * end.speed()).isCloseTo(energy, withPercentage(0.3));
    }

    private static double flown(List<Spot> way) {
        double flown = 0;
        for (int i = 1; i < way.size(); i++) {
            Spot a = way.get(i - 1);
            Spot b = way.get(i);
            flown += Math.hypot(b.along() - a.along(), b.height() - a.height());
        }
        return flown;
    }

    /**
     * Without drag and thrust, at one angle of attack, a path is Lanchester's phugoid (Aerodonetics, 1908): {@code cos g =
     * n/3 + C/sqrt n}, n the load, which is V^2 over its square at one g. It goes round only where C is below zero, which is a
     * load above three at the bottom; at the top, {@code -1 = n/3 + C/sqrt n}.
     */
    @ParameterizedTest
    @CsvSource({"2.5, false", "3, false", "3.7, true", "5, true", "8, true"})
    void phugoid(double load, boolean over) {
        double oneG = BALANCE.stallSpeed(0.8);
        double entry = oneG * Math.sqrt(load);
        LoopPath loop = LoopPath.fly(LoopForces.of(BALANCE, 0.8, 0), entry);
        assertThat(loop.topSpeed().isPresent()).isEqualTo(over);
        if (over) {
            double c = Math.sqrt(load) * (1 - load / 3);
            double top = Math.pow(loop.topSpeed().orElseThrow() / oneG, 2);
            assertThat(top / 3 + c / Math.sqrt(top)).isCloseTo(-1, withPercentage(1));
        }
    }

    /** At full throttle it comes over the top faster than with the throttle closed, by no more than all the pull can do. */
    @ParameterizedTest
    @CsvSource({"0, 18", "0, 22", "0, 27", "2, 27"})
    void fasterOverTheTop(int which, double speed) {
        SetUp setUp = POWERED.model.setUps().get(which);
        Flight flight = new Flight(POWERED.airframe, setUp);
        Stall stall = flight.stall(POWERED.pack).orElseThrow();
        PullUp shut = flight.pull(FULL, POWERED.pack, stall, speed).orElseThrow();
        LoopPath closed = flight.loop(POWERED.pack, shut);
        PoweredLoops loops = new PoweredLoops(
                POWERED.airframe, setUp, POWERED.pack, POWERED.drive, stall, new PoweredLoops.Unknowns(0.25, 0.3));
        PoweredLoop open = loops.at(FULL, loops.straight(speed).orElseThrow()).orElseThrow();
        double top = open.path().topSpeed().orElseThrow();
        assertThat(top)
                .isGreaterThan(closed.topSpeed().orElse(0.0))
                .isGreaterThan(open.least().topSpeed().orElseThrow())
                .isLessThan(open.most().topSpeed().orElseThrow());
        // The pull falls with speed: nowhere on the way up is it more than at rest.
        double most = POWERED.drive.at(0, 1, POWERED.airframe.air().density()).thrust();
        List<Spot> way = open.path().way();
        double up = flown(way.subList(0, way.size() / 2 + 1));
        double energy = speed * speed - 2 * Gravity.STANDARD * (open.path().height() - most / POWERED.weight() * up);
        assertThat(top * top).isLessThan(energy);
        assertThat(open.pull().load()).isCloseTo(shut.load(), withPercentage(10));
    }

    /** Forces worked out at twice as many speeds change the speed at the top by less than 2 per cent. */
    @Test
    void enoughSpeeds() {
        SetUp setUp = POWERED.model.setUps().get(0);
        Stall stall = new Flight(POWERED.airframe, setUp).stall(POWERED.pack).orElseThrow();
        PoweredLoops.Unknowns unknowns = new PoweredLoops.Unknowns(0.25, 0.3);
        PoweredLoops usual = new PoweredLoops(POWERED.airframe, setUp, POWERED.pack, POWERED.drive, stall, unknowns);
        PoweredLoops fine = new PoweredLoops(
                POWERED.airframe,
                setUp,
                POWERED.pack,
                POWERED.drive,
                stall,
                unknowns,
                0.15,
                0.22,
                0.3,
                0.4,
                0.5,
                0.62,
                0.75,
                0.87,
                1,
                1.25,
                1.5);
        for (double speed : new double[] {18, 22, 27}) {
            Attitude straight = usual.straight(speed).orElseThrow();
            double top =
                    usual.at(FULL, straight).orElseThrow().path().topSpeed().orElseThrow();
            assertThat(fine.at(FULL, straight).orElseThrow().path().topSpeed().orElseThrow())
                    .isCloseTo(top, withPercentage(2));
        }
    }
}
