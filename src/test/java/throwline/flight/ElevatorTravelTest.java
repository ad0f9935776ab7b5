package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import throwline.input.PackedAirfoils;
import throwline.model.Model;
import throwline.model.Servo;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.section.MeasuredSections;

/** A stick that asks for more elevator than there is: no servo brings it further than its travel of 25 degrees. */
class ElevatorTravelTest {

    private static final double DEG = Math.PI / 180;
    private static final PoweredModel ORCHARD = new PoweredModel();

    private static Model pulling(double elevator) {
        Model m = ORCHARD.model;
        return new Model(
                m.name(),
                m.packs(),
                m.wing(),
                m.tail(),
                m.body(),
                m.wheels(),
                m.propeller(),
                m.field(),
                m.setUps(),
                List.of(new Stick.Pull("all", Map.of(), elevator, List.of())),
                m.servos(),
                m.motor());
    }

    private static Flight flight(double elevator, SetUp setUp) {
        return new Flight(new Airframe(pulling(elevator), new PackedAirfoils(), new MeasuredSections()), setUp);
    }

    /** Set-up and stick together ask for 30 degrees either way. */
    @Test
    void noFurtherThanItsTravel() {
        for (int way : new int[] {-1, 1}) {
            SetUp setUp = new SetUp("trimmed", Map.of(), way * 10 * DEG);
            Flight flight = flight(way * 20 * DEG, setUp);
            Stall stall = flight.stall(ORCHARD.pack).orElseThrow();
            double speed = 1.5 * stall.speed();
            Optional<Attitude> descent =
                    flight.descent(ORCHARD.pack, stall, speed).steady();
            assertThat(flight.standing(ORCHARD.pack, stall, speed, descent, 1))
                    .filteredOn(
                            s -> s.surface().equals(Servo.ELEVATOR) && s.stick().equals("all"))
                    .singleElement()
                    .satisfies(s -> assertThat(s.told()).isEqualTo(way * 25 * DEG));
        }
    }

    /** The elevator of the descent and 40 degrees more. */
    @Test
    void noServoLoadBeyondItsTravel() {
        for (int way : new int[] {-1, 1}) {
            Flight flight = flight(way * 40 * DEG, ORCHARD.model.reference());
            Stall stall = flight.stall(ORCHARD.pack).orElseThrow();
            double speed = 1.5 * stall.speed();
            Optional<Attitude> descent =
                    flight.descent(ORCHARD.pack, stall, speed).steady();
            assertThat(flight.servoLoads(ORCHARD.pack, stall, speed, descent))
                    .filteredOn(load -> load.stick().equals("all"))
                    .singleElement()
                    .satisfies(load -> assertThat(load.deflection()).isEqualTo(way * 25 * DEG));
        }
    }
}
