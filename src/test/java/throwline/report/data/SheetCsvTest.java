package throwline.report.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.report.CompareAnswer;
import throwline.report.Fixture;

/** The numbers of the sheets out to a spreadsheet and back. */
class SheetCsvTest {

    private final CompareAnswer answer = Fixture.crowded();
    private final List<SheetEntry> entries = SheetNumbers.of(
            answer.comparison().model(), answer.comparison().packs().get(0));
    private final String text = SheetCsv.write("Crowded, \"House\"", "small", entries);

    @Test
    void nothing_is_lost_on_the_way_there_and_back() {
        SheetCsv.Read read = SheetCsv.read(text);
        assertThat(read.wrongLine()).isEmpty();
        assertThat(read.model()).isEqualTo("Crowded, \"House\"");
        assertThat(read.pack()).isEqualTo("small");
        assertThat(read.entries()).isEqualTo(entries).hasSizeGreaterThan(100);
    }

    @Test
    void a_spreadsheet_may_change_line_ends_and_put_quotes_around_cells() {
        String quoted = "\uFEFF" + text.replace("small", "\"small\"").replace("\r\n", "\n");
        assertThat(SheetCsv.read(quoted).entries()).isEqualTo(entries);
    }

    @Test
    void every_number_has_its_own_name() {
        assertThat(entries.stream().map(SheetEntry::key)).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\1',
            value = {
                "throwline: 1|1",
                "model,pack,setup,surface,stick,side,quantity,unit,value\\nOrchard,small,clean|2",
                "model,pack,setup,surface,stick,side,quantity,unit,value\\na,b,c,d,,left,angle,deg,twelve|2",
                "model,pack,setup,surface,stick,side,quantity,unit,value|2"
            })
    void what_is_no_sheet_is_told_by_its_line(String file, int line) {
        SheetCsv.Read read = SheetCsv.read(file.replace("\\n", "\n"));
        assertThat(read.wrongLine()).hasValue(line);
        assertThat(read.entries()).isEmpty();
    }
}
