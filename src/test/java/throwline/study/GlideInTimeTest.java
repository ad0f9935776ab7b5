package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static throwline.study.Examples.value;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import throwline.model.Model;
import throwline.section.MeasuredSections;
import throwline.study.SetUpResult.SpeedPoint;

/** Newton's second law integrated in time with Commons Math ends in the steady descent that the study reports. */
class GlideInTimeTest {

    @Test
    void aGlideStartedTooFastSettlesAtTheSteadyAnswer() {
        Model model = Examples.read("orchard");
        Comparison comparison = Examples.compare(model, new MeasuredSections());
        double mass = model.packs().get(0).mass();
        for (SetUpResult setUp : comparison.packs().get(0).setUps()) {
            double approach = value(setUp.approachSpeed());
            SpeedPoint point = setUp.sweep().stream()
                    .filter(p -> p.speed() > approach)
                    .findFirst()
                    .orElseThrow();
            double[] state = {1.2 * point.speed(), 0, 0};
            double force = comparison.density() * model.wing().area() / (2 * mass);
            new DormandPrince853Integrator(1e-6, 0.5, 1e-9, 1e-9)
                    .integrate(pointMass(force, point), 0, state, 300, state);
            assertThat(state[0]).as("speed").isCloseTo(point.speed(), withPercentage(0.5));
            assertThat(-state[1]).as("angle").isCloseTo(point.descentAngle(), withPercentage(0.5));
            assertThat(point.sinkRate()).isCloseTo(-state[0] * Math.sin(state[1]), withPercentage(0.5));
        }
    }

    /** Speed, path angle up and height of a point mass with constant coefficients. */
    private static FirstOrderDifferentialEquations pointMass(double force, SpeedPoint point) {
        double g = 9.80665;
        return new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return 3;
            }

            @Override
            public void computeDerivatives(double t, double[] y, double[] rate) {
                rate[0] = -force * y[0] * y[0] * point.drag() - g * Math.sin(y[1]);
                rate[1] = force * y[0] * point.lift() - g * Math.cos(y[1]) / y[0];
                rate[2] = y[0] * Math.sin(y[1]);
            }
        };
    }
}
