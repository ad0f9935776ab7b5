package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.section.AirfoilShape;
import throwline.words.Words;

/** Coordinates in every usual order, direction and scale; what cannot be understood is refused with its line. */
class CoordinateFileTest {

    private static final FourDigit NACA_2412 = new FourDigit(0.02, 0.4, 0.12);

    static Stream<Arguments> understood() {
        List<double[]> loop = NACA_2412.loop();
        List<double[]> otherWay = new ArrayList<>(loop);
        Collections.reverse(otherWay);
        List<double[]> fromNose = new ArrayList<>(NACA_2412.surface(true));
        List<double[]> bottom = new ArrayList<>(NACA_2412.surface(false));
        Collections.reverse(bottom);
        fromNose.addAll(bottom);
        String top = FourDigit.lines(NACA_2412.surface(true), 1);
        String low = FourDigit.lines(NACA_2412.surface(false), 1);
        String plain = FourDigit.lines(loop, 1);
        return Stream.of(
                Arguments.of("over the top and back", plain),
                Arguments.of("with a title", "A section, 12 % thick\n" + plain),
                Arguments.of("with a comment", "# x y\n" + plain),
                Arguments.of("the other way round", FourDigit.lines(otherWay, 1)),
                Arguments.of("from the nose and back", FourDigit.lines(fromNose, 1)),
                Arguments.of("top and bottom from the nose", top + low),
                Arguments.of("bottom and top from the nose", low + "\n" + top),
                Arguments.of("with counts", "A section\n 41. 41.\n\n" + top + "\n" + low),
                Arguments.of("in per cent", FourDigit.lines(loop, 100)),
                Arguments.of("in millimetres", FourDigit.lines(loop, 230)),
                Arguments.of("with commas", plain.replace(' ', ',')),
                Arguments.of("with semicolons", plain.replace(" ", " ; ")),
                Arguments.of("with commas and blanks", plain.replace(" ", ", ")),
                Arguments.of("drawn nose up", turned(loop, Math.toRadians(5))));
    }

    private static String turned(List<double[]> points, double angle) {
        return FourDigit.lines(
                points.stream()
                        .map(p -> new double[] {
                            p[0] * Math.cos(angle) + p[1] * Math.sin(angle),
                            p[1] * Math.cos(angle) - p[0] * Math.sin(angle)
                        })
                        .toList(),
                1);
    }

    /** NACA 2412: 12 % thick and 2 % cambered by definition; its angle and moment by integrating its own camber line. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("understood")
    void isUnderstood(String how, String text) {
        CoordinateFile.Reading reading = CoordinateFile.read("wing.dat", text);
        assertThat(reading.problems()).isEmpty();
        AirfoilShape shape = reading.shape().orElseThrow();
        assertThat(shape.thickness()).isCloseTo(0.12, within(0.001));
        assertThat(shape.camber()).isCloseTo(0.02, within(0.0005));
        assertThat(Math.toDegrees(shape.zeroLiftAngle())).isCloseTo(zeroLift(0.02, 0.4), within(0.06));
        assertThat(shape.moment()).isCloseTo(moment(0.02, 0.4), within(0.002));
    }

    /** Thin-airfoil integrals over the slope of the four-digit camber line, by Commons Math. */
    private static double zeroLift(double camber, double place) {
        return Math.toDegrees(-integral(camber, place, 1, 0) / Math.PI);
    }

    private static double moment(double camber, double place) {
        return -0.5 * integral(camber, place, 0, 1);
    }

    private static double integral(double camber, double place, double lift, double moment) {
        double kink = Math.acos(1 - 2 * place);
        return part(camber, place, lift, moment, 0, kink) + part(camber, place, lift, moment, kink, Math.PI);
    }

    private static double part(double camber, double place, double lift, double moment, double from, double to) {
        return new IterativeLegendreGaussIntegrator(20, 1e-10, 1e-10)
                .integrate(
                        100_000,
                        theta -> {
                            double x = 0.5 * (1 - Math.cos(theta));
                            double square = from == 0 ? place * place : (1 - place) * (1 - place);
                            double slope = 2 * camber / square * (place - x);
                            return slope
                                    * (lift * (Math.cos(theta) - 1) + moment * (Math.cos(theta) - Math.cos(2 * theta)));
                        },
                        from,
                        to);
    }

