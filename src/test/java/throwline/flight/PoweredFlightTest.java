package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.Propeller;
import throwline.model.SetUp;
import throwline.power.FiniteJet;
import throwline.power.Slipstream;
import throwline.section.MeasuredSections;

/** What the running motor does to the flight of an invented model, against bounds of theory and of full-size tests. */
class PoweredFlightTest {

    private static final PoweredModel POWERED = new PoweredModel();

    private static final double[] THROTTLES = {0.4, 0.5, 0.7, 1};

    private static Stall closed(SetUp setUp) {
        return new Flight(POWERED.airframe, setUp).stall(POWERED.pack).orElseThrow();
    }

    private static PoweredFlight powered(SetUp setUp, Stall closed) {
        return new PoweredFlight(POWERED.airframe, setUp, POWERED.pack, POWERED.drive, closed);
    }

    /**
     * Diehl 1939 (abstract, READ): the most that power adds to the lift is the thrust. Power never makes a model stall
     * faster, more throttle makes it slower.
     */
    @Test
    void powerLiftsNoMoreThanItPulls() {
        for (SetUp setUp : POWERED.setUps()) {
            Stall closed = closed(setUp);
            double before = closed.speed();
            for (double throttle : THROTTLES) {
                PoweredStall open = powered(setUp, closed).slowest(throttle).orElseThrow();
                assertThat(open.speed()).as(setUp.name()).isLessThan(before);
                double extra = POWERED.weight() * (1 - Math.pow(open.speed() / closed.speed(), 2));
                double thrust = POWERED.drive
                        .at(open.speed(), throttle, POWERED.airframe.air().density())
                        .thrust();
                assertThat(extra).as(setUp.name() + " " + throttle).isLessThan(1.05 * thrust);
                before = open.speed();
            }
        }
    }

    /**
     * Strips in the jet at their most lift, the jet's axis in the wing, no trim: W = q CLmax (S + S_in (beta s^2 - 1)) + T
     * sin a. The lifting line has the wing above the axis, the jet inclined and the tail in it, and gives 0.5 to 1.3 of
     * that reduction.
     */
    @Test
    void againstStripsInTheJet() {
        for (SetUp setUp : POWERED.setUps()) {
            Stall closed = closed(setUp);
            for (double throttle : new double[] {0.5, 0.7, 1}) {
                double rule = byStrips(closed, throttle);
                double here =
                        powered(setUp, closed).slowest(throttle).orElseThrow().speed();
                assertThat((closed.speed() - here) / (closed.speed() - rule))
                        .as(setUp.name() + " " + throttle)
                        .isBetween(0.5, 1.3);
            }
        }
    }

    private static double byStrips(Stall closed, double throttle) {
        double density = POWERED.airframe.air().density();
        double radius = POWERED.model.propeller().orElseThrow().diameter() / 2;
        double chord = POWERED.model.wing().chordAt(0.1);
        double area = POWERED.model.wing().area();
        double most = closed.attitude().lift();
        double speed = closed.speed();
        for (int k = 0; k < 60; k++) {
            Slipstream jet = Slipstream.of(POWERED.drive.at(speed, throttle, density), radius, density);
            double behind = POWERED.model.body().nose() + POWERED.model.wing().chordAt(0) / 4;
            double s = jet.speedAt(behind) / speed;
            double inside = (2 * jet.radiusAt(behind) - POWERED.model.body().width()) * chord;
            double beta = FiniteJet.lift(FiniteJet.strength(s), jet.radiusAt(behind) / chord);
            double wing = most * (area + inside * (beta * s * s - 1));
            double lift =
                    POWERED.weight() - jet.thrust() * Math.sin(closed.attitude().alpha());
            speed = 0.5 * speed + 0.5 * Math.sqrt(2 * lift / (density * wing));
        }
        return speed;
    }

    /** More thrust: less lift is lost past the stall (NACA Report 1263, abstract, READ). */
    @Test
    void weakerStall() {
        SetUp setUp = POWERED.model.reference();
        Stall closed = closed(setUp);
        Trimmer off = new Trimmer(POWERED.airframe, Deflections.of(POWERED.model.wing(), setUp));
        Trimmer on = off.with(new Throttle(POWERED.drive, 1));
        double stall = closed.attitude().alpha();
        double past = stall + Math.toRadians(4);
        double without = off.at(POWERED.pack, closed.speed(), past).lift()
                / off.at(POWERED.pack, closed.speed(), stall).lift();
        double with = on.fresh().at(POWERED.pack, closed.speed(), past).lift()
                / on.at(POWERED.pack, closed.speed(), stall).lift();
        assertThat(with).isGreaterThan(without + 0.02);
    }

