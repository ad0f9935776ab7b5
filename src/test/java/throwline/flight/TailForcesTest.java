package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.flight.TailSurface.TailForces;
import throwline.input.PackedAirfoils;
import throwline.liftingline.Ground;
import throwline.liftingline.Inflow;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.SolverSettings;
import throwline.model.AirfoilName;
import throwline.model.Elevator;
import throwline.model.Hinge;
import throwline.model.Tail;
import throwline.model.TailPosition;
import throwline.section.MeasuredSections;

/** Forces of a tail in air that comes from elsewhere and at another speed, by what turning the axes and scaling must do. */
class TailForcesTest {

    private static final AirfoilName AIRFOIL = new AirfoilName("naca0009");

    private static TailSurface surface(double elevatorChord) {
        Tail tail = new Tail(
                0.6,
                0.16,
                0.8,
                0,
                0,
                TailPosition.ON_THE_BODY,
                AIRFOIL,
                new Elevator(elevatorChord, 0.4, 0.4, Hinge.TAPED, 0.25));
        return new TailSurface(
                tail,
                new PackedAirfoils().find(AIRFOIL).orElseThrow(),
                new MeasuredSections(),
                Ground.none(),
                influence -> new LiftingLineSolver(influence, SolverSettings.standard()));
    }

    private static Inflow inflow(TailSurface surface, double downwash, double speed) {
        double[] down = new double[surface.grid().size()];
        double[] fast = new double[surface.grid().size()];
        Arrays.fill(down, downwash);
        Arrays.fill(fast, speed);
        return Inflow.of(down, fast);
    }

    /**
     * Even downwash is the same tail at a smaller angle, its force turned back by the downwash (closed form): lift
     * {@code L cos e - D sin e}, drag {@code D cos e + L sin e}.
     */
    @ParameterizedTest
    @CsvSource({"0.05, 0.08, -0.1", "-0.03, 0.12, 0.2"})
    void downwashTurnsTheForce(double angle, double downwash, double elevator) {
        TailSurface surface = surface(0.4);
        TailForces there = surface.at(angle, elevator, inflow(surface, downwash, 1), 1e6);
        TailForces same = surface.at(angle - downwash, elevator, inflow(surface, 0, 1), 1e6);
        double cos = Math.cos(downwash);
        double sin = Math.sin(downwash);
        assertThat(there.lift()).isCloseTo(same.lift() * cos - same.drag() * sin, within(1e-8));
        assertThat(there.drag()).isCloseTo(same.drag() * cos + same.lift() * sin, within(1e-8));
        assertThat(there.moment()).isCloseTo(same.moment(), within(1e-8));
        assertThat(there.hinge()).isCloseTo(same.hinge(), within(1e-8));
        assertThat(there.stallMargin()).isCloseTo(same.stallMargin(), within(1e-6));
    }

    /** Air slower by a share has forces smaller by its square, at the Reynolds number that goes with it. */
    @ParameterizedTest
    @ValueSource(doubles = {0.8, 0.9})
    void slowerAir(double share) {
        TailSurface surface = surface(0.4);
        TailForces slow = surface.at(0.05, -0.1, inflow(surface, 0, share), 1e6);
        TailForces same = surface.at(0.05, -0.1, inflow(surface, 0, 1), share * 1e6);
        assertThat(slow.lift()).isCloseTo(share * share * same.lift(), within(1e-8));
        assertThat(slow.drag()).isCloseTo(share * share * same.drag(), within(1e-8));
        assertThat(slow.hinge()).isCloseTo(share * share * same.hinge(), within(1e-8));
    }

    /** An elevator behind its hinge has a hinge moment; one hinged so far ahead that it is taken as the whole tail, none. */
    @Test
    void deepElevators() {
        assertThat(surface(0.4).at(0.05, -0.1, inflow(surface(0.4), 0, 1), 1e6).hinge())
                .isNotZero();
        TailSurface deep = surface(0.6);
        TailForces moved = deep.at(0.05, -0.1, inflow(deep, 0, 1), 1e6);
        assertThat(moved.hinge()).isZero();
        assertThat(moved.lift())
                .isCloseTo(deep.at(-0.05, 0, inflow(deep, 0, 1), 1e6).lift(), within(1e-9));
    }

    /** Change over a step and back along it: a straight line. */
    @Test
    void alongAStraightLine() {
        TailForces from = new TailForces(1, 2, 3, 4, 5, true);
        TailForces to = new TailForces(1.5, 2.1, 2.2, 4.8, 4.4, true);
        TailForces slope = to.perRadian(from, 0.2);
        assertThat(slope.lift()).isCloseTo(2.5, within(1e-9));
        assertThat(slope.drag()).isCloseTo(0.5, within(1e-9));
        assertThat(slope.moment()).isCloseTo(-4, within(1e-9));
        assertThat(slope.hinge()).isCloseTo(4, within(1e-9));
        assertThat(slope.stallMargin()).isCloseTo(-3, within(1e-9));
        assertThat(slope.converged()).isTrue();
        TailForces on = from.along(slope, 0.2);
        assertThat(on.lift()).isCloseTo(to.lift(), within(1e-9));
        assertThat(on.drag()).isCloseTo(to.drag(), within(1e-9));
        assertThat(on.moment()).isCloseTo(to.moment(), within(1e-9));
        assertThat(on.hinge()).isCloseTo(to.hinge(), within(1e-9));
        assertThat(on.stallMargin()).isCloseTo(to.stallMargin(), within(1e-9));
        TailForces lost = new TailForces(0, 0, 0, 0, 0, false);
        assertThat(to.perRadian(lost, 0.2).converged()).isFalse();
        assertThat(lost.perRadian(to, 0.2).converged()).isFalse();
        assertThat(lost.along(slope, 0.2).converged()).isFalse();
    }
}
