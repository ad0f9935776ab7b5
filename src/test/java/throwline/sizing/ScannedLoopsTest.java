package throwline.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.flight.Flight;
import throwline.flight.PullStallSpeed;
import throwline.flight.PullUp;
import throwline.flight.Stall;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.sizing.LoopHelp.Pull;

/** Throws for a loop against the same pulls flown with sticks of the test's own. */
class ScannedLoopsTest {

    private static final double DEGREE = Math.PI / 180;

    private final Orchard orchard = Orchard.asItIs();
    private final SetUp clean = orchard.model().reference();

    private static Optional<LoopHelp> search(
            Orchard of, SurfaceGroups groups, SetUp setUp, double speed, List<Double> others) {
        return new LoopSearch(of.airframe(), of.pack(), groups, setUp, 1).at(14 * DEGREE, speed, others);
    }

    private LoopHelp help(double speed, Double... others) {
        return search(orchard, orchard.groups(), clean, speed, List.of(others)).orElseThrow();
    }

    private static SurfaceGroups flapsTo(Orchard of, double degrees) {
        Surface flaps = of.groups().flaps().get(0);
        Surface little = new Surface(
                flaps.name(), flaps.from(), flaps.to(), flaps.chordFraction(), 0, degrees * DEGREE, flaps.hinge());
        return new SurfaceGroups(List.of(little), of.groups().ailerons());
    }

    private static Stick.Pull stick(double flap, double elevator) {
        return new Stick.Pull("scan", flap == 0 ? Map.of() : Map.of("flaps", flap), -elevator, List.of());
    }

    /** One model in one set-up. */
    private record Scan(Orchard of, Flight flight, Stall stall) {

        static Scan of(Orchard of, SetUp setUp) {
            Flight flight = new Flight(of.airframe(), setUp);
            return new Scan(of, flight, flight.stall(of.pack()).orElseThrow());
        }

        PullUp pull(double flap, double elevator, double speed) {
            return flight.pull(stick(flap, elevator), of.pack(), stall, speed).orElseThrow();
        }

        boolean keepsTwoDegrees(double flap, double elevator, double speed) {
            PullUp pull = pull(flap, elevator, speed);
            return pull.limit() == PullUp.Limit.ELEVATOR && pull.angleLeft() >= 2 * DEGREE;
        }
    }

    /** At 15 m/s full up elevator stalls the wing: each throw keeps two degrees, and a quarter of a degree more does not. */
    @Test
    void widestThrowThatKeepsTheMargin() {
        LoopHelp help = help(15, 20.0);
        Scan scan = Scan.of(orchard, clean);
        assertThat(help.points()).hasSize(5);
        for (Pull point : help.points()) {
            assertThat(scan.keepsTwoDegrees(point.flap(), point.elevator(), 15)).isTrue();
            assertThat(scan.keepsTwoDegrees(point.flap(), point.elevator() + 0.25 * DEGREE, 15))
                    .isFalse();
            assertThat(point.load())
                    .isCloseTo(scan.pull(point.flap(), point.elevator(), 15).load(), within(1e-3));
            assertThat(point.setBy()).isEqualTo(PullUp.Limit.ELEVATOR);
        }
        double alone = help.points().get(0).elevator();
        for (int i = 0; i <= 4; i++) {
            assertThat(help.points().get(i).flap()).isCloseTo(i * alone / 4, within(1e-12));
        }
        assertThat(help.stoppedBy()).containsExactly(Limit.WING_MARGIN, Limit.ELEVATOR_THROW);
        assertThat(help.own().elevator()).isEqualTo(14 * DEGREE);
        assertThat(help.own().load()).isCloseTo(scan.pull(0, 14 * DEGREE, 15).load(), within(1e-3));
        assertThat(help.atSpeeds()).hasSize(1);
        Pull best = help.best();
        assertThat(help.atSpeeds().get(0).without().load())
                .isCloseTo(scan.pull(0, best.elevator(), 20).load(), within(1e-3));
        assertThat(help.atSpeeds().get(0).with().load())
                .isCloseTo(scan.pull(best.flap(), best.elevator(), 20).load(), within(1e-3));
        double below = new PullStallSpeed(scan.flight(), orchard.pack(), scan.stall())
                .of(stick(best.flap(), best.elevator()), 15)
                .orElseThrow();
        assertThat(help.stallsBelow().orElseThrow()).isCloseTo(below, within(1e-3));
    }

    /** At 25 m/s all of the elevator's travel leaves more than two degrees; flaps go as far as the elevator, or to their own end. */
    @Test
    void allOfTheElevator() {
        LoopHelp free = help(25);
        assertThat(free.best().elevator()).isCloseTo(25 * DEGREE, within(1e-12));
        assertThat(free.stoppedBy()).containsExactly(Limit.ELEVATOR_TRAVEL_USED, Limit.ELEVATOR_THROW);
        LoopHelp little =
                search(orchard, flapsTo(orchard, 10), clean, 25, List.of()).orElseThrow();
        assertThat(little.best().flap()).isCloseTo(10 * DEGREE, within(1e-12));
        assertThat(little.stoppedBy()).containsExactly(Limit.ELEVATOR_TRAVEL_USED, Limit.FLAPS_DOWN);
        LoopHelp none =
                search(orchard, flapsTo(orchard, 0), clean, 25, List.of()).orElseThrow();
        assertThat(none.points()).hasSize(1);
        assertThat(none.stoppedBy()).containsExactly(Limit.ELEVATOR_TRAVEL_USED, Limit.FLAPS_DOWN);
    }

    /** Flaps that stand at 45 degrees of 60 have 15 left, and no more is mixed. */
    @Test
    void flapsThatStandDown() {
        SetUp down = new SetUp("down", Map.of("flaps", 45 * DEGREE), 0);
        LoopSearch search = new LoopSearch(orchard.airframe(), orchard.pack(), orchard.groups(), down, 1);
        LoopHelp help = search.at(14 * DEGREE, 22, List.of()).orElseThrow();
        Pull last = help.points().get(help.points().size() - 1);
        assertThat(last.flap()).isCloseTo(15 * DEGREE, within(1e-9));
        assertThat(search.stick(last, "found").deflections()).containsOnlyKeys("flaps");
        assertThat(search.stick(help.points().get(0), "none").deflections()).isEmpty();
    }

    /** A nose that comes up easily: more flap than the best brings less. */
    @Test
    void moreFlapBringsLess(@TempDir Path folder) {
        Orchard easy = Orchard.with(folder, "balance: 88 mm", "balance: 110 mm");
        LoopHelp help = search(easy, easy.groups(), easy.model().reference(), 12, List.of())
                .orElseThrow();
        assertThat(help.stoppedBy()).containsExactly(Limit.WING_MARGIN, Limit.BEST_REACHED);
        assertThat(help.best()).isNotEqualTo(help.points().get(help.points().size() - 1));
        Scan scan = Scan.of(easy, easy.model().reference());
        for (Pull point : help.points()) {
            assertThat(scan.pull(point.flap(), point.elevator(), 12).load())
                    .isLessThanOrEqualTo(help.best().load() + 1e-3);
        }
    }

    /** No loop below the stall speed. */
    @Test
    void tooSlow() {
        assertThat(search(orchard, orchard.groups(), clean, 5, List.of())).isEmpty();
    }
}
