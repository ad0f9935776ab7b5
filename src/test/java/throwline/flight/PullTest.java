package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.air.Gravity;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.section.MeasuredSections;

/** Pulls and loops against values worked by hand (COMPUTED, methods manual 12.1) and mechanics in closed form. */
class PullTest {

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();
    private static final double STALL = 9.4;

    /** Methods manual 12.1: bottom of a loop at the stall, stall speed 9.4 m/s. */
    @ParameterizedTest
    @CsvSource({"20, 11.56", "30, 9.99"})
    void radiusAtTheStall(double speed, double radius) {
        assertThat(PullUp.radius(speed, Math.pow(speed / STALL, 2))).isCloseTo(radius, within(0.02));
    }

    /** Methods manual 12.1: the same without end of speed, model R; level turns come to the same. */
    @ParameterizedTest
    @CsvSource({"1.0, 10.88", "1.2, 9.07", "1.5, 7.26", "1.8, 6.05"})
    void radiusAtHighSpeed(double maxLift, double radius) {
        double stall = new SteadyDescent(3 * Gravity.STANDARD, 1.225, 0.45).stallSpeed(maxLift);
        double load = Math.pow(5000 / stall, 2);
        assertThat(PullUp.radius(5000, load)).isCloseTo(radius, within(0.005));
        assertThat(PullUp.turnRadius(5000, load)).isCloseTo(radius, within(0.005));
    }

    /** Methods manual 12.1: at 30 m/s the load is 10.2. */
    @Test
    void loadAtThirty() {
        assertThat(Math.pow(30 / STALL, 2)).isCloseTo(10.2, within(0.05));
        assertThat(PullUp.radius(30, 10.186)).isCloseTo(9.99, within(0.01));
    }

    /** Methods manual 12.1: angle of the air at a tail 0.9 m behind. */
    @ParameterizedTest
    @CsvSource({"8, 6.4", "15, 3.4", "30, 1.7"})
    void airAtTheTail(double radius, double degrees) {
        assertThat(Math.toDegrees(PullUp.tailAngle(0.9, radius))).isCloseTo(degrees, within(0.05));
    }

    /** A wing with 90 % of its lift: closed forms of a straight line of load over angle of attack. */
    @Test
    void aWingWithLessLiftLeavesLessAngle() {
        PullUp stick = new PullUp(
                20,
                5,
                Optional.of(4.0),
                Optional.empty(),
                PullUp.Limit.ELEVATOR,
                4,
                4.1,
                1,
                0.1,
                0.05,
                Optional.empty());
        PullUp less = stick.withLift(0.9);
        assertThat(less.limit()).isEqualTo(PullUp.Limit.ELEVATOR);
        assertThat(less.load()).isEqualTo(4);
        assertThat(less.angleLeft()).isCloseTo(0.05 * 0.5, within(1e-12));
        PullUp stalls = stick.withLift(0.7);
        assertThat(stalls.limit()).isEqualTo(PullUp.Limit.WING);
        assertThat(stalls.load()).isCloseTo(3.5, within(1e-12));
        assertThat(stalls.angleLeft()).isZero();
        assertThat(stick.withLift(1.2)).isEqualTo(stick);
    }

    /** A model that pitches meets that air: the elevator goes up by about the tail's share of it. */
    @Test
    void pitchingTakesElevator() {
        Airframe airframe = airframe("orchard");
        Pack pack = airframe.model().packs().get(0);
        Trimmer trimmer = new Trimmer(
                airframe,
                Deflections.of(airframe.model().wing(), airframe.model().reference()));
        double radius = 15;
        Attitude straight = trimmer.at(pack, 18, 0.06);
        Attitude pitching = trimmer.at(pack, 18, 0.06, 1 / radius);
        Trimmer.TailPower power = trimmer.tailPower(pack, straight);
        double arm = airframe.model().tail().arm() + airframe.model().tail().chord() * 3 / 4 - pack.balance();
        double byTail = -PullUp.tailAngle(arm, radius) * power.byAngle() / power.byElevator();
        assertThat(byTail).isNegative();
        assertThat(pitching.elevator() - straight.elevator()).isBetween(1.35 * byTail, 0.9 * byTail);
    }

