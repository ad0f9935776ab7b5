package throwline.section.boundary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.input.PackedAirfoils;
import throwline.model.AirfoilName;
import throwline.section.AirfoilShape;
import throwline.section.SurrogateAirfoil;
import throwline.section.contour.Contour;
import throwline.section.contour.PanelFlow;
import throwline.section.contour.PanelNodes;

/** Boundary layers against exact and published ones; values from textbooks (H. Schlichting, Boundary-Layer Theory), from memory. */
class BoundaryLayerTest {

    private static final double REYNOLDS = 1e6;
    private static final double[] POLAR = {40_000, 60_000, 100_000, 150_000, 200_000, 300_000, 500_000, 1_500_000};
    private static final double FLAT = 1.57258;
    private static final double STAGNATION = 1.62575;
    private static final double START = 1e-3;

    private final LaminarLayer laminar = new LaminarLayer();

    private static SurfaceSpeed speed(DoubleUnaryOperator u, double end) {
        int n = 400;
        double[] s = new double[n + 1];
        double[] v = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            s[i] = end * i / n;
            v[i] = u.applyAsDouble(s[i]);
        }
        return new SurfaceSpeed(s, v);
    }

    private double separates(DoubleUnaryOperator u, double thickness, double energy, double end) {
        SurfaceSpeed speed = speed(u, end);
        LaminarLayer.State state = new LaminarLayer.State(thickness, energy, 0);
        double s = START;
        while (s < end && !laminar.separated(state)) {
            double step = Math.min(5e-4 * end, 0.02 * s);
            state = laminar.step(state, s, step, speed, REYNOLDS);
            s += step;
        }
        return s;
    }

    /** Speed falling in a straight line: L. Howarth 1938, 0.1199; as powers: I. Tani 1949, 0.271, 0.462 and 0.640. */
    @ParameterizedTest
    @CsvSource({"1, 0.1199, 0.001", "2, 0.271, 0.006", "4, 0.462, 0.012", "8, 0.640, 0.02"})
    void slowedDown(double power, double expected, double tolerance) {
        double flat = 0.6641 * Math.sqrt(START / REYNOLDS);
        assertThat(separates(x -> 1 - Math.pow(x, power), flat, FLAT, 0.98)).isCloseTo(expected, within(tolerance));
    }

    /** Circle with the speed of theory, 104.5 degrees, and with that measured by K. Hiemenz 1911, 80.5 to 82. */
    @Test
    void circles() {
        double theory = separates(Math::sin, Math.sqrt(0.0855 / REYNOLDS), STAGNATION, 3);
        assertThat(Math.toDegrees(theory)).isCloseTo(104.5, within(1.0));
        double measured = separates(
                x -> 1.814 * x - 0.271 * x * x * x - 0.0471 * Math.pow(x, 5),
                Math.sqrt(0.0855 / (1.814 * REYNOLDS)),
                STAGNATION,
                1.9);
        assertThat(Math.toDegrees(measured)).isBetween(79.5, 82.0);
    }

    /**
     * Friction of similar layers: slope at the wall times momentum thickness, 1.2326 times 0.2923 at a stagnation point,
     * 0.33206 times 0.66411 on a plate, nothing at the shape of separation, 4.03 (V. M. Falkner, S. W. Skan; D. R. Hartree).
     */
    @ParameterizedTest
    @CsvSource({"2.216, 0.3603", "2.591, 0.2205", "4.029, 0"})
    void similarLayers(double shape, double friction) {
        assertThat(LayerTable.load("laminar.csv").at(2, shape)).isCloseTo(friction, within(0.001));
    }

    /** Flat plate: H. Blasius 1908; waves have grown by e^9 at a length Reynolds number of about three million. */
    @Test
    void flatPlate() {
        SurfaceSpeed plate = speed(x -> 1, 20);
        LaminarLayer.State state = new LaminarLayer.State(0.6641 * Math.sqrt(START / REYNOLDS), FLAT, 0);
        double s = START;
        while (state.amplitude() < 9) {
            double step = Math.min(0.002, 0.02 * s);
            state = laminar.step(state, s, step, plate, REYNOLDS);
            s += step;
        }
        assertThat(state.thickness() / Math.sqrt(s / REYNOLDS)).isCloseTo(0.6641, within(0.002));
        assertThat(laminar.shape(state)).isCloseTo(2.591, within(0.003));
        assertThat(s * REYNOLDS).isBetween(2.6e6, 3.5e6);
    }

    /** Turbulent plate: Prandtl and Schlichting's friction, 0.00447 at a million and 0.00300 at ten; closures are good for 8 %. */
    @Test
    void turbulentPlate() {
        SurfaceSpeed plate = speed(x -> 1, 11);
        TurbulentLayer layer = new TurbulentLayer();
        TurbulentLayer.State state = new TurbulentLayer.State(0.6641 * Math.sqrt(0.02 / REYNOLDS), 1.5);
        double s = 0.02;
        double atOne = 0;
        while (s < 10) {
            state = layer.step(state, s, 0.002, plate, REYNOLDS);
            s += 0.002;
            atOne = s < 1 ? 2 * state.thickness() / s : atOne;
        }
        assertThat(atOne / 0.00447).isCloseTo(1, within(0.08));
        assertThat(2 * state.thickness() / s / 0.00300).isCloseTo(1, within(0.08));
        assertThat(state.shape()).isBetween(1.25, 1.40);
    }

    /** Without lift both sides are alike; drag falls as Reynolds number rises, where the method is meant, less than it. */
    @Test
    void symmetricSection() {
        PanelFlow flow = flow("naca0009");
        ProfileLayers.Method method = new ProfileLayers.Method();
        double before = method.of(flow, 0, 80_000).drag();
        for (double reynolds = 100_000; reynolds < 500_000; reynolds *= 1.5) {
            ProfileLayers layers = method.of(flow, 0, reynolds);
            assertThat(layers.upper().transition()).isCloseTo(layers.lower().transition(), within(1e-6));
            assertThat(layers.drag()).isLessThan(before).isGreaterThan(before / 1.5);
            before = layers.drag();
        }
    }

    /** 40 outlines at 25 angles and 8 Reynolds numbers: each answered, finite and in order, none past its time. */
    @Test
    void everyCaseIsAnswered() {
        ProfileLayers.Method method = new ProfileLayers.Method();
        int cases = 0;
        for (AirfoilShape shape : outlines()) {
            PanelFlow flow = new PanelFlow(Contour.of(shape));
            for (int degrees = -6; degrees <= 18; degrees++) {
                for (double reynolds : POLAR) {
                    ProfileLayers layers = method.of(flow, Math.toRadians(degrees), reynolds);
                    cases++;
                    for (LayerPath path : List.of(layers.upper(), layers.lower())) {
                        boolean ordered = path.laminarSeparation() > 0
                                && path.transition() >= path.laminarSeparation()
                                && path.reattachment() >= path.transition();
                        if (!ordered || !(layers.drag() > 0) || Double.isInfinite(layers.drag())) {
                            throw new AssertionError(degrees + " degrees at " + reynolds + ": " + layers);
                        }
                    }
                }
            }
        }
        assertThat(cases).isGreaterThanOrEqualTo(8000);
    }

    private static List<AirfoilShape> outlines() {
        PackedAirfoils library = new PackedAirfoils();
        List<AirfoilShape> shapes = new ArrayList<>(library.names().stream()
                .flatMap(name -> library.find(new AirfoilName(name)).stream())
                .flatMap(airfoil -> airfoil.shape().stream())
                .toList());
        for (double thickness = 0.07; shapes.size() < 40; thickness += 0.03) {
            shapes.add(SurrogateAirfoil.ordinary(thickness, 0.02).outline());
        }
        return shapes;
    }

    /** A polar of 25 angles at 8 Reynolds numbers, panels and all, takes less than 2 seconds of one core: no need to keep it. */
    @Test
    void polarIsQuick() {
        double fastest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 5 && fastest > 2; i++) {
            long began = System.nanoTime();
            PanelFlow flow = flow("clark-y");
            ProfileLayers.Method method = new ProfileLayers.Method();
            for (int degrees = -6; degrees <= 18; degrees++) {
                for (double reynolds : POLAR) {
                    assertThat(method.of(flow, Math.toRadians(degrees), reynolds)
                                    .drag())
                            .isPositive();
                }
            }
            fastest = Math.min(fastest, 1e-9 * (System.nanoTime() - began));
        }
        assertThat(fastest).isLessThan(2);
    }

    /** Three times the panels change drag, its mean around a lift, by little: the panels are enough. */
    @ParameterizedTest
    @ValueSource(strings = {"naca0009", "clark-y", "sd7037", "naca2415", "mh45"})
    void panelsEnough(String name) {
        Contour contour = Contour.of(shape(name));
        PanelFlow usual = new PanelFlow(contour);
        PanelFlow fine = new PanelFlow(PanelNodes.of(contour, 3 * PanelNodes.USUAL));
        ProfileLayers.Method method = new ProfileLayers.Method();
        for (double reynolds : new double[] {100_000, 200_000, 400_000}) {
            for (double lift : new double[] {0.2, 0.5}) {
                double change = 0;
                for (double aside = -0.1; aside < 0.11; aside += 0.05) {
                    change += 0.2
                            * Math.log(method.of(fine, fine.angleOf(lift + aside), reynolds)
                                            .drag()
                                    / method.of(usual, usual.angleOf(lift + aside), reynolds)
                                            .drag());
                }
                assertThat(change).isCloseTo(0, within(0.08));
            }
        }
    }

    /** Kinds of layer follow each other without a gap from the nose to the trailing edge. */
    @Test
    void stretchesFillTheChord() {
        ProfileLayers.Method method = new ProfileLayers.Method();
        for (String name : new String[] {"naca0009", "s1223", "mh45"}) {
            PanelFlow flow = flow(name);
            for (int degrees = -4; degrees <= 12; degrees += 4) {
                ProfileLayers layers = method.of(flow, Math.toRadians(degrees), 120_000);
                for (List<LayerStretch> side : List.of(layers.overTop(), layers.alongBottom())) {
                    double at = 0;
                    for (LayerStretch stretch : side) {
                        assertThat(stretch.from()).isCloseTo(at, within(1e-9));
                        assertThat(stretch.to()).isGreaterThan(stretch.from());
                        at = stretch.to();
                    }
                    assertThat(at).isCloseTo(1, within(1e-6));
                }
            }
        }
    }

    private static PanelFlow flow(String name) {
        return new PanelFlow(Contour.of(shape(name)));
    }

    private static AirfoilShape shape(String name) {
        return new PackedAirfoils()
                .find(new AirfoilName(name))
                .orElseThrow()
                .shape()
                .orElseThrow();
    }
}