    /**
     * Power turns the air down by at most about a degree and a half more, growing with the propeller's loading (a NACA
     * translation on propeller downwash, page 3, READ): 0.5 to 2.5 degrees at a loading of 3. Here it does not grow quite in
     * proportion, because the jet moves against the tail.
     */
    @Test
    void downwashOfPower() {
        Trimmer off = new Trimmer(POWERED.airframe, Deflections.of(POWERED.model.wing(), POWERED.model.reference()));
        double speed = 9;
        double alpha = Math.toRadians(10);
        double still = off.at(POWERED.pack, speed, alpha).downwash();
        double full = downwash(off, 1, speed, alpha) - still;
        double half = downwash(off, 0.6, speed, alpha) - still;
        double loading = loading(1, speed);
        assertThat(Math.toDegrees(full) * 3 / loading).isBetween(0.5, 2.5);
        assertThat(half / full / (loading(0.6, speed) / loading)).isBetween(0.5, 2.0);
    }

    private static double downwash(Trimmer off, double throttle, double speed, double alpha) {
        return off.with(new Throttle(POWERED.drive, throttle))
                .fresh()
                .at(POWERED.pack, speed, alpha)
                .downwash();
    }

    private static double loading(double throttle, double speed) {
        double density = POWERED.airframe.air().density();
        double radius = POWERED.model.propeller().orElseThrow().diameter() / 2;
        return Slipstream.of(POWERED.drive.at(speed, throttle, density), radius, density)
                .loading();
    }

    /** Pressure at the tail: 0.6 of the jet's over the share of the span inside it (methods manual 20.11, by hand). */
    @Test
    void pressureAtTheTail() {
        SetUp setUp = POWERED.model.reference();
        Trimmer off = new Trimmer(POWERED.airframe, Deflections.of(POWERED.model.wing(), setUp));
        double speed = 11.5;
        double alpha = Math.toRadians(2);
        double gained = off.with(new Throttle(POWERED.drive, 1))
                        .fresh()
                        .at(POWERED.pack, speed, alpha)
                        .tailPressure()
                - off.fresh().at(POWERED.pack, speed, alpha).tailPressure();
        double density = POWERED.airframe.air().density();
        double radius = POWERED.model.propeller().orElseThrow().diameter() / 2;
        Slipstream jet = Slipstream.of(POWERED.drive.at(speed, 1, density), radius, density);
        double share = 2
                * radius
                * Math.sqrt((speed + jet.induced()) / (speed + 2 * jet.induced()))
                / POWERED.model.tail().span();
        assertThat(gained).isCloseTo(0.6 * jet.loading() * share, within(0.05 * gained));
    }

    /** More thrust puts the most lift at a larger angle of attack (NACA Report 1263, abstract, READ). */
    @Test
    void laterStall() {
        for (SetUp setUp : POWERED.setUps()) {
            Stall closed = closed(setUp);
            double open =
                    powered(setUp, closed).slowest(1).orElseThrow().attitude().alpha();
            assertThat(open).as(setUp.name()).isGreaterThan(closed.attitude().alpha() - Math.toRadians(0.5));
        }
    }

    /**
     * The raised speed behind a propeller is about one diameter high (an R&M on tails in slipstreams, abstract, READ): a tail
     * 0.8 diameters above the axis feels at most a tenth more pressure than with the throttle closed.
     */
    @Test
    void aTailAboveTheJet(@TempDir Path folder) throws IOException {
        Propeller propeller = POWERED.model.propeller().orElseThrow();
        double height = propeller.height()
                + 0.8 * propeller.diameter()
                - POWERED.model.wing().height();
        String high = Files.readString(Path.of("examples", "orchard.yaml"))
                .replace(
                        "position: on the body",
                        "position: on top of the fin\n  height: " + Math.rint(1000 * height) + " mm");
        Path file = Files.writeString(folder.resolve("high.yaml"), high);
        Model model = ((ReadModel.Project) ModelFile.read(file, new PackedAirfoils())).model();
        assertThat(model.tail().height()).isCloseTo(height, within(1e-3));
        Airframe airframe = new Airframe(model, new PackedAirfoils(), new MeasuredSections());
        Trimmer off = new Trimmer(airframe, Deflections.of(model.wing(), model.reference()));
        for (double speed : new double[] {9.5, 12, 16}) {
            double closed =
                    off.fresh().at(POWERED.pack, speed, Math.toRadians(4)).tailPressure();
            double open = off.with(new Throttle(POWERED.drive, 1))
                    .fresh()
                    .at(POWERED.pack, speed, Math.toRadians(4))
                    .tailPressure();
            assertThat(open / closed).isBetween(1.0, 1.1);
        }
    }

