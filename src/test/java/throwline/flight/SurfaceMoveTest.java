package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import throwline.air.Gravity;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.section.MeasuredSections;

/** The model free in heave and pitch against conservation of energy, its own steady trim, and what the trade reports. */
class SurfaceMoveTest {

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();
    private static final double SPEED = 13;

    private static Airframe airframe;
    private static Model model;
    private static Pack pack;
    private static SetUp landing;
    private static Attitude clean;
    private static Attitude flapped;
    private static PitchTable table;

    @BeforeAll
    static void solve() {
        ReadModel.Project project = (ReadModel.Project) ModelFile.read(Path.of("examples", "orchard.yaml"), AIRFOILS);
        model = project.model();
        airframe = new Airframe(model, AIRFOILS, new MeasuredSections());
        pack = model.packs().get(0);
        landing = model.setUps().get(2);
        clean = descent(model.reference());
        flapped = descent(landing);
        table = new PitchTable(
                share -> new Trimmer(airframe, Deflections.of(model.wing(), share < 0.5 ? model.reference() : landing)),
                pack,
                SPEED,
                clean.elevator(),
                clean.alpha() - 0.12,
                clean.alpha() + 0.15);
    }

    private static Attitude descent(SetUp setUp) {
        Flight flight = new Flight(airframe, setUp);
        Stall stall = flight.stall(pack).orElseThrow();
        return flight.descent(pack, stall, SPEED).steady().orElseThrow();
    }

    private static PitchFlight flight(PitchCoefficients coefficients) {
        return new PitchFlight(
                coefficients,
                airframe.balance(pack),
                model.wing().meanAerodynamicChord(),
                0.18 * model.body().length());
    }

    private static PitchFlight.Schedule held(double elevator) {
        return new PitchFlight.Schedule(0, 0, 0, elevator, 0, PitchFlight.Pilot.nobody());
    }

    /** With the drag taken away speed and height only trade places: within 0.5 % over half a minute of ups and downs. */
    @Test
    void withoutDragTheEnergyStays() {
        PitchCoefficients withoutDrag = new PitchCoefficients() {
            @Override
            public double lift(double share, double alpha, double elevator, double pitch) {
                return table.lift(share, alpha, elevator, pitch);
            }

            @Override
            public double drag(double share, double alpha) {
                return 0;
            }

            @Override
            public double moment(double share, double alpha, double elevator, double pitch, double turning) {
                return table.moment(share, alpha, elevator, pitch, turning);
            }
        };
        PitchFlight.State start = new PitchFlight.State(0, SPEED, 0.1, clean.alpha(), 100, 1);
        List<PitchFlight.State> states = flight(withoutDrag).fly(held(clean.elevator()), start, 30);
        double energy = energy(start);
        double spread = 0;
        for (PitchFlight.State state : states) {
            assertThat(energy(state)).isCloseTo(energy, withPercentage(0.5));
            spread = Math.max(spread, Math.abs(state.speed() - SPEED));
        }
        assertThat(spread).as("it does move").isGreaterThan(0.5);
    }

    private static double energy(PitchFlight.State state) {
        return state.speed() * state.speed() / 2 + Gravity.STANDARD * state.height();
    }

    /** Disturbed, it settles to the steady descent of the trim solution: speed, path and angle of attack. */
    @Test
    void itSettlesToTheSteadyTrim() {
        PitchFlight.State start = new PitchFlight.State(0, SPEED * 1.1, 0.02, clean.alpha() + 0.01, 0, 1);
        List<PitchFlight.State> states = flight(table).fly(held(clean.elevator()), start, 120);
        PitchFlight.State last = states.get(states.size() - 1);
        assertThat(last.speed()).isCloseTo(SPEED, withPercentage(1.5));
        assertThat(last.angle()).isCloseTo(clean.descentAngle(), within(Math.toRadians(0.25)));
        assertThat(last.alpha()).isCloseTo(clean.alpha(), within(Math.toRadians(0.25)));
        assertThat(last.load()).isCloseTo(Math.cos(last.angle()), within(0.002));
    }

