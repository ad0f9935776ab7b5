package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.model.AirfoilName;
import throwline.section.Airfoil;
import throwline.section.Basis;
import throwline.section.Likeness;
import throwline.section.MeasuredSections;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;
import throwline.words.Words;

/** Airfoils by name, words, folder and coordinates. */
class NamedAirfoilsTest {

    @TempDir
    private Path folder = Path.of("");

    private NamedAirfoils airfoils() {
        return new NamedAirfoils(new PackedAirfoils(), folder);
    }

    private static SectionCurve curve(Airfoil airfoil, double reynolds) {
        return new MeasuredSections().curve(SectionPlace.of(airfoil), SurfaceState.none(), reynolds);
    }

    /** What stands in is of the kind that was said; usual shapes: practice. */
    @ParameterizedTest
    @CsvSource({
        "flat bottom 12 %, 0.12, 0.034",
        "flat-bottomed, 0.12, 0.034",
        "semi-symmetrical 14 %, 0.14, 0.022",
        "Symmetrical 12 per cent, 0.12, 0",
        "symmetric 9 %, 0.09, 0",
        "thin cambered glider, 0.08, 0.03",
        "reflexed 10 %, 0.10, 0.018"
    })
    void wordsFindTheirLike(String words, double thickness, double camber) {
        Airfoil airfoil = airfoils().find(new AirfoilName(words)).orElseThrow();
        assertThat(airfoil.thickness()).isCloseTo(thickness, within(1e-9));
        assertThat(airfoil.camber()).isCloseTo(camber, within(0.001));
        Airfoil like = new PackedAirfoils()
                .find(new AirfoilName(airfoil.likeness().orElseThrow().donor()))
                .orElseThrow();
        assertThat(like.thickness()).isCloseTo(thickness, within(0.025));
        assertThat(like.camber()).isCloseTo(camber, within(0.012));
        assertThat(curve(airfoil, 150_000).basis(0)).isEqualTo(Basis.LIKENESS);
    }

    /** The classic flat bottom is Clark Y; a reflexed section has next to no moment (common practice, no source). */
    @Test
    void classics() {
        assertThat(airfoils().find(new AirfoilName("flat bottom")).orElseThrow().likeness())
                .contains(Likeness.standIn("clark-y"));
        Airfoil reflexed = airfoils().find(new AirfoilName("reflex")).orElseThrow();
        assertThat(reflexed.nominalMoment()).isBetween(-0.02, 0.0);
    }

