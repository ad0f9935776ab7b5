package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.air.Gravity;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Elevator;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Tail;
import throwline.section.MeasuredSections;

/**
 * Level turns: the load is one over the cosine of the bank (methods manual 9.3), and the nose goes round with {@code g tan(bank)
 * / V}, of which the sine of the bank is a pitch rate (mechanics in closed form).
 */
class TurnTest {

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();

    private static Airframe airframe(String name) {
        ReadModel.Project project = (ReadModel.Project) ModelFile.read(Path.of("examples", name + ".yaml"), AIRFOILS);
        return new Airframe(project.model(), AIRFOILS, new MeasuredSections());
    }

    /**
     * Full up elevator held, moments solved by Commons Math at the turn's pitch rate: that carries the turn's load, to 2 % in
     * speed.
     */
    @ParameterizedTest
    @CsvSource({"ridgeline, 30", "ridgeline, 45", "ridgeline, 60", "orchard, 60"})
    void fullUpElevatorCarriesTheSlowestTurn(String name, double degrees) {
        Airframe airframe = airframe(name);
        Pack pack = airframe.model().packs().get(0);
        SetUp clean = airframe.model().reference();
        Flight flight = new Flight(airframe, clean);
        Stall stall = flight.stall(pack).orElseThrow();
        double bank = Math.toRadians(degrees);
        TurnStall turn = flight.turn(pack, stall, bank).orElseThrow();
        assertThat(turn.limitedByElevator()).isTrue();
        double pitch = Gravity.STANDARD * Math.tan(bank) * Math.sin(bank) / (turn.speed() * turn.speed());
        Trimmer trimmer = new Trimmer(airframe, Deflections.of(airframe.model().wing(), clean));
        double stop = -airframe.model().tail().elevator().travelUp();
        double alpha = new BrentSolver(1e-5)
                .solve(
                        100,
                        a -> trimmer.heldAt(pack, turn.speed(), a, stop, pitch)
                                .moments()
                                .total(),
                        stall.attitude().alpha() - 0.12,
                        stall.attitude().alpha() + 0.03);
        double lift = trimmer.heldAt(pack, turn.speed(), alpha, stop, pitch).lift();
        double carried = airframe.air().density()
                * turn.speed()
                * turn.speed()
                / 2
                * airframe.model().wing().area()
                * lift;
        assertThat(carried / (pack.mass() * Gravity.STANDARD)).isCloseTo(1 / Math.cos(bank), withPercentage(4));
    }

    /**
     * The elevator is what ends a turn where 15 degrees more of travel make it 1.5 % slower, and not where they change it by
     * less than 0.3 %, the accuracy of these walks. (At 45 degrees orchard's wing ends it: more travel changes nothing.)
     */
    @ParameterizedTest
    @CsvSource({
        "orchard, 0, 30",
        "orchard, 0, 45",
        "orchard, 3, 60",
        "ridgeline, 0, 45",
        "ridgeline, 0, 60",
        "ridgeline, 1, 45",
        "ridgeline, 2, 45",
        "saltmarsh, 0, 60"
    })
    void theElevatorEndsTheTurnWhereMoreTravelHelps(String name, int setUp, double degrees) {
        TurnStall asBuilt = turn(airframe(name), setUp, degrees);
        Model model = airframe(name).model();
        TurnStall freed = turn(new Airframe(withTravel(model), AIRFOILS, new MeasuredSections()), setUp, degrees);
        double gain = asBuilt.speed() / freed.speed() - 1;
        assertThat(gain)
                .satisfiesAnyOf(
                        g -> assertThat(g).isLessThan(0.003), g -> assertThat(g).isGreaterThan(0.015));
        assertThat(asBuilt.limitedByElevator()).as("gains " + gain).isEqualTo(gain > 0.015);
    }

    private static TurnStall turn(Airframe airframe, int setUp, double degrees) {
        Pack pack = airframe.model().packs().get(0);
        Flight flight = new Flight(airframe, airframe.model().setUps().get(setUp));
        return flight.turn(pack, flight.stall(pack).orElseThrow(), Math.toRadians(degrees))
                .orElseThrow();
    }

    private static Model withTravel(Model model) {
        Tail tail = model.tail();
        Elevator elevator = tail.elevator();
        Elevator more = new Elevator(
                elevator.chordFraction(),
                elevator.travelUp() + Math.toRadians(15),
                elevator.travelDown(),
                elevator.hinge());
        Tail freed = new Tail(
                tail.span(),
                tail.chord(),
                tail.arm(),
                tail.height(),
                tail.incidence(),
                tail.position(),
                tail.airfoil(),
                more);
        return new Model(
                model.name(),
                model.packs(),
                model.wing(),
                freed,
                model.body(),
                model.wheels(),
                model.propeller(),
                model.field(),
                model.setUps(),
                model.sticks());
    }

    /** Where the wing sets it, the speed goes with the root of the load: 1.0746, 1.1892, 1.4142 (COMPUTED, methods manual 9.3). */
    @ParameterizedTest
    @CsvSource({"30, 1.0746", "45, 1.1892", "60, 1.4142"})
    void theWingSetsTheRootOfTheLoad(double degrees, double factor) {
        Airframe airframe = airframe("saltmarsh");
        Pack pack = airframe.model().packs().get(0);
        SetUp flaps = airframe.model().setUps().get(2);
        Flight flight = new Flight(airframe, flaps);
        Stall stall = flight.stall(pack).orElseThrow();
        TurnStall turn = flight.turn(pack, stall, Math.toRadians(degrees)).orElseThrow();
        assertThat(turn.limitedByElevator()).isFalse();
        assertThat(turn.speed() / stall.speed()).isCloseTo(factor, withPercentage(2));
    }

    /** At one load the nose goes round faster in a turn than up in a loop, so a stick that sets the limit gives less there. */
    @Test
    void aStickPullsLessInATurn() {
        Airframe airframe = airframe("ridgeline");
        Pack pack = airframe.model().packs().get(0);
        Flight flight = new Flight(airframe, airframe.model().reference());
        Stall stall = flight.stall(pack).orElseThrow();
        Stick.Pull stick = new Stick.Pull("pull", Map.of(), Math.toRadians(-8), List.of());
        PullUp pull = flight.pull(stick, pack, stall, 13).orElseThrow();
        assertThat(pull.limit()).isEqualTo(PullUp.Limit.ELEVATOR);
        assertThat(pull.turnLoad()).isBetween(1.2, pull.load() - 0.05);
        // The less lift takes of the stick, the more is left for the pitch rate.
        double loop = pull.load() - 1;
        double turn = pull.turnLoad() - 1 / pull.turnLoad();
        assertThat(turn).isBetween(loop, 2 * loop);
        assertThat(pull.turnRadius())
                .isCloseTo(
                        13 * 13 / (Gravity.STANDARD * Math.sqrt(pull.turnLoad() * pull.turnLoad() - 1)),
                        withPercentage(0.01));
    }
}
