package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static throwline.study.Examples.value;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import throwline.model.Field;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Wing;
import throwline.model.WingSection;
import throwline.section.MeasuredSections;
import throwline.section.SectionAerodynamics;

/** Questions that flyers ask (PRACTICE, methods manual 18), answered by closed-form mechanics where there is any. */
class FlyersStoriesTest {

    private static final MeasuredSections SECTIONS = new MeasuredSections();

    /** Section curves held at one Reynolds number, so that only mechanics is left. */
    private static final SectionAerodynamics AT_ONE_REYNOLDS_NUMBER =
            (place, surface, reynolds) -> SECTIONS.curve(place, surface, 200_000);

    private static Model with(Model m, List<Pack> packs, Wing wing, Field field, List<SetUp> setUps) {
        return new Model(
                m.name(), packs, wing, m.tail(), m.body(), m.wheels(), m.propeller(), field, setUps, m.sticks());
    }

    /** Methods manual 18.1: the stall speed goes with the root of the mass: 3.13 kg against 3.00 kg, ratio 1.0214 to 0.1 %. */
    @Test
    void aHeavierPack() {
        Model model = Examples.read("orchard");
        List<Pack> packs = List.of(new Pack("3S", 3.000, 0.082), new Pack("4S", 3.130, 0.082));
        Comparison c = Examples.compare(
                with(model, packs, model.wing(), model.field(), model.setUps().subList(0, 2)), AT_ONE_REYNOLDS_NUMBER);
        double light = value(c.packs().get(0).setUps().get(0).stallSpeed());
        double heavy = value(c.packs().get(1).setUps().get(0).stallSpeed());
        assertThat(heavy / light).isCloseTo(1.0214, withPercentage(0.1));
    }

    /** Methods manual 18.2: at 1000 m and 25 C speeds rise by 8.0 %, angles stay to 0.1 degrees. */
    @Test
    void aHotHighField() {
        Model model = Examples.read("orchard");
        List<Pack> pack = model.packs().subList(0, 1);
        List<SetUp> setUps = model.setUps().subList(0, 2);
        Comparison sea = Examples.compare(
                with(model, pack, model.wing(), fieldAt(model, 0, 288.15), setUps), AT_ONE_REYNOLDS_NUMBER);
        Comparison high = Examples.compare(
                with(model, pack, model.wing(), fieldAt(model, 1000, 298.15), setUps), AT_ONE_REYNOLDS_NUMBER);
        for (int i = 0; i < 2; i++) {
            SetUpResult a = sea.packs().get(0).setUps().get(i);
            SetUpResult b = high.packs().get(0).setUps().get(i);
            assertThat(value(b.stallSpeed()) / value(a.stallSpeed())).isCloseTo(1.0801, withPercentage(0.15));
            assertThat(value(b.descentAngle())).isCloseTo(value(a.descentAngle()), within(Math.toRadians(0.1)));
        }
    }

    private static Field fieldAt(Model model, double height, double temperature) {
        Field f = model.field();
        return new Field(f.ground(), f.length(), f.obstacle(), height, OptionalDouble.of(temperature), f.wind());
    }

    /** Methods manual 18.11: a rectangular wing without washout lets go in the inner third first. */
    @Test
    void aRectangularWingStallsAtTheRoot() {
        Model model = Examples.read("orchard");
        Wing w = model.wing();
        WingSection middle = w.sections().get(0);
        WingSection tip = new WingSection(w.semiSpan(), middle.chord(), middle.airfoil(), 0, 0);
        Wing rectangular = new Wing(w.height(), w.incidence(), w.dihedral(), List.of(middle, tip), w.surfaces());
        Comparison c = Examples.compare(
                with(
                        model,
                        model.packs().subList(0, 1),
                        rectangular,
                        model.field(),
                        model.setUps().subList(0, 2)),
                SECTIONS);
        assertThat(c.packs().get(0).setUps().get(0).firstStall().spanFraction()).isLessThan(0.34);
    }

    /** Methods manual 18.12: at one throw and angle of attack range well above the stall the roll rate goes with speed within 2 %. */
    @Test
    void rollRateGoesWithSpeed() {
        Model model = Examples.read("orchard");
        FlyResult fly = new FlyStudy(AT_ONE_REYNOLDS_NUMBER, Bands.load())
                .fly(
                        model,
                        Examples.AIRFOILS,
                        model.packs().get(0),
                        model.setUps().get(0),
                        FlyQuestion.open());
        List<FlyResult.RollPoint> fast = fly.rollSweep().stream()
                .filter(p -> p.speed() > 1.3 * value(fly.glance().stallSpeed()))
                .toList();
        double mean =
                fast.stream().mapToDouble(p -> p.rate() / p.speed()).average().orElseThrow();
        assertThat(fast).hasSizeGreaterThan(3);
        assertThat(fast).allSatisfy(p -> assertThat(p.rate() / p.speed()).isCloseTo(mean, withPercentage(2)));
    }

    /** Methods manual 9.6: headwind steepens the path over the ground. */
    @Test
    void headwindOnTheApproach() {
        Model model = Examples.read("orchard");
        FlyResult fly = new FlyStudy(SECTIONS, Bands.load())
                .fly(
                        model,
                        Examples.AIRFOILS,
                        model.packs().get(0),
                        model.setUps().get(2),
                        FlyQuestion.open());
        double speed = value(fly.glance().approachSpeed());
        double angle = value(fly.glance().descentAngle());
        double wind = model.field().wind();
        double expected = Math.atan(speed * Math.sin(angle) / (speed * Math.cos(angle) - wind));
        assertThat(fly.descents().orElseThrow().overGround().orElseThrow()).isCloseTo(expected, within(1e-6));
    }
}
