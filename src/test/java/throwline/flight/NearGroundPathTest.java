package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.air.Gravity;

/** Motion of a point of weight in a wind that changes over height, against Newton's law in axes that stand on the ground. */
class NearGroundPathTest {

    private static final double MASS = 3;
    private static final double AREA = 0.45;
    private static final double DENSITY = 1.225;
    private static final double STANCE = 0.3;

    private static NearGroundFlight flight(double limit, double wind) {
        NearGroundPolar polar = new NearGroundPolar() {
            @Override
            public double drag(double lift, double height) {
                return 0.05 + 0.06 * lift * lift;
            }

            @Override
            public double limit(double height) {
                return limit;
            }
        };
        return new NearGroundFlight(MASS, AREA, DENSITY, STANCE, polar, new WindProfile(wind));
    }

    private static double pressureArea(double speed) {
        return DENSITY * speed * speed * AREA / 2;
    }

    /**
     * Over the ground the model goes {@code V cos - w(h)} ahead and {@code V sin} down. The change of both over time is force
     * over mass: drag against the way through the air, lift across it, weight down.
     */
    @ParameterizedTest
    @CsvSource({"11, 0.2, 3, 0.7, 4", "14, 0.5, 1, 1.1, 6", "9, 0.05, 0.2, 0.9, 3", "12, 0.3, 2, 0.8, 0"})
    void newtonsLaw(double speed, double angle, double height, double lift, double wind) {
        NearGroundPath path = new NearGroundPath(flight(9, wind), (v, a) -> lift * pressureArea(v) + 0.5 * Math.sin(a));
        double[] change = new double[path.getDimension()];
        path.computeDerivatives(0, new double[] {speed, angle, height, 0}, change);
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double up = lift * pressureArea(speed) + 0.5 * sin;
        double coefficient = up / pressureArea(speed);
        double drag = (0.05 + 0.06 * coefficient * coefficient) * pressureArea(speed);
        WindProfile air = new WindProfile(wind);
        double gradient = (air.at(height + STANCE + 1e-4) - air.at(height + STANCE - 1e-4)) / 2e-4;
        double ahead = change[0] * cos - speed * sin * change[1] - gradient * change[2];
        double down = change[0] * sin + speed * cos * change[1];
        assertThat(ahead).isCloseTo((up * sin - drag * cos) / MASS, within(1e-5));
        assertThat(down).isCloseTo(Gravity.STANDARD - (up * cos + drag * sin) / MASS, within(1e-5));
        assertThat(change[2]).isCloseTo(-speed * sin, within(1e-12));
        assertThat(change[3]).isCloseTo(speed * cos - air.at(height + STANCE), within(1e-12));
        assertThat(path.turning(new double[] {speed, angle, height, 0})).isCloseTo(change[1], within(1e-12));
    }

    /** What a place asks of the wing: its coefficient, the bend of the path, and whether that is all there is. */
    @Test
    void demandOnTheWing() {
        double[] place = {11, 0.2, 3, 0};
        Landing.Pull free = new NearGroundPath(flight(9, 0), (v, a) -> 0.7 * pressureArea(v)).pull(place);
        assertThat(free.lift()).isCloseTo(0.7, within(1e-12));
        assertThat(free.height()).isEqualTo(3);
        assertThat(free.all()).isFalse();
        double turning = (Gravity.STANDARD * Math.cos(0.2) - 0.7 * pressureArea(11) / MASS) / 11;
        assertThat(free.bend()).isCloseTo(-turning / 11, within(1e-12));
        Landing.Pull full = new NearGroundPath(flight(0.6, 0), (v, a) -> 0.7 * pressureArea(v)).pull(place);
        assertThat(full.lift()).isCloseTo(0.6, within(1e-12));
        assertThat(full.all()).isTrue();
    }
}
