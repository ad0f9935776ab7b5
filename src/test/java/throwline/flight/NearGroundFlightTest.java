package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.air.Gravity;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Pack;
import throwline.section.MeasuredSections;

/** Legs of a landing against values worked by hand (COMPUTED, methods manual 9.5 to 10.4) and mechanics in closed form. */
class NearGroundFlightTest {

    private static final double DEG = Math.PI / 180;

    private static final Airframe ORCHARD = orchard();

    private static Airframe orchard() {
        PackedAirfoils airfoils = new PackedAirfoils();
        ReadModel.Project project = (ReadModel.Project) ModelFile.read(Path.of("examples", "orchard.yaml"), airfoils);
        return new Airframe(project.model(), airfoils, new MeasuredSections());
    }

    /** Reference model R: 3 kg, 0.45 m2, sea level. */
    private static NearGroundFlight modelR(NearGroundPolar polar, double wind) {
        return new NearGroundFlight(3, 0.45, 1.225, 0.3, polar, new WindProfile(wind));
    }

    /** Drag in proportion to lift, no limit. */
    private static NearGroundPolar ratio(double liftOverDrag) {
        return polar(liftOverDrag, Double.POSITIVE_INFINITY);
    }

    private static NearGroundPolar polar(double liftOverDrag, double limit) {
        return new NearGroundPolar() {
            @Override
            public double drag(double lift, double height) {
                return lift / liftOverDrag;
            }

            @Override
            public double limit(double height) {
                return limit;
            }
        };
    }

    /** Methods manual 10.2: V = 11 m/s, 20 degrees. */
    @ParameterizedTest
    @CsvSource({"1.2, 61.7, 3.72, 21.1", "1.5, 24.7, 1.49, 8.44"})
    void arcOfARoundOut(double load, double radius, double height, double distance) {
        FlareArc arc = new FlareArc(11, load);
        assertThat(arc.radius()).isCloseTo(radius, within(0.05));
        assertThat(arc.height(20 * DEG)).isCloseTo(height, within(0.005));
        assertThat(arc.distance(20 * DEG)).isCloseTo(distance, within(0.05));
    }

    /** Methods manual 10.2: at 20 degrees and 11 m/s the round-out begins at 1.5 to 3.7 m. */
    @Test
    void aSteepApproachIsRoundedOutFromHighUp() {
        NearGroundFlight flight = modelR(ratio(1 / Math.tan(20 * DEG)), 0);
        double lift = flight.weight() * Math.cos(20 * DEG) / flight.pressureArea(11);
        Approach approach = new Approach(flight, lift, 11, 20 * DEG, 0);
        assertThat(new RoundOut(flight, approach, 1.3, 0).fly().height()).isBetween(1.5, 3.7);
    }

    /** Without drag and wind, energy stays and the path is level at the wanted height. */
    @Test
    void aRoundOutWithoutDragKeepsItsEnergy() {
        NearGroundFlight flight = modelR(ratio(1e12), 0);
        double lift = flight.weight() / flight.pressureArea(11);
        Approach approach = new Approach(flight, lift, 11, 10 * DEG, 0);
        RoundOut.Flown flown = new RoundOut(flight, approach, 1.3, 0.2).fly();
        Landing.Spot first = flown.way().get(0);
        Landing.Spot last = flown.way().get(flown.way().size() - 1);
        assertThat(energy(last)).isCloseTo(energy(first), withPercentage(0.01));
        assertThat(flown.sink()).isZero();
        assertThat(last.height()).isCloseTo(0.2, within(0.006));
    }

    private static double energy(Landing.Spot spot) {
        return spot.speed() * spot.speed() / 2 + Gravity.STANDARD * spot.height();
    }

    /** A wing that gives no more than the weight cannot round out: the path stays steep. */
    @Test
    void withoutLiftToSpareItDropsIn() {
        NearGroundFlight ample = modelR(ratio(4), 0);
        double lift = ample.weight() * Math.cos(15 * DEG) / ample.pressureArea(11);
        NearGroundFlight poor = modelR(polar(4, lift * 1.02), 0);
        RoundOut.Flown flown = new RoundOut(poor, new Approach(poor, lift, 11, Math.atan(0.25), 0), 1.3, 0.1).fly();
        assertThat(flown.sink()).isGreaterThan(1.5);
    }

    /** Methods manual 10.3: from 11 to 9 m/s in level flight. */
    @ParameterizedTest
    @CsvSource({"12, 24.5", "5, 10.2", "3, 6.1"})
    void floating(double liftOverDrag, double distance) {
        List<Landing.Spot> way = new HoldOff(modelR(ratio(liftOverDrag), 0)).way(11, 9, 0);
        assertThat(way.get(way.size() - 1).along()).isCloseTo(distance, within(0.05));
        assertThat(way.get(way.size() - 1).speed()).isCloseTo(9, within(1e-9));
    }

    /** Energy again: height given up while floating adds height times glide ratio. */
    @Test
    void floatingDownAddsHeightTimesGlideRatio() {
        HoldOff hold = new HoldOff(modelR(ratio(8), 0));
        List<Landing.Spot> level = hold.way(11, 9, 0);
        List<Landing.Spot> sinking = hold.way(11, 9, 0.2);
        double added = sinking.get(sinking.size() - 1).along()
                - level.get(level.size() - 1).along();
        assertThat(added).isCloseTo(0.2 * 8, within(1e-6));
    }

    /** Methods manual 10.4: 9 m/s, drag 0.12, lift 0.3. */
    @ParameterizedTest
    @CsvSource({"0.04, 56.2", "0.08, 36.7", "0.15, 23.3", "0.30, 13.3"})
    void rollingOut(double friction, double distance) {
        assertThat(new GroundRoll(friction, 0.3, 0.12).distance(modelR(ratio(1), 0), 9))
                .isCloseTo(distance, within(0.05));
    }

