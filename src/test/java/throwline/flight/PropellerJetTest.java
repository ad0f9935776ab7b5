package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import throwline.flight.TailWake.TailAir;
import throwline.liftingline.Ground;
import throwline.liftingline.Inflow;
import throwline.liftingline.SpanGrid;
import throwline.model.Propeller;
import throwline.power.PropellerForces;

/**
 * The jet at wing, tail and parts against momentum theory written out: a disc of thrust T adds {@code (sqrt(V^2 + 2 T / (rho A)) -
 * V) / 2} at its place and twice that far behind, {@code 1 + x / sqrt(x^2 + R^2)} times it at x behind (textbooks).
 */
class PropellerJetTest {

    private static final double SPEED = 12;
    private static final PoweredModel ORCHARD = new PoweredModel();
    private static final PropellerJet JET = new PropellerJet(ORCHARD.airframe, new Throttle(ORCHARD.drive, 1), SPEED);
    private static final Propeller PROPELLER = ORCHARD.model.propeller().orElseThrow();
    private static final double RADIUS = PROPELLER.diameter() / 2;
    private static final double DENSITY = ORCHARD.airframe.air().density();
    private static final double THRUST = ORCHARD.drive.at(SPEED, 1, DENSITY).thrust();
    private static final double NOSE = ORCHARD.model.body().nose();
    private static final double TO_WING = NOSE + ORCHARD.model.wing().chordAt(0) / 4;
    private static final double TO_TAIL =
            NOSE + ORCHARD.model.tail().arm() + ORCHARD.model.tail().chord() / 4;

    private static double induced() {
        double area = Math.PI * RADIUS * RADIUS;
        return (Math.sqrt(SPEED * SPEED + 2 * THRUST / (DENSITY * area)) - SPEED) / 2;
    }

    /** Jet speed over airspeed. */
    private static double faster(double behind) {
        return 1 + induced() * (1 + behind / Math.sqrt(behind * behind + RADIUS * RADIUS)) / SPEED;
    }

    private static double part(DragItem.Part part, double height) {
        return JET.onPart(new DragItem("part", 0.01, height, part));
    }

    /** Drag in the jet goes with the square of its speed; what stands off its axis meets less of it, and nothing far away. */
    @Test
    void dragOfParts() {
        double square = Math.pow(faster(TO_WING), 2);
        assertThat(square).isGreaterThan(1.2);
        assertThat(part(DragItem.Part.BODY, 0)).isCloseTo(square, within(1e-9));
        assertThat(part(DragItem.Part.PROPELLER, 0)).isZero();
        assertThat(part(DragItem.Part.ELSEWHERE, 0)).isEqualTo(1);
        assertThat(part(DragItem.Part.WHEELS, PROPELLER.height())).isCloseTo(square, within(1e-9));
        assertThat(part(DragItem.Part.WHEELS, PROPELLER.height() - 2 * RADIUS)).isEqualTo(1);
        assertThat(part(DragItem.Part.WHEELS, PROPELLER.height() - 1.25 * RADIUS))
                .isCloseTo((1 + square) / 2, within(1e-9));
        // Six tenths of the pressure reach the tail (PRACTICE).
        assertThat(part(DragItem.Part.FIN, 0)).isCloseTo(1 + 0.6 * (Math.pow(faster(TO_TAIL), 2) - 1), within(1e-9));
        double wing = (part(DragItem.Part.WING, 0) - 1) / (square - 1);
        double contracted = RADIUS * Math.sqrt((SPEED + induced()) / (SPEED * faster(TO_WING)));
        double most = 2
                * contracted
                * ORCHARD.model.wing().chordAt(0)
                / ORCHARD.model.wing().area();
        assertThat(wing).isBetween(0.2 * most, most);
    }

    /** A strip right in the jet has the sum of the flight's air and what the disc adds along its axis; the tips have none of it. */
    @Test
    void airAtTheWing() {
        SpanGrid grid = ORCHARD.airframe.strips().grid();
        double alpha = 0.15;
        double angle = alpha - PROPELLER.downThrust();
        Inflow air = JET.onWing(grid, alpha, false);
        double added = faster(TO_WING) - 1;
        double fastest = 0;
        for (int i = 0; i < grid.size(); i++) {
            double speed = air.speed(i);
            double cover = coverOf(speed, angle);
            assertThat(cover).isBetween(-1e-9, added + 1e-9);
            assertThat(Math.tan(air.downwash(i)))
                    .isCloseTo(cover * Math.sin(angle) / (1 + cover * Math.cos(angle)), within(1e-9));
            if (Math.abs(grid.control(i)) > 1.3 * RADIUS) {
                assertThat(speed).isEqualTo(1);
            }
            assertThat(speed).isCloseTo(air.speed(grid.mirror(i)), within(1e-12));
            fastest = Math.max(fastest, cover);
        }
        assertThat(fastest).isCloseTo(added, within(1e-9));
    }

