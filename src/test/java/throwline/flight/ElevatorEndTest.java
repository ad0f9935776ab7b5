package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.section.MeasuredSections;

/**
 * What an elevator with too little travel leaves of a set-up, held to statics: at the end of its travel the descent is in
 * balance, faster it is not, and a model that glides only with more drag than lift has no slowest flight (methods manual
 * 7.3 and 9.1).
 */
class ElevatorEndTest {

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();
    private static final SetUp FLAPS = new SetUp("far down", Map.of("flaps", Math.toRadians(70)), 0);
    private static final double TOLERANCE = Math.toRadians(0.1);

    private static Airframe ridgeline(double arm, double up, double down, double incidence) throws IOException {
        String travel = "travel: {up: " + up + " deg, down: " + down + " deg}, hinge: living}\n  incidence: "
                + incidence + " deg";
        String file = Files.readString(Path.of("examples", "ridgeline.yaml"))
                .replace("travel: {up: 22 deg, down: 20 deg}, hinge: living}", travel)
                .replace("elevator: 8 deg up", "elevator: 1 deg up")
                .replace("arm: 900 mm", "arm: " + arm + " mm");
        byte[] bytes = file.getBytes(StandardCharsets.UTF_8);
        ReadModel.Project project = (ReadModel.Project)
                ModelFile.read(new ByteArrayInputStream(bytes), "ridgeline.yaml", AIRFOILS, List.of());
        return new Airframe(project.model(), AIRFOILS, new MeasuredSections());
    }

    @Test
    void theElevatorEndsTheWayToADive() throws IOException {
        Airframe airframe = ridgeline(900, 22, 4, 0);
        Pack pack = airframe.model().packs().get(0);
        Flight flight = new Flight(airframe, FLAPS);
        Stall stall = flight.stall(pack).orElseThrow();
        assertThat(flight.noseDownSpeed(pack, stall)).isEmpty();
        Attitude end = flight.elevatorEnd(pack, stall).orElseThrow();
        assertThat(end.elevator()).isCloseTo(Math.toRadians(4), within(TOLERANCE));
        assertThat(end.moments().total()).isCloseTo(0, within(2e-3));
        assertThat(flight.descent(pack, stall, 1.01 * end.speed()).outcome()).isEqualTo(Descent.Outcome.ELEVATOR_SHORT);
        assertThat(flight.descent(pack, stall, 0.97 * end.speed()).steady().map(Attitude::descentAngle))
                .hasValueSatisfying(angle -> assertThat(angle).isLessThan(end.descentAngle()));
    }

    @Test
    void nothingEndsItWithTravelToSpare() throws IOException {
        Airframe airframe = ridgeline(900, 22, 20, 0);
        Pack pack = airframe.model().packs().get(0);
        Flight flight = new Flight(airframe, FLAPS);
        Stall stall = flight.stall(pack).orElseThrow();
        double straightDown = flight.noseDownSpeed(pack, stall).orElseThrow();
        assertThat(flight.elevatorEnd(pack, stall)).isEmpty();
        assertThat(straightDown).isGreaterThan(stall.approachSpeed());
    }

    /** Whatever stall is given is flown: slower than the same set-up falls straight down. */
    @Test
    void aSlowestFlightFasterThanTheFallIsNone() throws IOException {
        int none = 0;
        for (double incidence = 0; incidence <= 4; incidence += 0.5) {
            Airframe airframe = ridgeline(600, 1, 20, incidence);
            Pack pack = new Pack("nose-heavy", 1.85, 0.02);
            Flight flight = new Flight(airframe, FLAPS);
            Optional<Stall> stall = flight.stall(pack);
            stall.ifPresent(s -> assertThat(s.speed())
                    .isLessThan(flight.noseDownSpeed(pack, s).orElse(Double.POSITIVE_INFINITY)));
            none += stall.isEmpty() ? 1 : 0;
        }
        assertThat(none).isPositive();
    }
}
