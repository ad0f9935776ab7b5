package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import throwline.section.PolarRun;
import throwline.words.Words;

/** Polar files: what a person may write, and what they are told where it cannot be read. */
class PolarFileTest {

    private static final String HEAD =
            "# Re: 120000\n# flap_deg: -4 (up)\n# flap_chord: 30 %\n# run kind: drag run\n# source: invented\n";
    private static final String COLUMNS = "alpha_deg,cl,cd,cm\n";
    private static final String ROWS = "-2,-0.1,0.02,\n0,0.1,0.018,-0.05\n 2 , 0.3 , 0.017 , \n";

    @Test
    void readsHeaderAndRows() {
        PolarRun run = PolarFile.read("a.csv", HEAD + "# mark: READ (somewhere)\n\n" + COLUMNS + ROWS)
                .run()
                .orElseThrow();
        assertThat(run.reynolds()).isEqualTo(120_000);
        assertThat(Math.toDegrees(run.deflection())).isCloseTo(-4, within(1e-12));
        assertThat(run.surfaceChord()).isCloseTo(0.30, within(1e-12));
        assertThat(run.kind()).isEqualTo(PolarRun.Kind.DRAG);
        assertThat(run.mark()).isEqualTo("READ");
        assertThat(run.points()).hasSize(3);
        assertThat(run.points().get(0).moment()).isNaN();
        assertThat(run.points().get(1).moment()).isEqualTo(-0.05);
    }

    @Test
    void columnsInAnotherOrderAndFallingAngles() {
        PolarRun run = PolarFile.read("b_lift_down.csv", "# Re: 9e4\ncl,alpha_deg\n0.5,4\n0.3,2\n0.1,0\n")
                .run()
                .orElseThrow();
        assertThat(run.kind()).isEqualTo(PolarRun.Kind.LIFT_DOWN);
        assertThat(run.points().get(0).alpha()).isZero();
    }

    static Stream<Arguments> refused() {
        return Stream.of(
                Arguments.of("no Reynolds number", COLUMNS + ROWS, "input.polar.reynolds.missing", 0, 0),
                Arguments.of("words for it", "# Re: low\n" + COLUMNS + ROWS, "input.polar.reynolds", 1, 1),
                Arguments.of("too small", "# Re: 12\n" + COLUMNS + ROWS, "input.polar.reynolds", 1, 1),
                Arguments.of("flap too far", "# Re: 1e5\n# flap_deg: 120\n" + COLUMNS + ROWS, "input.polar.flap", 2, 1),
                Arguments.of("other columns", HEAD + "angle,cl\n" + ROWS, "input.polar.columns", 6, 1),
                Arguments.of("a column twice", HEAD + "alpha_deg,cl,cl\n" + ROWS, "input.polar.columns", 6, 14),
                Arguments.of("no lift", HEAD + "alpha_deg,cd\n1,0.02\n", "input.polar.columns", 6, 1),
                Arguments.of("decimal commas", HEAD + COLUMNS + "1,5,0,4,0,02,\n", "input.polar.cells", 7, 1),
                Arguments.of("no number", HEAD + COLUMNS + "1,much,0.02,\n", "input.polar.number", 7, 3),
                Arguments.of("an empty lift", HEAD + COLUMNS + "1,,0.02,\n", "input.polar.number", 7, 3),
                Arguments.of("negative drag", HEAD + COLUMNS + "1,0.2,-0.02,\n", "input.polar.number", 7, 7),
                Arguments.of("not a number", HEAD + COLUMNS + "1,NaN,0.02,\n", "input.polar.number", 7, 3),
                Arguments.of("two points", HEAD + COLUMNS + "1,0.1,0.02,\n2,0.2,0.02,\n", "input.polar.points", 0, 0),
                Arguments.of("nothing", "", "input.polar.reynolds.missing", 0, 0),
                Arguments.of(
                        "impossible thickness",
                        HEAD + "# thickness_pct: 300\n" + COLUMNS + ROWS,
                        "input.polar.header",
                        6,
                        1),
                Arguments.of(
                        "a moved surface without its chord",
                        "# Re: 1e5\n# flap_deg: 10\n" + COLUMNS + ROWS,
                        "input.polar.chord.missing",
                        2,
                        1),
                Arguments.of(
                        "a chord that is no share",
                        "# Re: 1e5\n# flap_deg: 10\n# flap_chord: 60 mm\n" + COLUMNS + ROWS,
                        "input.polar.chord",
                        3,
                        1),
                Arguments.of(
                        "a chord of all",
                        "# Re: 1e5\n# flap_deg: 10\n# flap_chord: 100 %\n" + COLUMNS + ROWS,
                        "input.polar.chord",
                        3,
                        1),
                Arguments.of(
                        "a misspelt header",
                        "# Re: 1e5\n# flapchord: 25 %\n" + COLUMNS + ROWS,
                        "input.polar.unknown.near",
                        2,
                        1),
                Arguments.of(
                        "another header",
                        "# Re: 1e5\n# weather: fine\n" + COLUMNS + ROWS,
                        "input.polar.unknown",
                        2,
                        1));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void isRefusedWithLineAndColumn(String what, String text, String code, int line, int column) {
        PolarFile.Reading reading = PolarFile.read("own.csv", text);
        assertThat(reading.run()).isEmpty();
        Problem problem = reading.problems().get(0);
        assertThat(problem.note().code()).isEqualTo(code);
        assertThat(problem.line()).isEqualTo(line);
        assertThat(problem.column()).isEqualTo(column);
        assertThat(Words.load().say(code, problem.note().arguments().toArray()))
                .doesNotContain("{0}")
                .doesNotContain("{1}");
    }

    @Test
    void tellsAllProblemsOfAFile() {
        PolarFile.Reading reading =
                PolarFile.read("own.csv", "# Re: low\n" + COLUMNS + "1,x,0.02,\n2,0.2,y,\n3,0.3,0.02,z\n");
        assertThat(reading.problems()).hasSize(4);
    }
}
