package throwline.report.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells that a spreadsheet shows and does not run, and that are read back without loss. */
class CsvCellTest {

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "'=1", "''-x", "=a,b", "=\"a\"", "\t=1"})
    void namesThatBeginAsFormulas(String name) {
        String written =
                SheetCsv.write(name, name, List.of(new SheetEntry(name, name, name, name, "throw", "mm", "-1.5")));
        assertThat(written.lines().skip(1))
                .allSatisfy(line -> assertThat(line.replace("\"", "")).startsWith("'"));
        assertThat(written).contains(",mm,-1.5\r\n");
        SheetCsv.Read read = SheetCsv.read(written);
        assertThat(read.model()).isEqualTo(name);
        assertThat(read.pack()).isEqualTo(name);
        assertThat(read.entries()).containsExactly(new SheetEntry(name, name, name, name, "throw", "mm", "-1.5"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"clean", "'quoted'", "a=b", "1.5", "take-off flap", ""})
    void otherNamesStandAsTheyAre(String name) {
        assertThat(CsvCell.text(name)).isEqualTo(name);
        assertThat(CsvCell.read(name)).isEqualTo(name);
    }

    @Test
    void numbersOfAnEarlierSheetAreNumbers() {
        String header = SheetCsv.write("", "", List.of());
        for (String number : List.of("1e999", "1".repeat(31), "=1", "NaN")) {
            assertThat(SheetCsv.read(header + "m,p,s,f,,,throw,mm," + number + "\r\n")
                            .wrongLine())
                    .hasValue(2);
        }
    }
}
