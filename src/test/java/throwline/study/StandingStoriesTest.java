package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.flight.Airframe;
import throwline.flight.Attitude;
import throwline.flight.Flight;
import throwline.flight.Stall;
import throwline.flight.Standing;
import throwline.liftingline.ChordCorrection;
import throwline.liftingline.Ground;
import throwline.liftingline.HingeMoments;
import throwline.liftingline.InfluenceMatrix;
import throwline.liftingline.LiftingLineProblem;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.Motion;
import throwline.liftingline.SolverSettings;
import throwline.liftingline.StripForces;
import throwline.linkage.ControlRun;
import throwline.linkage.ServoBlowBack.Hold;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.Servo;
import throwline.section.MeasuredSections;
import throwline.section.SectionAerodynamics;
import throwline.study.ServoAnswer.Yield;

/** Where surfaces stand in the air, with whole models: closed forms, other numerics, and what must not happen. */
class StandingStoriesTest {

    private static final double DEG = Math.PI / 180;

    /** Methods manual 14.1 (COMPUTED): the aileron of 400 x 50 mm at 30 m/s, 15 degrees, 0.011 a degree: 0.0910 N m. */
    private static final double AILERON = 0.0910;

    private static Servo servo(String surface, double torque, double give, double play) {
        OptionalDouble nothing = OptionalDouble.empty();
        return new Servo(surface, OptionalDouble.of(torque), nothing, nothing, nothing, nothing, 0, 0, give, play);
    }

    private static List<Standing> standing(Model model, SectionAerodynamics sections, int setUp, double speed) {
        Pack pack = model.packs().get(0);
        Flight flight = new Flight(
                new Airframe(model, Examples.AIRFOILS, sections), model.setUps().get(setUp));
        Stall stall = flight.stall(pack).orElseThrow();
        Optional<Attitude> descent = flight.descent(pack, stall, speed).steady();
        return flight.standing(pack, stall, speed, descent, 1);
    }

    private static double aileron(Servo servo) {
        SectionAerodynamics sections = HeldHinge.sections(d -> -0.011 * d / DEG);
        return standing(ServoStoriesTest.plain(List.of(servo)), sections, 0, 30).stream()
                .filter(s -> s.side() > 0 && s.stick().equals("rates"))
                .findFirst()
                .orElseThrow()
                .inAir()
                .orElseThrow()
                .angle();
    }

    /** Control-system stretch in closed form: told / (1 + ratio^2 x hinge slope x give / torque); ratio 25 to 45 degrees. */
    @Test
    void stretch() {
        double give = 4 * DEG;
        double torque = 0.06;
        double ratio = 25.0 / 45;
        double slope = AILERON / (15 * DEG);
        double expected = 15 / (1 + ratio * ratio * slope * give / torque);
        assertThat(expected).isBetween(12.0, 14.0);
        assertThat(aileron(servo("ailerons", torque, give, 0)) / DEG).isCloseTo(-expected, within(0.03));
    }

    /** A servo that is too weak stands where its torque through the linkage is the hinge moment. */
    @Test
    void tooWeak() {
        double torque = 0.03;
        double expected = torque / (25.0 / 45) / (AILERON / (15 * DEG)) / DEG;
        assertThat(expected).isBetween(8.0, 10.0);
        assertThat(aileron(servo("ailerons", torque, 4 * DEG, 0)) / DEG).isCloseTo(-expected, within(0.1));
    }

    @Test
    void noGiveNoPlay() {
        assertThat(aileron(servo("ailerons", 0.06, 0, 0)) / DEG).isCloseTo(-15, within(1e-3));
    }

    /** A movement of 2 mm of an edge that turns on 50 mm: 2.29 degrees (geometry), half of it lost. */
    @Test
    void play() {
        double lost = 15 + aileron(servo("ailerons", 0.06, 0, 0.002)) / DEG;
        assertThat(lost).isCloseTo(Math.toDegrees(0.001 / 0.05), within(0.005));
    }

    @Test
    void nothingIsKnownWithoutATorque() {
        List<Standing> all = standing(ServoStoriesTest.plain(List.of()), new MeasuredSections(), 1, 15);
        assertThat(all).isNotEmpty().allMatch(s -> s.inAir().isEmpty());
    }

