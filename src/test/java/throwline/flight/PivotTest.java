package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.flight.TailSurface.TailForces;
import throwline.input.PackedAirfoils;
import throwline.liftingline.Ground;
import throwline.liftingline.Inflow;
import throwline.liftingline.LawCurve;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.SolverSettings;
import throwline.model.AirfoilName;
import throwline.model.Elevator;
import throwline.model.Hinge;
import throwline.model.Tail;
import throwline.model.TailPosition;
import throwline.section.MeasuredSections;
import throwline.section.SectionAerodynamics;

/** The moment about the pivot of a tail that moves as a whole. */
class PivotTest {

    private static final double CHORD = 0.16;
    private static final AirfoilName AIRFOIL = new AirfoilName("naca0009");

    private static TailForces forces(double pivot, SectionAerodynamics sections, double elevator) {
        Tail tail = new Tail(
                0.6,
                CHORD,
                0.8,
                0,
                0,
                TailPosition.ON_THE_BODY,
                AIRFOIL,
                new Elevator(1, 0.35, 0.35, Hinge.TAPED, pivot));
        TailSurface surface = new TailSurface(
                tail,
                new PackedAirfoils().find(AIRFOIL).orElseThrow(),
                sections,
                Ground.none(),
                influence -> new LiftingLineSolver(influence, SolverSettings.standard()));
        return surface.at(0, elevator, Inflow.clean(surface.grid().size()), 1e6);
    }

    /**
     * Thin-airfoil theory (closed form): the lift of a symmetric section acts at its quarter chord, so the moment about a
     * pivot is the lift times the distance between them, nothing at a quarter, and it changes its sign there.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.15, 0.2, 0.25, 0.3, 0.4})
    void liftActsAtTheQuarterChord(double pivot) {
        SectionAerodynamics thin = (place, surface, reynolds) -> LawCurve.linear(0);
        TailForces forces = forces(pivot, thin, 0.03);
        assertThat(forces.lift()).isPositive();
        double lever = (pivot - 0.25) * CHORD;
        if (lever == 0) {
            assertThat(forces.hinge()).isZero();
        } else {
            // The force across the chord is the lift over the cosine of a small angle: 0.05 per cent.
            assertThat(forces.hinge()).isCloseTo(lever * forces.lift(), withPercentage(0.2));
        }
    }

    /** With a measured symmetric section: hardly anything at a quarter, and up against down alike. */
    @Test
    void measuredSymmetricSection() {
        SectionAerodynamics measured = new MeasuredSections();
        TailForces quarter = forces(0.25, measured, 0.08);
        TailForces ahead = forces(0.2, measured, 0.08);
        TailForces back = forces(0.2, measured, -0.08);
        assertThat(Math.abs(quarter.hinge())).isLessThan(0.03 * CHORD * quarter.lift());
        assertThat(ahead.hinge() - quarter.hinge()).isCloseTo(-0.05 * CHORD * ahead.lift(), withPercentage(1));
        assertThat(back.hinge()).isCloseTo(-ahead.hinge(), withPercentage(1));
    }

    /**
     * Statics: the moment about the pivot is that about the quarter chord and the force across the chord, {@code L cos a + D sin
     * a} from the axes of the air, times the distance between them; a lifting line turns forces by angles taken as small.
     */
    @ParameterizedTest
    @ValueSource(doubles = {-0.18, 0.1, 0.2})
    void forceAcrossTheChord(double angle) {
        double pivot = 0.4;
        TailForces forces = forces(pivot, new MeasuredSections(), angle);
        double across = forces.lift() * Math.cos(angle) + forces.drag() * Math.sin(angle);
        assertThat(forces.hinge()).isCloseTo(forces.moment() + (pivot - 0.25) * CHORD * across, withPercentage(0.4));
    }

    /** A pivot ahead of the quarter chord: the air turns the tail back; behind it, further the way it is turned. */
    @Test
    void whichWayTheAirTurnsIt() {
        SectionAerodynamics measured = new MeasuredSections();
        assertThat(forces(0.2, measured, 0.1).hinge()).isNegative();
        assertThat(forces(0.35, measured, 0.1).hinge()).isPositive();
        assertThat(forces(0.35, measured, -0.1).hinge()).isNegative();
    }
}
