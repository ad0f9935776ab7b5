package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static throwline.study.Examples.value;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import throwline.flight.Airframe;
import throwline.flight.Flight;
import throwline.flight.ServoLoad;
import throwline.flight.Stall;
import throwline.model.Elevator;
import throwline.model.Field;
import throwline.model.Hinge;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.Servo;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.model.Tail;
import throwline.model.Wing;
import throwline.model.WingSection;
import throwline.section.MeasuredSections;
import throwline.section.SectionAerodynamics;
import throwline.study.ServoAnswer.SurfaceLoad;

/** Methods manual 18.10: the worst torque of each servo, and how fast the flaps may be lowered. */
class ServoStoriesTest {

    private static final double DEG = Math.PI / 180;

    /** A wing of constant chord 200 mm with surfaces of 25 and 30 per cent, at sea level on a standard day. */
    static Model plain(List<Servo> servos) {
        Model m = Examples.read("orchard");
        Wing w = m.wing();
        WingSection middle = w.sections().get(0);
        Wing wing = new Wing(
                w.height(),
                w.incidence(),
                0,
                List.of(
                        new WingSection(0, 0.200, middle.airfoil(), 0, 0),
                        new WingSection(1.0, 0.200, middle.airfoil(), 0, 0)),
                List.of(
                        new Surface("flaps", 0.1, 0.4, 0.30, 0, 60 * DEG, Hinge.TAPED),
                        new Surface("ailerons", 0.5, 0.9, 0.25, 25 * DEG, 25 * DEG, Hinge.TAPED)));
        Tail t = m.tail();
        Tail tail = new Tail(
                t.span(),
                t.chord(),
                t.arm(),
                t.height(),
                t.incidence(),
                t.position(),
                t.airfoil(),
                new Elevator(0.4, 30 * DEG, 30 * DEG, Hinge.TAPED));
        Field f = m.field();
        Field sea = new Field(f.ground(), f.length(), f.obstacle(), 0, OptionalDouble.empty(), 0);
        return new Model(
                m.name(),
                List.of(new Pack("light", 2.0, 0.06)),
                wing,
                tail,
                m.body(),
                m.wheels(),
                m.propeller(),
                sea,
                List.of(new SetUp("clean", Map.of(), 0), new SetUp("landing flap", Map.of("flaps", 40 * DEG), 0)),
                List.of(new Stick.Roll("rates", Map.of("ailerons", new Stick.Throws(15 * DEG, 15 * DEG)), List.of())),
                servos);
    }

    private static Servo servo(String surface, double torque) {
        OptionalDouble nothing = OptionalDouble.empty();
        return new Servo(surface, OptionalDouble.of(torque), nothing, nothing, nothing, nothing, 0, 0);
    }

    private static List<ServoLoad> loads(Model model, SectionAerodynamics sections, int setUp, double speed) {
        Flight flight = new Flight(
                new Airframe(model, Examples.AIRFOILS, sections), model.setUps().get(setUp));
        Stall stall = flight.stall(model.packs().get(0)).orElseThrow();
        return flight.servoLoads(
                model.packs().get(0),
                stall,
                speed,
                flight.descent(model.packs().get(0), stall, speed).steady());
    }

    private static ServoLoad of(List<ServoLoad> loads, String surface) {
        return loads.stream()
                .filter(l -> l.surface().equals(surface))
                .findFirst()
                .orElseThrow();
    }

    /** Methods manual 14.1 (COMPUTED): aileron 400 x 50 mm, 30 m/s, 15 degrees at 0.011 a degree: 0.0910 N m at the hinge. */
    @Test
    void anAileron() {
        SectionAerodynamics sections = HeldHinge.sections(d -> -0.011 * d / DEG);
        ServoLoad aileron = of(loads(plain(List.of()), sections, 0, 30), "ailerons");
        assertThat(Math.abs(aileron.hinge())).isCloseTo(0.0910, withPercentage(1));
        assertThat(aileron.stick()).isEqualTo("rates");
        // Travel 25 degrees on a swing of 45, efficiency 0.8 (common practice).
        assertThat(aileron.servo().orElseThrow()).isCloseTo(0.0910 * 25 / 45 / 0.8, withPercentage(1));
    }

    /** Methods manual 14.1 (COMPUTED): flap 300 x 60 mm, 15 m/s, coefficient 0.6: 0.0893 N m at the hinge. */
    @Test
    void aFlap() {
        ServoLoad flap = of(loads(plain(List.of()), HeldHinge.sections(d -> -0.6), 1, 15), "flaps");
        assertThat(Math.abs(flap.hinge())).isCloseTo(0.0893, withPercentage(1));
    }

