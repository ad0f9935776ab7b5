package throwline.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.input.PackedAirfoils;
import throwline.section.MeasuredSections;

/** Cases are files: a new one needs no code, and a faulty one is told in a sentence. */
class CaseFileTest {

    private static final String GOOD = """
            # kind: section
            # case: A section of the library
            # source: Summary of Low-Speed Airfoil Data
            quantity,airfoil,Reynolds number,angle [deg],value,allowed,mark,why
            maximum lift,naca2415,101000,,1.19,0.03,READ,"two runs, one model"
            lift,naca2415,101000,30,1.19,3 %,READ,far past its stall
            """;

    @TempDir
    private Path folder = Path.of("");

    private Book run(String text) throws IOException, UnreadableCase {
        Files.writeString(folder.resolve("mine.csv"), text);
        return new Validation(new MeasuredSections(), new PackedAirfoils()).run(CaseFolder.at(folder));
    }

    /** The same values as in the product's own case (Selig et al., READ), one of them at an angle where it cannot be met. */
    @Test
    void aNewCaseIsAFile() throws IOException, UnreadableCase {
        Book book = run(GOOD);
        CaseResult mine = book.cases().get(0);
        assertThat(mine.title()).isEqualTo("A section of the library");
        assertThat(mine.checks()).extracting(Check::passed).containsExactly(true, false);
        assertThat(mine.checks().get(0).why()).isEqualTo("two runs, one model");
        assertThat(mine.checks().get(0).condition()).isEqualTo("airfoil naca2415, Reynolds number 101000");
        assertThat(mine.checks().get(1).condition()).endsWith("angle 30 deg");
        assertThat(book.passed()).isFalse();
    }

    /** A table without a kind may lie beside the cases. */
    @Test
    void otherTablesAreLeftAlone() throws IOException, UnreadableCase {
        assertThat(run("a,b\n1,2,3\n").cases()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "# kind: section|# kind: sections|case.kind",
                "# source: Summary|# sauce: Summary|case.head",
                "maximum lift,|maximal lift,|case.quantity",
                "naca2415,101000,,|no-such-foil,101000,,|case.airfoil",
                "101000,,1.19|fast,,1.19|case.number",
                "1.19,0.03|1.19,about|case.allowed",
                "1.19,0.03|1.19 0.03|case.cells"
            })
    void faultsAreTold(String good, String bad, String code) {
        String text = GOOD.replace(good, bad);
        assertThat(text).isNotEqualTo(GOOD);
        UnreadableCase fault = catchThrowableOfType(UnreadableCase.class, () -> run(text));
        assertThat(fault.note().code()).isEqualTo(code);
        assertThat(fault.note().arguments().get(0)).asString().endsWith("mine.csv");
    }
}
