package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import throwline.flight.BlowBackSolver.Told;
import throwline.linkage.ControlRun;
import throwline.linkage.EvenLinkage;
import throwline.linkage.ServoBlowBack;
import throwline.linkage.ServoBlowBack.Rest;

/** Surfaces that yield together, against the linear system that statics gives where everything is straight. */
class BlowBackSolverTest {

    private static final double DEG = Math.PI / 180;
    private static final long SEED = 11_25;

    private static Told told(double ratio, double rating, double give, double angle) {
        ControlRun run = new ControlRun("one", new EvenLinkage(ratio), OptionalDouble.of(rating), 180 * DEG, 0, false);
        return new Told(new ServoBlowBack(run, rating, give, 0), angle);
    }

    private static Optional<List<Rest>> rest(
            List<Told> all, BlowBackSolver.Moments shape, BlowBackSolver.Moments exact) {
        BlowBackSolver surfaces = new BlowBackSolver(all);
        return surfaces.lines(shape).flatMap(lines -> surfaces.rest(lines, exact));
    }

    /** Springs K and moments h - A d, each a little on the others: (K + A) d = K told + h, solved by LU (Commons Math). */
    @Test
    void springsThatTheAirConnects() {
        Random random = new Random(SEED);
        for (int k = 0; k < 50; k++) {
            double rating = 10;
            double ratio = 0.4 + random.nextDouble();
            double give = (60 + 40 * random.nextDouble()) * DEG;
            double stiff = rating / (give * ratio * ratio);
            double[] angles = {
                50 * DEG * random.nextDouble(), -20 * DEG * random.nextDouble(), 15 * DEG * random.nextDouble()
            };
            RealMatrix a = MatrixUtils.createRealMatrix(3, 3);
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    a.setEntry(i, j, stiff * random.nextDouble() * (i == j ? 0.3 : 0.05));
                }
            }
            RealVector pull = new ArrayRealVector(new double[] {0.3, -0.4, -0.5});
            BlowBackSolver.Moments moments = d ->
                    Optional.of(pull.subtract(a.operate(new ArrayRealVector(d))).toArray());
            List<Told> all = List.of(
                    told(ratio, rating, give, angles[0]),
                    told(ratio, rating, give, angles[1]),
                    told(ratio, rating, give, angles[2]));
            List<Rest> rests = rest(all, moments, moments).orElseThrow();
            RealMatrix both = a.add(MatrixUtils.createRealIdentityMatrix(3).scalarMultiply(stiff));
            RealVector wanted = new LUDecomposition(both)
                    .getSolver()
                    .solve(new ArrayRealVector(angles).mapMultiply(stiff).add(pull));
            for (int i = 0; i < 3; i++) {
                assertThat(rests.get(i).angle()).isCloseTo(wanted.getEntry(i), within(BlowBackSolver.TOLERANCE));
            }
        }
    }

    /** Moments that were not found leave the answer open. */
    @Test
    void notFound() {
        BlowBackSolver.Moments none = d -> Optional.empty();
        BlowBackSolver.Moments some = d -> Optional.of(new double[] {-d[0]});
        List<Told> one = List.of(told(1, 1, 0.1, 0.5));
        assertThat(rest(one, none, some)).isEmpty();
        assertThat(rest(one, some, none)).isEmpty();
    }

    /** What never settles is not an answer: moments that change sides at every look. */
    @Test
    void neverSettles() {
        double[] side = {1};
        BlowBackSolver.Moments shape = d -> Optional.of(new double[] {0});
        BlowBackSolver.Moments fickle = d -> {
            side[0] = -side[0];
            return Optional.of(new double[] {0.5 * side[0]});
        };
        assertThat(rest(List.of(told(1, 1, 0.1, 0.5)), shape, fickle)).isEmpty();
    }

    /** Where the air's moment is a straight line, one look at the very angle says that they rest there; twice the air as well. */
    @Test
    void straightLinesNeedOneLook() {
        for (double angle : new double[] {30 * DEG, -20 * DEG, 1 * DEG, 0}) {
            int[] looks = {0};
            BlowBackSolver one = new BlowBackSolver(List.of(told(1.2, 2, 0.3, angle)));
            BlowBackSolver.Lines lines =
                    one.lines(d -> Optional.of(new double[] {0.1 - 0.4 * d[0]})).orElseThrow();
            double stiff = 2 / (0.3 * 1.2 * 1.2);
            for (double times : new double[] {1, 2}) {
                List<Rest> rests = one.rest(lines.times(times), d -> {
                            looks[0]++;
                            return Optional.of(new double[] {times * (0.1 - 0.4 * d[0])});
                        })
                        .orElseThrow();
                assertThat(rests.get(0).angle())
                        .isCloseTo((stiff * angle + times * 0.1) / (stiff + times * 0.4), within(1e-6));
            }
            assertThat(looks[0]).isEqualTo(2);
        }
    }
}
