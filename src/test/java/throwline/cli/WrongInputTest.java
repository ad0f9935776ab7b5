package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import throwline.Golden;

/** What the person reads when the command line is wrong: one sentence, exit code 2, nothing on standard output. */
class WrongInputTest {

    private static final String MODEL = "examples/orchard.yaml";

    private static final List<List<String>> CALLS = List.of(
            List.of("glide-away"),
            List.of("compare"),
            List.of("compare", MODEL, "--packs", "small"),
            List.of("compare", MODEL, "--pack", "huge"),
            List.of("compare", MODEL, "--json", "--csv"),
            List.of("compare", "-", "-"),
            List.of("compare", "no-such-file.yaml"),
            List.of("wing", MODEL),
            List.of("wing", MODEL, "--setup", "clean"),
            List.of("wing", MODEL, "--setup", "crow", "--incidence", "0:4:2"),
            List.of("wing", MODEL, "--setup", "clean", "--incidence", "0:4"),
            List.of("wing", MODEL, "--setup", "clean", "--incidence", "0:four:2"),
            List.of("wing", MODEL, "--setup", "clean", "--incidence", "0:4:-2"),
            List.of("wing", MODEL, "--setup", "clean", "--incidence", "0:4:0.0001"),
            List.of("wing", MODEL, "--setup", "clean", "--incidence", "4", "--speed", "12"),
            List.of("wing", MODEL, "--setup", "clean", "--incidence", "4", "--speed", "1,5 m/s"),
            List.of("wing", MODEL, "--setup", "clean", "--incidence", "4", "--speed", "500 m/s"),
            List.of("wing", MODEL, "--setup", "clean", "--incidence", "4", "--above-ground", "-1 m"),
            List.of("wing", MODEL, "--setup", "clean", "--incidence", "4", "--strips", "2"),
            List.of("wing", MODEL, "--setup", "clean", "--incidence", "4", "--strips", "20.5"),
            List.of(
                    "wing",
                    MODEL,
                    "--setup",
                    "clean",
                    "--incidence",
                    "4",
                    "--tip-helix",
                    "0.1",
                    "--roll-rate",
                    "60deg/s"),
            List.of("find", MODEL, "--no-trim-change"),
            List.of("section"),
            List.of("section", "clark-y"),
            List.of("section", "clark-y", "--re", "many"),
            List.of("section", "clark-y", "--re", "-100000"),
            List.of("section", "no-such-section", "--re", "100000"),
            List.of("section", "clark-y", "--re", "100000", "--flap", "95"),
            List.of("section", "clark-y", "--re", "100000", "--flap-chord", "0.25"),
            List.of("section", "clark-y", "--re", "100000", "--flap-chord", "60 %"));

    @Test
    void one_sentence_each() {
        StringBuilder said = new StringBuilder();
        for (List<String> call : CALLS) {
            ProgramRun run = ProgramRun.of(call.toArray(String[]::new));
            assertThat(run.exitCode()).as(call.toString()).isEqualTo(2);
            assertThat(run.out()).as(call.toString()).isEmpty();
            assertThat(run.err()).doesNotContain("\tat ").doesNotContain("Exception");
            said.append("$ throwline ")
                    .append(String.join(" ", call))
                    .append('\n')
                    .append(run.err())
                    .append('\n');
        }
        Golden.check("wrong-input.txt", said.toString());
    }
}
