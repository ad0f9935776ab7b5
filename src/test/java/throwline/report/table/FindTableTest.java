package throwline.report.table;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import throwline.Golden;
import throwline.report.FindFixture;
import throwline.report.Page;
import throwline.study.FindResult;
import throwline.units.Display;
import throwline.words.Words;

/** Wording and layout of what a search found, from fixed results. */
class FindTableTest {

    private static final Words WORDS = Words.load();

    @Test
    void all_found() {
        Golden.check("find-all-80.txt", table(FindFixture.allFound(), Page.of(80, true, false, Display.metric())));
    }

    @Test
    void nothing_found() {
        Golden.check(
                "find-nothing-80.txt", table(FindFixture.nothingFound(), Page.of(80, true, false, Display.metric())));
    }

    @Test
    void no_line_is_longer_than_the_page() {
        for (int width : new int[] {72, 80, 100, 120}) {
            for (FindResult result : new FindResult[] {FindFixture.allFound(), FindFixture.nothingFound()}) {
                assertThat(table(result, Page.of(width, true, false, Display.metric()))
                                .lines())
                        .allMatch(line -> line.length() <= width);
            }
        }
    }

    @Test
    void plain_ascii_where_the_place_shows_no_more() {
        assertThat(table(FindFixture.allFound(), Page.of(80, false, false, Display.metric())))
                .matches("\\p{ASCII}*");
    }

    private static String table(FindResult result, Page page) {
        return new FindTable(page, WORDS).write(result);
    }
}
