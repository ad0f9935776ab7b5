package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import throwline.model.AirfoilName;
import throwline.section.Airfoil;
import throwline.section.PolarRun;

/** The packed library holds what the folder holds, and every file of it can be read. */
class PackedAirfoilsTest {

    private final PackedAirfoils library = new PackedAirfoils();

    @Test
    void listsEveryFile() throws IOException {
        Path root = Path.of("airfoils");
        try (Stream<Path> found = Files.walk(root)) {
            List<String> onDisk = found.filter(Files::isRegularFile)
                    .map(file -> root.relativize(file).toString().replace('\\', '/'))
                    .filter(file -> file.contains("/"))
                    .sorted()
                    .toList();
            assertThat(Files.readAllLines(root.resolve("files.txt"))).isEqualTo(onDisk);
        }
    }

    @Test
    void everyAirfoilCanBeReadAndNamesItsSource() {
        assertThat(library.names()).hasSize(39);
        for (String name : library.names()) {
            Airfoil airfoil = library.find(new AirfoilName(name)).orElseThrow();
            assertThat(airfoil.runs()).allSatisfy(run -> {
                assertThat(run.source()).isNotBlank();
                assertThat(run.mark()).isEqualTo("READ");
            });
        }
    }

    @Test
    void namesCompareWithoutCaseBlanksAndHyphens() {
        assertThat(library.find(new AirfoilName("Clark-Y")).orElseThrow().name())
                .isEqualTo("clark-y");
        assertThat(library.find(new AirfoilName("NACA 2.5411")).orElseThrow().name())
                .isEqualTo("naca2.5411");
        assertThat(library.find(new AirfoilName("no such thing"))).isEmpty();
    }

    @Test
    void kindsAndDeflectionsComeFromTheHeaders() {
        Airfoil flapped = library.find(new AirfoilName("e214c")).orElseThrow();
        assertThat(flapped.runs())
                .extracting(run -> Math.round(Math.toDegrees(run.deflection())))
                .containsOnly(-6L, 0L);
        Airfoil both = library.find(new AirfoilName("naca2415")).orElseThrow();
        assertThat(both.runs())
                .extracting(PolarRun::kind)
                .contains(PolarRun.Kind.DRAG, PolarRun.Kind.LIFT_UP, PolarRun.Kind.LIFT_DOWN);
    }
}
