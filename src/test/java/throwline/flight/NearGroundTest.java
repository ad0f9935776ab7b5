package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.liftingline.ChordCorrection;
import throwline.liftingline.Ground;
import throwline.liftingline.InfluenceMatrix;
import throwline.liftingline.StallReading;
import throwline.liftingline.WakeSheet;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.section.MeasuredSections;

/** The whole model near the ground: its image system is checked by WingCasesTest (methods manual 6.6), here with tail and trim. */
class NearGroundTest {

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();

    /** One set-up at its steady approach. */
    private record Ready(Flight flight, Stall stall, Attitude approach, Trimmer trimmer) {
        static Ready of(Airframe airframe, Pack pack, SetUp setUp) {
            Flight flight = new Flight(airframe, setUp);
            Stall stall = flight.stall(pack).orElseThrow();
            Attitude approach =
                    flight.descent(pack, stall, 1.3 * stall.speed()).steady().orElseThrow();
            Deflections there = Deflections.of(airframe.model().wing(), setUp);
            return new Ready(flight, stall, approach, new Trimmer(airframe, there));
        }
    }

    private static Airframe airframe(String name) {
        ReadModel.Project project = (ReadModel.Project) ModelFile.read(Path.of("examples", name + ".yaml"), AIRFOILS);
        return new Airframe(project.model(), AIRFOILS, new MeasuredSections());
    }

    /** Between the rungs of the ladder the whole model is near its solution there: drag to 3 %, elevator to 1 degree (its band is 2). */
    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline", "saltmarsh"})
    void theLadderIsFineEnough(String name) {
        Airframe airframe = airframe(name);
        Pack pack = airframe.model().packs().get(0);
        GroundHeights ladder = new GroundHeights(airframe);
        for (SetUp setUp : airframe.model().setUps()) {
            Ready ready = Ready.of(airframe, pack, setUp);
            Stall stall = ready.stall;
            Attitude approach = ready.approach;
            Trimmer trimmer = ready.trimmer;
            GroundPolar polar = new GroundPolar(trimmer, ladder, pack, approach, stall);
            for (double height : new double[] {0.05, 0.2, 0.6, 2}) {
                var grid = airframe.strips().grid();
                double wing = Math.max(height + ladder.stance(), 0.6 * grid.meanChord());
                Trimmer there =
                        trimmer.near(new InfluenceMatrix(grid, new Ground(wing, true), ChordCorrection.of(grid)));
                Attitude exact = there.at(pack, approach.speed(), approach.alpha() + 0.03);
                assertThat(polar.drag(exact.lift(), height))
                        .as(setUp.name() + " at " + height)
                        .isCloseTo(exact.drag(), withPercentage(3));
                assertThat(polar.elevator(exact.lift(), height))
                        .as(setUp.name() + " at " + height)
                        .isCloseTo(exact.elevator(), within(Math.toRadians(1)));
            }
        }
    }

    /**
     * The most lift at every rung against a walk in eighths of its step: to 0.75 %; and, where it is plain, whether the
     * elevator's stop is what ends it.
     */
    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline", "saltmarsh"})
    void theMostLiftIsThatOfAFineWalk(String name) {
        Airframe airframe = airframe(name);
        GroundHeights ladder = new GroundHeights(airframe);
        for (Pack pack : airframe.model().packs()) {
            for (SetUp setUp : airframe.model().setUps()) {
                Flight flight = new Flight(airframe, setUp);
                Stall stall = flight.stall(pack).orElseThrow();
                Attitude approach = flight.descent(pack, stall, 1.3 * stall.speed())
                        .steady()
                        .orElseThrow();
                Trimmer free =
                        new Trimmer(airframe, Deflections.of(airframe.model().wing(), setUp));
                for (int rung = 0; rung < ladder.size(); rung++) {
                    Trimmer there = ladder.isFree(rung) ? free : free.near(ladder.matrix(rung));
                    HeightPolar polar = new HeightPolar(there, pack, approach.speed(), approach.alpha());
                    Attitude most = there.at(pack, approach.speed(), approach.alpha());
                    Attitude next = most;
                    for (int k = 1;
                            next.elevatorLimit() == Attitude.ElevatorLimit.NONE
                                    && StallReading.of(next.wing()).stalledShare() < 0.5;
                            k++) {
                        most = next.lift() > most.lift() ? next : most;
                        next = there.at(pack, approach.speed(), approach.alpha() + Math.toRadians(k / 4.0));
                    }
                    String where = setUp.name() + ", " + pack.name() + ", rung " + rung;
                    assertThat(polar.limit()).as(where).isCloseTo(most.lift(), withPercentage(0.75));
                    double behind = next.alpha() - most.alpha();
                    double margin = StallReading.of(most.wing()).margin();
                    if (behind < Math.toRadians(0.26) && margin > Math.toRadians(0.5)) {
                        assertThat(polar.limitedByElevator()).as(where).isTrue();
                    }
                    if (next.lift() < 0.98 * most.lift() || margin < 0) {
                        assertThat(polar.limitedByElevator()).as(where).isFalse();
                    }
                }
            }
        }
    }