    /** What must be added along an axis at an angle to unit air to make a speed. */
    private static double coverOf(double speed, double angle) {
        double cos = Math.cos(angle);
        return -cos + Math.sqrt(cos * cos - 1 + speed * speed);
    }

    /** A propeller that turns to the right lifts the air on the left and pushes it down on the right, by half of the jet's swirl. */
    @Test
    void swirl() {
        SpanGrid grid = ORCHARD.airframe.strips().grid();
        Inflow plain = JET.onWing(grid, 0.1, false);
        Inflow swirled = JET.onWing(grid, 0.1, true);
        double most = 0;
        for (int i = 0; i < grid.size(); i++) {
            double down = swirled.downwash(i) - plain.downwash(i);
            assertThat(down * Math.signum(grid.control(i))).isGreaterThanOrEqualTo(0);
            assertThat(down)
                    .isCloseTo(-(swirled.downwash(grid.mirror(i)) - plain.downwash(grid.mirror(i))), within(1e-9));
            most = Math.max(most, down);
        }
        assertThat(most).isCloseTo(0.5 * JET.stream().swirlAt(TO_WING), within(1e-9));
        assertThat(most).isPositive();
    }

    /** Along the path where its axis lies in it: no lift, all of the thrust; at an angle the disc's force across adds to it. */
    @Test
    void ownForce() {
        double pressure = DENSITY * SPEED * SPEED / 2;
        double down = PROPELLER.downThrust();
        assertThat(JET.ownLift(down)).isCloseTo(0, within(1e-12));
        assertThat(JET.ownDrag(down)).isCloseTo(-THRUST / pressure, within(1e-9));
        double across = PropellerForces.normalPerRadian(ORCHARD.drive.blades(), JET.stream()) * Math.sin(0.2);
        assertThat(across).isPositive();
        double lift = JET.ownLift(down + 0.2) * pressure;
        double drag = JET.ownDrag(down + 0.2) * pressure;
        // Thrust along the axis and the force across it, back from the axes of the path.
        assertThat(lift * Math.sin(0.2) - drag * Math.cos(0.2)).isCloseTo(THRUST, within(1e-9));
        assertThat(lift * Math.cos(0.2) + drag * Math.sin(0.2)).isCloseTo(across, within(1e-9));
    }

    /** On the jet's axis the tail's pressure rises by six tenths of the jet's; strips beyond the jet keep their air. */
    @Test
    void airAtTheTail() {
        TailSurface tail = ORCHARD.airframe.tailSurface(Ground.none());
        SpanGrid grid = tail.grid();
        TailAir free = new TailAir(Inflow.clean(grid.size()), false);
        double there = faster(TO_TAIL);
        double height = ORCHARD.model.wing().height() + ORCHARD.model.tail().height();
        // The angle of attack at which the jet's axis runs through the tail.
        double down = PROPELLER.downThrust();
        double alpha = down + there * ((height - PROPELLER.height()) / TO_TAIL - down);
        Inflow air = JET.onTail(free, grid, alpha, 0).inflow();
        int middle = grid.size() / 2;
        assertThat(Math.pow(air.speed(middle), 2)).isCloseTo(1 + 0.6 * (there * there - 1), within(1e-9));
        double added = air.speed(middle) - 1;
        double angle = alpha - down;
        assertThat(air.downwash(middle))
                .isCloseTo(Math.atan2(added * Math.sin(angle), 1 + added * Math.cos(angle)), within(1e-9));
        double radius = JET.stream().radiusAt(TO_TAIL);
        for (int i = 0; i < grid.size(); i++) {
            if (Math.abs(grid.control(i)) - grid.width(i) / 2 > radius) {
                assertThat(air.speed(i)).isCloseTo(1, within(1e-12));
                assertThat(air.downwash(i)).isCloseTo(0, within(1e-12));
            }
        }
        Inflow past = JET.onTail(free, grid, alpha + 1.6 * radius * there / TO_TAIL, 0)
                .inflow();
        assertThat(past.speed(middle)).isCloseTo(1, within(1e-12));
    }
}