    /** Without thrust in hand it comes down as with the throttle closed and the propeller folded, but for blades. */
    @Test
    void withoutThrustNothingIsBlown() {
        SetUp setUp = POWERED.model.reference();
        Stall closed = closed(setUp);
        PoweredFlight powered = powered(setUp, closed);
        double speed = closed.approachSpeed();
        double density = POWERED.airframe.air().density();
        double low = 0.2;
        double high = 0.6;
        for (int k = 0; k < 40; k++) {
            double middle = (low + high) / 2;
            if (POWERED.drive.at(speed, middle, density).thrust() < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        PoweredPoint idle = powered.steady(high, speed).orElseThrow();
        Airframe folded = new Airframe(
                POWERED.model.with(
                        POWERED.model.propeller().orElseThrow().doing(throwline.model.Propeller.Shut.FOLDED)),
                new throwline.input.PackedAirfoils(),
                new throwline.section.MeasuredSections());
        Attitude glide = new Flight(folded, setUp)
                .descent(POWERED.pack, closed, speed)
                .steady()
                .orElseThrow();
        assertThat(-idle.climbAngle()).isCloseTo(glide.descentAngle(), within(Math.toRadians(0.1)));
        assertThat(idle.attitude().elevator()).isCloseTo(glide.elevator(), within(Math.toRadians(0.3)));
    }

    /** Level flight: thrust is what the descent says the drag is, and what flaps and body in the jet add: up to a third. */
    @Test
    void levelFlight() {
        for (SetUp setUp : POWERED.setUps()) {
            Stall closed = closed(setUp);
            double speed = closed.approachSpeed();
            PoweredPoint level = powered(setUp, closed).level(speed).orElseThrow();
            assertThat(level.climbAngle()).isCloseTo(0, within(3e-4));
            double drag = POWERED.weight()
                    * Math.sin(new Flight(POWERED.airframe, setUp)
                            .descent(POWERED.pack, closed, speed)
                            .steady()
                            .orElseThrow()
                            .descentAngle());
            assertThat(level.drive().thrust() / drag).as(setUp.name()).isBetween(0.85, 1.3);
        }
    }

    /** The fastest level flight is level, and a little more speed sinks. */
    @Test
    void fastest() {
        SetUp setUp = POWERED.model.reference();
        Stall closed = closed(setUp);
        PoweredFlight powered = powered(setUp, closed);
        PoweredPoint fastest = powered.fastest(1).orElseThrow();
        assertThat(fastest.climbAngle()).isCloseTo(0, within(1e-3));
        assertThat(powered.steady(1, 1.05 * fastest.speed()).orElseThrow().climbAngle())
                .isNegative();
    }

    /** The best climb is no worse than any near it, and no slower than 1.2 times the stall (14 CFR 23, MEMORY). */
    @Test
    void bestClimb() {
        SetUp setUp = POWERED.model.reference();
        Stall closed = closed(setUp);
        PoweredFlight powered = powered(setUp, closed);
        PoweredPoint best = powered.bestClimb(1).orElseThrow();
        assertThat(best.climbRate()).isPositive().isCloseTo(best.speed() * Math.sin(best.climbAngle()), within(1e-12));
        assertThat(best.speed()).isGreaterThan(1.199 * closed.speed());
        assertThat(powered.steepestClimb(1).orElseThrow().speed()).isGreaterThan(1.199 * closed.speed());
        for (double over : new double[] {1.22, 1.35, 1.55, 1.9}) {
            assertThat(powered.steady(1, over * closed.speed()).orElseThrow().climbRate())
                    .isLessThan(best.climbRate() + 0.02);
        }
    }
}