    /** The pass rule: at the highest speed for the flaps exactly half of the rating is needed. */
    @Test
    void halfOfTheRatingAtTheLimit() {
        Model model = plain(List.of(servo("flaps", 0.3)));
        SetUpResult result = landingFlap(model);
        double limit = value(result.number(FlightQuantity.FLAP_SPEED_LIMIT));
        assertThat(result.servos().limitedBy()).isEqualTo("flaps");
        ServoLoad flap = of(loads(model, new MeasuredSections(), 1, limit), "flaps");
        assertThat(flap.servo().orElseThrow()).isCloseTo(0.15, withPercentage(1.5));
        Headline.Known band = (Headline.Known) result.number(FlightQuantity.FLAP_SPEED_LIMIT);
        assertThat(band.high()).isEqualTo(band.value());
        // Torque may be higher by half (PRACTICE, methods manual 16.1), so speed lower by its root.
        assertThat(band.low()).isCloseTo(limit / Math.sqrt(1.5), withPercentage(1e-6));
    }

    /** Loads go with dynamic pressure: twice the torque, nearly the root of two times the speed. */
    @Test
    void twiceTheServoTheRootOfTwoTimesTheSpeed() {
        double small = value(landingFlap(plain(List.of(servo("flaps", 0.1)))).number(FlightQuantity.FLAP_SPEED_LIMIT));
        double large = value(landingFlap(plain(List.of(servo("flaps", 0.2)))).number(FlightQuantity.FLAP_SPEED_LIMIT));
        assertThat(large / small).isCloseTo(Math.sqrt(2), withPercentage(6));
    }

    @Test
    void whyThereIsNoLimit() {
        Comparison c = Examples.compare(plain(List.of(servo("ailerons", 0.3))), new MeasuredSections());
        List<SetUpResult> setUps = c.packs().get(0).setUps();
        assertThat(setUps.get(0).number(FlightQuantity.FLAP_SPEED_LIMIT))
                .isEqualTo(new Headline.Unknown("why.nothing-moved"));
        assertThat(setUps.get(1).number(FlightQuantity.FLAP_SPEED_LIMIT))
                .isEqualTo(new Headline.Unknown("why.no-servo"));
        SurfaceLoad aileron = setUps.get(0).servos().loads().stream()
                .filter(l -> l.surface().equals("ailerons"))
                .findFirst()
                .orElseThrow();
        assertThat(aileron.rating()).contains(0.3);
        assertThat(aileron.assumedLinkage()).isTrue();
    }

    /** Methods manual 14.2: 12 and 18 mm on a 90 mm rod turn back at 38 degrees, so 40 degrees of flap are never reached. */
    @Test
    void aLinkageThatLocks() {
        Servo square = new Servo(
                "flaps",
                OptionalDouble.of(0.3),
                OptionalDouble.of(0.012),
                OptionalDouble.of(0.018),
                OptionalDouble.of(0.090),
                OptionalDouble.empty(),
                0,
                0);
        SetUpResult result = landingFlap(plain(List.of(square)));
        assertThat(result.number(FlightQuantity.FLAP_SPEED_LIMIT)).isEqualTo(new Headline.Unknown("why.servo-locked"));
        assertThat(result.notes().stream().map(n -> n.code())).contains("note.servo.locked");
    }

    /**
     * A tail that moves as a whole: statics make the moment straight in the place of its pivot, and thin-airfoil theory has
     * it change its sign at the quarter chord.
     */
    @Test
    void anAllMovingTail() {
        double ahead = tailLoad(0.15);
        double near = tailLoad(0.20);
        double back = tailLoad(0.30);
        assertThat(ahead - near).isCloseTo((near - back) / 2, withPercentage(1));
        assertThat(Math.abs(near)).isGreaterThan(0.005);
        assertThat(near * back).isNegative();
    }

    private static double tailLoad(double pivot) {
        Model m = Examples.read("orchard");
        Tail t = m.tail();
        Tail tail = new Tail(
                t.span(),
                t.chord(),
                t.arm(),
                t.height(),
                t.incidence(),
                t.position(),
                t.airfoil(),
                new Elevator(1, 12 * DEG, 12 * DEG, Hinge.TAPED, pivot));
        Model moving = new Model(
                m.name(),
                m.packs(),
                m.wing(),
                tail,
                m.body(),
                m.wheels(),
                m.propeller(),
                m.field(),
                m.setUps(),
                List.of(new Stick.Pull("full up", Map.of(), -6 * DEG, List.of())),
                m.servos());
        return of(loads(moving, new MeasuredSections(), 0, 15), Servo.ELEVATOR).hinge();
    }

    private static SetUpResult landingFlap(Model model) {
        return Examples.compare(model, new MeasuredSections())
                .packs()
                .get(0)
                .setUps()
                .get(1);
    }
}