    /** However the trade writes the number; one that the library measured stays measured. */
    @ParameterizedTest
    @CsvSource({"naca2412, 0.12, 0.02", "NACA 2412, 0.12, 0.02", "naca-23012, 0.12, 0.0184", "Naca0012, 0.12, 0"})
    void numbersAreOutlines(String name, double thickness, double camber) {
        Airfoil airfoil = airfoils().find(new AirfoilName(name)).orElseThrow();
        assertThat(airfoil.thickness()).isCloseTo(thickness, within(5e-4));
        assertThat(airfoil.camber()).isCloseTo(camber, within(5e-4));
        assertThat(curve(airfoil, 150_000).basis(0)).isEqualTo(Basis.COMPUTED);
        assertThat(airfoils().find(new AirfoilName("naca 2414")).orElseThrow().likeness())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "purple 12 %", "flat bottom 80 %", "flat", "12 %", "\u0000", "no/such/folder"})
    void otherWordsFindNothing(String words) {
        assertThat(airfoils().find(new AirfoilName(words))).isEmpty();
        assertThat(airfoils().problems(new AirfoilName(words))).isEmpty();
    }

    /**
     * A NACA 2412 by its coordinates: thin-airfoil theory puts its zero lift at -2.08 degrees (COMPUTED); four-digit sections
     * measure 0.80 to 0.99 of theory at 200 000 to 300 000 (COMPUTED from the packed polars).
     */
    @Test
    void coordinatesTurnTheNearest() throws IOException {
        Files.writeString(folder.resolve("own.dat"), FourDigit.lines(new FourDigit(0.02, 0.4, 0.12).loop(), 1));
        Airfoil airfoil = airfoils().find(new AirfoilName("own.dat")).orElseThrow();
        assertThat(airfoil.likeness()).isPresent();
        assertThat(airfoil.thickness()).isCloseTo(0.12, within(0.001));
        assertThat(Math.toDegrees(curve(airfoil, 300_000).zeroLiftAngle())).isCloseTo(-0.87 * 2.08, within(0.3));
    }

    /** Where the section method is not meant for an outline, another airfoil stands in and the note says why. */
    @ParameterizedTest
    @CsvSource({
        "0.02, 0.12, 1, COMPUTED",
        "0.02, 0.04, 1, THIN",
        "0.02, 0.22, 1, THICK",
        "0.03, 0.12, -1, HANGING",
        "0.12, 0.12, 1, CAMBERED"
    })
    void standInsSayWhy(double camber, double thickness, double up, String why) throws IOException {
        List<double[]> loop = new FourDigit(camber, 0.4, thickness)
                .loop().stream().map(p -> new double[] {p[0], up * p[1]}).toList();
        Files.writeString(folder.resolve("own.dat"), FourDigit.lines(loop, 1));
        Likeness likeness = airfoils()
                .find(new AirfoilName("own.dat"))
                .flatMap(Airfoil::likeness)
                .orElseThrow();
        assertThat(likeness.notComputed().map(Enum::name).orElse("COMPUTED")).isEqualTo(why);
        assertThat(Words.load().say(likeness.note(), "own.dat", likeness.donor()))
                .contains("\"own.dat\"", likeness.donor());
    }

    @Test
    void coordinatesThatCannotBeReadAreTold() throws IOException {
        Files.writeString(folder.resolve("own.dat"), "0,0 0,1\n");
        assertThat(airfoils().find(new AirfoilName("own.dat"))).isEmpty();
        Problem problem = airfoils().problems(new AirfoilName("own.dat")).get(0);
        assertThat(problem.file()).endsWith("own.dat");
        assertThat(problem.line()).isEqualTo(1);
    }

    /** A file that is no airfoil may be anybody's: what stands in it is not told. */
    @Test
    void textOfOtherFilesIsNeverQuoted() throws IOException {
        Files.writeString(folder.resolve("secret.txt"), "1 2\nsecret word\n3,14 secret\n");
        Path own = Files.createDirectory(folder.resolve("mine"));
        Files.writeString(own.resolve("list.csv"), "secret,word\n1,2\n");
        for (String name : List.of("secret.txt", "mine")) {
            List<Problem> problems = airfoils().problems(new AirfoilName(name));
            assertThat(problems)
                    .isNotEmpty()
                    .allSatisfy(problem -> assertThat(problem.say(Words.load()))
                            .doesNotContain("secret word")
                            .doesNotContain("\"secret")
                            .doesNotContain("3,14"));
        }
    }

    @Test
    void whatLiesOutsideTheFolderIsTold() throws IOException {
        String outline = FourDigit.lines(new FourDigit(0.02, 0.4, 0.12).loop(), 1);
        Path outside = Files.writeString(folder.resolve("own.dat"), outline);
        Path models = Files.createDirectory(folder.resolve("models"));
        Files.createSymbolicLink(models.resolve("link.dat"), outside);
        Files.writeString(models.resolve("beside.dat"), outline);
        NamedAirfoils named = new NamedAirfoils(new PackedAirfoils(), models);
        for (String name : List.of("../own.dat", "link.dat", outside.toString())) {
            assertThat(named.find(new AirfoilName(name))).isPresent();
            assertThat(named.elsewhere(new AirfoilName(name))).contains(outside.toRealPath());
        }
        for (String name : List.of("beside.dat", "clarky", "flat bottom", "no-such.dat")) {
            assertThat(named.elsewhere(new AirfoilName(name))).isEmpty();
        }
    }

    @Test
    void folderOfPolarsIsAnAirfoilOfItsOwn() throws IOException {
        Path own = Files.createDirectory(folder.resolve("mine"));
        Files.copy(Path.of("airfoils/rg14/re100600.csv"), own.resolve("a.csv"));
        Files.copy(Path.of("airfoils/rg14/re199900.csv"), own.resolve("b.csv"));
        Files.writeString(own.resolve("shape.dat"), FourDigit.lines(new FourDigit(0.016, 0.4, 0.085).loop(), 1));
        Airfoil airfoil = airfoils().find(new AirfoilName("mine")).orElseThrow();
        assertThat(airfoil.likeness()).isEmpty();
        assertThat(airfoil.thickness()).isCloseTo(0.085, within(0.001));
        assertThat(airfoil.runs()).hasSize(2);
        assertThat(curve(airfoil, 150_000).basis(0)).isEqualTo(Basis.BETWEEN);
    }

    @Test
    void folderWithABadFileIsTold() throws IOException {
        Path own = Files.createDirectory(folder.resolve("mine"));
        Files.writeString(own.resolve("a.csv"), "alpha_deg,cl,cd\n0,0.1,0.02\n");
        Files.writeString(own.resolve("b.csv"), "# Re: 1e5\nalpha_deg,cl\n0,0.1\n1,0.2\n2,0.3\n");
        assertThat(airfoils().problems(new AirfoilName("mine")))
                .extracting(problem -> problem.note().code())
                .containsExactly("input.polar.reynolds.missing");
        Files.delete(own.resolve("a.csv"));
        assertThat(airfoils().problems(new AirfoilName("mine")))
                .extracting(problem -> problem.note().code())
                .containsExactly("input.polar.clean");
    }
}