    /** Started in the steady descent it stays there. */
    @Test
    void nothingMovesWhereNothingIsMoved() {
        PitchFlight.State start = new PitchFlight.State(0, SPEED, clean.descentAngle(), clean.alpha(), 0, 1);
        for (PitchFlight.State state : flight(table).fly(held(clean.elevator()), start, 3)) {
            assertThat(state.speed()).isCloseTo(SPEED, withPercentage(1));
            assertThat(state.load()).isCloseTo(Math.cos(clean.descentAngle()), within(0.02));
        }
    }

    /**
     * Methods manual 17.2 and 17.4 (PRACTICE): flaps that go down quickly make it balloon; slower surfaces and down elevator mixed in make it
     * less; the model rises, loads up and slows down.
     */
    @Test
    void quickFlapsBalloon() {
        SurfaceMover mover = new SurfaceMover(airframe, model.reference(), landing, pack, clean, flapped);
        SurfaceMove quick = mover.lower(SPEED, 0.2, 0).orElseThrow();
        SurfaceMove slow = mover.lower(SPEED, 3, 0).orElseThrow();
        SurfaceMove mixed =
                mover.lower(SPEED, 0.2, mover.wholeChange(SPEED).orElseThrow()).orElseThrow();
        assertThat(quick.balloon()).isPositive();
        assertThat(quick.mostLoad()).isGreaterThan(slow.mostLoad()).isGreaterThan(1.2);
        assertThat(quick.slowest()).isLessThan(SPEED);
        assertThat(mixed.balloon()).isLessThan(quick.balloon() / 2);
    }

    /** Methods manual 17.4 (PRACTICE): flaps that go up quickly drop it: the load falls below one, more the quicker. */
    @Test
    void quickRetractionDrops() {
        SurfaceMover mover = new SurfaceMover(airframe, model.reference(), landing, pack, clean, flapped);
        double whole = mover.wholeChange(SPEED).orElseThrow();
        SurfaceMove quick = mover.raise(SPEED, 0.2, whole).orElseThrow();
        SurfaceMove slow = mover.raise(SPEED, 3, whole).orElseThrow();
        assertThat(quick.leastLoad()).isLessThan(0.9);
        assertThat(slow.leastLoad()).isGreaterThan(quick.leastLoad());
    }

    private static SurfaceMover mover() {
        return new SurfaceMover(airframe, model.reference(), landing, pack, clean, flapped);
    }

    /** A run begins in the steady descent of the trim solution, on its path, its load the cosine of the path's angle. */
    @Test
    void aRunBeginsInTheSteadyDescent() {
        SurfaceMover mover = mover();
        List<SurfaceMove> runs = List.of(
                mover.lower(SPEED, 1, 0).orElseThrow(), mover.raise(SPEED, 1, 0).orElseThrow());
        List<Attitude> exactly = List.of(clean, flapped);
        for (int i = 0; i < 2; i++) {
            SurfaceMove.Moment first = runs.get(i).history().get(0);
            Attitude exact = exactly.get(i);
            assertThat(first.time()).isZero();
            assertThat(first.moved()).isZero();
            assertThat(first.offPath()).isZero();
            assertThat(first.speed()).isEqualTo(SPEED);
            assertThat(first.angle()).isCloseTo(exact.descentAngle(), within(Math.toRadians(0.2)));
            assertThat(first.alpha()).isCloseTo(exact.alpha(), within(Math.toRadians(0.2)));
            assertThat(first.load()).isCloseTo(Math.cos(first.angle()), within(1e-6));
        }
    }

