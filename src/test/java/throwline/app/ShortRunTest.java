package throwline.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ShortRunTest {

    private static final String JAVA = "/java";

    @Test
    @DisplayName("A plain start of the jar runs its command, word for word, in a Java that is set for it")
    void runsThePlainJar() {
        ShortRun run = ShortRun.of(JAVA, List.of("-jar", "a b.jar", "compare", "my model.yaml", "-"), Map.of())
                .orElseThrow();
        assertThat(run.command())
                .startsWith(JAVA)
                .contains("-XX:TieredStopAtLevel=1")
                .endsWith("-cp", "a b.jar", Throwline.class.getName(), "compare", "my model.yaml", "-");
    }

    @Test
    @DisplayName("Where the person chose an option of Java, or the work is long, the process goes on itself")
    void leavesChoicesAlone() {
        List<String> plain = List.of("-jar", "a.jar", "check", "m.yaml");
        assertThat(ShortRun.of(JAVA, List.of("-Xmx64m", "-jar", "a.jar", "check", "m.yaml"), Map.of()))
                .isEmpty();
        assertThat(ShortRun.of(JAVA, List.of("-cp", "a.jar", "throwline.app.Throwline", "check"), Map.of()))
                .isEmpty();
        assertThat(ShortRun.of(JAVA, plain, Map.of("JDK_JAVA_OPTIONS", "-Xmx64m")))
                .isEmpty();
        assertThat(ShortRun.of(JAVA, List.of("-jar", "a.jar", "validate"), Map.of()))
                .isEmpty();
        assertThat(ShortRun.of(JAVA, plain, Map.of())).isPresent();
    }

    @Test
    @DisplayName("The exit code is the command's; a program that cannot be started leaves the work to this process")
    void handsOnTheExitCode() {
        assertThat(new ShortRun(List.of("sh", "-c", "exit 3")).exitCode()).contains(3);
        assertThat(new ShortRun(List.of("/no/such/java")).exitCode()).isEmpty();
    }
}