    /**
     * What the elevator does in a round-out against the model balanced at that height while it pitches with its path, solved
     * directly: to 2 degrees (its band is 2).
     */
    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline", "saltmarsh"})
    void theElevatorOfARoundOutIsThatOfTheTurningModel(String name) {
        Airframe airframe = airframe(name);
        Pack pack = airframe.model().packs().get(0);
        GroundHeights ladder = new GroundHeights(airframe);
        int compared = 0;
        for (SetUp setUp : airframe.model().setUps()) {
            Ready ready = Ready.of(airframe, pack, setUp);
            Stall stall = ready.stall;
            Attitude approach = ready.approach;
            Trimmer trimmer = ready.trimmer;
            GroundPolar polar = new GroundPolar(trimmer, ladder, pack, approach, stall);
            FlareElevator elevator = new FlareElevator(trimmer, pack, approach, polar);
            Landing landing =
                    ready.flight.lander(ladder, pack, stall, approach).land(0).orElseThrow();
            int steps = landing.pulls().size();
            for (int k = 0; k < steps; k += Math.max(1, steps / 4)) {
                Landing.Pull pull = landing.pulls().get(k);
                var grid = airframe.strips().grid();
                double wing = Math.max(pull.height() + ladder.stance(), 0.6 * grid.meanChord());
                Trimmer there =
                        trimmer.near(new InfluenceMatrix(grid, new Ground(wing, true), ChordCorrection.of(grid)));
                double low = approach.alpha() - 0.1;
                double high = approach.alpha() + 0.12;
                for (int i = 0; i < 20; i++) {
                    double middle = (low + high) / 2;
                    boolean more = there.at(pack, approach.speed(), middle, pull.bend())
                                    .lift()
                            < pull.lift();
                    low = more ? middle : low;
                    high = more ? high : middle;
                }
                Attitude turning = there.at(pack, approach.speed(), low, pull.bend());
                if (Math.abs(turning.lift() / pull.lift() - 1) < 0.003
                        && turning.elevatorLimit() == Attitude.ElevatorLimit.NONE) {
                    compared++;
                    assertThat(elevator.at(pull))
                            .as(setUp.name() + " step " + k)
                            .isCloseTo(turning.elevator(), within(Math.toRadians(2)));
                }
            }
        }
        assertThat(compared).isGreaterThan(6);
    }

    /** Nothing is carried beyond the most lift: there drag and elevator stay, and no demand lies beyond the elevator's stop. */
    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline", "saltmarsh"})
    void beyondTheMostLiftNothingGrows(String name) {
        Airframe airframe = airframe(name);
        Pack pack = airframe.model().packs().get(0);
        GroundHeights ladder = new GroundHeights(airframe);
        double stop = -airframe.model().tail().elevator().travelUp();
        for (SetUp setUp : airframe.model().setUps()) {
            Ready ready = Ready.of(airframe, pack, setUp);
            Stall stall = ready.stall;
            Attitude approach = ready.approach;
            Trimmer trimmer = ready.trimmer;
            HeightPolar polar =
                    new HeightPolar(trimmer.near(ladder.matrix(0)), pack, approach.speed(), approach.alpha());
            double most = polar.limit();
            assertThat(polar.elevator(2 * most)).isEqualTo(polar.elevator(most));
            assertThat(polar.drag(2 * most)).isEqualTo(polar.drag(most));
            assertThat(polar.elevator(most)).isGreaterThan(stop - Math.toRadians(0.5));
            LandingSimulator lander = ready.flight.lander(ladder, pack, stall, approach);
            FlareElevator.Demand demand = lander.elevator(lander.land(0).orElseThrow());
            assertThat(Math.min(demand.roundOut(), demand.touchdown())).isGreaterThanOrEqualTo(stop);
        }
    }