    /**
     * Surfaces that take two minutes with all of the elevator's change never leave steady flight, in which the load is the
     * cosine of the path's angle (closed form): nothing balloons, and at last it flies the steady descent of the other set-up.
     */
    @Test
    void endlesslySlowSurfacesStayInSteadyFlight() {
        SurfaceMover mover = mover();
        SurfaceMove run =
                mover.lower(SPEED, 120, mover.wholeChange(SPEED).orElseThrow()).orElseThrow();
        assertThat(run.followed()).isTrue();
        for (SurfaceMove.Moment moment : run.history()) {
            assertThat(moment.load()).isCloseTo(Math.cos(moment.angle()), within(0.01));
        }
        SurfaceMove.Moment last = run.history().get(run.history().size() - 1);
        assertThat(last.moved()).isEqualTo(1);
        assertThat(last.speed()).isCloseTo(SPEED, withPercentage(1));
        assertThat(last.angle()).isCloseTo(flapped.descentAngle(), within(Math.toRadians(0.5)));
        assertThat(last.alpha()).isCloseTo(flapped.alpha(), within(Math.toRadians(0.3)));
    }

    /**
     * Surfaces that take no time find the model at its angle of attack and speed: methods manual 13.2, the load jumps by the
     * change of lift coefficient times q S / W. The lift is that of the whole model held there, not of the table.
     */
    @Test
    void instantSurfacesJumpByTheirLift() {
        Trimmer trimmer = new Trimmer(airframe, Deflections.of(model.wing(), landing));
        double lift =
                trimmer.heldAt(pack, SPEED, clean.alpha(), clean.elevator()).lift() - clean.lift();
        double pressure = airframe.air().density() * SPEED * SPEED / 2;
        double jump = lift * pressure * model.wing().area() / (pack.mass() * 9.80665);
        SurfaceMove run = mover().lower(SPEED, 0, 0).orElseThrow();
        assertThat(jump).isGreaterThan(0.3);
        assertThat(run.history().get(0).load() - Math.cos(clean.descentAngle())).isCloseTo(jump, within(0.02));
    }

    /** The shortest time keeps the load, a tenth of a second less does not, and longer is never worse. */
    @Test
    void theShortestTime() {
        SurfaceMover mover = mover();
        double limit = 1.25;
        double time = mover.shortestTime(SPEED, 0, limit).orElseThrow();
        assertThat(time).isBetween(SurfaceMover.QUICKEST + 0.1, SurfaceMover.SLOWEST);
        assertThat(mover.lower(SPEED, time, 0).orElseThrow().mostLoad()).isLessThanOrEqualTo(limit);
        assertThat(mover.lower(SPEED, time - 0.1, 0).orElseThrow().mostLoad()).isGreaterThan(limit);
        double before = Double.POSITIVE_INFINITY;
        for (double slower = SurfaceMover.QUICKEST; slower <= SurfaceMover.SLOWEST; slower += 0.25) {
            double load = mover.lower(SPEED, slower, 0).orElseThrow().mostLoad();
            assertThat(load).isLessThanOrEqualTo(before);
            before = load;
        }
        assertThat(mover.shortestTime(SPEED, 0, 1.05)).as("none of those tried").isEmpty();
        double half = mover.wholeChange(SPEED).orElseThrow() / 2;
        assertThat(mover.shortestTime(SPEED, half, 3)).contains(SurfaceMover.QUICKEST);
    }

    /** Nobody, then the hand: nothing for a second, all of what is needed half a second later, whatever was mixed in. */
    @Test
    void thePilotAnswers() {
        PitchFlight.Pilot pilot = new PitchFlight.Pilot(-0.1, 1, 0.5);
        PitchFlight.Schedule schedule = new PitchFlight.Schedule(1, 0, 0.8, 0.07, -0.04, pilot);
        assertThat(schedule.elevator(0)).isEqualTo(0.07);
        assertThat(schedule.elevator(0.4)).isCloseTo(0.05, within(1e-12));
        assertThat(schedule.elevator(1)).isCloseTo(0.03, within(1e-12));
        assertThat(schedule.elevator(1.25)).isCloseTo(0, within(1e-12));
        assertThat(schedule.elevator(2)).isCloseTo(-0.03, within(1e-12));
    }

