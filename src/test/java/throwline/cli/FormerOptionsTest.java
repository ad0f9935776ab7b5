package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Command lines written for an earlier version. */
class FormerOptionsTest {

    @Test
    void a_former_name_is_read() {
        assertThat(FormerOptions.replaced("find", "a.yaml", "--level-trim", "flap", "--level-trim=flap"))
                .containsExactly("find", "a.yaml", "--no-trim-change", "flap", "--no-trim-change=flap");
        String model = "examples/saltmarsh.yaml";
        assertThat(ProgramRun.of("fly", model, "--setup", "no such", "--mixed", "half")
                        .err())
                .isEqualTo(ProgramRun.of("fly", model, "--setup", "no such", "--elevator-mix", "half")
                        .err());
        assertThat(ProgramRun.of("fly", model, "--setup", "landing flap", "--mixed", "half")
                        .err())
                .startsWith("--elevator-mix: \"half\"");
        assertThat(ProgramRun.of("sheet", model, "--out", "none", "--since", "no such.csv")
                        .err())
                .startsWith("--changes-from no such.csv");
    }

    @Test
    void what_is_no_option_stays() {
        assertThat(FormerOptions.replaced("check", "--", "--mixed")).containsExactly("check", "--", "--mixed");
        assertThat(FormerOptions.replaced("fly", "--setup=--mixed")).containsExactly("fly", "--setup=--mixed");
    }
}
