package throwline.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Pages in a browser, as a telephone, a laptop and a printer show them. Needs Chromium, Node.js and npm, so it runs in its
 * own profile only: {@code mvn -Pbrowser verify}.
 */
class BrowserChecks {

    private static final Path OUT = Path.of("target/browser");
    private static final String SCRIPTS = "src/test/browser";

    @BeforeAll
    static void scripts() {
        JarRun npm = JarRun.process(List.of("npm", "ci", "--no-audit", "--no-fund", "--prefix", SCRIPTS), "");
        assertThat(npm.exitCode()).as(npm.err()).isZero();
    }

    @Test
    void no_page_cuts_or_covers_text_or_scrolls_sideways_or_breaks_a_rule_of_accessibility() {
        List<String> look = new ArrayList<>(List.of("node", SCRIPTS + "/look.mjs", OUT.resolve("pictures") + ""));
        look.add(page("one", "orchard.html", "compare", "examples/orchard.yaml"));
        look.add(page(
                "two", "ridgeline-saltmarsh.html", "compare", "examples/ridgeline.yaml", "examples/saltmarsh.yaml"));
        look.add(page("fly", "orchard-airbrake.html", "fly", "examples/orchard.yaml", "--setup", "airbrake"));
        look.add(page(
                "find",
                "find.html",
                "find",
                "examples/orchard.yaml",
                "--no-trim-change",
                "landing flap",
                "--come-down",
                "15",
                "--at",
                "12m/s"));
        JarRun looked = JarRun.process(look, "");
        assertThat(looked.exitCode()).as(looked.err()).isZero();
        assertThat(looked.err()).isEmpty();
    }

    private static String page(String folder, String name, String... call) {
        List<String> arguments = new ArrayList<>(List.of(call));
        arguments.addAll(List.of("--replace", "--out", OUT.resolve(folder).toString()));
        JarRun run = JarRun.of(arguments.toArray(new String[0]));
        assertThat(run.exitCode()).as(run.err()).isIn(0, 3);
        return OUT.resolve(folder).resolve(name).toString();
    }
}