    /**
     * Flaps and raised ailerons of an airbrake settle together. The same by other means: Brent's method (Commons Math) over
     * the flaps' servo, around one over the ailerons' servo, around one over the angle of attack at equal lift, with the
     * moments solved afresh at every angle.
     */
    @Test
    void airbrakeByNestedRoots() {
        Model model = withTorque(Examples.read("orchard"), 0.2);
        Pack pack = model.packs().get(0);
        SectionAerodynamics sections = new MeasuredSections();
        Airframe airframe = new Airframe(model, Examples.AIRFOILS, sections);
        Flight flight = new Flight(airframe, model.setUps().get(3));
        Stall stall = flight.stall(pack).orElseThrow();
        double speed = 1.9 * stall.speed();
        Attitude descent = flight.descent(pack, stall, speed).steady().orElseThrow();
        List<Standing> all = flight.standing(pack, stall, speed, Optional.of(descent), 1);
        double flaps = angle(all, "flaps");
        double ailerons = angle(all, "ailerons");
        assertThat(55 - flaps).isGreaterThan(4);
        Nested nested = new Nested(airframe, descent);
        double[] aileron = {0};
        double flap = nested.root("flaps", 55 * DEG, 55 * DEG / 3, f -> {
            aileron[0] = nested.root("ailerons", -14 * DEG, -14 * DEG / 3, a -> nested.moments(f, a)[1]);
            return nested.moments(f, aileron[0])[0];
        });
        assertThat(flaps).isCloseTo(flap / DEG, within(0.03));
        assertThat(ailerons).isCloseTo(aileron[0] / DEG, within(0.03));
    }

    private static double angle(List<Standing> all, String surface) {
        return all.stream()
                        .filter(s -> s.surface().equals(surface) && s.stick().isEmpty() && s.side() > 0)
                        .findFirst()
                        .orElseThrow()
                        .inAir()
                        .orElseThrow()
                        .angle()
                / DEG;
    }