    /** On straight pieces of path the height lost is speed times the sine of the angle times the time (closed form). */
    @Test
    void heightLostIsThatOfThePath() {
        double[] steeper = {0.1, 0.1, 0.3, 0.3, 0.1, 0.05};
        SurfaceMove back = alongPath(steeper, true);
        assertThat(back.comesBack()).isEqualTo(SurfaceMove.Return.BACK);
        assertThat(back.heightLost().orElseThrow())
                .isCloseTo(10 * (2 * Math.sin(0.1) + 2 * Math.sin(0.3)), within(1e-9));
        SurfaceMove never = alongPath(new double[] {0.1, 0.101, 0.1, 0.05}, true);
        assertThat(never.comesBack()).isEqualTo(SurfaceMove.Return.NEVER_LEFT);
        assertThat(never.heightLost()).isEmpty();
        SurfaceMove still = alongPath(new double[] {0.1, 0.2, 0.3}, true);
        assertThat(still.comesBack()).isEqualTo(SurfaceMove.Return.NOT_YET);
        assertThat(still.heightLost()).isEmpty();
        assertThat(alongPath(steeper, false).comesBack()).isEqualTo(SurfaceMove.Return.LOST);
    }

    /** One second on each angle at 10 m/s. */
    private static SurfaceMove alongPath(double[] angles, boolean followed) {
        List<SurfaceMove.Moment> history = new ArrayList<>();
        double height = 0;
        for (int i = 0; i < angles.length; i++) {
            history.add(new SurfaceMove.Moment(i, 1, height, 0, angles[i], 0.05, 10, 1));
            height -= 10 * Math.sin(angles[i]);
        }
        return new SurfaceMove(1, history, followed);
    }

    /**
     * Methods manual 17.4 (PRACTICE): a model whose flaps close drops. The less elevator comes with them and the quicker they close, the more
     * height is lost; the hand brings it back within the time watched.
     */
    @Test
    void goingBackCostsHeight() {
        SurfaceMover mover = mover();
        double whole = mover.wholeChange(SPEED).orElseThrow();
        SurfaceMove without = mover.raise(SPEED, 0.5, 0).orElseThrow();
        SurfaceMove half = mover.raise(SPEED, 0.5, whole / 2).orElseThrow();
        SurfaceMove slowly = mover.raise(SPEED, 2, 0).orElseThrow();
        assertThat(without.heightLost().orElseThrow())
                .isGreaterThan(half.heightLost().orElseThrow())
                .isGreaterThan(slowly.heightLost().orElseThrow());
        assertThat(without.leastLoad()).isLessThan(half.leastLoad());
    }

    /** The table's own steady descents are those of the trim solution, elevator included. */
    @Test
    void theTableKnowsTheSteadyTrim() {
        for (int share = 0; share < 2; share++) {
            Attitude exact = share == 0 ? clean : flapped;
            PitchFlight.Steady steady = flight(table)
                    .steady(share, SPEED, clean.alpha() - 0.12, clean.alpha() + 0.15)
                    .orElseThrow();
            assertThat(steady.elevator()).isCloseTo(exact.elevator(), within(Math.toRadians(0.5)));
            assertThat(steady.state().alpha()).isCloseTo(exact.alpha(), within(Math.toRadians(0.2)));
            assertThat(steady.state().angle()).isCloseTo(exact.descentAngle(), within(Math.toRadians(0.2)));
        }
    }

    /** Lift in the table is that of the model at the middle between two of its angles, to the bend of the curve. */
    @Test
    void theTableIsFineEnough() {
        Trimmer trimmer = new Trimmer(airframe, Deflections.of(model.wing(), model.reference()));
        for (double alpha = clean.alpha() - 0.1; alpha < clean.alpha() + 0.12; alpha += 0.017) {
            Attitude exact = trimmer.heldAt(pack, SPEED, alpha, clean.elevator() + 0.02, 0.01);
            assertThat(table.lift(0, alpha, clean.elevator() + 0.02, 0.01)).isCloseTo(exact.lift(), within(0.015));
            assertThat(table.moment(0, alpha, clean.elevator() + 0.02, 0.01, 0))
                    .isCloseTo(exact.moments().total(), within(0.008));
        }
    }
}
