package throwline.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.Test;

/** Random linkages against plane geometry, found by looking along the way in small steps. */
class FourBarPropertiesTest {

    private static final int LINKAGES = 300;
    private static final double STEP = 1e-3;

    /** Holes and lengths worked from scratch: servo at the origin, hinge line ahead, both arms to the y side. */
    private record Plane(double arm, double horn, double distance, double lean) {

        static Plane random(Random random) {
            return new Plane(
                    0.006 + 0.014 * random.nextDouble(),
                    0.006 + 0.014 * random.nextDouble(),
                    0.035 + 0.06 * random.nextDouble(),
                    Math.toRadians(-40 + 80 * random.nextDouble()));
        }

        FourBar bar() {
            return new FourBar(arm, horn, distance, lean);
        }

        double between(double servo, double surface) {
            double x = distance + horn * Math.sin(surface - lean) - arm * Math.sin(servo - lean);
            double y = horn * Math.cos(surface - lean) - arm * Math.cos(servo - lean);
            return Math.hypot(x, y);
        }

        double rod() {
            return between(0, 0);
        }

        /** True where rod and horn meet with the servo there. */
        boolean closes(double servo) {
            double far = Math.hypot(arm * Math.sin(servo - lean) - distance, arm * Math.cos(servo - lean));
            return far <= rod() + horn && far >= Math.abs(rod() - horn);
        }

        /** True where rod and arm meet with the surface there. */
        boolean surfaceCloses(double surface) {
            double far = Math.hypot(distance + horn * Math.sin(surface - lean), horn * Math.cos(surface - lean));
            return far <= rod() + arm && far >= Math.abs(rod() - arm);
        }
    }

    private static double end(DoublePredicate closes, double way) {
        double angle = 0;
        while (Math.abs(angle) < Math.PI && closes.test(angle + way * STEP)) {
            angle += way * STEP;
        }
        return angle;
    }

    /** It locks where rod and horn cannot meet any more, and not before. */
    @Test
    void locksWhereTheTriangleOpens() {
        Random random = new Random(3);
        for (int k = 0; k < LINKAGES; k++) {
            Plane plane = Plane.random(random);
            FourBar bar = plane.bar();
            assertThat(bar.servo().high()).as(plane.toString()).isCloseTo(end(plane::closes, 1), within(2 * STEP));
            assertThat(bar.servo().low()).as(plane.toString()).isCloseTo(end(plane::closes, -1), within(2 * STEP));
        }
    }

    /** The surface goes as far as the servo takes it on the branch of neutral: found by following it in small steps. */
    @Test
    void theSurfaceGoesAsFarAsItsServoTakesIt() {
        Random random = new Random(4);
        for (int k = 0; k < LINKAGES / 10; k++) {
            Plane plane = Plane.random(random);
            FourBar bar = plane.bar();
            double[] ends = new double[2];
            for (int side = 0; side < 2; side++) {
                double way = side == 0 ? -1 : 1;
                double farthest = 0;
                for (double s = 0; Math.abs(s) < Math.PI && plane.closes(s); s += way * STEP / 10) {
                    double here = bar.surfaceAt(s).orElse(farthest);
                    if (Math.abs(here) < Math.abs(farthest) || !plane.surfaceCloses(here)) {
                        break;
                    }
                    farthest = here;
                }
                ends[side] = farthest;
            }
            assertThat(bar.surface().low()).as(plane.toString()).isCloseTo(ends[0], within(0.03));
            assertThat(bar.surface().high()).as(plane.toString()).isCloseTo(ends[1], within(0.03));
        }
    }

    /** The rod keeps its length at every angle, both ways, and neutral stays neutral. */
    @Test
    void theRodKeepsItsLength() {
        Random random = new Random(5);
        for (int k = 0; k < LINKAGES; k++) {
            Plane plane = Plane.random(random);
            FourBar bar = plane.bar();
            assertThat(bar.surfaceAt(0).orElseThrow()).isCloseTo(0, within(1e-9));
            assertThat(bar.servoAt(0).orElseThrow()).isCloseTo(0, within(1e-9));
            for (int i = 0; i < 20; i++) {
                double servo = 0.999
                        * (random.nextBoolean()
                                ? bar.servo().low()
                                : bar.servo().high())
                        * random.nextDouble();
                double surface = bar.surfaceAt(servo).orElseThrow();
                assertThat(plane.between(servo, surface)).isCloseTo(plane.rod(), within(1e-9));
                OptionalDouble back = bar.servoAt(surface);
                back.ifPresent(b -> assertThat(bar.surfaceAt(b).orElseThrow()).isCloseTo(surface, within(1e-3)));
            }
        }
    }

    /** Between its ends every angle of the surface has a servo angle, beyond them none. */
    @Test
    void everyAngleBetweenItsEnds() {
        Random random = new Random(6);
        for (int k = 0; k < LINKAGES; k++) {
            Plane plane = Plane.random(random);
            FourBar bar = plane.bar();
            for (double share : new double[] {0.2, 0.6, 0.98}) {
                for (double end :
                        new double[] {bar.surface().low(), bar.surface().high()}) {
                    double servo = bar.servoAt(share * end).orElseThrow();
                    assertThat(bar.surfaceAt(servo).orElseThrow()).isCloseTo(share * end, within(1e-6));
                    assertThat(bar.servoAt(end * 1.02)).isEmpty();
                }
            }
        }
    }

    /** The ratio is the derivative. */
    @Test
    void ratioIsTheDerivative() {
        Random random = new Random(7);
        for (int k = 0; k < LINKAGES; k++) {
            FourBar bar = Plane.random(random).bar();
            double servo = 0.8
                    * (bar.servo().low()
                            + random.nextDouble()
                                    * (bar.servo().high() - bar.servo().low()));
            double step = 1e-6;
            double slope = (bar.surfaceAt(servo + step).orElseThrow()
                            - bar.surfaceAt(servo - step).orElseThrow())
                    / (2 * step);
            assertThat(bar.ratioAt(servo).orElseThrow()).isCloseTo(slope, within(1e-4));
        }
    }

    /** Arms, rods and ratios of nothing are refused. */
    @Test
    void nothingIsNoLinkage() {
        assertThatIllegalArgumentException().isThrownBy(() -> new FourBar(0, 0.01, 0.05, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new FourBar(0.01, 0, 0.05, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new FourBar(0.01, 0.01, 0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new EvenLinkage(0));
    }
}
