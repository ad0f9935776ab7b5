package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.section.MeasuredSections;

/** Steady flight at a throttle, against what follows from energy and from the numbers with the motor running. */
class ThrottleAnswerTest {

    private final PackedAirfoils airfoils = new PackedAirfoils();
    private final Model model =
            ((ReadModel.Project) ModelFile.read(Path.of("examples", "orchard.yaml"), airfoils)).model();
    private final HandStudy study =
            new HandStudy(model, airfoils, model.packs().get(0), new MeasuredSections(), Bands.load());
    private final SetUp clean = model.setUps().get(0);

    private ThrottleAnswer at(double throttle) {
        return study.powered(clean, model.setUps(), throttle).orElseThrow();
    }

    @Test
    void more_throttle_climbs_more_and_draws_more() {
        ThrottleAnswer half = at(0.5);
        ThrottleAnswer full = at(1);
        assertThat(full.climbRate().value()).isGreaterThan(half.climbRate().value());
        assertThat(full.current().value()).isGreaterThan(half.current().value());
        assertThat(full.speed()).isEqualTo(half.speed());
    }

    /** No aeroplane climbs with more power than its battery gives: pack voltage at most 4.2 V a cell (data sheets). */
    @Test
    void the_climb_takes_less_power_than_the_battery_gives() {
        ThrottleAnswer full = at(1);
        double given = full.current().value() * 4.2 * 4;
        double taken = model.packs().get(0).mass() * 9.80665 * full.climbRate().value();
        assertThat(taken).isLessThan(given);
    }

    /** Charge is current times time: 80 per cent of 4000 mAh. */
    @Test
    void the_battery_lasts_as_long_as_its_charge() {
        ThrottleAnswer half = at(0.5);
        assertThat(half.current().value() * half.time().value()).isEqualTo(0.8 * 4 * 3600, within(1e-6));
    }

    @Test
    void level_flight_is_level() {
        SetUpResult all = study.full(clean, model.setUps());
        double throttle = ((Headline.Known) all.number(FlightQuantity.LEVEL_THROTTLE)).value();
        assertThat(at(throttle).climbRate().value()).isEqualTo(0, within(0.03));
    }

    @Test
    void a_model_without_a_motor_has_none() {
        var packs = model.packs().stream()
                .map(p -> new throwline.model.Pack(p.name(), p.mass(), p.balance(), Optional.empty()))
                .toList();
        HandStudy glider = new HandStudy(model, airfoils, packs.get(0), new MeasuredSections(), Bands.load());
        assertThat(glider.powered(clean, List.of(clean), 0.5)).isEmpty();
    }
}