    /** Without drag a loop keeps its energy and closes in speed; methods manual 12.2: V_top^2 = V^2 - 2 g h. */
    @Test
    void aLoopWithoutDragKeepsItsEnergy() {
        SteadyDescent balance = new SteadyDescent(3 * Gravity.STANDARD, 1.225, 0.45);
        LoopPath loop = LoopPath.fly(LoopForces.of(balance, 0.8, 0), 35);
        double top = loop.topSpeed().orElseThrow();
        assertThat(top * top).isCloseTo(35 * 35 - 2 * Gravity.STANDARD * loop.height(), withPercentage(0.1));
        assertThat(loop.endSpeed().orElseThrow()).isCloseTo(35, withPercentage(0.1));
    }

    /** With drag it comes out slower; too slow at the entry, and it does not get over. */
    @Test
    void aLoopWithDragLosesSpeed() {
        SteadyDescent balance = new SteadyDescent(3 * Gravity.STANDARD, 1.225, 0.45);
        LoopPath loop = LoopPath.fly(LoopForces.of(balance, 0.8, 0.08), 35);
        assertThat(loop.endSpeed().orElseThrow()).isLessThan(33);
        assertThat(loop.topSpeed().orElseThrow())
                .isLessThan(LoopPath.fly(LoopForces.of(balance, 0.8, 0), 35)
                        .topSpeed()
                        .orElseThrow());
        assertThat(LoopPath.fly(LoopForces.of(balance, 0.8, 0.08), 14).topSpeed())
                .isEmpty();
    }

    private static Airframe airframe(String name) {
        ReadModel.Project project = (ReadModel.Project) ModelFile.read(Path.of("examples", name + ".yaml"), AIRFOILS);
        return new Airframe(project.model(), AIRFOILS, new MeasuredSections());
    }

    private static Stick.Pull pull(double elevator) {
        return new Stick.Pull("pull", Map.of(), Math.toRadians(-elevator), List.of());
    }

    /**
     * Methods manual 18.13: entry at 15, 20 and 25 m/s. More stick pulls tighter until the wing or the tail ends it;
     * the limit is the least of the three loads; at the wing's limit the load is (V / V_s)^2 within the band of a stall.
     */
    @ParameterizedTest
    @CsvSource({"orchard, 15", "orchard, 20", "orchard, 25", "ridgeline, 20", "saltmarsh, 25"})
    void theTightestLoop(String name, double speed) {
        Airframe airframe = airframe(name);
        Pack pack = airframe.model().packs().get(0);
        Flight flight = new Flight(airframe, airframe.model().reference());
        Stall stall = flight.stall(pack).orElseThrow();
        PullUp little = flight.pull(pull(3), pack, stall, speed).orElseThrow();
        PullUp more = flight.pull(pull(6), pack, stall, speed).orElseThrow();
        PullUp all = flight.pull(pull(90), pack, stall, speed).orElseThrow();
        assertThat(little.limit()).isEqualTo(PullUp.Limit.ELEVATOR);
        assertThat(more.load()).isGreaterThan(little.load());
        assertThat(more.radius()).isLessThan(little.radius());
        assertThat(little.angleLeft()).isGreaterThan(more.angleLeft());
        for (PullUp pull : List.of(little, more, all)) {
            double least = Math.min(
                    pull.wing(),
                    Math.min(
                            pull.elevator().orElse(Double.POSITIVE_INFINITY),
                            pull.tail().orElse(Double.POSITIVE_INFINITY)));
            assertThat(pull.load()).isEqualTo(least);
        }
        assertThat(all.wing()).isCloseTo(Math.pow(speed / stall.speed(), 2), withPercentage(25));
    }

    /**
     * Methods manual 12.3: the ratio of the tightest loops with and without flaps is that of the largest lifts, here from the stall
     * speeds of the two set-ups in level flight: the wing's load at one speed rises with the square of their ratio.
     */
    @ParameterizedTest
    @CsvSource({"orchard, 8", "saltmarsh, 6"})
    void flapsTightenByTheirLift(String name, double flap) {
        Airframe airframe = airframe(name);
        Pack pack = airframe.model().packs().get(0);
        SetUp flapped = new SetUp("flapped", Map.of("flaps", Math.toRadians(flap)), 0);
        Flight clean = new Flight(airframe, airframe.model().reference());
        Stall stall = clean.stall(pack).orElseThrow();
        double lower = stall.speed()
                / new Flight(airframe, flapped).stall(pack).orElseThrow().speed();
        Stick.Pull with = new Stick.Pull("with", Map.of("flaps", Math.toRadians(flap)), -1, List.of());
        double ratio = clean.pull(with, pack, stall, 20).orElseThrow().wing()
                / clean.pull(pull(60), pack, stall, 20).orElseThrow().wing();
        assertThat(ratio).isGreaterThan(1).isCloseTo(lower * lower, withPercentage(5));
    }
}
