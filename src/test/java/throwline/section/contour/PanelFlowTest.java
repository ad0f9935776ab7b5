package throwline.section.contour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.input.PackedAirfoils;
import throwline.model.AirfoilName;
import throwline.section.AirfoilShape;
import throwline.section.AirfoilShape.Corner;

/** Flow without friction against closed forms. */
class PanelFlowTest {

    private static final double FIVE = Math.toRadians(5);

    /** Joukowski and Karman-Trefftz sections; first-order panels: 0.7 %. */
    @ParameterizedTest
    @CsvSource({"-0.1, 0, 0", "-0.1, 0.05, 0", "-0.1, 0, 10", "-0.1, 0, 20", "-0.08, 0.06, 10"})
    void mappedCircles(double x, double y, double edge) {
        KarmanTrefftz section = new KarmanTrefftz(x, y, Math.toRadians(edge));
        double exact = section.lift(FIVE);
        double usual = new PanelFlow(section.contour()).lift(FIVE);
        assertThat(usual / exact).isCloseTo(1, within(0.008));
        double angle = new PanelFlow(section.contour()).zeroLiftAngle();
        assertThat(section.lift(angle)).isCloseTo(0, within(0.01));
    }

    /** The highest speed round a circle is twice that of the air (textbook). */
    @Test
    void circle() {
        PanelFlow flow = new PanelFlow(Contour.ofDense(half(1), half(-1)));
        double[] speed = flow.speeds(0);
        double highest = 0;
        for (double v : speed) {
            highest = Math.max(highest, Math.abs(v));
        }
        assertThat(highest).isCloseTo(2, within(0.02));
        assertThat(flow.lift(0)).isCloseTo(0, within(1e-9));
    }

    private static List<Corner> half(int way) {
        return IntStream.rangeClosed(0, 1000)
                .mapToDouble(i -> Math.PI * i / 1000)
                .mapToObj(t -> new Corner(0.5 * (1 - Math.cos(t)), way * 0.5 * Math.sin(t)))
                .toList();
    }

    /** Slopes over two pi are about 1 + 0.77 times the thickness of sections with sharp edges (textbooks, from memory). */
    @ParameterizedTest
    @CsvSource({"naca0009, 1.07", "naca2414, 1.108"})
    void slopes(String name, double expected) {
        assertThat(flow(name).liftSlope() / (2 * Math.PI)).isCloseTo(expected, within(0.008));
    }

    /** NACA 2414: -2.07 degrees by an independent panel program (COMPUTED). */
    @Test
    void zeroLiftAngle() {
        assertThat(Math.toDegrees(flow("naca2414").zeroLiftAngle())).isCloseTo(-2.07, within(0.02));
        assertThat(Math.toDegrees(flow("sd8020").zeroLiftAngle())).isCloseTo(0, within(0.005));
    }

    /** What a degree of flap is worth in angle of attack: thin-section theory (Houghton and Carpenter, section 4.5). */
    @ParameterizedTest
    @CsvSource({"0.1, 0.396", "0.2, 0.550", "0.3, 0.661", "0.4, 0.748"})
    void flaps(double chord, double expected) {
        double thin = 0.04;
        Contour plate = Contour.ofDense(lens(0.5 * thin), lens(-0.5 * thin));
        double step = Math.toRadians(1);
        double down = new PanelFlow(plate.deflected(chord, step)).zeroLiftAngle();
        double up = new PanelFlow(plate.deflected(chord, -step)).zeroLiftAngle();
        assertThat((up - down) / (2 * step)).isCloseTo(expected, within(0.012));
    }

    /** A four-digit thickness (NACA Report 460, edge closed). */
    private static List<Corner> lens(double half) {
        return IntStream.rangeClosed(0, 1000)
                .mapToDouble(i -> 0.5 * (1 - Math.cos(Math.PI * i / 1000)))
                .mapToObj(x -> new Corner(
                        x,
                        half
                                * 10
                                * (0.2969 * Math.sqrt(x) + x * (-0.1260 + x * (-0.3516 + x * (0.2843 - 0.1036 * x))))))
                .toList();
    }

    /** More panels change the zero-lift angle of every outline of the library by less than 0.07 degrees. */
    @Test
    void panelsEnough() {
        PackedAirfoils library = new PackedAirfoils();
        for (String name : library.names()) {
            library.find(new AirfoilName(name)).orElseThrow().shape().ifPresent(shape -> {
                Contour contour = Contour.of(shape);
                double usual = new PanelFlow(PanelNodes.of(contour, 120)).zeroLiftAngle();
                double fine = new PanelFlow(PanelNodes.of(contour, 160)).zeroLiftAngle();
                assertThat(Math.toDegrees(usual - fine)).as(name).isCloseTo(0, within(0.07));
            });
        }
    }

    private static PanelFlow flow(String name) {
        AirfoilShape shape = new PackedAirfoils()
                .find(new AirfoilName(name))
                .orElseThrow()
                .shape()
                .orElseThrow();
        return new PanelFlow(Contour.of(shape));
    }
}
