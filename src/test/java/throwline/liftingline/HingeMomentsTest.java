package throwline.liftingline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import throwline.model.Surface;
import throwline.section.SectionCurve;

/** Hinge moments along the span. */
class HingeMomentsTest {

    private final MeasuredWing wing = new MeasuredWing(MeasuredWing.tapered("clark-y-b", 7, 0.7, 0, 0.5), 8e5, 80);

    private HingeMoments at(double flaps, double left, double right) {
        return HingeMoments.of(wing.at(wing.curves(flaps, left, right), Math.toRadians(2)), wing.strips());
    }

    /** Common practice, no source: the air drives a lowered surface up and a raised one down. */
    @Test
    void airDrivesASurfaceBack() {
        HingeMoments moments = at(Math.toRadians(30), Math.toRadians(15), Math.toRadians(-15));
        assertThat(moments.of("flaps", 1)).isNegative().isCloseTo(moments.of("flaps", -1), withPercentage(10));
        assertThat(moments.of("ailerons", -1)).isNegative();
        assertThat(moments.of("ailerons", 1)).isPositive();
        assertThat(moments.of("no such surface", 1)).isZero();
    }

    @Test
    void stripsWithoutSurfaceHaveNone() {
        HingeMoments moments = at(Math.toRadians(30), 0, 0);
        double sum = 0;
        for (int i = 0; i < wing.grid().size(); i++) {
            if (wing.strips().surface(i).isEmpty()) {
                assertThat(moments.along(i)).isZero();
            }
            sum += moments.along(i);
        }
        double all = moments.of("flaps", 1)
                + moments.of("flaps", -1)
                + moments.of("ailerons", 1)
                + moments.of("ailerons", -1);
        assertThat(sum).isCloseTo(all, offset(1e-15));
    }

    /** Coefficient on the surface's own chord squared: mechanics, by hand on one strip. */
    @Test
    void stripCarriesItsCoefficientTimesWidthTimesChordSquared() {
        LiftingLineSolution solution = wing.at(wing.curves(0.3, 0, 0), 0.05);
        HingeMoments moments = HingeMoments.of(solution, wing.strips());
        int strip = 50;
        Surface surface = wing.strips().surface(strip).orElseThrow();
        SectionCurve curve = solution.problem().curves().get(strip);
        double chord = surface.chordFraction() * wing.grid().chord(strip);
        double expected = curve.hinge(solution.sectionAngle(strip))
                * chord
                * chord
                * wing.grid().width(strip);
        assertThat(moments.along(strip)).isCloseTo(expected, offset(1e-15));
        assertThat(surface.name()).isEqualTo("flaps");
    }
}
