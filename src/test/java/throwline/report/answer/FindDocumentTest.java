package throwline.report.answer;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import throwline.Golden;
import throwline.report.FindFixture;
import throwline.report.Page;
import throwline.study.FindResult;
import throwline.units.Display;

/** Wording and layout of what a search found, from fixed results. */
class FindDocumentTest {

    @Test
    void all_found() {
        Golden.check("find-all-80.txt", table(FindFixture.allFound(), Page.of(80, true, false, Display.metric())));
    }

    @Test
    void nothing_found() {
        Golden.check(
                "find-nothing-80.txt", table(FindFixture.nothingFound(), Page.of(80, true, false, Display.metric())));
    }

    /** Methods manual 17.7 (PRACTICE): below 1.2 times the stall speed nothing is left. */
    @Test
    void what_is_found_too_near_to_the_stall_says_so() {
        Page page = Page.of(200, true, false, Display.metric());
        String sentence = "times its stall speed: too near the stall for an approach";
        assertThat(table(FindFixture.foundAt(1.19), page)).contains("only 1.19 " + sentence);
        assertThat(table(FindFixture.foundAt(1.21), page)).doesNotContain(sentence);
    }

    @Test
    void an_elevator_that_need_not_move_stays() {
        Page page = Page.of(200, true, false, Display.metric());
        assertThat(table(FindFixture.elevatorChangesBy(1e-5), page))
                .contains("Against clean at 12.0 m/s the elevator stays where it is. Elevator mix to program: none.")
                .doesNotContain("neutral (neutral)");
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
        return Answers.text(Answers.find(result), page);
    }
}