    /** The closed form {@code s = ln(1 + B V^2 / A) / (2 B)} (methods manual 10.4) within 1 % over what models do. */
    @ParameterizedTest
    @ValueSource(doubles = {0.03, 0.08, 0.15, 0.4})
    void rollingOutInClosedForm(double friction) {
        for (double lift : new double[] {0, 0.5, 0.9}) {
            for (double drag : new double[] {0.03, 0.1, 0.25}) {
                double a = Gravity.STANDARD * friction;
                double b = 1.225 * 0.45 * (drag - friction * lift) / (2 * 3);
                double expected = Math.abs(b) < 1e-9 ? 81 / (2 * a) : Math.log1p(b * 81 / a) / (2 * b);
                assertThat(new GroundRoll(friction, lift, drag).distance(modelR(ratio(1), 0), 9))
                        .isCloseTo(expected, withPercentage(1));
            }
        }
    }

    /** A headwind as fast as the model leaves no roll; half of it leaves less than a quarter. */
    @Test
    void rollingOutAgainstTheWind() {
        GroundRoll roll = new GroundRoll(0.08, 0.3, 0.12);
        double still = roll.distance(modelR(ratio(1), 0), 9);
        double tenMetresWindFor = 4.5 / Math.pow(0.03, 1.0 / 7);
        assertThat(roll.distance(modelR(ratio(1), tenMetresWindFor), 9)).isLessThan(still / 4);
        assertThat(roll.distance(modelR(ratio(1), 2 * tenMetresWindFor), 9)).isLessThan(1e-6);
    }

    /** Methods manual 9.1: a parabolic polar's steady descent stays one. */
    @Test
    void aSteadyApproachStaysSteadyInStillAir() {
        NearGroundPolar parabola = new NearGroundPolar() {
            @Override
            public double drag(double lift, double height) {
                return 0.045 + 0.0566791 * lift * lift;
            }

            @Override
            public double limit(double height) {
                return 1.6;
            }
        };
        Approach approach = new Approach(modelR(parabola, 0), 0.89103, 10.917, 5.7677 * DEG, 0);
        double[] low = approach.at(1);
        assertThat(low[NearGroundPath.SPEED]).isCloseTo(10.917, within(0.002));
        assertThat(low[NearGroundPath.ANGLE] / DEG).isCloseTo(5.768, within(0.01));
        assertThat(low[NearGroundPath.ALONG]).isCloseTo(9 * 9.9004, withPercentage(0.1));
    }

    /** Sinking into slower headwind takes airspeed: no more than the wind that is lost. */
    @Test
    void aWindGradientTakesAirspeed() {
        NearGroundFlight flight = modelR(ratio(4), 6);
        double angle = Math.atan(0.25);
        double lift = flight.weight() * Math.cos(angle) / flight.pressureArea(11);
        double[] low = new Approach(flight, lift, 11, angle, 10).at(1);
        double lost = 11 - low[NearGroundPath.SPEED];
        assertThat(lost).isPositive().isLessThan(flight.windAt(10) - flight.windAt(1));
        assertThat(low[NearGroundPath.ANGLE]).isGreaterThan(angle);
    }

    /** Methods manual 9.6: V(h) = V(10) (h / 10)^(1/7). */
    @Test
    void windOverHeight() {
        WindProfile wind = new WindProfile(5);
        assertThat(wind.at(10)).isEqualTo(5);
        assertThat(wind.at(1)).isCloseTo(5 * Math.pow(0.1, 1.0 / 7), within(1e-12));
        assertThat(wind.gradient(2)).isCloseTo((wind.at(2.001) - wind.at(1.999)) / 0.002, withPercentage(0.01));
    }

    /**
     * The textbook's load of a sharp gust, {@code rho V a w / (2 W / S)}, on an untwisted wing's slope after Helmbold; the rest
     * is flap, taper and curvature of the lift curve, which nearer to the stall takes more off (methods manual 9.5).
     */
    @Test
    void loadOfAGust() {
        Pack pack = ORCHARD.model().packs().get(0);
        Flight flight = new Flight(ORCHARD, ORCHARD.model().reference());
        Stall stall = flight.stall(pack).orElseThrow();
        for (double faster : new double[] {2, 2.5, 3}) {
            double speed = faster * stall.speed();
            Attitude attitude = flight.descent(pack, stall, speed).steady().orElseThrow();
            double load = flight.gustMargin(pack, attitude).orElseThrow().usualLoad();
            double span = 1.84;
            double area = ORCHARD.model().wing().area();
            double ratio = span * span / area;
            double slope = 2 * Math.PI * ratio / (2 + Math.sqrt(ratio * ratio + 4));
            double textbook = ORCHARD.air().density()
                    * speed
                    * slope
                    * GustMargin.USUAL
                    / (2 * pack.mass() * Gravity.STANDARD / area);
            assertThat(load).as("at " + faster).isCloseTo(textbook, withPercentage(12));
        }
    }

    /** Methods manual 9.5: the largest gust is the speed times the tangent of the margin in angle; 2 m/s at 11 m/s is some 10.4 degrees. */
    @Test
    void gustForAMarginInAngle() {
        assertThat(GustMargin.at(11, 10.4 * DEG, 5 * DEG, 0).gust()).isCloseTo(2, within(0.03));
        assertThat(GustMargin.at(11, 10.4 * DEG, 5 * DEG, 0).firstGust())
                .isCloseTo(11 * Math.tan(5 * DEG), within(1e-12));
    }
}