    static Stream<Arguments> refused() {
        List<double[]> loop = NACA_2412.loop();
        String plain = FourDigit.lines(loop, 1);
        List<double[]> hooked = new ArrayList<>(loop);
        hooked.add(21, new double[] {loop.get(20)[0] + 0.05, loop.get(20)[1] + 0.03});
        List<double[]> sunk = new ArrayList<>(loop);
        sunk.set(60, new double[] {sunk.get(60)[0], 0.2});
        List<double[]> slipped = new ArrayList<>(loop);
        slipped.set(15, new double[] {loop.get(15)[0], loop.get(15)[1] + 0.005});
        List<double[]> dropped = new ArrayList<>(loop);
        dropped.set(60, new double[] {loop.get(60)[0], loop.get(60)[1] / 10});
        return Stream.of(
                Arguments.of("a digit slipped", FourDigit.lines(slipped, 1), "input.outline.odd", 16),
                Arguments.of("a zero too many", FourDigit.lines(dropped, 1), "input.outline.odd", 61),
                Arguments.of("decimal commas", plain.replace('.', ','), "input.outline.comma", 1),
                Arguments.of("words between", withLine(plain, 9, "and below"), "input.outline.pair", 10),
                Arguments.of("three columns", plain.replace("\n", " 0.0\n"), "input.outline.pair", 1),
                Arguments.of("too few", "0 0\n1 0\n", "input.outline.points", 0),
                Arguments.of("nothing but words", "top\nbottom\n", "input.outline.points", 0),
                Arguments.of("one place", "1 1\n".repeat(20), "input.outline.chord", 1),
                Arguments.of("open", FourDigit.lines(loop.subList(0, 60), 1), "input.outline.open", 60),
                Arguments.of("crossing itself", FourDigit.lines(sunk, 1), "input.outline.crosses", 60),
                Arguments.of("turning back", FourDigit.lines(hooked, 1), "input.outline.back", 21),
                Arguments.of(
                        "too thick",
                        FourDigit.lines(new FourDigit(0.02, 0.4, 0.6).loop(), 1),
                        "input.outline.unusual",
                        41));
    }

    private static String withLine(String text, int after, String line) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        lines.add(after, line);
        return String.join("\n", lines);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void isRefusedWithItsLine(String what, String text, String code, int line) {
        CoordinateFile.Reading reading = CoordinateFile.read("wing.dat", text);
        assertThat(reading.shape()).isEmpty();
        Problem problem = reading.problems().get(0);
        assertThat(problem.note().code()).isEqualTo(code);
        assertThat(problem.line()).isEqualTo(line);
        assertThat(Words.load().say(code, problem.note().arguments().toArray())).doesNotContain("{0}");
    }

    /** A plank with a straight tail has corners, a foam section a step: neither is a slip. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1 0;0.7 0.04;0.5 0.04;0.3 0.04;0.1 0.03;0.03 0.015;0 0;0.03 -0.015;0.1 -0.03;0.3 -0.04;0.5 -0.04;0.7 -0.04;1 0",
                "1 0;0.75 0.02;0.5 0.03;0.49 0.06;0.3 0.07;0.1 0.05;0.03 0.03;0 0;0.03 -0.015;0.1 -0.02;0.5 -0.02;0.8 -0.01;1 0"
            })
    void cornersAreNoSlips(String points) {
        CoordinateFile.Reading reading = CoordinateFile.read("foam.dat", points.replace(';', '\n'));
        assertThat(reading.problems()).isEmpty();
    }

    @Test
    void neverThrows() {
        java.util.Random random = new java.util.Random(7);
        String alphabet = "0123456789.,;- \n\te+#xN";
        for (int i = 0; i < 2000; i++) {
            StringBuilder text = new StringBuilder();
            int length = random.nextInt(400);
            for (int k = 0; k < length; k++) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            CoordinateFile.Reading reading = CoordinateFile.read("x.dat", text.toString());
            assertThat(reading.shape().isPresent())
                    .as(String.format(Locale.ROOT, "%s", text))
                    .isEqualTo(reading.problems().isEmpty());
        }
    }
}
