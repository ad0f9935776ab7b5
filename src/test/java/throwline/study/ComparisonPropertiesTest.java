package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static throwline.study.Examples.value;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.section.MeasuredSections;
import throwline.section.SectionAerodynamics;

/** Laws that hold for any model (methods manual 18.15: closed-form mechanics). */
class ComparisonPropertiesTest {

    /** Section curves held at one Reynolds number, so that only mechanics is left. */
    private static SectionAerodynamics atOneReynoldsNumber() {
        MeasuredSections sections = new MeasuredSections();
        return (place, surface, reynolds) -> sections.curve(place, surface, 200_000);
    }

    private static Model with(Model model, List<Pack> packs, List<SetUp> setUps) {
        return new Model(
                model.name(),
                packs,
                model.wing(),
                model.tail(),
                model.body(),
                model.wheels(),
                model.propeller(),
                model.field(),
                setUps,
                model.sticks());
    }

    @Test
    void twiceTheMassFliesRootTwoTimesAsFastAtTheSameAngles() {
        Model model = Examples.read("orchard");
        Pack once = new Pack("once", 3, 0.084);
        Pack twice = new Pack("twice", 6, 0.084);
        Comparison comparison = Examples.compare(
                with(model, List.of(once, twice), model.setUps().subList(0, 3)), atOneReynoldsNumber());
        for (int i = 0; i < 3; i++) {
            SetUpResult light = comparison.packs().get(0).setUps().get(i);
            SetUpResult heavy = comparison.packs().get(1).setUps().get(i);
            double root = Math.sqrt(2);
            assertThat(value(heavy.stallSpeed()) / value(light.stallSpeed())).isCloseTo(root, within(2e-3));
            assertThat(value(heavy.number(FlightQuantity.SINK_RATE)) / value(light.number(FlightQuantity.SINK_RATE)))
                    .isCloseTo(root, within(5e-3));
            assertThat(value(heavy.number(FlightQuantity.NOSE_DOWN_SPEED))
                            / value(light.number(FlightQuantity.NOSE_DOWN_SPEED)))
                    .isCloseTo(root, within(1e-3));
            assertThat(value(heavy.descentAngle())).isCloseTo(value(light.descentAngle()), withPercentage(0.3));
            assertThat(value(heavy.number(FlightQuantity.ELEVATOR)))
                    .isCloseTo(value(light.number(FlightQuantity.ELEVATOR)), within(Math.toRadians(0.05)));
            assertThat(value(heavy.rollRates().get(0).rate())
                            / value(light.rollRates().get(0).rate()))
                    .isCloseTo(root, within(5e-3));
        }
    }

    @Test
    void surfacesToldToStandAtZeroAreClean() {
        Model model = Examples.read("orchard");
        SetUp clean = new SetUp("clean", Map.of(), 0);
        SetUp zero = new SetUp("zero", Map.of("flaps", 0.0, "ailerons", -0.0), 0);
        Comparison comparison = Examples.compare(
                with(model, model.packs().subList(0, 1), List.of(clean, zero)), new MeasuredSections());
        SetUpResult a = comparison.packs().get(0).setUps().get(0);
        SetUpResult b = comparison.packs().get(0).setUps().get(1);
        // The searches stop within 1e-5 rad of angle of attack, wherever they started.
        assertThat(value(b.stallSpeed())).isCloseTo(value(a.stallSpeed()), withPercentage(0.01));
        assertThat(value(b.descentAngle())).isCloseTo(value(a.descentAngle()), withPercentage(0.02));
        assertThat(value(b.number(FlightQuantity.NOSE_DOWN_SPEED)))
                .isCloseTo(value(a.number(FlightQuantity.NOSE_DOWN_SPEED)), withPercentage(0.02));
        assertThat(value(b.rollRates().get(0).rate()))
                .isCloseTo(value(a.rollRates().get(0).rate()), withPercentage(0.02));
    }
}
