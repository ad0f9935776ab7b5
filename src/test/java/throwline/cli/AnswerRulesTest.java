package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Each rule of {@link CommandFuzz} lets real answers pass and finds the fault that is planted in them. */
class AnswerRulesTest {

    private static final PlausibleModel MODEL = new PlausibleModel(20_261_128);

    private static final ProgramRun COMPARE = run(MODEL.withHeavierPack(), "compare", "-", "--csv");
    private static final ProgramRun FLY = run(MODEL.file(), "fly", "-", "--setup", "landing", "--json");
    private static final ProgramRun FIND = run(MODEL.file(), "find", "-", "--roll-help", "--json");
    private static final ProgramRun WING =
            run(MODEL.file(), "wing", "-", "--setup", "landing", "--incidence", "0:4:2", "--json");

    private static ProgramRun run(String file, String... call) {
        return ProgramRun.of(Commands.all(), file, call);
    }

    private static ProgramRun with(ProgramRun run, String pattern, String other) {
        String out = run.out().replaceFirst(pattern, other);
        assertThat(out).isNotEqualTo(run.out());
        return new ProgramRun(run.exitCode(), out, run.err());
    }

    private static ProgramRun ending(ProgramRun run, int code) {
        assertThat(code).isNotEqualTo(run.exitCode());
        return new ProgramRun(code, run.out(), run.err());
    }

    static Stream<Arguments> planted() {
        return Stream.of(
                Arguments.of(AnswerRule.NO_FAULT, ending(COMPARE, 1)),
                Arguments.of(AnswerRule.NO_FAULT, new ProgramRun(0, "", "Internal fault (RuntimeException: gone)")),
                Arguments.of(AnswerRule.NUMBERS, with(WING, "\"lift\": [^,]+", "\"lift\": NaN")),
                Arguments.of(AnswerRule.NUMBERS, with(FLY, "\"value\": [^,]+", "\"value\": -Infinity")),
                Arguments.of(AnswerRule.NUMBERS, with(COMPARE, "stallSpeed,,m/s,[^,]+", "stallSpeed,,m/s,\u221e")),
                Arguments.of(AnswerRule.BANDS, with(FLY, "(\"stallSpeed\": \\{\"value\": )[^,]+", "$1999")),
                Arguments.of(AnswerRule.BANDS, with(FIND, "(\"value\": [^,]+, \"low\": )[^,]+", "$1999")),
                Arguments.of(AnswerRule.BANDS, with(COMPARE, "(stallSpeed,,m/s,[^,]+,[^,]+,)[^,]+", "$10.001")),
                Arguments.of(AnswerRule.REASONS, with(FLY, "\"value\": [^}]+", "\"value\": null, \"why\": \"\"")),
                Arguments.of(AnswerRule.REASONS, with(FIND, "(\"value\": [-0-9][^}]+)", "$1, \"why\": \"unsure\"")),
                Arguments.of(AnswerRule.REASONS, with(COMPARE, "(stallSpeed,,m/s,)[^\r\n]+", "$1,,,,")),
                Arguments.of(AnswerRule.REASONS, with(COMPARE, "(stallSpeed,,m/s,[^\r\n]+)", "$1unsure")),
                Arguments.of(AnswerRule.SETTLED, with(WING, "\"converged\": true", "\"converged\": false")),
                Arguments.of(AnswerRule.SETTLED, with(FIND, "\n  \"met\": true", "\n  \"met\": false")),
                Arguments.of(
                        AnswerRule.SETTLED,
                        with(FLY, "\"sinkRate\": [^}]+", "\"sinkRate\": {\"value\": null, \"why\": \"not settled\"")),
                Arguments.of(AnswerRule.SETTLED, with(COMPARE, "(stallSpeed,,m/s,)[^\r\n]+", "$1,,,,not settled")),
                Arguments.of(AnswerRule.SETTLED, ending(FLY, 3)));
    }

    @ParameterizedTest
    @MethodSource("planted")
    void plantedFaultIsFound(AnswerRule rule, ProgramRun faulty) {
        assertThat(rule.broken(faulty)).isNotEmpty();
    }

    @ParameterizedTest
    @EnumSource(AnswerRule.class)
    void everyRuleHasAPlantedFaultAndLetsRealAnswersPass(AnswerRule rule) {
        assertThat(planted().map(arguments -> arguments.get()[0])).contains(rule);
        assertThat(Stream.of(COMPARE, FLY, FIND, WING).flatMap(run -> rule.broken(run).stream()))
                .isEmpty();
    }

    @Test
    void heavierModelThatStallsSlowerIsFound() {
        assertThat(ComparedRows.of(COMPARE.out()).heavierSlower()).isEmpty();
        ProgramRun swapped = with(COMPARE, "(light,clean,stallSpeed,,m/s,)[^,]+", "$1999");
        assertThat(ComparedRows.of(swapped.out()).heavierSlower()).hasSize(1);
    }

    @Test
    void thinnerAirThatLandsSlowerIsFound() {
        ComparedRows low = ComparedRows.of(COMPARE.out());
        ComparedRows high =
                ComparedRows.of(run(MODEL.at(1500), "compare", "-", "--csv").out());
        assertThat(high.slowerThan(low)).isEmpty();
        assertThat(low.slowerThan(high)).hasSize(2);
    }

    @Test
    void otherNamesAndOrderThatChangeAByteAreFound() {
        ComparedRows rows = ComparedRows.of(COMPARE.out()).withPack("light");
        ProgramRun renamed = run(MODEL.renamed(), "compare", "-", "--csv");
        assertThat(renamed.out()).contains("zqd").doesNotContain("landing,");
        assertThat(rows.notSameBytes(ComparedRows.of(renamed.out()))).isEmpty();
        ProgramRun oneDigit = with(renamed, "(light,zqd,stallSpeed,,m/s,[^,]+)", "$11");
        assertThat(rows.notSameBytes(ComparedRows.of(oneDigit.out()))).hasSize(1);
        assertThat(ComparedRows.of(lastLineLess(renamed.out())).notSameBytes(rows))
                .hasSize(1);
    }

    @Test
    void otherUnitsThatChangeANumberAreFound() {
        ComparedRows rows = ComparedRows.of(COMPARE.out()).withPack("light");
        ProgramRun imperial = run(MODEL.imperial(), "compare", "-", "--csv");
        assertThat(MODEL.imperial()).contains(" in,", " lb").doesNotContain(" mm", " kg");
        assertThat(rows.notWithin(2e-5, ComparedRows.of(imperial.out()))).isEmpty();
        ProgramRun feetForMetres = with(imperial, "(light,clean,stallSpeed,,m/s,)[^,]+", "$130.1");
        assertThat(rows.notWithin(2e-5, ComparedRows.of(feetForMetres.out()))).hasSize(1);
        assertThat(rows.notWithin(2e-5, ComparedRows.of(lastLineLess(imperial.out()))))
                .isNotEmpty();
    }

    private static String lastLineLess(String text) {
        String[] lines = text.split("\n");
        return String.join("\n", Arrays.copyOf(lines, lines.length - 1)) + "\n";
    }
}