    /** The example with servos so strong, no play. */
    private static Model withTorque(Model m, double torque) {
        List<Servo> servos = m.servos().stream()
                .map(s -> new Servo(
                        s.surface(),
                        OptionalDouble.of(torque),
                        s.arm(),
                        s.horn(),
                        s.rod(),
                        s.swing(),
                        s.lean(),
                        s.offset(),
                        5 * DEG,
                        0))
                .toList();
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
                m.sticks(),
                servos);
    }

    /** The balance of one surface, written out once more. */
    private static final class Nested {
        private final Airframe airframe;
        private final Attitude descent;
        private final double lift;
        private final double pressure;
        private final Map<String, ControlRun> runs;
        private final LiftingLineSolver solver;

        Nested(Airframe airframe, Attitude descent) {
            this.airframe = airframe;
            this.descent = descent;
            lift = StripForces.of(descent.wing()).liftCoefficient();
            pressure = airframe.air().density() * descent.speed() * descent.speed() / 2;
            runs = ControlRun.of(airframe.model());
            solver = new LiftingLineSolver(
                    new InfluenceMatrix(
                            airframe.strips().grid(),
                            Ground.none(),
                            ChordCorrection.of(airframe.strips().grid())),
                    SolverSettings.standard());
        }

        double root(String surface, double told, double other, UnivariateFunction moment) {
            ControlRun run = Objects.requireNonNull(runs.get(surface));
            double sent = run.linkage().servoAt(told).orElseThrow();
            UnivariateFunction push = d -> {
                double s = run.linkage().servoAt(d).orElseThrow();
                double torque = 0.2 * Math.max(-1, Math.min(1, (sent - s) / (5 * DEG)));
                return torque + moment.value(d) * run.linkage().ratioAt(s).orElseThrow();
            };
            return new BrentSolver(1e-7).solve(100, push, Math.min(told, other), Math.max(told, other));
        }

        double[] moments(double flap, double aileron) {
            var curves = airframe.strips()
                    .curves(
                            (s, side) -> s.name().equals("flaps") ? flap : aileron,
                            airframe.reynoldsPerMetre(descent.speed()));
            double start = descent.wing().problem().incidence();
            double incidence = new BrentSolver(1e-7)
                    .solve(
                            100,
                            i -> StripForces.of(solve(curves, i)).liftCoefficient() - lift,
                            start - 5 * DEG,
                            start + 8 * DEG);
            HingeMoments hinges = HingeMoments.of(solve(curves, incidence), airframe.strips());
            return new double[] {pressure * hinges.of("flaps", 1), pressure * hinges.of("ailerons", 1)};
        }

        private LiftingLineSolution solve(List<throwline.section.SectionCurve> curves, double incidence) {
            return solver.solve(
                    LiftingLineProblem.of(curves, incidence, Motion.straight()), Optional.of(descent.wing()));
        }
    }

    /** More speed never brings a surface nearer to where it is programmed, a harder push neither. */
    @ParameterizedTest
    @CsvSource({"orchard, 2", "orchard, 3", "ridgeline, 2", "ridgeline, 3", "saltmarsh, 3"})
    void fasterIsFurther(String example, int setUp) {
        Model model = Examples.read(example);
        Pack pack = model.packs().get(0);
        Flight flight = new Flight(
                new Airframe(model, Examples.AIRFOILS, new MeasuredSections()),
                model.setUps().get(setUp));
        Stall stall = flight.stall(pack).orElseThrow();
        Map<String, Double> before = new HashMap<>();
        for (double ratio : new double[] {1.3, 1.7, 2.1, 2.5}) {
            double speed = ratio * stall.speed();
            Optional<Attitude> descent = flight.descent(pack, stall, speed).steady();
            List<Standing> all = flight.standing(pack, stall, speed, descent, 1);
            List<Standing> harder = flight.standing(pack, stall, speed, descent, 1.5);
            for (int i = 0; i < all.size(); i++) {
                Standing s = all.get(i);
                if (s.inAir().isPresent() && s.stick().isEmpty() && Math.abs(s.told()) > 10 * DEG) {
                    double lost = Math.abs(s.told() - s.inAir().get().angle());
                    assertThat(lost).isGreaterThan(before.getOrDefault(s.surface() + s.side(), 0.0) - 0.02 * DEG);
                    assertThat(Math.abs(s.told()
                                    - harder.get(i).inAir().orElseThrow().angle()))
                            .isGreaterThan(lost);
                    before.put(s.surface() + s.side(), lost);
                }
            }
        }
        assertThat(before).isNotEmpty();
    }

    /** What compare warns of is what the whole of it says: a tenth and a degree lost, whatever the servo. */
    @ParameterizedTest
    @CsvSource({"orchard, 1", "orchard, 3", "ridgeline, 3"})
    void theWarningAgreesWithTheWhole(String example, int setUp) {
        int warned = 0;
        double[] torques = {0.03, 0.06, 0.1, 0.16, 0.3};
        for (double torque : torques) {
            Model model = withTorque(Examples.read(example), torque);
            SetUpResult result = Examples.compare(model, new MeasuredSections())
                    .packs()
                    .get(0)
                    .setUps()
                    .get(setUp);
            Set<String> wanted =
                    standing(model, new MeasuredSections(), setUp, Examples.value(result.approachSpeed())).stream()
                            .filter(StandingStoriesTest::isShort)
                            .map(Standing::surface)
                            .collect(Collectors.toSet());
            assertThat(result.servos().yields().stream().map(Yield::surface).collect(Collectors.toSet()))
                    .as(example + " " + torque)
                    .isEqualTo(wanted);
            warned += wanted.isEmpty() ? 0 : 1;
            assertThat(result.notes().stream().anyMatch(n -> n.code().startsWith("note.servo.yields")))
                    .isEqualTo(!wanted.isEmpty());
        }
        assertThat(warned).isBetween(1, torques.length - 1);
    }

    private static boolean isShort(Standing s) {
        double lost = s.inAir()
                .map(rest -> (s.bench() - rest.angle()) * Math.signum(s.bench()))
                .orElse(0.0);
        return lost > DEG && lost > 0.1 * Math.abs(s.bench());
    }

    /** Methods manual 17.5 (PRACTICE): half of a servo's torque is all it should be asked for; all of it holds nothing. */
    @ParameterizedTest
    @CsvSource({"0.45, ''", "0.2, note.servo.hard", "0.08, note.servo.overpowered"})
    void aServoThatIsTooWeakIsNamed(double torque, String code) {
        Model model = withTorque(Examples.read("orchard"), torque);
        List<String> codes =
                Examples.compare(model, new MeasuredSections()).packs().get(0).setUps().get(3).notes().stream()
                        .map(note -> note.code())
                        .filter(c -> c.equals("note.servo.hard") || c.equals("note.servo.overpowered"))
                        .toList();
        assertThat(codes).isEqualTo(code.isEmpty() ? List.of() : List.of(code));
    }

    /** Story: an airbrake whose servo is a size too small is blown back at speed, and the answer says by how it is held. */
    @Test
    void aServoASizeTooSmall() {
        Model model = withTorque(Examples.read("orchard"), 0.08);
        FlyResult fly = new FlyStudy(new MeasuredSections(), Bands.load())
                .fly(
                        model,
                        Examples.AIRFOILS,
                        model.packs().get(0),
                        model.setUps().get(3),
                        FlyQuestion.open());
        BlowBackResult.Row flaps = fly.standing().telling().stream()
                .filter(row -> row.surface().equals("flaps"))
                .findFirst()
                .orElseThrow();
        List<Hold> holds = new ArrayList<>();
        flaps.overSpeed().forEach(point -> holds.add(point.hold()));
        assertThat(holds.get(holds.size() - 1)).isEqualTo(Hold.OVERPOWERED);
        assertThat(angle(flaps, fly.standing().comeIn()))
                .isGreaterThan(angle(flaps, fly.standing().fast()));
    }

    private static double angle(BlowBackResult.Row row, double speed) {
        return row.at(speed).orElseThrow().angle();
    }
}
