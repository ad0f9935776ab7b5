package throwline.logs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.util.Pair;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Formulas of the reduction against closed forms, a second program, and the library's least squares. */
class LogFormulasTest {

    private static final double[] X = {14.3, 7.9, -4.05, -9.7, -4.1, 7.95};
    private static final double[] Y = {-1.0, 9.219, 9.479, -1.0, -11.566, -11.306};

    /** Eight headings 45 degrees apart at 12 m/s in a wind of (2, -1): exact. */
    @Test
    void finds_the_wind_of_a_circle() {
        double[] x = new double[8];
        double[] y = new double[8];
        Arrays.setAll(x, i -> 2 + 12 * Math.sin(i * Math.PI / 4));
        Arrays.setAll(y, i -> -1 + 12 * Math.cos(i * Math.PI / 4));
        CircleFit fit = CircleFit.of(x, y);
        assertThat(fit.east()).isCloseTo(2, Offset.offset(1e-10));
        assertThat(fit.north()).isCloseTo(-1, Offset.offset(1e-10));
        assertThat(fit.radius()).isCloseTo(12, Offset.offset(1e-10));
    }

    /**
     * Three headings a third of a turn apart by the closed form of pilots who test airspeeds (GPS method of three legs, READ):
     * with m the mean of the squared ground speeds g and d the sum of (g^2/m - 1)^2 over 6, the airspeed is sqrt(m b) and the
     * wind sqrt(m d/b), b = 1/2 + sqrt(1/4 - d).
     */
    @Test
    void agrees_with_three_headings_in_closed_form() {
        double[] over = {14.963494, 10.330503, 11.330249};
        double mean = Arrays.stream(over).map(g -> g * g).sum() / 3;
        double apart =
                Arrays.stream(over).map(g -> Math.pow(g * g / mean - 1, 2)).sum() / 6;
        double b = 0.5 + Math.sqrt(0.25 - apart);
        assertThat(Math.sqrt(mean * b)).isCloseTo(12, Offset.offset(1e-6));
        assertThat(Math.sqrt(mean * apart / b)).isCloseTo(3, Offset.offset(1e-6));
        double wind = Math.toRadians(10);
        double[] x = new double[3];
        double[] y = new double[3];
        Arrays.setAll(x, i -> 3 * Math.sin(wind) + 12 * Math.sin(i * 2 * Math.PI / 3));
        Arrays.setAll(y, i -> 3 * Math.cos(wind) + 12 * Math.cos(i * 2 * Math.PI / 3));
        Arrays.sort(over);
        double[] seen = new double[3];
        Arrays.setAll(seen, i -> Math.hypot(x[i], y[i]));
        Arrays.sort(seen);
        assertThat(seen).containsExactly(over, Offset.offset(1e-6));
        CircleFit fit = CircleFit.of(x, y);
        assertThat(fit.radius()).isCloseTo(Math.sqrt(mean * b), Offset.offset(1e-6));
        assertThat(Math.hypot(fit.east(), fit.north())).isCloseTo(Math.sqrt(mean * apart / b), Offset.offset(1e-6));
    }

    /** COMPUTED by a second program (Python, SciPy), and Levenberg-Marquardt of Commons Math from another start. */
    @Test
    void agrees_with_general_least_squares() {
        CircleFit fit = CircleFit.of(X, Y);
        assertThat(fit.east()).isCloseTo(2.09998, Offset.offset(2e-5));
        assertThat(fit.north()).isCloseTo(-1.05794, Offset.offset(2e-5));
        assertThat(fit.radius()).isCloseTo(12.00039, Offset.offset(2e-5));
        Optimum library = new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder()
                        .start(new double[] {0, 0, 10})
                        .target(new double[X.length])
                        .maxEvaluations(1000)
                        .maxIterations(1000)
                        .model(point -> {
                            double[] p = point.toArray();
                            double[] value = new double[X.length];
                            double[][] slopes = new double[X.length][];
                            for (int i = 0; i < X.length; i++) {
                                double apart = Math.hypot(X[i] - p[0], Y[i] - p[1]);
                                value[i] = apart - p[2];
                                slopes[i] = new double[] {(p[0] - X[i]) / apart, (p[1] - Y[i]) / apart, -1};
                            }
                            return new Pair<>(new ArrayRealVector(value), new Array2DRowRealMatrix(slopes));
                        })
                        .build());
        assertThat(fit.east()).isCloseTo(library.getPoint().getEntry(0), Offset.offset(1e-7));
        assertThat(fit.north()).isCloseTo(library.getPoint().getEntry(1), Offset.offset(1e-7));
        assertThat(fit.radius()).isCloseTo(library.getPoint().getEntry(2), Offset.offset(1e-7));
    }

    /** 0.4 s at 0.433 rad/s shrinks a circle to 0.985 of it (closed form of a first-order lag). */
    @Test
    void takes_the_lag_out_of_the_radius() {
        assertThat(new CircleFit(0, 0, 0.985, 0).unlagged(0.433, 0.4)).isCloseTo(1, Offset.offset(5e-4));
    }

    /** A wind of 3 m/s 30 degrees off the runs leaves 12 m/s short by V - sqrt(V^2 - wc^2) = 0.094 m/s. */
    @Test
    void misses_the_wind_across_by_a_known_amount() {
        double across = 3 * Math.sin(Math.toRadians(30));
        double along = 3 * Math.cos(Math.toRadians(30));
        double straight = Math.sqrt(144 - across * across);
        LevelWind found = LevelWind.opposing(straight - along, straight + along);
        assertThat(12 - found.airspeed()).isCloseTo(0.094, Offset.offset(5e-4));
        assertThat(found.wind()).isCloseTo(along, Offset.offset(1e-9));
    }

    /** Hypsometric equation at 120 m (COMPUTED). */
    @ParameterizedTest
    @CsvSource({"0, 0.950", "15, 1.003", "24, 1.034", "35, 1.072"})
    void turns_shown_metres_into_real_ones(double celsius, double factor) {
        LogAir air = new LogAir(OptionalDouble.of(celsius + 273.15), 100_000, 120, false);
        assertThat(air.realMetre(120)).isCloseTo(factor, Offset.offset(6e-4));
        assertThat(new LogAir(OptionalDouble.of(300), 100_000, 120, true).realMetre(120))
                .isEqualTo(1);
    }

    /** WGS84 at 48 degrees north (COMPUTED): 74625.4 and 111190.3 m a degree. */
    @Test
    void lays_positions_on_a_plane() {
        double latitude = Math.toRadians(48);
        assertThat(Math.toRadians(GroundTrack.eastPerRadian(latitude))).isCloseTo(74_625.4, Offset.offset(0.1));
        assertThat(Math.toRadians(GroundTrack.northPerRadian(latitude))).isCloseTo(111_190.3, Offset.offset(0.5));
    }

    /** A slow receiver hides more of a dip: without lag and averaging nothing, and with lag the ramp's lag at least. */
    @Test
    void knows_what_a_dip_hides() {
        assertThat(new Dip(0.2, 0.4).hidden()).isGreaterThan(new Dip(0.2, 0).hidden());
        assertThat(new Dip(0.2, 0.8).hidden()).isGreaterThan(new Dip(0.2, 0.4).hidden());
        assertThat(new Dip(0.01, 0).hidden()).isBetween(0.3, 0.5);
    }
}
