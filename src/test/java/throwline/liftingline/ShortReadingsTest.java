package throwline.liftingline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.section.HullPiece;
import throwline.section.SectionCurve;

/** What is read in a shorter way is what the direct one gives (property: nothing but the way differs). */
class ShortReadingsTest {

    private static final double FLAP = 0.5;

    private final MeasuredWing wing = new MeasuredWing(MeasuredWing.tapered("clark-y-b", 7, 0.7, 0.03, 0.5), 8e5, 60);
    private final SpanGrid grid = wing.grid();
    private final LiftingLineSolver solver = new LiftingLineSolver(
            new InfluenceMatrix(grid, Ground.none(), ChordCorrection.of(grid)), SolverSettings.standard());

    /** Solved as one half and its mirror image, and as a whole from a start that is not quite the same on both sides. */
    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 0.05, 0.2, 0.35})
    void mirroredForcesAreThoseOfTheWholeWing(double incidence) {
        LiftingLineProblem problem =
                LiftingLineProblem.of(wing.curves(FLAP, -0.2, -0.2), incidence, new Motion(0, 0.02, 0, 0));
        LiftingLineSolution half = solver.solve(problem, Optional.empty());
        double[] start = half.circulations().clone();
        start[3] += 1e-3;
        LiftingLineSolution whole = solver.solveFrom(problem, Optional.of(start));
        assertThat(half.isAlike()).isTrue();
        assertThat(whole.isAlike()).isFalse();
        StripForces mirrored = StripForces.of(half);
        StripForces direct = StripForces.of(whole);
        for (int i = 0; i < grid.size(); i++) {
            assertThat(mirrored.lift(i)).isCloseTo(direct.lift(i), offset(1e-9));
            assertThat(mirrored.side(i)).isCloseTo(direct.side(i), offset(1e-9));
            assertThat(mirrored.drag(i)).isCloseTo(direct.drag(i), offset(1e-9));
            assertThat(mirrored.moment(i)).isCloseTo(direct.moment(i), offset(1e-9));
        }
    }

    @Test
    void rollingMomentAloneIsThatOfAllForces() {
        LiftingLineSolution solution = solver.solve(
                LiftingLineProblem.of(wing.curves(FLAP, 0.2, -0.25), 0.1, Motion.rolling(0.07)), Optional.empty());
        assertThat(StripForces.rollingCoefficient(solution))
                .isNotZero()
                .isEqualTo(StripForces.of(solution).rollingCoefficient());
    }

    /** The margin of a strip averaged over one local chord, straight from its words: every strip asked for its share. */
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.2, 0.3})
    void leastMarginIsTheLeastOfAllAverages(double incidence) {
        LiftingLineSolution solution = wing.at(wing.curves(FLAP, 0.1, -0.1), incidence);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < grid.size(); i++) {
            double from = grid.control(i) - grid.chord(i) / 2;
            double to = grid.control(i) + grid.chord(i) / 2;
            double sum = 0;
            double width = 0;
            for (int j = 0; j < grid.size(); j++) {
                double share = Math.max(0, Math.min(to, grid.edge(j + 1)) - Math.max(from, grid.edge(j)));
                sum += share * solution.margin(j);
                width += share;
            }
            least = Math.min(least, sum / width);
        }
        assertThat(StallReading.of(solution).margin()).isCloseTo(least, offset(1e-12));
        assertThat(StallReading.leastMargin(solution, strip -> true)).isCloseTo(least, offset(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.POSITIVE_INFINITY, 0.3})
    void downwashIsTheLowerPartOfAllAddedVelocity(double height) {
        Ground ground = Double.isInfinite(height) ? Ground.none() : new Ground(height, true);
        WakeSheet sheet = new WakeSheet(wing.at(wing.curves(FLAP, 0.1, -0.1), 0.1), ground);
        Random random = new Random(7);
        for (int k = 0; k < 200; k++) {
            double x = 0.05 + 2 * random.nextDouble();
            double y = 2.4 * random.nextDouble() - 1.2;
            double above = 0.4 * random.nextDouble() - 0.2;
            double aboveLine = 0.4 * random.nextDouble() - 0.2;
            double core = 0.01 + 0.1 * random.nextDouble();
            double direct = sheet.at(x, y, above, aboveLine, core).down();
            assertThat(sheet.downwash(x, y, above, aboveLine, core)).isCloseTo(direct, offset(1e-13));
        }
    }

    /** Vortex by vortex after Biot and Savart, each as high and as thick as its own part of the wake; over ground its image too. */
    @ParameterizedTest
    @ValueSource(doubles = {Double.POSITIVE_INFINITY, 0.3})
    void anUnevenSheetIsTheSumOfItsVortices(double height) {
        Ground ground = Double.isInfinite(height) ? Ground.none() : new Ground(height, true);
        LiftingLineSolution solution = wing.at(wing.curves(FLAP, 0.1, -0.1), 0.1);
        WakeSheet sheet = new WakeSheet(solution, ground);
        Random random = new Random(11);
        double[] above = random.doubles(grid.size() + 1, -0.2, 0.2).toArray();
        double[] core = random.doubles(grid.size() + 1, 0.01, 0.1).toArray();
        for (double y = -1.1; y < 1.2; y += 0.3) {
            double direct = 0;
            for (int k = 0; k <= grid.size(); k++) {
                double inner = k == 0 ? 0 : solution.circulation(k - 1);
                double strength = (k == grid.size() ? 0 : solution.circulation(k)) - inner;
                direct += strength * vortex(0.7, y - grid.edge(k), above[k], 0.05, core[k]);
                if (ground.isNear()) {
                    double up = 2 * (height + 0.05);
                    direct -= strength * vortex(0.7, y - grid.edge(k), above[k] - up, 0.05 - up, core[k]);
                }
            }
            assertThat(sheet.downwash(0.7, y, above, 0.05, core)).isCloseTo(direct, offset(1e-13));
        }
    }

    private static double vortex(double x, double aside, double above, double aboveLine, double core) {
        double trailing =
                (1 + x / Math.hypot(x, Math.hypot(aside, above))) / (aside * aside + above * above + core * core);
        double far = x * x + aboveLine * aboveLine + core * core;
        return aside * (trailing + x / far / Math.sqrt(aside * aside + far)) / (4 * Math.PI);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.POSITIVE_INFINITY, 0.3})
    void sunkSheetIsReadAsItIsAddedUp(double height) {
        Ground ground = Double.isInfinite(height) ? Ground.none() : new Ground(height, true);
        SunkSheet sunk = new SunkSheet(grid, ground, 0.6, 0.9, 0.15, 0.02);
        for (double incidence : new double[] {-0.05, 0.1, 0.3}) {
            WakeSheet sheet = new WakeSheet(wing.at(wing.curves(FLAP, 0.1, -0.1), incidence), ground);
            for (double x = 0.5; x < 1; x += 0.0037) {
                assertThat(sunk.at(sheet, x)).isCloseTo(sheet.sink(x, 0.15, 0.02), offset(1e-9));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 4, 8, 41})
    void productByColumnsIsThatByRows(int size) {
        Random random = new Random(size);
        double[][] rows = new double[size][];
        for (int i = 0; i < size; i++) {
            rows[i] = random.doubles(size, -1, 1).toArray();
        }
        double[] vector = random.doubles(size, -1, 1).toArray();
        double[] product = new double[size];
        new Columns(rows).times(vector, product);
        for (int i = 0; i < size; i++) {
            assertThat(product[i]).isCloseTo(DominantSystem.dot(rows[i], vector, 0, size), offset(1e-14));
        }
    }

    /** Against a general library (Commons Math), for matrices that are dominant by rows. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 8, 41})
    void factorsByColumnsSolveAsALibraryDoes(int size) {
        Random random = new Random(size);
        double[][] rows = new double[size][];
        DominantSystem system = new DominantSystem(size);
        for (int i = 0; i < size; i++) {
            rows[i] = random.doubles(size, -1, 0).toArray();
            rows[i][i] = 1.0 + size;
            for (int j = 0; j < size; j++) {
                system.column(j)[i] = rows[i][j];
            }
        }
        double[] side = random.doubles(size, -1, 1).toArray();
        double[] library = new LUDecomposition(new Array2DRowRealMatrix(rows))
                .getSolver()
                .solve(new ArrayRealVector(side))
                .toArray();
        system.factor();
        system.solve(side);
        for (int i = 0; i < size; i++) {
            assertThat(side[i]).isCloseTo(library[i], offset(1e-14));
        }
    }

    /** A stretch of a hull that was kept says what the curve says, wherever it holds. */
    @Test
    void keptStretchesAreTheHull() {
        int read = 0;
        for (SectionCurve curve : wing.curves(FLAP, 0.2, -0.25)) {
            for (SectionCurve any : List.of(curve, new BlownCurve(curve, 0.8, 0.3))) {
                HullPiece piece = new HullPiece();
                for (double alpha = -1.7; alpha < 1.7; alpha += 0.0013) {
                    if (piece.holds(alpha)) {
                        read++;
                    } else {
                        any.risingPiece(alpha, piece);
                    }
                    assertThat(piece.value(alpha)).isCloseTo(any.risingLift(alpha), offset(1e-12));
                    assertThat(piece.slope(alpha)).isCloseTo(any.risingLiftSlope(alpha), offset(1e-9));
                }
            }
        }
        assertThat(read).isPositive();
    }

    /** Curves that share what others made are those made alone. */
    @Test
    void sharedCurvesAreThoseMadeAlone() {
        WingStrips strips = wing.strips();
        WingCurves setUp = strips.curves((surface, side) -> surface.name().equals("flaps") ? FLAP : 0);
        setUp.at(7e5);
        List<SectionCurve> shared = strips.curves(
                        (surface, side) -> surface.name().equals("flaps") ? FLAP : 0.2 * side, setUp)
                .at(8e5);
        List<SectionCurve> alone = new MeasuredWing(MeasuredWing.tapered("clark-y-b", 7, 0.7, 0.03, 0.5), 8e5, 60)
                .strips()
                .curves((surface, side) -> surface.name().equals("flaps") ? FLAP : 0.2 * side)
                .at(8e5);
        for (int i = 0; i < grid.size(); i++) {
            for (double alpha = -0.4; alpha < 0.5; alpha += 0.013) {
                assertThat(shared.get(i).risingLift(alpha))
                        .isEqualTo(alone.get(i).risingLift(alpha));
                assertThat(shared.get(i).drag(alpha)).isEqualTo(alone.get(i).drag(alpha));
                assertThat(shared.get(i).hinge(alpha)).isEqualTo(alone.get(i).hinge(alpha));
            }
        }
    }
}
