package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Elevator;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Tail;
import throwline.section.MeasuredSections;

/**
 * The elevator's limit can be what limits slow flight (methods manual 7.3): the further forward the balance, the
 * faster the slowest balanced flight, by statics.
 */
class NoseHeavyTest {

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();

    private static Airframe orchard() {
        ReadModel.Project project = (ReadModel.Project) ModelFile.read(Path.of("examples", "orchard.yaml"), AIRFOILS);
        return new Airframe(project.model(), AIRFOILS, new MeasuredSections());
    }

    private static Stall stall(Airframe airframe, SetUp setUp, double balance) {
        return new Flight(airframe, setUp).stall(new Pack("any", 3, balance)).orElseThrow();
    }

    @Test
    void forwardBalanceRaisesTheLowestSpeed() {
        Airframe airframe = orchard();
        SetUp clean = airframe.model().reference();
        Stall usual = stall(airframe, clean, 0.084);
        Stall forward = stall(airframe, clean, 0.060);
        Stall extreme = stall(airframe, clean, 0.030);
        assertThat(extreme.elevatorLimited()).isTrue();
        assertThat(forward.speed()).isGreaterThan(usual.speed());
        assertThat(extreme.speed()).isGreaterThan(forward.speed());
    }

    /** The elevator's stop is named where 15 degrees more of travel make the slowest flight 2 % slower, and nowhere else. */
    @ParameterizedTest
    @ValueSource(doubles = {0.03, 0.04, 0.06, 0.084})
    void theStopIsNamedWhereMoreTravelBuysTwoPercent(double balance) {
        Airframe airframe = orchard();
        Model model = airframe.model();
        Elevator elevator = model.tail().elevator();
        Elevator more = new Elevator(
                elevator.chordFraction(),
                elevator.travelUp() + Math.toRadians(15),
                elevator.travelDown(),
                elevator.hinge());
        Tail tail = new Tail(
                model.tail().span(),
                model.tail().chord(),
                model.tail().arm(),
                model.tail().height(),
                model.tail().incidence(),
                model.tail().position(),
                model.tail().airfoil(),
                more);
        Model free = new Model(
                model.name(),
                model.packs(),
                model.wing(),
                tail,
                model.body(),
                model.wheels(),
                model.propeller(),
                model.field(),
                model.setUps(),
                model.sticks());
        Stall asBuilt = stall(airframe, model.reference(), balance);
        Stall freed = stall(new Airframe(free, AIRFOILS, new MeasuredSections()), model.reference(), balance);
        double gain = asBuilt.speed() / freed.speed() - 1;
        assertThat(asBuilt.elevatorLimited()).as("gains " + gain).isEqualTo(gain > 0.02);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.03, 0.06, 0.084, 0.11})
    void theSlowestFlightIsBalanced(double balance) {
        Airframe airframe = orchard();
        Model model = airframe.model();
        for (SetUp setUp : model.setUps()) {
            Attitude attitude = stall(airframe, setUp, balance).attitude();
            assertThat(attitude.converged()).isTrue();
            assertThat(attitude.moments().total()).as(setUp.name()).isCloseTo(0, within(2e-3));
        }
    }
}