    /** No air goes through the ground: below wing, wake and their image the vertical velocity vanishes. */
    @Test
    void noAirGoesThroughTheGround() {
        Airframe airframe = airframe("orchard");
        SetUp flap = airframe.model().setUps().get(2);
        Ground ground = new Ground(0.4, true);
        var grid = airframe.strips().grid();
        Trimmer near = new Trimmer(airframe, Deflections.of(airframe.model().wing(), flap))
                .near(new InfluenceMatrix(grid, ground, ChordCorrection.of(grid)));
        WakeSheet sheet = new WakeSheet(near.wing(11, 0.05), ground);
        for (double x : new double[] {0.2, 0.8, 3}) {
            for (double y : new double[] {0, 0.3, 1.1}) {
                assertThat(sheet.at(x, y, -0.4, -0.4, 0.02).down()).isCloseTo(0, within(1e-12));
                assertThat(Math.abs(sheet.at(x, y, -0.2, -0.2, 0.02).down())).isGreaterThan(1e-4);
            }
        }
    }

    /**
     * Methods manual 10.5: near the ground the tail meets less downwash, so the elevator goes further up for the same lift,
     * and induced drag falls.
     */
    @Test
    void theElevatorGoesUpNearTheGround() {
        Airframe airframe = airframe("orchard");
        Pack pack = airframe.model().packs().get(0);
        GroundHeights ladder = new GroundHeights(airframe);
        for (SetUp setUp : airframe.model().setUps()) {
            Trimmer free = new Trimmer(airframe, Deflections.of(airframe.model().wing(), setUp));
            Attitude above = free.at(pack, 11, 0.06);
            Attitude below = free.near(ladder.matrix(0)).at(pack, 11, 0.06);
            assertThat(below.elevator()).as(setUp.name()).isLessThan(above.elevator() - Math.toRadians(1));
            assertThat(below.downwash()).isLessThan(0.7 * above.downwash());
            assertThat(below.lift()).isGreaterThan(above.lift());
            assertThat(below.drag() / (below.lift() * below.lift()))
                    .isLessThan(above.drag() / (above.lift() * above.lift()));
        }
    }

    /** The height of the wing over its wheels: half the body, leg, half a wheel, the wing's own place, mean dihedral. */
    @Test
    void howHighItStands() {
        Airframe airframe = airframe("orchard");
        double mean = 0.92 / 3 * (0.300 + 2 * 0.235) / (0.300 + 0.235);
        assertThat(GroundStance.wingAboveWheels(airframe.model()))
                .isCloseTo(
                        0.155 / 2
                                + 0.8 * airframe.model().wheels().orElseThrow().legLength()
                                + 0.045
                                + airframe.model().wing().height()
                                + mean * Math.tan(Math.toRadians(2)),
                        within(1e-6));
    }

    /**
     * A usual sport model touches down at 9 to 10 m/s over a stall at 8.7 to 8.9 m/s (PRACTICE, methods manual 10.3): 1.02 to
     * 1.14 times the slowest speed.
     */
    @ParameterizedTest
    @ValueSource(strings = {"orchard", "saltmarsh"})
    void touchesDownALittleAboveTheSlowestSpeed(String name) {
        Airframe airframe = airframe(name);
        Pack pack = airframe.model().packs().get(0);
        GroundHeights ladder = new GroundHeights(airframe);
        Ready ready = Ready.of(airframe, pack, airframe.model().reference());
        GroundPolar polar = new GroundPolar(ready.trimmer, ladder, pack, ready.approach, ready.stall);
        double slowest = airframe.balance(pack).stallSpeed(polar.limit(0));
        double touchdown = ready.flight
                .lander(ladder, pack, ready.stall, ready.approach)
                .land(0)
                .orElseThrow()
                .touchdownSpeed();
        assertThat(touchdown / slowest).isBetween(9 / 8.8, 10 / 8.8);
    }
}
